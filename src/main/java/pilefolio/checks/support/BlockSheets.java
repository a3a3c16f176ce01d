package pilefolio.checks.support;

import static pilefolio.units.Units.DEG;
import static pilefolio.units.Units.KN;
import static pilefolio.units.Units.KN_M;
import static pilefolio.units.Units.KN_M3;
import static pilefolio.units.Units.KPA;
import static pilefolio.units.Units.M;
import static pilefolio.units.Units.ONE;

import pilefolio.trace.CalcSheet;
import pilefolio.trace.Choice;
import pilefolio.trace.Reference;

/** Calculation sheets of an anchor block or anchor wall behind the retained ground. */
final class BlockSheets {
  private static final Reference PRACTICE_BOOK = Reference.memory("NAVFAC DM 7.02", "chapter 3");

  /** Passive less active pressure on the block. */
  static final CalcSheet RESISTANCE =
      CalcSheet.named("Resistance of an anchor block")
          .given("T", KN_M, "horizontal support force")
          .given("s", M, "spacing along the wall")
          .given("l", M, "length of block for one tie; the spacing if the block is continuous")
          .given("z_t", M, "depth of the top of the block")
          .given("h", M, "height of the block")
          .given("γ", KN_M3, "unit weight of the ground before the block, with its factor")
          .given("φ", DEG, "friction angle there, with its factor")
          .given("q", KPA, "load on the ground behind the block")
          .given("F_R", ONE, "divisor on the resistance")
          .line("z_b = z_t + h", M, "depth of the foot of the block", Reference.DERIVED)
          .line(
              "K_a = tan(45[°] − φ/2)²", ONE, "active coefficient, level ground", Reference.DERIVED)
          .line(
              "K_p = tan(45[°] + φ/2)²",
              ONE,
              "passive coefficient, no wall friction",
              Reference.DERIVED)
          .choose(
              "z_1",
              M,
              "depth from which the ground counts: a block near the surface moves what lies over it",
              PRACTICE_BOOK,
              Choice.when("z_t ≤ z_b/3", "0").otherwise("z_t"))
          .line("P_p = K_p·γ·(z_b² − z_1²)/2", KN_M, "passive force", Reference.DERIVED)
          .line(
              "P_a = K_a·(γ·(z_b² − z_1²)/2 + q·(z_b − z_1))",
              KN_M,
              "active force",
              Reference.DERIVED)
          .line("l_1 = min(l, s)", M, "length of block that counts", Reference.DERIVED)
          .line("R = l_1·(P_p/F_R − P_a)", KN, "resistance for one tie", Reference.DERIVED)
          .line("N = T·s", KN, "horizontal force of one tie", Reference.DERIVED)
          .require("N ≤ R", "the block holds", Reference.DERIVED)
          .note(
              "The ends of a short block and friction on its base are not counted. The ground before"
                  + " the block is not dug out while the wall is held by it.");

  /** Distance at which the wedges of wall and block do not meet. */
  static final CalcSheet DISTANCE =
      CalcSheet.named("Distance of an anchor block from the wall")
          .given("z_W", M, "depth of the toe of the wall below the ground behind it")
          .given("z_b", M, "depth of the foot of the block")
          .given("φ", DEG, "least friction angle of the ground between them, with its factor")
          .given("x", M, "distance of the block from the wall")
          .line(
              "x_a = z_W·tan(45[°] − φ/2)",
              M,
              "reach of the active wedge behind the wall",
              PRACTICE_BOOK)
          .line(
              "x_p = z_b·tan(45[°] + φ/2)",
              M,
              "reach of the passive wedge before the block",
              PRACTICE_BOOK)
          .line("x_req = x_a + x_p", M, "least distance", PRACTICE_BOOK)
          .require("x ≥ x_req", "the wedges do not meet", PRACTICE_BOOK);

  private BlockSheets() {}
}
