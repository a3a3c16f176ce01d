package pilefolio.trace;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static pilefolio.units.Units.DEG;
import static pilefolio.units.Units.KN_M;
import static pilefolio.units.Units.KN_M3;
import static pilefolio.units.Units.KPA;
import static pilefolio.units.Units.M;
import static pilefolio.units.Units.MM;
import static pilefolio.units.Units.ONE;

import org.junit.jupiter.api.Test;
import pilefolio.trace.Binding.Row;
import pilefolio.trace.Printed.PrintedLine;
import pilefolio.trace.Printed.PrintedRequire;
import pilefolio.trace.Printed.PrintedTable;
import pilefolio.units.DisplaySystem;

class CalcSheetTest {
  private static final Source TEST = new Source.Layout("test");

  private static final CalcSheet OVERLAP =
      CalcSheet.named("Overlap")
          .given("D_p", MM, "diameter of the primary")
          .given("D_s", MM, "diameter of the secondary")
          .given("s", MM, "spacing")
          .given("e_0", MM, "position")
          .given("n", ONE, "verticality, 1 in n")
          .given("z", M, "depth")
          .given("c_min", MM, "least overlap")
          .line("c_0 = (D_p + D_s)/2 − s", MM, "overlap as set out", Reference.DERIVED)
          .line("e_z = e_0 + z/n", MM, "deviation at depth", Reference.DERIVED)
          .line("c_z = c_0 − 2·e_z", MM, "overlap left", Reference.DERIVED)
          .require("c_z ≥ c_min", "the joint stays closed", Reference.PRACTICE);

  private static Calculation overlap(double z) {
    return OVERLAP
        .bind()
        .set("D_p", 0.88, TEST)
        .set("D_s", 0.88, TEST)
        .set("s", 0.7, TEST)
        .set("e_0", 0.025, TEST)
        .set("n", 200, TEST)
        .set("z", z, TEST)
        .set("c_min", 0.05, TEST)
        .calculate();
  }

  @Test
  void printsSymbolsThenNumbersThenResultWithConversionWrittenOut() {
    Printed printed = new Printer(DisplaySystem.SI).print(overlap(7.5));
    PrintedLine overlap = (PrintedLine) printed.entries().get(7);
    PrintedLine deviation = (PrintedLine) printed.entries().get(8);
    assertEquals(
        "c_0 = (D_p + D_s)/2 − s = (880 mm + 880 mm)/2 − 700 mm = 180 mm", overlap.plain());
    assertEquals("e_z = e_0 + z/n = 25 mm + 7.5 m/200 · 1000 = 62.5 mm", deviation.plain());
    assertEquals(
        "e_{z} = e_{0} + \\frac{z}{n} = 25\\,\\mathrm{mm} + "
            + "\\frac{7.5\\,\\mathrm{m}}{200} · 1000",
        deviation.tex());
  }

  @Test
  void printsTheSameLineInFeetAndInches() {
    Printed printed = new Printer(DisplaySystem.US).print(overlap(7.5));
    PrintedLine deviation = (PrintedLine) printed.entries().get(8);
    assertTrue(deviation.plain().endsWith(" in"), deviation.plain());
    assertTrue(deviation.plain().contains("/200 · 12"), deviation.plain());
  }

  @Test
  void comparesUnroundedAndNeverPrintsAContradiction() {
    // 180 − 2·(25 + 1000·z/200) = 50 − 1e-7 mm
    Calculation calculation = overlap(8 + 1e-8);
    PrintedRequire require = last(new Printer(DisplaySystem.SI).print(calculation));
    assertFalse(calculation.verdict().satisfied());
    assertFalse(require.plain().contains("≥"), require.plain());
    assertTrue(
        pilefolio.units.NumberText.parse(require.leftNumber())
            < pilefolio.units.NumberText.parse(require.rightNumber()),
        require.plain());
    assertTrue(Double.parseDouble(require.utilisation()) > 1, require.utilisation());
  }

  private static PrintedRequire last(Printed printed) {
    return (PrintedRequire) printed.entries().get(printed.entries().size() - 1);
  }

