package pilefolio.checks.structure;

import static pilefolio.units.Units.CM2;
import static pilefolio.units.Units.CM3;
import static pilefolio.units.Units.CM4;
import static pilefolio.units.Units.DEG;
import static pilefolio.units.Units.GPA;
import static pilefolio.units.Units.KN;
import static pilefolio.units.Units.KNM;
import static pilefolio.units.Units.KNM_M;
import static pilefolio.units.Units.KN_M;
import static pilefolio.units.Units.M;
import static pilefolio.units.Units.MM;
import static pilefolio.units.Units.N_MM2;
import static pilefolio.units.Units.ONE;

import pilefolio.trace.CalcSheet;
import pilefolio.trace.Choice;
import pilefolio.trace.Reference;

/** Calculation sheets of rolled I beams after AISC 360, allowable strength. */
final class AiscBeam {
  private static final String CODE = "AISC 360-22";
  private static final Reference B4 = Reference.quoted(CODE, "Table B4.1");
  private static final Reference F2 = Reference.quoted(CODE, "F2");
  private static final Reference F3 = Reference.quoted(CODE, "F3");
  private static final Reference F6 = Reference.quoted(CODE, "F6");
  private static final Reference F1 = Reference.quoted(CODE, "F1");
  private static final Reference G2 = Reference.quoted(CODE, "G2.1");
  private static final Reference G6 = Reference.memory(CODE, "G6");
  private static final Reference E3 = Reference.quoted(CODE, "E3");
  private static final Reference E7 = Reference.memory(CODE, "E7");
  private static final Reference H1 = Reference.quoted(CODE, "H1.1");

  /** Bending about the strong axis of a beam held over its length. */
  static final CalcSheet STRONG =
      bending("Bending of the beam about its strong axis, AISC 360", "Z_x", "S_x")
          .given("h_w", MM, "straight depth of the web between fillets")
          .given("t_w", MM, "web thickness")
          .line("λ_w = h_w/t_w", ONE, "slenderness of the web", B4)
          .line("λ_pw = 3.76·√(E/F_y)", ONE, "limit of a compact web", B4)
          .line("M_p = F_y·Z_x", KNM, "plastic moment", F2)
          .choose(
              "M_n",
              KNM,
              "nominal moment; the web is compact, the beam is held sideways",
              F3,
              Choice.when("λ_w ≤ λ_pw and λ_f ≤ λ_pf", "M_p")
                  .or(
                      "λ_w ≤ λ_pw and λ_f ≤ λ_rf",
                      "M_p − (M_p − 0.7·F_y·S_x)·(λ_f − λ_pf)/(λ_rf − λ_pf)"))
          .line("M_all = M_n/Ω_b", KNM, "allowable moment", F1)
          .require("M_a ≤ M_all", "the beam carries the bending moment", F1);

  /** Bending about the weak axis. */
  static final CalcSheet WEAK =
      bending("Bending of the beam about its weak axis, AISC 360", "Z_y", "S_y")
          .line("M_p = min(F_y·Z_y, 1.6·F_y·S_y)", KNM, "plastic moment", F6)
          .choose(
              "M_n",
              KNM,
              "nominal moment",
              F6,
              Choice.when("λ_f ≤ λ_pf", "M_p")
                  .or("λ_f ≤ λ_rf", "M_p − (M_p − 0.7·F_y·S_y)·(λ_f − λ_pf)/(λ_rf − λ_pf)"))
          .line("M_all = M_n/Ω_b", KNM, "allowable moment", F1)
          .require("M_a ≤ M_all", "the beam carries the bending moment", F1);

  /** Shear parallel to the web. */
  static final CalcSheet SHEAR =
      CalcSheet.named("Shear of the beam, AISC 360")
          .given("V", KN_M, "shear force of the wall")
          .given("s_b", M, "spacing of the beams")
          .given("d", MM, "depth of the beam")
          .given("t_w", MM, "web thickness")
          .given("h_w", MM, "straight depth of the web between fillets")
          .given("F_y", N_MM2, "yield strength")
          .given("E", GPA, "modulus of elasticity")
          .given("Ω_{v,r}", ONE, "safety factor of stocky rolled webs")
          .given("Ω_v", ONE, "safety factor of other webs")
          .line("V_a = V·s_b", KN, "shear force of one beam", Reference.DERIVED)
          .line("λ_w = h_w/t_w", ONE, "slenderness of the web", G2)
          .line("λ_v = 2.24·√(E/F_y)", ONE, "limit of a stocky rolled web", G2)
          .line("λ_1 = 1.10·√(5.34·E/F_y)", ONE, "limit of shear yielding, k_v = 5.34", G2)
          .choose(
              "C_v1",
              ONE,
              "shear strength coefficient of the web",
              G2,
              Choice.when("λ_w ≤ λ_1", "1").otherwise("λ_1/λ_w"))
          .choose(
              "Ω",
              ONE,
              "safety factor that applies",
              G2,
              Choice.when("λ_w ≤ λ_v", "Ω_{v,r}").otherwise("Ω_v"))
          .line("V_n = 0.6·F_y·d·t_w·C_v1", KN, "nominal shear strength", G2)
          .line("V_all = V_n/Ω", KN, "allowable shear force", G2)
          .require("V_a ≤ V_all", "the web carries the shear force", G2);

