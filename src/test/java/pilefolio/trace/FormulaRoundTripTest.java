package pilefolio.trace;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.FormulaEvaluator;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import pilefolio.trace.Printed.PrintedLine;
import pilefolio.units.Dimension;
import pilefolio.units.DisplaySystem;
import pilefolio.units.NumberText;
import pilefolio.units.Unit;
import pilefolio.units.Units;

/**
 * One formula, many readers: all of them must say the same about thousands of random formulas. The
 * second opinions are general-purpose: an expression parser, a spreadsheet evaluator, and a reader
 * of the printed page that knows only numbers and signs.
 */
class FormulaRoundTripTest {
  private static final int COUNT = 3000;

  static {
    pilefolio.workbook.QuietLog.set();
  }

  private record Sample(Formula formula, Unit unit, Map<String, Double> si, double value) {
    /** What rounding the conversion factors to ten digits may do to the value. */
    double slack() {
      return 1e-9 * Math.abs(value) + formula.wander(si::get, name -> 1e-9 * si.get(name));
    }
  }

  private static List<Sample> samples(long seed) {
    RandomFormulas random = new RandomFormulas(seed);
    List<Sample> samples = new ArrayList<>();
    while (samples.size() < COUNT) {
      Dimension dimension = random.dimension();
      Formula formula = Formula.of(random.formula(dimension, 4));
      Map<String, Double> si = random.values();
      Unit unit = random.unit(dimension);
      double value = formula.evaluate(si::get);
      double shown = Math.abs(unit.fromSi(value));
      // A value whose last bits are all that is left of it says nothing about the readers.
      if (shown == 0
          || (shown > 1e-4
              && shown < 1e6
              && formula.wander(si::get, name -> 1e-9 * si.get(name)) < 1e-6 * Math.abs(value))) {
        samples.add(new Sample(formula, unit, si, value));
      }
    }
    return samples;
  }

  @Test
  void dimensionsTreeAndCompiledFormAgree() {
    List<String> order = List.copyOf(RandomFormulas.SYMBOLS.keySet());
    Map<String, Dimension> dimensions = new HashMap<>();
    RandomFormulas.SYMBOLS.forEach((name, unit) -> dimensions.put(name, unit.dimension()));
    for (Sample sample : samples(1)) {
      double[] values = order.stream().mapToDouble(sample.si()::get).toArray();
      assertEquals(sample.value(), sample.formula().compile(order).of(values), sample.toString());
      assertEquals(sample.unit().dimension(), sample.formula().dimension(dimensions));
    }
  }

  @Test
  void plainTextOfTheRecordGivesTheValueInAGeneralExpressionParser() {
    for (Sample sample : samples(2)) {
      String numbers = ExpressionText.withNumbers(sample.formula(), sample.si()::get);
      assertTrue(numbers.chars().allMatch(c -> c >= ' ' && c < 127), numbers);
      double tolerance = 1e-13 * Math.abs(sample.value());
      assertEquals(sample.value(), Exp4j.value(numbers), tolerance, numbers);
      Map<String, Double> names = new HashMap<>();
      sample.si().forEach((name, value) -> names.put(ExpressionText.name(name), value));
      assertEquals(
          sample.value(),
          Exp4j.value(ExpressionText.withNames(sample.formula()), names),
          tolerance,
          ExpressionText.withNames(sample.formula()));
    }
  }

  @Test
  void liveSpreadsheetFormulaGivesTheValueInItsUnit() throws IOException {
    for (DisplaySystem system : DisplaySystem.values()) {
      try (XSSFWorkbook workbook = new XSSFWorkbook()) {
        XSSFSheet sheet = workbook.createSheet();
        List<Sample> samples = samples(3).subList(0, 1000);
        List<String> names = List.copyOf(RandomFormulas.SYMBOLS.keySet());
        for (int i = 0; i < samples.size(); i++) {
          Sample sample = samples.get(i);
          Row row = sheet.createRow(i);
          for (int n = 0; n < names.size(); n++) {
            Unit unit = system.of(RandomFormulas.SYMBOLS.get(names.get(n)));
            row.createCell(n).setCellValue(unit.fromSi(sample.si().get(names.get(n))));
          }
          int number = i + 1;
          row.createCell(names.size())
              .setCellFormula(
                  SpreadsheetText.of(
                      sample.formula(),
                      system.of(sample.unit()),
                      name -> system.of(RandomFormulas.SYMBOLS.get(name)),
                      name -> "" + (char) ('A' + names.indexOf(name)) + number));
        }
        FormulaEvaluator evaluator = workbook.getCreationHelper().createFormulaEvaluator();
        for (int i = 0; i < samples.size(); i++) {
          Sample sample = samples.get(i);
          Cell cell = sheet.getRow(i).getCell(names.size());
          Unit unit = system.of(sample.unit());
          assertEquals(
              unit.fromSi(sample.value()),
              evaluator.evaluate(cell).getNumberValue(),
              sample.slack() / unit.factor(),
              sample + " as " + cell.getCellFormula());
        }
      }
    }
  }

