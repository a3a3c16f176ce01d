package pilefolio.checks.ground;

import static pilefolio.units.Units.DEG;
import static pilefolio.units.Units.ONE;

import java.util.List;
import pilefolio.model.EarthPressureMethod;
import pilefolio.trace.CalcSheet;
import pilefolio.trace.CalcTable;
import pilefolio.trace.Reference;

/** Coefficients on plane slip surfaces with wall friction, and the limit to which they are safe. */
public final class CoulombCoefficients extends CoefficientCheck {
  private static final Reference ACTIVE = Reference.read("UFC 3-220-20 (2025)", "Eq. 4-10");
  private static final Reference PASSIVE = Reference.read("UFC 3-220-20 (2025)", "Eq. 4-11");
  private static final Reference GUARD = Reference.read("UFC 3-220-20 (2025)", "note to Eq. 4-11");

  static final CalcSheet SHEET =
      CalcSheet.named("Earth-pressure coefficients after Coulomb")
          .given("β", DEG, "slope of the ground, rising away from the wall")
          .table(
              CalcTable.of("active", "Active side", "layer")
                  .given("φ'_d", DEG, "design friction angle")
                  .given("δ_a", DEG, "design wall friction")
                  .line(
                      "r_a = √(sin(φ'_d + δ_a)·sin(φ'_d − β)/(cos(δ_a)·cos(β)))",
                      ONE,
                      "root in the denominator",
                      ACTIVE)
                  .line(
                      "K_aδ = cos(φ'_d)²/(cos(δ_a)·(1 + r_a)²)",
                      ONE,
                      "active, along the wall friction",
                      ACTIVE)
                  .line("K_a = K_aδ·cos(δ_a)", ONE, "active, horizontal", Reference.DERIVED)
                  .line("K_ac = 2·√(K_a)", ONE, "active, on cohesion", Reference.PRACTICE))
          .table(
              CalcTable.of("passive", "Passive side", "layer")
                  .given("φ'_{d,p}", DEG, "design friction angle")
                  .given("δ_p", DEG, "design wall friction")
                  .line(
                      "r_p = √(sin(φ'_{d,p} + δ_p)·sin(φ'_{d,p} + β)/(cos(δ_p)·cos(β)))",
                      ONE,
                      "root in the denominator",
                      PASSIVE)
                  .line(
                      "K_pδ = cos(φ'_{d,p})²/(cos(δ_p)·(1 − r_p)²)",
                      ONE,
                      "passive, along the wall friction",
                      PASSIVE)
                  .line("K_p = K_pδ·cos(δ_p)", ONE, "passive, horizontal", Reference.DERIVED)
                  .line("K_pc = 2·√(K_p)", ONE, "passive, on cohesion", Reference.PRACTICE)
                  .line(
                      "ρ = δ_p/φ'_{d,p}",
                      ONE,
                      "wall friction over friction angle",
                      Reference.DERIVED)
                  .largest("ρ_l", "ρ", "greatest ratio"))
          .require("ρ_l ≤ 0.4", "passive resistance on plane surfaces is not overstated", GUARD);

  /** The check. */
  public CoulombCoefficients() {
    super(
        EarthPressureMethod.COULOMB,
        SHEET,
        true,
        List.of(List.of("active", "φ'_d", "δ_a"), List.of("passive", "φ'_{d,p}=φ'_d", "δ_p")));
  }

  @Override
  public String id() {
    return "coefficients-coulomb";
  }

  @Override
  public String title() {
    return "Earth-pressure coefficients after Coulomb";
  }
}
