package pilefolio.checks.structure;

import static pilefolio.units.Units.CM2;
import static pilefolio.units.Units.CM3;
import static pilefolio.units.Units.CM4;
import static pilefolio.units.Units.CM6;
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

/** Calculation sheets of rolled I beams after EN 1993-1-1. */
final class EnBeam {
  private static final String CODE = "EN 1993-1-1:2005";
  private static final Reference CLASS = Reference.quoted(CODE, "Table 5.2");
  private static final Reference BENDING = Reference.quoted(CODE, "6.2.5");
  private static final Reference SHEAR_CLAUSE = Reference.quoted(CODE, "6.2.6");
  private static final Reference BOTH = Reference.memory(CODE, "6.2.8");
  private static final Reference LTB = Reference.quoted(CODE, "6.3.2.3");
  private static final Reference AXIAL_CLAUSE = Reference.memory(CODE, "6.2.1(7)");
  private static final Reference BUCKLING = Reference.quoted(CODE, "6.3.1");

  /** Bending about the strong axis of a beam held over its length. */
  static final CalcSheet STRONG =
      flange(moment("Bending of the beam about its strong axis, EN 1993-1-1", "y"))
          .given("h_w", MM, "depth of the web between flanges")
          .line("c_w = h_w − 2·r", MM, "straight depth of the web", CLASS)
          .line("λ_w = c_w/t_w", ONE, "slenderness of the web", CLASS)
          .choose(
              "W",
              CM3,
              "section modulus of class 1 or 2, or of class 3",
              CLASS,
              Choice.when("λ_f ≤ 10·ε and λ_w ≤ 83·ε", "W_{pl,y}")
                  .or("λ_f ≤ 14·ε and λ_w ≤ 124·ε", "W_{el,y}"))
          .line("M_{c,Rd} = W·f_y/γ_M0", KNM, "resistance of the section to bending", BENDING)
          .require("M_Ed ≤ M_{c,Rd}", "the beam carries the bending moment", BENDING);

  /** Bending about the weak axis. */
  static final CalcSheet WEAK =
      flange(moment("Bending of the beam about its weak axis, EN 1993-1-1", "z"))
          .choose(
              "W",
              CM3,
              "section modulus of class 1 or 2, or of class 3",
              CLASS,
              Choice.when("λ_f ≤ 10·ε", "W_{pl,z}").or("λ_f ≤ 14·ε", "W_{el,z}"))
          .line("M_{c,Rd} = W·f_y/γ_M0", KNM, "resistance of the section to bending", BENDING)
          .require("M_Ed ≤ M_{c,Rd}", "the beam carries the bending moment", BENDING);

  /** Shear parallel to the web. */
  static final CalcSheet SHEAR =
      CalcSheet.named("Shear of the beam, EN 1993-1-1")
          .given("V", KN_M, "shear force of the wall")
          .given("s_b", M, "spacing of the beams")
          .given("A", CM2, "cross-section")
          .given("b", MM, "flange width")
          .given("t_f", MM, "flange thickness")
          .given("t_w", MM, "web thickness")
          .given("r", MM, "root radius")
          .given("h_w", MM, "depth of the web between flanges")
          .given("f_y", N_MM2, "yield strength")
          .given("η", ONE, "factor on the shear area")
          .given("γ_M0", ONE, "partial factor of cross-sections")
          .line("V_Ed = V·s_b", KN, "shear force of one beam", Reference.DERIVED)
          .line("ε = √(235[N/mm²]/f_y)", ONE, "strength factor", CLASS)
          .line(
              "A_v = max(A − 2·b·t_f + (t_w + 2·r)·t_f, η·h_w·t_w)",
              CM2,
              "shear area",
              SHEAR_CLAUSE)
          .choose(
              "V_{pl,Rd}",
              KN,
              "resistance to shear; the web does not buckle",
              SHEAR_CLAUSE,
              Choice.when("h_w/t_w ≤ 72·ε/η", "A_v·f_y/(√(3)·γ_M0)"))
          .require("V_Ed ≤ V_{pl,Rd}", "the web carries the shear force", SHEAR_CLAUSE);

  /** The moment that is left beside shear. */
  static final CalcSheet WITH_SHEAR =
      CalcSheet.named("Bending of the beam beside shear, EN 1993-1-1")
          .given("V_Ed", KN, "shear force of one beam, from the check of shear")
          .given("V_{pl,Rd}", KN, "resistance to shear, from the check of shear")
          .given("M_Ed", KNM, "bending moment of one beam, from the check of bending")
          .given("M_{c,Rd}", KNM, "resistance to bending, from the check of bending")
          .given("h_w", MM, "depth of the web between flanges")
          .given("t_w", MM, "web thickness")
          .given("f_y", N_MM2, "yield strength")
          .given("γ_M0", ONE, "partial factor of cross-sections")
          .choose(
              "ρ",
              ONE,
              "share of the web’s strength used by shear",
              BOTH,
              Choice.when("V_Ed ≤ 0.5·V_{pl,Rd}", "0").otherwise("(2·V_Ed/V_{pl,Rd} − 1)²"))
          .line(
              "M_{V,Rd} = M_{c,Rd} − ρ·h_w²·t_w/4·f_y/γ_M0",
              KNM,
              "resistance to bending beside the shear force",
              BOTH)
          .require(
              "M_Ed ≤ M_{V,Rd}",
              "greatest moment and greatest shear force, taken at one level",
              BOTH);

