package pilefolio.checks.support;

import static pilefolio.units.Units.CM2;
import static pilefolio.units.Units.CM3;
import static pilefolio.units.Units.CM4;
import static pilefolio.units.Units.GPA;
import static pilefolio.units.Units.KN;
import static pilefolio.units.Units.KNM;
import static pilefolio.units.Units.KN_M;
import static pilefolio.units.Units.MM;
import static pilefolio.units.Units.N_MM2;
import static pilefolio.units.Units.ONE;
import static pilefolio.units.Units.PER_M;

import java.util.Map;
import pilefolio.trace.CalcSheet;
import pilefolio.trace.Choice;
import pilefolio.trace.Reference;

/**
 * Calculation sheets of struts after AISC 360. The moment grows along the strut by the exact
 * solution of the pinned beam-column, at strength level.
 */
final class AiscStrut {
  private static final String CODE = "AISC 360-22";
  private static final Reference B4 = Reference.quoted(CODE, "Table B4.1");
  private static final Reference E2 = Reference.memory(CODE, "E2");
  private static final Reference E3 = Reference.quoted(CODE, "E3");
  private static final Reference F1 = Reference.quoted(CODE, "F1");
  private static final Reference F8 = Reference.memory(CODE, "F8");
  private static final Reference H1 = Reference.quoted(CODE, "H1.1");
  private static final Reference LEVEL = Reference.memory(CODE, "Appendix 8");

  private static final Map<AiscSafety, AiscStrut> ALL =
      Map.of(
          AiscSafety.ALLOWABLE,
          new AiscStrut(AiscSafety.ALLOWABLE),
          AiscSafety.DESIGN,
          new AiscStrut(AiscSafety.DESIGN));

  private final AiscSafety safety;
  private final CalcSheet rolled;
  private final CalcSheet tube;

  private AiscStrut(AiscSafety safety) {
    this.safety = safety;
    this.rolled = makeRolled();
    this.tube = makeTube();
  }

  /** The sheets of a format of safety. */
  static AiscStrut of(AiscSafety safety) {
    return ALL.get(safety);
  }

  /** A rolled I section with its web upright, not held between its ends. */
  CalcSheet rolled() {
    return rolled;
  }

  /** A round tube. */
  CalcSheet tube() {
    return tube;
  }

  private CalcSheet makeRolled() {
    return interaction(
        AiscBending.unheld(
            second(
                compression(
                        demand(
                                CalcSheet.named(
                                    safety.titled("Buckling of a strut of rolled section")))
                            .given("A_g", CM2, "cross-section")
                            .given("I_x", CM4, "second moment of area about the strong axis")
                            .given("r_x", MM, "radius of gyration about the strong axis")
                            .given("r_y", MM, "radius of gyration about the weak axis")
                            .given("b_f", MM, "flange width")
                            .given("t_f", MM, "flange thickness")
                            .given("h_w", MM, "straight depth of the web between fillets")
                            .given("t_w", MM, "web thickness")
                            .line(
                                "λ = K·L/min(r_x, r_y)",
                                ONE,
                                "slenderness of the strut",
                                Reference.DERIVED)
                            .line("λ_f = b_f/(2·t_f)", ONE, "slenderness of a flange", B4)
                            .line("λ_w = h_w/t_w", ONE, "slenderness of the web", B4),
                        "λ_f ≤ 0.56·√(E/F_y) and λ_w ≤ 1.49·√(E/F_y)")
                    .given("Z_x", CM3, "plastic section modulus")
                    .given("S_x", CM3, "elastic section modulus")
                    .given("r_ts", MM, "effective radius of gyration")
                    .given("J", CM4, "torsion constant")
                    .given("h_o", MM, "distance of flange centroids")),
            "L"));
  }

  private CalcSheet makeTube() {
    return interaction(
        second(
                compression(
                    demand(CalcSheet.named(safety.titled("Buckling of a strut of round tube")))
                        .given("D", MM, "outside diameter")
                        .given("t", MM, "design wall thickness")
                        .line(
                            "A_g = π/4·(D² − (D − 2·t)²)", CM2, "cross-section", Reference.DERIVED)
                        .line(
                            "I_x = π/64·(D^4 − (D − 2·t)^4)",
                            CM4,
                            "second moment of area",
                            Reference.DERIVED)
                        .line(
                            "λ = K·L/√(I_x/A_g)",
                            ONE,
                            "slenderness of the strut",
                            Reference.DERIVED)
                        .line("λ_D = D/t", ONE, "slenderness of the wall", B4),
                    "λ_D ≤ 0.11·E/F_y"))
            .line("Z = (D³ − (D − 2·t)³)/6", CM3, "plastic section modulus", Reference.DERIVED)
            .line("S = 2·I_x/D", CM3, "elastic section modulus", Reference.DERIVED)
            .choose(
                "M_n",
                KNM,
                "nominal moment",
                F8,
                Choice.when("λ_D ≤ 0.07·E/F_y", "F_y·Z")
                    .or("λ_D ≤ 0.31·E/F_y", "(0.021·E/λ_D + F_y)·S")));
  }

  private static CalcSheet demand(CalcSheet sheet) {
    return StrutDemand.lines(sheet, "P_r")
        .given("K", ONE, "effective length factor")
        .given("F_y", N_MM2, "yield strength")
        .given("E", GPA, "modulus of elasticity");
  }

  private CalcSheet compression(CalcSheet sheet, String notSlender) {
    CalcSheet stress =
        safety
            .given(sheet, AiscSafety.On.COMPRESSION)
            .choose(
                "F_n",
                N_MM2,
                "critical stress; no part of the section buckles by itself",
                E3,
                Choice.when(notSlender + " and λ ≤ 4.71·√(E/F_y)", "0.658^(λ²·F_y/(π²·E))·F_y")
                    .or(notSlender, "0.877·π²·E/λ²"));
    return safety
        .available(stress, "P_c", "F_n·A_g", KN, "axial force", AiscSafety.On.COMPRESSION, E3)
        .condition("λ ≤ 200", "the strut is not too slender to be handled", E2);
  }

  private CalcSheet second(CalcSheet sheet) {
    return sheet
        .given("w", KN_M, "self weight and load on the strut")
        .given("γ_G", ONE, "multiplier of permanent actions")
        .given("e", MM, "eccentricity of the force, up or down")
        .line(
            "k = √(" + safety.level() + "·P_r/(E·I_x))",
            PER_M,
            "wave number of the strut, load at strength level",
            LEVEL)
        .choose(
            "a",
            ONE,
            "growth of an end moment at mid-length",
            Reference.DERIVED,
            Choice.when("k·L ≤ 0.9487·π", "1/cos(k·L/2)"))
        .line("M_w = γ_G·w/k²·(a − 1)", KNM, "moment of the weight, with growth", Reference.DERIVED)
        .line("M_r = M_w + P_r·e·a", KNM, "greatest moment", Reference.DERIVED);
  }

  private CalcSheet interaction(CalcSheet sheet) {
    CalcSheet bending = safety.given(sheet, AiscSafety.On.BENDING);
    return safety
        .available(bending, "M_c", "M_n", KNM, "moment", AiscSafety.On.BENDING, F1)
        .choose(
            "u",
            ONE,
            "interaction",
            H1,
            Choice.when("P_r/P_c ≥ 0.2", "P_r/P_c + 8/9·M_r/M_c")
                .otherwise("P_r/(2·P_c) + M_r/M_c"))
        .require("P_r ≤ P_c", "the strut does not buckle", E3)
        .require("u ≤ 1", "force, weight and eccentricity together", H1)
        .note(StrutDemand.CAUTION);
  }
}
