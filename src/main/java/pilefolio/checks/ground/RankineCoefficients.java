package pilefolio.checks.ground;

import static pilefolio.units.Units.DEG;
import static pilefolio.units.Units.ONE;

import java.util.List;
import pilefolio.model.EarthPressureMethod;
import pilefolio.trace.CalcSheet;
import pilefolio.trace.CalcTable;
import pilefolio.trace.Reference;

/** Coefficients of a smooth wall, level ground. */
public final class RankineCoefficients extends CoefficientCheck {
  private static final Reference COEFFICIENTS =
      Reference.read("UFC 3-220-20 (2025)", "Eq. 4-3 and 4-4");
  private static final Reference COHESION = Reference.read("UFC 3-220-20 (2025)", "Eq. 4-6");

  static final CalcSheet SHEET =
      CalcSheet.named("Earth-pressure coefficients after Rankine")
          .note("The wall is taken as smooth and the ground as level on both sides.")
          .table(
              CalcTable.of("layers", "Drained layers", "layer")
                  .given("φ'_d", DEG, "design friction angle")
                  .line("K_a = tan(45[°] − φ'_d/2)²", ONE, "active", COEFFICIENTS)
                  .line("K_ac = 2·√(K_a)", ONE, "active, on cohesion", COHESION)
                  .line("K_p = tan(45[°] + φ'_d/2)²", ONE, "passive", COEFFICIENTS)
                  .line("K_pc = 2·√(K_p)", ONE, "passive, on cohesion", Reference.DERIVED));

  /** The check. */
  public RankineCoefficients() {
    super(EarthPressureMethod.RANKINE, SHEET, false, List.of(List.of("layers", "φ'_d")));
  }

  @Override
  public String id() {
    return "coefficients-rankine";
  }

  @Override
  public String title() {
    return "Earth-pressure coefficients after Rankine";
  }

  @Override
  public boolean derivation() {
    return true;
  }
}
