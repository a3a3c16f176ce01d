package pilefolio.checks.support;

import static pilefolio.units.Units.CM2;
import static pilefolio.units.Units.CM3;
import static pilefolio.units.Units.CM4;
import static pilefolio.units.Units.CM6;
import static pilefolio.units.Units.DEG;
import static pilefolio.units.Units.GPA;
import static pilefolio.units.Units.KN;
import static pilefolio.units.Units.KNM;
import static pilefolio.units.Units.KN_M;
import static pilefolio.units.Units.M;
import static pilefolio.units.Units.MM;
import static pilefolio.units.Units.N_MM2;
import static pilefolio.units.Units.ONE;

import java.util.Map;
import pilefolio.trace.CalcSheet;
import pilefolio.trace.CalcTable;
import pilefolio.trace.Choice;
import pilefolio.trace.Reference;
import pilefolio.units.Unit;
import pilefolio.units.Units;

/** Calculation sheets of walers: a continuous beam over struts or anchors, after either code. */
final class WalerSheets {
  private static final Unit KNM2 = Units.of("kN·m²");
  private static final String AISC = "AISC 360-22";
  private static final Reference F1 = Reference.quoted(AISC, "F1");
  private static final Reference F6 = Reference.quoted(AISC, "F6");
  private static final Reference G2 = Reference.quoted(AISC, "G2.1");
  private static final Reference H1 = Reference.quoted(AISC, "H1.1");
  private static final Reference B4 = Reference.quoted(AISC, "Table B4.1");
  private static final String EN = "EN 1993-1-1:2005";
  private static final Reference BENDING = Reference.quoted(EN, "6.2.5");
  private static final Reference SHEAR = Reference.quoted(EN, "6.2.6");
  private static final Reference BESIDE = Reference.memory(EN, "6.2.8");
  private static final Reference BOTH = Reference.memory(EN, "6.2.9");

  private static final Map<AiscSafety, CalcSheet> ROLLED_AISC =
      Map.of(
          AiscSafety.ALLOWABLE,
          aisc(AiscSafety.ALLOWABLE),
          AiscSafety.DESIGN,
          aisc(AiscSafety.DESIGN));

  /** Waler of rolled I sections after AISC 360. */
  static CalcSheet aiscSheet(AiscSafety safety) {
    return ROLLED_AISC.get(safety);
  }

  /** Waler of rolled I sections after EN 1993-1-1. */
  static final CalcSheet ROLLED_EN =
      EnBending.unheld(
              EnBending.plates(
                  beam(CalcSheet.named("Bending of a waler, EN 1993-1-1"))
                      .given("h", MM, "depth")
                      .given("b", MM, "flange width")
                      .given("t_f", MM, "flange thickness")
                      .given("t_w", MM, "web thickness")
                      .given("r", MM, "root radius")
                      .given("h_w", MM, "depth of the web between flanges")
                      .given("A", CM2, "cross-section")
                      .given("f_y", N_MM2, "yield strength")
                      .given("E", GPA, "modulus of elasticity")
                      .given("G", GPA, "shear modulus")
                      .given("W_pl", CM3, "plastic section modulus, strong axis")
                      .given("W_el", CM3, "elastic section modulus, strong axis")
                      .given("W_{pl,z}", CM3, "plastic section modulus, weak axis")
                      .given("W_{el,z}", CM3, "elastic section modulus, weak axis")
                      .given("I_z", CM4, "second moment of area about the weak axis")
                      .given("I_t", CM4, "torsion constant")
                      .given("I_w", CM6, "warping constant")
                      .given("λ_{LT,0}", ONE, "slenderness below which buckling is ignored")
                      .given("β_LT", ONE, "factor of the buckling curve")
                      .given("γ_M0", ONE, "partial factor of cross-sections")
                      .given("γ_M1", ONE, "partial factor of members")),
              "s",
              "λ_f ≤ 10·ε and λ_w ≤ 83·ε",
              "λ_f ≤ 14·ε and λ_w ≤ 124·ε")
          .line(
              "V_Rd = (A − 2·b·t_f + (t_w + 2·r)·t_f)·f_y/(√(3)·γ_M0)",
              KN,
              "resistance to shear",
              SHEAR)
          .choose(
              "ρ",
              ONE,
              "share of the strength used by shear",
              BESIDE,
              Choice.when("V_m ≤ 0.5·V_Rd", "0").otherwise("min(1, (2·V_m/V_Rd − 1)²)"))
          .choose(
              "M_{z,Rd}",
              KNM,
              "resistance about the weak axis",
              BENDING,
              Choice.when("λ_f ≤ 10·ε", "W_{pl,z}·f_y/γ_M0").otherwise("W_{el,z}·f_y/γ_M0"))
          .require("V_m ≤ V_Rd", "the web carries the shear force", SHEAR)
          .line("M_{y,Rd} = (1 − ρ)·M_{b,Rd}", KNM, "resistance beside the shear force", BESIDE)
          .line("u = M_x/M_{y,Rd} + M_y/M_{z,Rd}", ONE, "bending about both axes", BOTH)
          .require("u ≤ 1", "the waler carries the moment between its supports", BOTH)
          .note(connection());

  private WalerSheets() {}