  @Test
  void printedLineIsRedoneFromItsPrintedNumbers() {
    for (DisplaySystem system : DisplaySystem.values()) {
      int redone = 0;
      for (Sample sample : samples(4)) {
        PrintedLine line = printed(sample, system);
        String[] parts = line.plain().split(" = ");
        String result = parts[parts.length - 1];
        String numbers = parts[parts.length - 2];
        if (parts.length == 2) {
          continue;
        }
        assertTrue(numbers.indexOf("− −") < 0 && numbers.indexOf("−−") < 0, line.plain());
        if (!numbers.equals(PlainText.of(Substitution.withSymbols(sample.formula().expr())))) {
          redone++;
          assertRedone(PaperReader.value(numbers), line.number(), line.plain());
          assertRedone(Shown.evaluate(line.substituted()), line.number(), line.plain());
        }
        assertTrue(result.startsWith(line.number()), line.plain());
        double half = 0.5 * Math.pow(10, -ResultText.decimals(line.number()));
        Unit unit = system.of(sample.unit());
        assertEquals(
            unit.fromSi(sample.value()),
            NumberText.parse(line.number()),
            half + 1e-9 * Math.abs(unit.fromSi(sample.value())),
            line.plain());
      }
      assertTrue(redone > COUNT / 2, "too few lines with numbers: " + redone);
    }
  }

  @Test
  void wholeNumbersAreReachedFromBelowAndFromAbove() {
    Formula trucks = Formula.of("ceil(n)");
    Formula turns = Formula.of("floor(n)");
    for (double n : new double[] {-2.3, -2, 0, 2.3, 3 + 4e-16, 3 - 4e-16, 0.1 * 3 * 10}) {
      String text = ExpressionText.withNumbers(trucks, name -> n);
      assertEquals(Math.ceil(Math.round(n * 1e6) / 1e6), trucks.evaluate(name -> n), "ceil " + n);
      assertEquals(trucks.evaluate(name -> n), Exp4j.value(text), 1e-12, text);
      assertEquals(Math.floor(Math.round(n * 1e6) / 1e6), turns.evaluate(name -> n), "floor " + n);
    }
  }

  @Test
  void aDivisionByZeroIsNotHiddenByWhatFollows() {
    assertTrue(Double.isNaN(Formula.of("min(2, 1/n)").evaluate(name -> 0)));
    assertTrue(Double.isNaN(Formula.of("atan(1/n)").compile(List.of("n")).of(new double[] {0})));
  }

  @Test
  void aLeverArmOfZeroPrintsAsZero() {
    Map<String, Double> si = Map.of("R", 250e3, "z", 0.1 + 0.2, "D_p", 0.3);
    Formula formula = Formula.of("R·(z − D_p)/(z + D_p)");
    Sample sample = new Sample(formula, Units.KN, si, formula.evaluate(si::get));
    assertTrue(sample.value() != 0);
    assertEquals(0, NumberText.parse(printed(sample, DisplaySystem.SI).number()));
  }

  private static void assertRedone(double redone, String number, String line) {
    assertEquals(
        NumberText.parse(number),
        NumberText.parse(NumberText.fixed(redone, ResultText.decimals(number))),
        0,
        line);
  }

  private static PrintedLine printed(Sample sample, DisplaySystem system) {
    CalcSheet sheet = CalcSheet.named("random");
    for (String name : sample.formula().symbols()) {
      sheet = sheet.given(name, RandomFormulas.SYMBOLS.get(name), "given");
    }
    sheet = sheet.line("Z_9 = " + sample.formula().text(), sample.unit(), "x", Reference.DERIVED);
    Binding binding = sheet.bind();
    for (String name : sample.formula().symbols()) {
      binding.set(name, sample.si().get(name), new Source.Layout("random"));
    }
    List<Printed.Entry> entries = new Printer(system).print(binding.calculate()).entries();
    return (PrintedLine) entries.get(entries.size() - 1);
  }
}
