package pilefolio.checks.ground;

import static pilefolio.units.Units.DEG;
import static pilefolio.units.Units.ONE;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import pilefolio.analysis.earth.CaquotKerisel;
import pilefolio.analysis.earth.OutsideRange;
import pilefolio.model.EarthPressureMethod;
import pilefolio.trace.Binding.Row;
import pilefolio.trace.CalcSheet;
import pilefolio.trace.CalcTable;
import pilefolio.trace.Calculation;
import pilefolio.trace.Calculation.RowValues;
import pilefolio.trace.Reference;
import pilefolio.trace.Source;

/** Active coefficients on plane surfaces and passive ones by the table of curved surfaces. */
public final class CaquotKeriselCoefficients extends CoefficientCheck {
  private static final Reference ACTIVE = Reference.read("UFC 3-220-20 (2025)", "Eq. 4-10");
  private static final Reference TABLE =
      Reference.memory("NAVFAC DM-7.02 (1986), after Caquot and Kérisel (1948)", "Chapter 3");

  static final CalcSheet SHEET =
      CalcSheet.named("Earth-pressure coefficients by the table after Caquot and Kérisel")
          .note(
              "Level ground, vertical wall. Between friction angles the logarithm of the coefficient"
                  + " is taken linear, between ratios of wall friction the reduction.")
          .table(
              CalcTable.of("active", "Active side, plane surfaces", "layer")
                  .given("φ'_d", DEG, "design friction angle")
                  .given("δ_a", DEG, "design wall friction")
                  .line(
                      "K_aδ = cos(φ'_d)²/(cos(δ_a)·(1 + √(sin(φ'_d + δ_a)·sin(φ'_d)/cos(δ_a)))²)",
                      ONE,
                      "active, along the wall friction",
                      ACTIVE)
                  .line("K_a = K_aδ·cos(δ_a)", ONE, "active, horizontal", Reference.DERIVED)
                  .line("K_ac = 2·√(K_a)", ONE, "active, on cohesion", Reference.PRACTICE))
          .table(
              CalcTable.of("passive", "Passive side, curved surfaces", "layer")
                  .given("φ'_{d,p}", DEG, "design friction angle")
                  .given("δ_p", DEG, "design wall friction")
                  .given("φ_1", DEG, "row of the table below")
                  .given("φ_2", DEG, "row of the table above")
                  .given("ρ_1", ONE, "column before, wall friction over friction angle")
                  .given("ρ_2", ONE, "column after")
                  .given("K_1", ONE, "coefficient of the row below")
                  .given("K_2", ONE, "coefficient of the row above")
                  .given("R_11", ONE, "reduction, row below, column before")
                  .given("R_12", ONE, "reduction, row below, column after")
                  .given("R_21", ONE, "reduction, row above, column before")
                  .given("R_22", ONE, "reduction, row above, column after")
                  .line(
                      "s_ρ = (δ_p/φ'_{d,p} − ρ_1)/(ρ_2 − ρ_1)",
                      ONE,
                      "place between the columns",
                      Reference.DERIVED)
                  .line(
                      "s_φ = (φ'_{d,p} − φ_1)/(φ_2 − φ_1)",
                      ONE,
                      "place between the rows",
                      Reference.DERIVED)
                  .line("K_b = K_1·(R_11 + s_ρ·(R_12 − R_11))", ONE, "in the row below", TABLE)
                  .line("K_u = K_2·(R_21 + s_ρ·(R_22 − R_21))", ONE, "in the row above", TABLE)
                  .line(
                      "K_pδ = K_b·exp(s_φ·ln(K_u/K_b))",
                      ONE,
                      "passive, along the wall friction",
                      Reference.DERIVED)
                  .line("K_p = K_pδ·cos(δ_p)", ONE, "passive, horizontal", Reference.DERIVED)
                  .line("K_pc = 2·√(K_p)", ONE, "passive, on cohesion", Reference.PRACTICE));

  /** The check. */
  public CaquotKeriselCoefficients() {
    super(
        EarthPressureMethod.CAQUOT_KERISEL,
        SHEET,
        false,
        List.of(List.of("active", "φ'_d", "δ_a"), List.of("passive", "φ'_{d,p}=φ'_d", "δ_p")));
  }

  @Override
  public String id() {
    return "coefficients-caquot-kerisel";
  }

  @Override
  public String title() {
    return "Earth-pressure coefficients by the table after Caquot and Kérisel";
  }

  @Override
  public boolean derivation() {
    return true;
  }

  @Override
  Optional<String> refused(Calculation strength) {
    for (RowValues row : strength.table(DrainedDesignStrength.TABLE).rows()) {
      try {
        CaquotKerisel.read(row.values().get("φ'_d"), row.values().get("δ_p"));
      } catch (OutsideRange e) {
        return Optional.of("layer " + row.label() + ": " + e.getMessage());
      }
    }
    return Optional.empty();
  }

  @Override
  Row completed(String table, Row row, Map<String, Double> strength) {
    if (!table.equals("passive")) {
      return row;
    }
    CaquotKerisel.Reading r = CaquotKerisel.read(strength.get("φ'_d"), strength.get("δ_p"));
    Source entry = new Source.TableRow("passive coefficients after Caquot and Kérisel", "entries");
    return row.set("φ_1", Math.toRadians(r.phiLow()), entry)
        .set("φ_2", Math.toRadians(r.phiHigh()), entry)
        .set("ρ_1", r.ratioLow(), entry)
        .set("ρ_2", r.ratioHigh(), entry)
        .set("K_1", r.fullLow(), entry)
        .set("K_2", r.fullHigh(), entry)
        .set("R_11", r.lowBefore(), entry)
        .set("R_12", r.lowAfter(), entry)
        .set("R_21", r.highBefore(), entry)
        .set("R_22", r.highAfter(), entry);
  }
}