  @Test
  void refusesAUnitSlipAndShowsTheFormula() {
    FormulaException e =
        assertThrows(
            FormulaException.class,
            () ->
                CalcSheet.named("slip")
                    .given("p", KPA, "pressure")
                    .given("z", M, "depth")
                    .line("F = p + z", KN_M, "force", Reference.DERIVED));
    assertTrue(e.getMessage().contains("p + z"), e.getMessage());
  }

  @Test
  void refusesASecondMeaningForASymbolAndAnUnboundOne() {
    CalcSheet sheet = CalcSheet.named("twice").given("z", M, "depth");
    assertThrows(FormulaException.class, () -> sheet.given("z", M, "again"));
    assertThrows(FormulaException.class, () -> sheet.line("y = z + w", M, "w", Reference.DERIVED));
    assertEquals(java.util.Set.of("z"), sheet.unused());
    assertThrows(FormulaException.class, () -> sheet.bind().calculate());
  }

  @Test
  void anglesAreDegreesOnPaperAndTheTangentIsReducedAsAnEngineerDoes() {
    CalcSheet sheet =
        CalcSheet.named("design friction")
            .given("φ'_k", DEG, "characteristic")
            .given("γ_φ", ONE, "partial factor")
            .line("φ'_d = atan(tan(φ'_k)/γ_φ)", DEG, "design value", Reference.DERIVED)
            .line("K_a = tan(45[°] − φ'_d/2)²", ONE, "active", Reference.DERIVED);
    Calculation calculation =
        sheet.bind().set("φ'_k", Math.toRadians(29), TEST).set("γ_φ", 1.25, TEST).calculate();
    PrintedLine design =
        (PrintedLine) new Printer(DisplaySystem.SI).print(calculation).entries().get(2);
    assertEquals("φ'_d = atan(tan(φ'_k)/γ_φ) = atan(tan(29°)/1.25) = 23.91°", design.plain());
    assertEquals(0.42311, calculation.value("K_a"), 5e-6);
  }

  @Test
  void tableCellsAreRedoneFromTheirRowAndTheSumFromItsColumn() {
    CalcSheet sheet =
        CalcSheet.named("pressure")
            .given("q", KPA, "surcharge")
            .given("K_a", ONE, "coefficient")
            .table(
                CalcTable.of("layers", "Pressure", "layer")
                    .given("h", M, "thickness")
                    .given("γ", KN_M3, "unit weight")
                    .carried("σ_{v,0}", KPA, "stress at the top", "σ_v", "q")
                    .line("σ_v = σ_{v,0} + γ·h", KPA, "stress at the bottom", Reference.DERIVED)
                    .line("P = K_a·(σ_{v,0} + σ_v)/2·h", KN_M, "force", Reference.DERIVED)
                    .sum("P_a", "P", "total force"));
    Calculation calculation =
        sheet
            .bind()
            .set("q", 10e3, TEST)
            .set("K_a", 1 / 3.0, TEST)
            .row("layers", Row.of("1").set("h", 1.23456789, TEST).set("γ", 18.3e3, TEST))
            .row("layers", Row.of("2").set("h", 2.3456789, TEST).set("γ", 19.7e3, TEST))
            .row("layers", Row.of("3").set("h", 3.456789, TEST).set("γ", 20.1e3, TEST))
            .calculate();
    PrintedTable table =
        (PrintedTable) new Printer(DisplaySystem.SI).print(calculation).entries().get(2);
    double top = 10;
    double sum = 0;
    for (Printed.PrintedRow row : table.rows()) {
      double h = Double.parseDouble(row.cells().get(0));
      double gamma = Double.parseDouble(row.cells().get(1));
      assertEquals(top, Double.parseDouble(row.cells().get(2)), 5e-3);
      double bottom = Double.parseDouble(row.cells().get(2)) + gamma * h;
      double half = 0.5 * Math.pow(10, -ResultText.decimals(row.cells().get(3)));
      assertEquals(bottom, Double.parseDouble(row.cells().get(3)), half * 1.000001);
      top = Double.parseDouble(row.cells().get(3));
      sum += Double.parseDouble(row.cells().get(4));
    }
    String total = table.totals().get(0).number();
    assertEquals(
        Double.parseDouble(total), sum, 0.5000001 * Math.pow(10, -ResultText.decimals(total)));
  }
}
