package pilefolio.workbook;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import pilefolio.findings.Finding;
import pilefolio.model.PileKind;
import pilefolio.model.WallType;

/** Runs have the sheet piles or the lagging of their type; single piles stand clear of another. */
final class InfillRule implements Rule {
  /** Least embedment below the last excavation, m. */
  private static final double LEAST_EMBEDMENT = 1.0;

  @Override
  public void check(Book book, KnownNames names, Consumer<Finding> findings) {
    for (Row run : book.rows(WallSheet.RUNS)) {
      Optional<WallType> type = run.find(WallSheet.TYPE);
      Optional<String> id = run.find(WallSheet.RUN_ID);
      if (type.isPresent() && id.isPresent()) {
        sheets(run, id.get(), type.get(), book, findings);
        lagging(run, id.get(), type.get(), book, findings);
        if (!type.get().secant()) {
          gap(run, id.get(), book, findings);
        }
      }
    }
  }

  private static void sheets(
      Row run, String id, WallType type, Book book, Consumer<Finding> findings) {
    List<Row> rows = book.where(InfillSheet.SHEETS, InfillSheet.SHEET_RUN, id);
    if (type.sheetPiles() && rows.isEmpty()) {
      findings.accept(
          FindingKind.SHEETS_MISSING.at(
              run.place(WallSheet.RUN_ID),
              "run " + id + " has no row for its sheet piles",
              "add it on the sheet " + InfillSheet.SHEETS.name()));
    }
    boolean wanted = type.sheetPiles() || type == WallType.KING_PILES;
    rows(rows, InfillSheet.SHEET_RUN, wanted, id, "sheet piles", findings);
    for (Row row : rows) {
      toe(id, row, book, findings);
    }
  }

  private static void lagging(
      Row run, String id, WallType type, Book book, Consumer<Finding> findings) {
    List<Row> rows = book.where(InfillSheet.LAGGING, InfillSheet.LAGGING_RUN, id);
    if (type.soldierBeams() && rows.isEmpty()) {
      findings.accept(
          FindingKind.LAGGING_MISSING.at(
              run.place(WallSheet.RUN_ID),
              "run " + id + " has no row for its lagging",
              "add it on the sheet "
                  + InfillSheet.LAGGING.name()
                  + "; without it lagging is not checked"));
    }
    rows(rows, InfillSheet.LAGGING_RUN, type.soldierBeams(), id, "lagging", findings);
  }

  private static void rows(
      List<Row> rows,
      TextColumn column,
      boolean wanted,
      String id,
      String what,
      Consumer<Finding> findings) {
    if (!wanted && !rows.isEmpty()) {
      findings.accept(
          FindingKind.INFILL_NOT_USED.at(
              rows.get(0).place(column),
              "run " + id + " is of a type without " + what,
              "delete the row, or change the type of the run"));
    } else if (rows.size() > 1) {
      findings.accept(
          FindingKind.INFILL_TWICE.at(
              rows.get(1).place(column),
              "run " + id + " has two rows for its " + what,
              "delete one; make another run if they differ"));
    }
  }

  private static void toe(String id, Row sheets, Book book, Consumer<Finding> findings) {
    Optional<Double> toe = sheets.si(InfillSheet.SHEET_TOE);
    Optional<Double> last =
        book.where(StageSheet.STAGES, StageSheet.RUN, id).stream()
            .flatMap(stage -> stage.si(StageSheet.EXCAVATION).stream())
            .min(Double::compare);
    if (toe.isPresent() && last.isPresent() && toe.get() > last.get() - LEAST_EMBEDMENT + 1e-9) {
      findings.accept(
          FindingKind.TOE_TOO_SHALLOW.at(
              sheets.place(InfillSheet.SHEET_TOE),
              "the toe is less than 1 m below the deepest excavation",
              "lower the toe, or leave it empty to have it sized"));
    }
  }

  private static void gap(Row run, String id, Book book, Consumer<Finding> findings) {
    Optional<Double> spacing = run.si(WallSheet.SPACING);
    for (Row piles : book.where(WallSheet.PILES, WallSheet.RUN, id)) {
      boolean single = piles.find(WallSheet.PILE_KIND).filter(PileKind.SINGLE::equals).isPresent();
      Optional<Double> diameter = piles.si(WallSheet.DIAMETER);
      if (single
          && spacing.isPresent()
          && diameter.isPresent()
          && spacing.get() < diameter.get() - 1e-9) {
        findings.accept(
            FindingKind.PILES_RUN_INTO_EACH_OTHER.at(
                run.place(WallSheet.SPACING),
                "the spacing is less than the diameter of the piles",
                "single piles do not overlap; choose a secant wall, or space them apart"));
      }
    }
  }
}
