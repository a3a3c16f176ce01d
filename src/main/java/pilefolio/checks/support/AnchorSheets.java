package pilefolio.checks.support;

import static pilefolio.units.Units.DEG;
import static pilefolio.units.Units.GPA;
import static pilefolio.units.Units.KN;
import static pilefolio.units.Units.KN_M;
import static pilefolio.units.Units.KPA;
import static pilefolio.units.Units.M;
import static pilefolio.units.Units.MM;
import static pilefolio.units.Units.MM2;
import static pilefolio.units.Units.N_MM2;
import static pilefolio.units.Units.ONE;

import pilefolio.trace.CalcSheet;
import pilefolio.trace.CalcTable;
import pilefolio.trace.Reference;

/** Calculation sheets of ground anchors. */
final class AnchorSheets {
  /** Manual of ground anchors. */
  static final String MANUAL = "FHWA-IF-99-015";

  private static final Reference TABLES = Reference.read(MANUAL, "Tables 6 and 8");
  private static final Reference STRESSES = Reference.read(MANUAL, "Table 7");
  private static final Reference RULES = Reference.memory(MANUAL, "chapter 5");
  private static final Reference TESTING = Reference.memory(MANUAL, "chapter 7");
  private static final Reference EN_ANCHORS = Reference.memory("EN 1997-1:2004", "section 8");
  private static final Reference EXECUTION = Reference.memory("EN 1537:2013", "");
  private static final Reference LRFD = Reference.memory("AASHTO LRFD", "11.9");

  private static final String VERIFIED =
      "Values of bond before tests are presumptive. Anchors are proved by tests, and the"
          + " excavation goes on below a level only when its anchors have passed and are locked off.";

  /** Bond from a load transfer a metre, with a factor of safety. */
  static final CalcSheet BOND_TRANSFER =
      divided(
          force(CalcSheet.named("Bond length of an anchor from load transfer"))
              .given("Q_u", KN_M, "ultimate load transfer of a metre of bond length"),
          TABLES);

  /** Bond from a stress on the wall of the bore, with a factor of safety. */
  static final CalcSheet BOND_STRESS =
      divided(stress("Bond length of an anchor from bond stress"), STRESSES);

  /** Bond from a load transfer, with partial factors. */
  static final CalcSheet BOND_TRANSFER_EN =
      partial(
          force(CalcSheet.named("Bond length of an anchor from load transfer, partial factors"))
              .given("Q_u", KN_M, "ultimate load transfer of a metre of bond length"));

  /** Bond from a stress, with partial factors. */
  static final CalcSheet BOND_STRESS_EN =
      partial(stress("Bond length of an anchor from bond stress, partial factors"));

  /** Bond from a load transfer, with a resistance factor. */
  static final CalcSheet BOND_TRANSFER_LRFD =
      multiplied(
          force(CalcSheet.named("Bond length of an anchor from load transfer, resistance factor"))
              .given("Q_u", KN_M, "ultimate load transfer of a metre of bond length"));

  /** Bond from a stress, with a resistance factor. */
  static final CalcSheet BOND_STRESS_LRFD =
      multiplied(stress("Bond length of an anchor from bond stress, resistance factor"));

  /** Cover over the bond, spacing and inclination. */
  static final CalcSheet PLACE =
      CalcSheet.named("Place of the bond length in the ground")
          .given("z_G", M, "ground level behind the wall")
          .given("z_A", M, "level of the anchor at the wall")
          .given("i", DEG, "inclination below the horizontal")
          .given("L_f", M, "free length")
          .given("L_b", M, "bond length")
          .given("s", M, "spacing along the wall")
          .line(
              "h_b = z_G − z_A + (L_f + L_b/2)·sin(i)",
              M,
              "cover over the middle of the bond length, level ground",
              Reference.DERIVED)
          .require("h_b ≥ 4.5[m]", "cover over the bond length", RULES)
          .condition("s ≥ 1.2[m]", "neighbouring bond lengths do not disturb each other", RULES)
          .condition("i ≥ 10[°]", "the bore can be grouted from its foot", RULES)
          .condition("i ≤ 45[°]", "the vertical part of the force stays small", RULES)
          .note(
              "Services, basements and foundations on the line of the anchors are to be found, and"
                  + " leave of the neighbours had, before the first bore.");

  /** Tendon with allowable shares of its strength. */
  static final CalcSheet TENDON =
      tendon(force(CalcSheet.named("Tendon of an anchor, allowable shares")))
          .given("f_T", ONE, "allowable share under the design load")
          .given("f_L", ONE, "allowable share at lock-off")
          .line("P_T = f_T·P_u", KN, "allowable load of the tendon", RULES)
          .line("P_L = f_L·P_u", KN, "allowable lock-off load", RULES)
          .require("N ≤ P_T", "the tendon carries the force", RULES)
          .require("P_0 ≤ P_L", "lock-off leaves the tendon its reserve", RULES);

  /** Tendon with partial factors. */
  static final CalcSheet TENDON_EN =
      tendon(force(CalcSheet.named("Tendon of an anchor, partial factors")))
          .given("f_y", N_MM2, "proof strength of the steel")
          .given("γ_s", ONE, "partial factor of the tendon")
          .given("f_L", ONE, "allowable share at lock-off")
          .line(
              "R_d = min(f_y, 0.9·f_pu)·A_t/γ_s",
              KN,
              "design strength of the tendon",
              Reference.memory("EN 1992-1-1:2004", "3.3.6"))
          .line("P_L = f_L·P_u", KN, "allowable lock-off load", EXECUTION)
          .require("N ≤ R_d", "the tendon carries the force", EN_ANCHORS)
          .require("P_0 ≤ P_L", "lock-off leaves the tendon its reserve", EXECUTION);

