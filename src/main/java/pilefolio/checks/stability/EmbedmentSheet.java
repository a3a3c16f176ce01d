package pilefolio.checks.stability;

import static pilefolio.units.Units.KNM_M;
import static pilefolio.units.Units.KN_M;
import static pilefolio.units.Units.KPA;
import static pilefolio.units.Units.M;
import static pilefolio.units.Units.ONE;

import pilefolio.trace.CalcSheet;
import pilefolio.trace.CalcTable;
import pilefolio.trace.Reference;

/** Parts that the embedment sheets share. */
final class EmbedmentSheet {
  static final String TABLE = "pressures";

  private EmbedmentSheet() {}

  /**
   * Forces of the pressures on both sides and their moments, with sums.
   *
   * @param belowCentre true if moments of forces below the centre count as positive
   * @param centre symbol of the level about which moments are taken
   */
  static CalcTable forces(String centre, boolean belowCentre) {
    String a = belowCentre ? "(" + centre + " − z_1)" : "(z_1 − " + centre + ")";
    String b = belowCentre ? "(" + centre + " − z_2)" : "(z_2 − " + centre + ")";
    return CalcTable.of(TABLE, "Pressures, forces and moments", "layer behind")
        .given("z_1", M, "level of the top")
        .given("z_2", M, "level of the bottom")
        .given("p_{b,1}", KPA, "behind, top")
        .given("p_{b,2}", KPA, "behind, bottom")
        .given("p_{f,1}", KPA, "in front, top")
        .given("p_{f,2}", KPA, "in front, bottom")
        .line("H_b = (p_{b,1} + p_{b,2})/2·(z_1 − z_2)", KN_M, "force behind", Reference.DERIVED)
        .line("H_f = (p_{f,1} + p_{f,2})/2·(z_1 − z_2)", KN_M, "force in front", Reference.DERIVED)
        .line(moment("M_b", "p_{b,1}", "p_{b,2}", a, b), KNM_M, "moment behind", Reference.DERIVED)
        .line(
            moment("M_f", "p_{f,1}", "p_{f,2}", a, b), KNM_M, "moment in front", Reference.DERIVED)
        .sum("ΣH_b", "H_b", "forces behind")
        .sum("ΣH_f", "H_f", "forces in front")
        .sum("ΣM_b", "M_b", "moments behind")
        .sum("ΣM_f", "M_f", "moments in front");
  }

  static String moment(String name, String p1, String p2, String a, String b) {
    return name
        + " = (z_1 − z_2)/6·("
        + p1
        + "·(2·"
        + a
        + " + "
        + b
        + ") + "
        + p2
        + "·("
        + a
        + " + 2·"
        + b
        + "))";
  }

  /** Levels that every sheet starts with. */
  static CalcSheet levels(String title) {
    return CalcSheet.named(title)
        .given("z_e", M, "design excavation level")
        .given("z_t", M, "toe level of the wall")
        .given("f_D", ONE, "multiplier of the embedment, margin of the basis");
  }

  static CalcSheet momentsBalance(CalcSheet sheet) {
    return sheet
        .line("ΔM = ΣM_b − ΣM_f", KNM_M, "moment left over", Reference.DERIVED)
        .condition("abs(ΔM) ≤ 0.001·ΣM_f", "moments are in equilibrium", Reference.DERIVED);
  }

  /** The required embedment against the one built. */
  static CalcSheet provided(CalcSheet sheet, String required) {
    return sheet
        .line("d = z_e − z_c", M, "theoretical embedment", Reference.DERIVED)
        .line(required, M, "required embedment", Reference.DERIVED)
        .line("d_t = z_e − z_t", M, "embedment built", Reference.DERIVED)
        .require("d_r ≤ d_t", "the wall is embedded deep enough", Reference.DERIVED);
  }
}