  /** Shear across the web: the flanges carry it. */
  static final CalcSheet WEAK_SHEAR =
      CalcSheet.named("Shear of the flanges of the beam, EN 1993-1-1")
          .given("V", KN_M, "shear force of the wall")
          .given("s_b", M, "spacing of the beams")
          .given("b", MM, "flange width")
          .given("t_f", MM, "flange thickness")
          .given("f_y", N_MM2, "yield strength")
          .given("γ_M0", ONE, "partial factor of cross-sections")
          .line("V_Ed = V·s_b", KN, "shear force of one beam", Reference.DERIVED)
          .line("A_v = 2·b·t_f", CM2, "shear area of the flanges", SHEAR_CLAUSE)
          .line("V_{pl,Rd} = A_v·f_y/(√(3)·γ_M0)", KN, "resistance to shear", SHEAR_CLAUSE)
          .require(
              "V_Ed ≤ 0.5·V_{pl,Rd}",
              "the flanges carry the shear force without loss of bending strength",
              BOTH);

  /** Bending with a length that is not held sideways. */
  static final CalcSheet UNRESTRAINED =
      CalcSheet.named("Lateral-torsional buckling of the beam above the concrete, EN 1993-1-1")
          .given("M", KNM_M, "greatest bending moment of the wall")
          .given("s_b", M, "spacing of the beams")
          .given("L", M, "length not held sideways")
          .given("C_1", ONE, "factor of the moment diagram")
          .given("f_y", N_MM2, "yield strength")
          .given("E", GPA, "modulus of elasticity")
          .given("G", GPA, "shear modulus")
          .given("W", CM3, "section modulus of the class, from the check of bending")
          .given("I_z", CM4, "second moment of area about the weak axis")
          .given("I_t", CM4, "torsion constant")
          .given("I_w", CM6, "warping constant")
          .given("h", MM, "depth of the beam")
          .given("b", MM, "flange width")
          .given("λ_{LT,0}", ONE, "slenderness below which buckling is ignored")
          .given("β_LT", ONE, "factor of the buckling curve")
          .given("γ_M1", ONE, "partial factor of members")
          .line("M_Ed = M·s_b", KNM, "bending moment of one beam", Reference.DERIVED)
          .line("N_z = π²·E·I_z/L²", KN, "Euler load about the weak axis", Reference.DERIVED)
          .line(
              "M_cr = C_1·N_z·√(I_w/I_z + G·I_t/N_z)",
              KNM,
              "elastic critical moment, load at the shear centre",
              Reference.quoted("SCI P364", "Example 3"))
          .line("λ_LT = √(W·f_y/M_cr)", ONE, "slenderness", LTB)
          .choose(
              "α_LT",
              ONE,
              "imperfection of the buckling curve, rolled I",
              LTB,
              Choice.when("h/b ≤ 2", "0.34").otherwise("0.49"))
          .line("Φ = 0.5·(1 + α_LT·(λ_LT − λ_{LT,0}) + β_LT·λ_LT²)", ONE, "auxiliary value", LTB)
          .choose(
              "χ_LT",
              ONE,
              "reduction for buckling",
              LTB,
              Choice.when("λ_LT ≤ λ_{LT,0}", "1")
                  .otherwise("min(1, 1/λ_LT², 1/(Φ + √(Φ² − β_LT·λ_LT²)))"))
          .line("k_c = 1/√(C_1)", ONE, "factor of the moment diagram", LTB)
          .line(
              "f = min(1, 1 − 0.5·(1 − k_c)·(1 − 2·(λ_LT − 0.8)²))",
              ONE,
              "modification for the moment diagram",
              LTB)
          .line("χ_mod = min(1, 1/λ_LT², χ_LT/f)", ONE, "modified reduction", LTB)
          .line("M_{b,Rd} = χ_mod·W·f_y/γ_M1", KNM, "resistance to buckling", LTB)
          .require("M_Ed ≤ M_{b,Rd}", "the free length does not buckle sideways", LTB);