  /** Shear across the web: the flanges carry it. */
  static final CalcSheet WEAK_SHEAR =
      CalcSheet.named("Shear of the flanges of the beam, AISC 360")
          .given("V", KN_M, "shear force of the wall")
          .given("s_b", M, "spacing of the beams")
          .given("b_f", MM, "flange width")
          .given("t_f", MM, "flange thickness")
          .given("F_y", N_MM2, "yield strength")
          .given("E", GPA, "modulus of elasticity")
          .given("Ω_v", ONE, "safety factor of shear")
          .line("V_a = V·s_b", KN, "shear force of one beam", Reference.DERIVED)
          .line("λ_f = b_f/(2·t_f)", ONE, "slenderness of a flange", G6)
          .line("λ_1 = 1.10·√(1.2·E/F_y)", ONE, "limit of shear yielding, k_v = 1.2", G6)
          .choose(
              "C_v2",
              ONE,
              "shear strength coefficient; more slender flanges do not occur in rolled shapes",
              G6,
              Choice.when("λ_f ≤ λ_1", "1"))
          .line("V_n = 2·0.6·F_y·b_f·t_f·C_v2", KN, "nominal shear strength", G6)
          .line("V_all = V_n/Ω_v", KN, "allowable shear force", G6)
          .require("V_a ≤ V_all", "the flanges carry the shear force", G6);

  /** Bending with a length that is not held sideways. */
  static final CalcSheet UNRESTRAINED =
      CalcSheet.named("Lateral-torsional buckling of the beam above the concrete, AISC 360")
          .given("M", KNM_M, "greatest bending moment of the wall")
          .given("s_b", M, "spacing of the beams")
          .given("L_b", M, "length not held sideways")
          .given("C_b", ONE, "factor of the moment diagram")
          .given("F_y", N_MM2, "yield strength")
          .given("E", GPA, "modulus of elasticity")
          .given("Z_x", CM3, "plastic section modulus")
          .given("S_x", CM3, "elastic section modulus")
          .given("r_y", MM, "radius of gyration about the weak axis")
          .given("r_ts", MM, "effective radius of gyration")
          .given("J", CM4, "torsion constant")
          .given("h_o", MM, "distance of flange centroids")
          .given("Ω_b", ONE, "safety factor of flexure")
          .line("M_a = M·s_b", KNM, "bending moment of one beam", Reference.DERIVED)
          .line("M_p = F_y·Z_x", KNM, "plastic moment", F2)
          .line("L_p = 1.76·r_y·√(E/F_y)", M, "length up to which the beam yields", F2)
          .line("j = J/(S_x·h_o)", ONE, "torsional stiffness of the section", F2)
          .line(
              "L_r = 1.95·r_ts·E/(0.7·F_y)·√(j + √(j² + 6.76·(0.7·F_y/E)²))",
              M,
              "length from which the beam buckles elastically",
              F2)
          .choose(
              "M_n",
              KNM,
              "nominal moment",
              F2,
              Choice.when("L_b ≤ L_p", "M_p")
                  .or(
                      "L_b ≤ L_r",
                      "min(M_p, C_b·(M_p − (M_p − 0.7·F_y·S_x)·(L_b − L_p)/(L_r − L_p)))")
                  .otherwise("min(M_p, C_b·π²·E/(L_b/r_ts)²·√(1 + 0.078·j·(L_b/r_ts)²)·S_x)"))
          .line("M_all = M_n/Ω_b", KNM, "allowable moment", F1)
          .require("M_a ≤ M_all", "the free length does not buckle sideways", F1);