  private static CalcSheet aisc(AiscSafety safety) {
    CalcSheet section =
        beam(CalcSheet.named(safety.titled("Bending of a waler")))
            .given("b_f", MM, "flange width")
            .given("t_f", MM, "flange thickness")
            .given("h_w", MM, "straight depth of the web between fillets")
            .given("t_w", MM, "web thickness")
            .given("d", MM, "depth")
            .given("F_y", N_MM2, "yield strength")
            .given("E", GPA, "modulus of elasticity")
            .given("Z_x", CM3, "plastic section modulus, strong axis")
            .given("S_x", CM3, "elastic section modulus, strong axis")
            .given("Z_y", CM3, "plastic section modulus, weak axis")
            .given("S_y", CM3, "elastic section modulus, weak axis")
            .given("r_y", MM, "radius of gyration about the weak axis")
            .given("r_ts", MM, "effective radius of gyration")
            .given("J", CM4, "torsion constant")
            .given("h_o", MM, "distance of flange centroids")
            .line("λ_f = b_f/(2·t_f)", ONE, "slenderness of a flange", B4)
            .line("λ_w = h_w/t_w", ONE, "slenderness of the web", B4);
    CalcSheet strong =
        safety.available(
            safety.given(AiscBending.unheld(section, "s"), AiscSafety.On.BENDING),
            "M_cx",
            "M_n",
            KNM,
            "moment about the strong axis",
            AiscSafety.On.BENDING,
            F1);
    CalcSheet weak =
        safety.available(
            strong.line("M_ny = min(F_y·Z_y, 1.6·F_y·S_y)", KNM, "nominal moment, weak axis", F6),
            "M_cy",
            "M_ny",
            KNM,
            "moment about the weak axis",
            AiscSafety.On.BENDING,
            F6);
    CalcSheet shear =
        safety.available(
            safety.given(
                weak.choose(
                    "V_n",
                    KN,
                    "nominal shear strength; the web does not buckle",
                    G2,
                    Choice.when("λ_w ≤ 1.10·√(5.34·E/F_y)", "0.6·F_y·d·t_w")),
                AiscSafety.On.SHEAR),
            "V_c",
            "V_n",
            KN,
            "shear force",
            AiscSafety.On.SHEAR,
            G2);
    return shear
        .line("u = M_x/M_cx + M_y/M_cy", ONE, "bending about both axes", H1)
        .require("u ≤ 1", "the waler carries the moment between its supports", H1)
        .require("V_m ≤ V_c", "the web carries the shear force", G2)
        .note(connection());
  }

  private static String connection() {
    return "The connection to each strut or anchor, the plates under its head and the stiffeners of"
        + " the web are designed for R_m, and the brackets that carry the waler for its weight and"
        + " for F_v.";
  }

  /** Load, moments, shear and supports of the continuous beam. */
  private static CalcSheet beam(CalcSheet sheet) {
    return sheet
        .given("T", KN_M, "horizontal support force")
        .given("i", DEG, "inclination of the supports below the horizontal")
        .given("θ", DEG, "angle between the web of the waler and the supports")
        .given("n", ONE, "beams side by side that share the load")
        .given("s", M, "distance of the supports")
        .given("a", M, "overhang beyond the last support")
        .line("w = T/cos(i)", KN_M, "load on the waler along the supports", Reference.DERIVED)
        .found(
            "S_0",
            KNM2,
            "slope over the first support, times stiffness",
            "equation of three moments; verified by the table")
        .line("M_0 = w·a²/2", KNM, "hogging moment of the overhang", Reference.DERIVED)
        .line("V_0 = w·a", KN, "shear force of the overhang", Reference.DERIVED)
        .table(
            CalcTable.of("spans", "Spans between supports, hogging moments positive", "span")
                .given("M_l", KNM, "moment over the left support, by the equation of three moments")
                .given("M_r", KNM, "moment over the right support, by the same")
                .line(
                    "V_l = w·s/2 + (M_l − M_r)/s",
                    KN,
                    "shear right of the left support",
                    Reference.DERIVED)
                .line("V_r = w·s − V_l", KN, "shear left of the right support", Reference.DERIVED)
                .line("M_f = V_l²/(2·w) − M_l", KNM, "moment in the span", Reference.DERIVED)
                .line(
                    "S_l = w·s³/24 − s·(2·M_l + M_r)/6",
                    KNM2,
                    "slope right of the left support," + " times stiffness",
                    Reference.DERIVED)
                .line(
                    "S_r = s·(M_l + 2·M_r)/6 − w·s³/24",
                    KNM2,
                    "slope left of the right support," + " times stiffness",
                    Reference.DERIVED)
                .carried("S_p", KNM2, "slope left of the left support", "S_r", "S_0")
                .line(
                    "g = max(0, abs(S_l − S_p) − 0.0001·w·s³)",
                    KNM2,
                    "kink over the left support beyond rounding",
                    Reference.DERIVED)
                .carried("V_p", KN, "shear left of the left support", "V_r", "V_0")
                .line("R = V_p + V_l", KN, "force of the left support", Reference.DERIVED)
                .line("V_s = max(V_l, V_r)", KN, "greater shear force", Reference.DERIVED)
                .line("M_s = max(M_l, M_r, abs(M_f))", KNM, "greater moment", Reference.DERIVED)
                .largest("M_m", "M_s", "greatest moment of the waler")
                .largest("V_b", "V_s", "greatest shear force of the waler")
                .largest("R_m", "R", "greatest force of a support, for the connection")
                .largest("g_m", "g", "greatest kink"))
        .condition("g_m ≤ 0", "the waler has no kink over a support", Reference.DERIVED)
        .condition("M_0 ≤ M_m", "the overhang is within the greatest moment", Reference.DERIVED)
        .line(
            "M_x = M_m·cos(θ)/n",
            KNM,
            "moment of one beam about its strong axis",
            Reference.DERIVED)
        .line(
            "M_y = M_m·sin(θ)/n", KNM, "moment of one beam about its weak axis", Reference.DERIVED)
        .line("V_m = V_b/n", KN, "shear force of one beam", Reference.DERIVED)
        .line(
            "F_v = R_m·sin(i)", KN, "vertical part of the force at one support", Reference.DERIVED);
  }
}