  /** Axial load with bending of a load-bearing secondary, on the steel alone. */
  static final CalcSheet AXIAL =
      flange(
              CalcSheet.named("Axial load with bending of the beam, EN 1993-1-1")
                  .given("G_k", KN, "permanent vertical load on one pile")
                  .given("Q_k", KN, "variable vertical load on one pile")
                  .given("γ_G", ONE, "multiplier of permanent actions")
                  .given("γ_Q", ONE, "multiplier of variable actions")
                  .given("F_h", KN_M, "horizontal support force of the wall")
                  .given("i", DEG, "inclination of the support below the horizontal")
                  .given("e_N", MM, "distance of the load from the axis of the beam")
                  .given("M", KNM_M, "bending moment of the wall")
                  .given("s_b", M, "spacing of the beams")
                  .given("L", M, "length that may buckle; nil where the beam is in concrete")
                  .given("A", CM2, "cross-section")
                  .given("W_pl", CM3, "plastic section modulus in the plane of bending")
                  .given("W_el", CM3, "elastic section modulus in the plane of bending")
                  .given("I", CM4, "second moment of area in the plane of bending")
                  .given("i_z", MM, "least radius of gyration")
                  .given("h", MM, "depth of the beam")
                  .given("E", GPA, "modulus of elasticity"))
          .given("h_w", MM, "depth of the web between flanges")
          .given("γ_M1", ONE, "partial factor of members")
          .line(
              "N_Ed = γ_G·G_k + γ_Q·Q_k + F_h·sin(i)/cos(i)·s_b",
              KN,
              "axial force of one beam",
              Reference.DERIVED)
          .line("c_w = h_w − 2·r", MM, "straight depth of the web", CLASS)
          .line("λ_w = c_w/t_w", ONE, "slenderness of the web", CLASS)
          .line(
              "α_w = min(1, 0.5·(1 + N_Ed/(c_w·t_w·f_y)))",
              ONE,
              "share of the web in compression, plastic",
              CLASS)
          .line("ψ = min(1, 2·N_Ed/(A·f_y) − 1)", ONE, "stress ratio of the web, elastic", CLASS)
          .choose(
              "W",
              CM3,
              "section modulus of class 1 or 2, or of class 3",
              CLASS,
              Choice.when("λ_f ≤ 10·ε and λ_w ≤ 456·ε/(13·α_w − 1)", "W_pl")
                  .or("λ_f ≤ 14·ε and λ_w ≤ 42·ε/(0.67 + 0.33·ψ)", "W_el"))
          .line("N_{c,Rd} = A·f_y/γ_M0", KN, "resistance of the section to compression", BUCKLING)
          .line("λ_z = L/(π·i_z)·√(f_y/E)", ONE, "slenderness of the free length", BUCKLING)
          .choose(
              "α_z",
              ONE,
              "imperfection of the buckling curve, rolled I about the weak axis",
              BUCKLING,
              Choice.when("h/b > 1.2 and t_f ≤ 40[mm]", "0.34")
                  .or("h/b ≤ 1.2 and t_f ≤ 100[mm]", "0.49")
                  .otherwise("0.76"))
          .line("Φ_z = 0.5·(1 + α_z·(λ_z − 0.2) + λ_z²)", ONE, "auxiliary value", BUCKLING)
          .choose(
              "χ_z",
              ONE,
              "reduction for buckling",
              BUCKLING,
              Choice.when("λ_z ≤ 0.2", "1").otherwise("1/(Φ_z + √(Φ_z² − λ_z²))"))
          .line("N_Rd = min(N_{c,Rd}, χ_z·A·f_y/γ_M1)", KN, "resistance to compression", BUCKLING)
          .line(
              "n_E = N_Ed·L²/(π²·E·I)",
              ONE,
              "axial force over the Euler load in the plane of bending",
              Reference.DERIVED)
          .choose(
              "k",
              ONE,
              "growth of the moment over the free length",
              Reference.DERIVED,
              Choice.when("n_E ≤ 0.9", "1/(1 − n_E)"))
          .line(
              "M_Ed = (M·s_b + N_Ed·abs(e_N))·k",
              KNM,
              "bending moment of one beam with the eccentric load",
              Reference.DERIVED)
          .line("M_Rd = W·f_y/γ_M0", KNM, "resistance of the section to bending", BENDING)
          .line("u = N_Ed/N_Rd + M_Ed/M_Rd", ONE, "interaction", AXIAL_CLAUSE)
          .require("u ≤ 1", "axial load and bending together", AXIAL_CLAUSE);

  private EnBeam() {}

  private static CalcSheet moment(String title, String axis) {
    return CalcSheet.named(title)
        .given("M", KNM_M, "bending moment of the wall")
        .given("s_b", M, "spacing of the beams")
        .given("W_{pl," + axis + "}", CM3, "plastic section modulus")
        .given("W_{el," + axis + "}", CM3, "elastic section modulus")
        .line("M_Ed = M·s_b", KNM, "bending moment of one beam", Reference.DERIVED);
  }

  private static CalcSheet flange(CalcSheet sheet) {
    return sheet
        .given("b", MM, "flange width")
        .given("t_f", MM, "flange thickness")
        .given("t_w", MM, "web thickness")
        .given("r", MM, "root radius")
        .given("f_y", N_MM2, "yield strength")
        .given("γ_M0", ONE, "partial factor of cross-sections")
        .line("ε = √(235[N/mm²]/f_y)", ONE, "strength factor", CLASS)
        .line("c_f = (b − t_w)/2 − r", MM, "outstand of the flange", CLASS)
        .line("λ_f = c_f/t_f", ONE, "slenderness of the flange", CLASS);
  }
}