  /** Tendon with resistance factors. */
  static final CalcSheet TENDON_LRFD =
      tendon(force(CalcSheet.named("Tendon of an anchor, resistance factors")))
          .given("φ_t", ONE, "resistance factor of the tendon")
          .given("f_L", ONE, "allowable share at lock-off")
          .line("R_r = φ_t·P_u", KN, "factored strength of the tendon", LRFD)
          .line("P_L = f_L·P_u", KN, "allowable lock-off load", LRFD)
          .require("N ≤ R_r", "the tendon carries the force", LRFD)
          .require("P_0 ≤ P_L", "lock-off leaves the tendon its reserve", LRFD);

  /** Loads of the tests, what the head should move, and when an anchor is accepted. */
  static final CalcSheet TESTS =
      force(CalcSheet.named("Tests of an anchor"))
          .given("m_p", ONE, "test load over design load")
          .given("A_t", MM2, "area of the tendon")
          .given("f_pu", N_MM2, "strength of the steel")
          .given("E", GPA, "modulus of elasticity of the tendon")
          .given("L_f", M, "free length")
          .given("L_b", M, "bond length")
          .given("L_j", M, "length in the jack, between its grip and the anchor head")
          .given("f_P", ONE, "allowable share of the strength in a test")
          .line("P_a = 0.1·N", KN, "alignment load", TESTING)
          .line("P_p = m_p·N", KN, "test load", TESTING)
          .line("P_max = f_P·f_pu·A_t", KN, "most that the tendon may see", TESTING)
          .table(
              CalcTable.of("steps", "Steps of loading", "step")
                  .given("m", ONE, "load over design load")
                  .line("P = m·N", KN, "load", TESTING)
                  .line(
                      "δ_1 = max(0, P − P_a)·0.8·(L_f + L_j)/(E·A_t)",
                      MM,
                      "least elastic movement",
                      TESTING)
                  .line(
                      "δ_2 = max(0, P − P_a)·(L_f + L_j + L_b/2)/(E·A_t)",
                      MM,
                      "greatest elastic movement",
                      TESTING)
                  .largest("P_s", "P", "load of the greatest step"))
          .condition("P_s ≥ P_p", "the last step is the test load", Reference.DERIVED)
          .require("P_p ≤ P_max", "the tendon stands the test", TESTING)
          .note(
              "Accepted if the elastic movement at the test load lies between δ_1 and δ_2, which is an"
                  + " apparent free length between 0.8 of the free length and the free length with half"
                  + " of the bond length, and if the head creeps no more than 1 mm between 1 and 10"
                  + " minutes or, failing this, no more than 2 mm between 6 and 60 minutes.")
          .note(
              "The first anchors of a level, and one in twenty after them, are loaded in cycles"
                  + " (performance test); every other one step by step (proof test). Nobody stands in"
                  + " line with a tendon under load. An anchor that fails is locked off at half of the"
                  + " load it held, or replaced, as the designer decides.");

  private AnchorSheets() {}

  private static CalcSheet force(CalcSheet sheet) {
    return sheet
        .given("T", KN_M, "horizontal support force")
        .given("s", M, "spacing along the wall")
        .given("i", DEG, "inclination below the horizontal")
        .line("N = T·s/cos(i)", KN, "force along the anchor", Reference.DERIVED);
  }

  private static CalcSheet stress(String title) {
    return force(CalcSheet.named(title))
        .given("d_b", MM, "diameter of the bore")
        .given("τ_u", KPA, "ultimate bond stress between grout and ground")
        .given("τ_max", KPA, "greatest value of the tables for this ground")
        .condition("τ_u ≤ τ_max", "bond before tests is no more than the tables give", STRESSES)
        .line("Q_u = π·d_b·τ_u", KN_M, "ultimate load transfer of a metre", Reference.DERIVED);
  }

  private static CalcSheet divided(CalcSheet sheet, Reference source) {
    return lengths(
        sheet
            .given("L_b", M, "bond length")
            .given("F_b", ONE, "factor of safety on bond")
            .line("L_req = N·F_b/Q_u", M, "bond length needed", source));
  }

  private static CalcSheet partial(CalcSheet sheet) {
    return lengths(
        sheet
            .given("L_b", M, "bond length")
            .given("γ_a", ONE, "partial factor of the pull-out resistance")
            .given("γ_m", ONE, "model factor of presumptive bond")
            .line("L_req = N·γ_a·γ_m/Q_u", M, "bond length needed", EN_ANCHORS));
  }

  private static CalcSheet multiplied(CalcSheet sheet) {
    return lengths(
        sheet
            .given("L_b", M, "bond length")
            .given("φ_b", ONE, "resistance factor of pull-out, presumptive bond")
            .line("L_req = N/(φ_b·Q_u)", M, "bond length needed", LRFD));
  }

  private static CalcSheet lengths(CalcSheet sheet) {
    return sheet
        .given("L_1", M, "least bond length of the kind of ground")
        .given("L_2", M, "greatest bond length that still counts")
        .require("L_b ≥ L_req", "the bond carries the force", RULES)
        .condition("L_b ≥ L_1", "the bond length is not too short to be trusted", RULES)
        .require(
            "L_req ≤ L_2",
            "the force does not need more bond than works along its whole length",
            RULES)
        .note(VERIFIED);
  }

  private static CalcSheet tendon(CalcSheet sheet) {
    return sheet
        .given("A_t", MM2, "area of the tendon")
        .given("f_pu", N_MM2, "strength of the steel")
        .given("P_0", KN, "lock-off load")
        .line("P_u = f_pu·A_t", KN, "strength of the tendon", Reference.DERIVED);
  }
}
