package pilefolio.submittal.calculations;

import java.util.ArrayList;
import java.util.List;
import pilefolio.trace.Printed;
import pilefolio.trace.Printed.PrintedGiven;
import pilefolio.trace.Printed.PrintedLine;
import pilefolio.trace.Printed.PrintedNote;
import pilefolio.trace.Printed.PrintedRequire;
import pilefolio.trace.Printed.PrintedTable;
import pilefolio.trace.Tex;

/**
 * A calculation sheet in parts: runs of lines in three columns, and tables.
 *
 * @param title title of the sheet
 * @param parts its parts in order
 */
public record SheetView(String title, List<Part> parts) {

  /**
   * A run of lines, or a table; the other one is empty.
   *
   * @param lines lines of the three-column sheet
   * @param tables one table or none
   */
  public record Part(List<Line> lines, List<TableView> tables) {}

  /**
   * One line of the three-column sheet.
   *
   * @param kind {@code given}, {@code found}, {@code line}, {@code require} or {@code note}
   * @param reference left column
   * @param meaning what it is
   * @param tex formula with numbers, without the result
   * @param plain the same as text
   * @param resultTex right column
   * @param resultPlain the same as text
   * @param words result words of a requirement
   * @param tone {@code ok}, {@code bad} or {@code open}
   * @param utilisation demand over capacity
   */
  public record Line(
      String kind,
      String reference,
      String meaning,
      String tex,
      String plain,
      String resultTex,
      String resultPlain,
      String words,
      String tone,
      String utilisation) {}

  /** Prepares a printed sheet. */
  public static SheetView of(Printed printed) {
    List<Part> parts = new ArrayList<>();
    List<Line> run = new ArrayList<>();
    for (Printed.Entry entry : printed.entries()) {
      if (entry instanceof PrintedTable table) {
        if (!run.isEmpty()) {
          parts.add(new Part(List.copyOf(run), List.of()));
          run.clear();
        }
        parts.add(new Part(List.of(), List.of(TableView.of(table))));
      } else {
        run.addAll(lines(entry));
      }
    }
    if (!run.isEmpty()) {
      parts.add(new Part(List.copyOf(run), List.of()));
    }
    return new SheetView(printed.title(), List.copyOf(parts));
  }

  private static List<Line> lines(Printed.Entry entry) {
    if (entry instanceof PrintedGiven e) {
      return List.of(
          new Line(
              e.found() ? "found" : "given",
              e.found() ? "" : e.source(),
              e.found() ? e.meaning() + "; found by: " + e.source() : e.meaning(),
              Tex.symbol(e.symbol()),
              e.symbol(),
              "= " + Tex.value(e.number(), e.unit().symbol()),
              "= " + value(e.number(), e.unit().symbol()),
              "",
              "",
              ""));
    }
    if (entry instanceof PrintedLine e) {
      List<Line> lines = new ArrayList<>();
      if (!e.caseTex().isEmpty()) {
        lines.add(
            new Line("case", "", e.meaning(), e.caseTex(), e.casePlain(), "", "", "", "", ""));
      }
      lines.add(
          new Line(
              "line",
              e.reference(),
              e.meaning(),
              e.tex(),
              e.work(),
              "= " + Tex.value(e.number(), e.unit().symbol()),
              "= " + value(e.number(), e.unit().symbol()),
              "",
              "",
              ""));
      return lines;
    }
    if (entry instanceof PrintedRequire e) {
      return List.of(
          new Line(
              "require",
              e.reference(),
              e.meaning(),
              e.tex(),
              e.plain(),
              "",
              "",
              e.satisfied() ? "satisfied" : "not satisfied",
              e.satisfied() ? "ok" : "bad",
              e.utilisation()));
    }
    return List.of(new Line("note", "", ((PrintedNote) entry).text(), "", "", "", "", "", "", ""));
  }

  private static String value(String number, String unit) {
    return unit.isEmpty() || unit.equals("°") ? number + unit : number + " " + unit;
  }
}
