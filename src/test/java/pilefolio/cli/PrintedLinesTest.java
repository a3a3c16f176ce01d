package pilefolio.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import pilefolio.submittal.Answer;
import pilefolio.submittal.Submittal;
import pilefolio.trace.CalcTable;
import pilefolio.trace.PaperReader;
import pilefolio.trace.Printed;
import pilefolio.trace.Printed.PrintedLine;
import pilefolio.trace.Printed.PrintedRequire;
import pilefolio.trace.Printed.PrintedRow;
import pilefolio.trace.Printed.PrintedTable;
import pilefolio.trace.Printed.PrintedTotal;
import pilefolio.trace.Printer;
import pilefolio.units.DisplaySystem;
import pilefolio.units.NumberText;

/** Every line that any sample prints is redone from its print by an independent reader. */
class PrintedLinesTest {

  @TestFactory
  Stream<DynamicTest> everyLineOfEverySampleIsRedoneFromItsPrint() {
    return Samples.good().stream()
        .flatMap(
            sample ->
                Stream.of(DisplaySystem.values())
                    .map(
                        system ->
                            DynamicTest.dynamicTest(
                                sample.getFileName() + " in " + system,
                                () -> redo(sample, system))));
  }

  private static void redo(Path sample, DisplaySystem system) {
    Submittal submittal = Samples.submittal(sample);
    Printer printer = new Printer(system);
    int lines = 0;
    for (Answer answer : submittal.answers()) {
      for (Printed printed : answer.printed(printer)) {
        for (Printed.Entry entry : printed.entries()) {
          if (entry instanceof PrintedLine line) {
            redo(line);
            lines++;
          } else if (entry instanceof PrintedTable table) {
            lines += redo(table, answer.anchor());
          } else if (entry instanceof PrintedRequire require) {
            agree(require);
            lines++;
          }
        }
      }
    }
    assertTrue(lines > 200, "only " + lines + " lines");
  }

  private static void redo(PrintedLine line) {
    if (line.substituted() instanceof pilefolio.trace.Shown.Leaf leaf) {
      // A symbol or number alone is the result itself.
      assertEquals(leaf.text(), line.number(), line.plain());
      return;
    }
    String work = line.plain().substring(0, line.plain().lastIndexOf(" = "));
    int before = work.lastIndexOf(" = ");
    assertTrue(before > 0, line.plain());
    assertSame(PaperReader.value(work.substring(before + 3)), line.number(), line.plain());
  }

  private static void agree(PrintedRequire require) {
    boolean holds =
        require.plain().contains("≥")
            || require.plain().contains("≤")
            || require.plain().contains(" < ")
            || require.plain().contains(" > ");
    assertTrue(holds, require.plain());
    double left = NumberText.parse(require.leftNumber());
    double right = NumberText.parse(require.rightNumber());
    if (require.plain().contains("≤")) {
      assertTrue(left <= right, require.plain());
    } else if (require.plain().contains("≥")) {
      assertTrue(left >= right, require.plain());
    } else if (require.plain().contains(" < ")) {
      assertTrue(left < right, require.plain());
    } else {
      assertTrue(left > right, require.plain());
    }
    assertFalse(require.plain().contains("E-"), require.plain());
  }

  /** Cells are redone from the row's and the scalars' print by the substituted formula's leaves. */
  private static int redo(PrintedTable table, String where) {
    int cells = 0;
    for (PrintedRow row : table.rows()) {
      Map<String, String> printed = new LinkedHashMap<>();
      for (int i = 0; i < row.cells().size(); i++) {
        printed.put(table.columns().get(i).symbol(), row.cells().get(i));
      }
      table.scalars().forEach(scalar -> printed.put(scalar.symbol(), scalar.number()));
      for (Map.Entry<String, pilefolio.trace.Shown> formula : row.substituted().entrySet()) {
        leavesArePrinted(formula.getValue(), printed, where);
        assertSame(
            pilefolio.trace.Shown.evaluate(formula.getValue()),
            printed.get(formula.getKey()),
            where + ", " + row.label() + ", " + formula.getKey() + " of " + row);
        cells++;
      }
    }
    for (PrintedTotal total : table.totals()) {
      double[] column = column(table, total.column());
      double value =
          total.kind() == CalcTable.Kind.SUM
              ? java.util.Arrays.stream(column).sum()
              : NumberText.parse(total.number());
      assertSame(value, total.number(), where + ", " + total.plain());
      cells++;
    }
    return cells;
  }

  private static double[] column(PrintedTable table, String symbol) {
    List<String> names = table.columns().stream().map(Printed.PrintedColumn::symbol).toList();
    int index = names.indexOf(symbol);
    return table.rows().stream()
        .mapToDouble(row -> NumberText.parse(row.cells().get(index)))
        .toArray();
  }

  /** Each number in a cell's formula stands in its row or below the table. */
  private static void leavesArePrinted(
      pilefolio.trace.Shown shown, Map<String, String> printed, String where) {
    if (shown instanceof pilefolio.trace.Shown.Leaf leaf && !leaf.symbol().isEmpty()) {
      assertEquals(printed.get(leaf.symbol()), leaf.text(), where + ", " + leaf.symbol());
    } else if (shown instanceof pilefolio.trace.Shown.Two two) {
      leavesArePrinted(two.left(), printed, where);
      leavesArePrinted(two.right(), printed, where);
    } else if (shown instanceof pilefolio.trace.Shown.Minus minus) {
      leavesArePrinted(minus.inner(), printed, where);
    } else if (shown instanceof pilefolio.trace.Shown.Raised raised) {
      leavesArePrinted(raised.base(), printed, where);
      leavesArePrinted(raised.exponent(), printed, where);
    } else if (shown instanceof pilefolio.trace.Shown.Applied applied) {
      applied.args().forEach(arg -> leavesArePrinted(arg, printed, where));
    }
  }

  private static void assertSame(double value, String number, String where) {
    int point = number.indexOf('.');
    int decimals = point < 0 ? 0 : number.length() - point - 1;
    assertEquals(
        NumberText.parse(number), NumberText.parse(NumberText.fixed(value, decimals)), 0, where);
  }
}
