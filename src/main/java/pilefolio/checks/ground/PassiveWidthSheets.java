package pilefolio.checks.ground;

import static pilefolio.units.Units.DEG;
import static pilefolio.units.Units.KN_M;
import static pilefolio.units.Units.KN_M3;
import static pilefolio.units.Units.M;
import static pilefolio.units.Units.ONE;

import pilefolio.trace.CalcSheet;
import pilefolio.trace.CalcTable;
import pilefolio.trace.Choice;
import pilefolio.trace.Reference;

/** Sheets of the widths on which pressure acts on single piles below the excavation. */
final class PassiveWidthSheets {
  static final String TABLE = "layers";
  private static final Reference AASHTO =
      Reference.memory("AASHTO LRFD Bridge Design Specifications", "3.11.5.6");
  private static final Reference CALTRANS =
      Reference.memory("Caltrans Trenching and Shoring Manual", "chapter 6");
  private static final Reference BROMS = Reference.memory("Broms (1964)", "");
  private static final Reference REESE = Reference.memory("Reese, Cox and Koop (1974)", "");

  /** Three widths. */
  static final CalcSheet THREE =
      head("Widths on which pressure acts on one pile, three widths")
          .line("w_3 = 3·b", M, "three widths of the pile", AASHTO)
          .line("w_p = min(w_3, s_b)", M, "effective width of passive pressure", AASHTO)
          .line("r_p = w_p/s_b", ONE, "share of the length of wall", Reference.DERIVED);

  /** Own width times an arching factor. */
  static final CalcSheet ARCHING =
      head("Widths on which pressure acts on one pile, arching factor")
          .table(
              CalcTable.of(TABLE, "Layers below the excavation", "layer")
                  .given("φ_d", DEG, "angle of friction; 0 in undrained ground")
                  .choose(
                      "f",
                      ONE,
                      "arching factor",
                      CALTRANS,
                      Choice.when("φ_d > 0", "max(1, min(3, 0.08·φ_d/1[°]))").otherwise("1"))
                  .line("w_p = min(f·b, s_b)", M, "effective width", CALTRANS)
                  .line("r_p = w_p/s_b", ONE, "share of the length of wall", Reference.DERIVED));

  /** Own width only. */
  static final CalcSheet OWN =
      head("Widths on which pressure acts on one pile, own width")
          .note("Passive pressure acts on the same share; arching is not counted.");

  /** Sand before one pile. */
  static final CalcSheet SECOND =
      CalcSheet.named("Sand before a single pile, second opinion")
          .given("φ_d", DEG, "angle of friction below the excavation")
          .given("γ", KN_M3, "unit weight there, buoyant below water")
          .given("b", M, "width of the pile in the ground")
          .given("w_p", M, "effective width used")
          .given("K_p", ONE, "passive coefficient used")
          .given("z", M, "depth below the excavation")
          .given("K_0", ONE, "pressure at rest, as the method has it")
          .line("α = φ_d/2", DEG, "spread of the wedge", REESE)
          .line("β = 45[°] + φ_d/2", DEG, "slope of the wedge", REESE)
          .line("K_r = (1 − sin(φ_d))/(1 + sin(φ_d))", ONE, "active coefficient", REESE)
          .line(
              "b_1 = K_0·z·tan(φ_d)·sin(β)/(tan(β − φ_d)·cos(α))",
              M,
              "friction on the sides of the wedge",
              REESE)
          .line("b_2 = tan(β)/tan(β − φ_d)·(b + z·tan(β)·tan(α))", M, "weight of the wedge", REESE)
          .line(
              "b_3 = K_0·z·tan(β)·(tan(φ_d)·sin(β) − tan(α)) − K_r·b",
              M,
              "pressure at rest on the sides, less active pressure behind",
              REESE)
          .line("p_w = γ·z·(b_1 + b_2 + b_3)", KN_M, "resistance of a wedge that is lifted", REESE)
          .line(
              "p_f = γ·z·b·(K_r·(tan(β)^8 − 1) + K_0·tan(φ_d)·tan(β)^4)",
              KN_M,
              "resistance of sand that flows round the pile",
              REESE)
          .line("p_u = min(p_w, p_f)", KN_M, "resistance of one pile, the lesser", REESE)
          .line("p_p = w_p·K_p·γ·z", KN_M, "passive pressure used, on one pile", Reference.DERIVED)
          .line("r_u = p_p/p_u", ONE, "used over second opinion", Reference.DERIVED);

  private PassiveWidthSheets() {}

  private static CalcSheet head(String title) {
    return CalcSheet.named(title)
        .given("s_b", M, "spacing of the piles")
        .given("b", M, "width of one pile in the ground")
        .line(
            "r_b = b/s_b",
            ONE,
            "share of the length of wall on which active pressure and water act",
            Reference.DERIVED)
        .line(
            "d_n = 1.5·b",
            M,
            "depth below the excavation without passive pressure of undrained ground",
            BROMS);
  }
}