  /** Axial load with bending of a load-bearing secondary, on the steel alone. */
  static final CalcSheet AXIAL =
      CalcSheet.named("Axial load with bending of the beam, AISC 360")
          .given("G_k", KN, "permanent vertical load on one pile")
          .given("Q_k", KN, "variable vertical load on one pile")
          .given("F_h", KN_M, "horizontal support force of the wall")
          .given("i", DEG, "inclination of the support below the horizontal")
          .given("e_N", MM, "distance of the load from the axis of the beam")
          .given("M", KNM_M, "bending moment of the wall")
          .given("s_b", M, "spacing of the beams")
          .given("L_c", M, "length that may buckle; nil where the beam is in concrete")
          .given("M_n", KNM, "nominal moment, from the check of bending")
          .given("A_g", CM2, "cross-section")
          .given("I", CM4, "second moment of area in the plane of bending")
          .given("r_y", MM, "least radius of gyration")
          .given("b_f", MM, "flange width")
          .given("t_f", MM, "flange thickness")
          .given("h_w", MM, "straight depth of the web between fillets")
          .given("t_w", MM, "web thickness")
          .given("F_y", N_MM2, "yield strength")
          .given("E", GPA, "modulus of elasticity")
          .given("Ω_b", ONE, "safety factor of flexure")
          .given("Ω_c", ONE, "safety factor of compression")
          .line(
              "P_r = G_k + Q_k + F_h·sin(i)/cos(i)·s_b",
              KN,
              "axial force of one beam",
              Reference.DERIVED)
          .choose(
              "F_n",
              N_MM2,
              "critical stress",
              E3,
              Choice.when("L_c/r_y ≤ 4.71·√(E/F_y)", "0.658^((L_c/r_y)²·F_y/(π²·E))·F_y")
                  .otherwise("0.877·π²·E/(L_c/r_y)²"))
          .line("λ_w = h_w/t_w", ONE, "slenderness of the web", B4)
          .line("λ_rw = 1.49·√(E/F_y)", ONE, "limit of a web that is fully effective", B4)
          .choose(
              "h_e",
              MM,
              "effective depth of the web",
              E7,
              Choice.when("λ_w ≤ λ_rw·√(F_y/F_n)", "h_w")
                  .otherwise("h_w·(1 − 0.18·1.31·λ_rw/λ_w·√(F_y/F_n))·1.31·λ_rw/λ_w·√(F_y/F_n)"))
          .line("λ_f = b_f/(2·t_f)", ONE, "slenderness of a flange", B4)
          .line("λ_rf = 0.56·√(E/F_y)", ONE, "limit of a flange that is fully effective", B4)
          .choose(
              "b_e",
              MM,
              "effective width of a flange",
              E7,
              Choice.when("λ_f ≤ λ_rf·√(F_y/F_n)", "b_f")
                  .otherwise("b_f·(1 − 0.22·1.49·λ_rf/λ_f·√(F_y/F_n))·1.49·λ_rf/λ_f·√(F_y/F_n)"))
          .line(
              "A_e = A_g − (h_w − h_e)·t_w − 2·(b_f − b_e)·t_f", CM2, "effective cross-section", E7)
          .line("P_c = F_n·A_e/Ω_c", KN, "allowable axial force", E3)
          .line(
              "n_E = 1.6·P_r·L_c²/(π²·E·I)",
              ONE,
              "axial force over the Euler load, at strength level",
              Reference.memory(CODE, "Appendix 8"))
          .choose(
              "B_1",
              ONE,
              "growth of the moment over the free length, C_m = 1",
              Reference.memory(CODE, "Appendix 8"),
              Choice.when("n_E ≤ 0.9", "1/(1 − n_E)"))
          .line(
              "M_r = (M·s_b + P_r·abs(e_N))·B_1",
              KNM,
              "bending moment of one beam with the eccentric load",
              Reference.DERIVED)
          .line("M_c = M_n/Ω_b", KNM, "allowable moment", F1)
          .choose(
              "u",
              ONE,
              "interaction",
              H1,
              Choice.when("P_r/P_c ≥ 0.2", "P_r/P_c + 8/9·M_r/M_c")
                  .otherwise("P_r/(2·P_c) + M_r/M_c"))
          .require("u ≤ 1", "axial load and bending together", H1);

  private AiscBeam() {}

  private static CalcSheet bending(String title, String plastic, String elastic) {
    return CalcSheet.named(title)
        .given("M", KNM_M, "bending moment of the wall")
        .given("s_b", M, "spacing of the beams")
        .given(plastic, CM3, "plastic section modulus")
        .given(elastic, CM3, "elastic section modulus")
        .given("b_f", MM, "flange width")
        .given("t_f", MM, "flange thickness")
        .given("F_y", N_MM2, "yield strength")
        .given("E", GPA, "modulus of elasticity")
        .given("Ω_b", ONE, "safety factor of flexure")
        .line("M_a = M·s_b", KNM, "bending moment of one beam", Reference.DERIVED)
        .line("λ_f = b_f/(2·t_f)", ONE, "slenderness of a flange", B4)
        .line("λ_pf = 0.38·√(E/F_y)", ONE, "limit of a compact flange", B4)
        .line("λ_rf = 1.0·√(E/F_y)", ONE, "limit of a noncompact flange", B4);
  }
}
