package pilefolio.checks.support;

import static pilefolio.units.Units.DEG;
import static pilefolio.units.Units.KN;
import static pilefolio.units.Units.KN_M;
import static pilefolio.units.Units.M;
import static pilefolio.units.Units.ONE;

import pilefolio.trace.CalcSheet;
import pilefolio.trace.Reference;

/** What a strut must carry along its axis: lines that its sheets share. */
final class StrutDemand {
  /** Cautions that stand under every strut. */
  static final String CAUTION =
      "Nothing may be stacked on, hung from or driven over the strut. It is taken out only in the"
          + " order of the stages, when what replaces it has its strength.";

  private StrutDemand() {}

  /** Adds the force along the axis, under the symbol that the code uses. */
  static CalcSheet lines(CalcSheet sheet, String axial) {
    return sheet
        .given("T", KN_M, "horizontal support force")
        .given("s", M, "spacing along the wall")
        .given("i", DEG, "inclination below the horizontal")
        .given("N_T", KN, "force from a rise of temperature")
        .given("γ_Q", ONE, "multiplier of variable actions")
        .given("L", M, "length between pins")
        .line(axial + " = T·s/cos(i) + γ_Q·N_T", KN, "axial force of one strut", Reference.DERIVED);
  }
}
