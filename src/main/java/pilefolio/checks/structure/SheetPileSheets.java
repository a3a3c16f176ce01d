package pilefolio.checks.structure;

import static pilefolio.units.Units.DEG;
import static pilefolio.units.Units.GPA;
import static pilefolio.units.Units.KNM_M;
import static pilefolio.units.Units.KN_M;
import static pilefolio.units.Units.M;
import static pilefolio.units.Units.MM;
import static pilefolio.units.Units.N_MM2;
import static pilefolio.units.Units.ONE;

import pilefolio.trace.CalcSheet;
import pilefolio.trace.Choice;
import pilefolio.trace.Reference;
import pilefolio.units.Unit;
import pilefolio.units.Units;

/** Calculation sheets of steel sheet piles, by the metre of wall. */
final class SheetPileSheets {
  private static final Unit CM2_M = Units.of("cm²/m");
  private static final Unit CM3_M = Units.of("cm³/m");
  private static final Unit CM4_M = Units.of("cm⁴/m");
  private static final Reference ASD =
      Reference.memory("AISC Specification, allowable stress design (1989)", "");
  private static final String EN_CODE = "EN 1993-5:2007";
  private static final Reference EN_CLASS = Reference.memory(EN_CODE, "Table 5.1");
  private static final Reference EN_BENDING = Reference.memory(EN_CODE, "5.2.2");
  private static final Reference EN_AXIAL = Reference.memory(EN_CODE, "5.2.3");

  /** Bending to allowable stresses. */
  static final CalcSheet ASD_BENDING =
      thinned("Bending of the sheet piles, stress against yield strength")
          .given("M", KNM_M, "greatest bending moment of the wall")
          .given("W_el", CM3_M, "elastic section modulus")
          .given("β_B", ONE, "share of it that counts where interlocks slip")
          .given("F_y", N_MM2, "yield strength")
          .given("k_b", ONE, "allowable bending stress over yield strength")
          .line("W_e = β_B·k_c·W_el", CM3_M, "section modulus that counts", Reference.DERIVED)
          .line("σ = M/W_e", N_MM2, "bending stress", Reference.DERIVED)
          .line("F_b = k_b·F_y", N_MM2, "allowable bending stress", ASD)
          .require("σ ≤ F_b", "the sheet piles carry the bending moment", ASD);

  /** Shear to allowable stresses. */
  static final CalcSheet ASD_SHEAR =
      web("Shear of the sheet piles, stress against yield strength")
          .given("F_y", N_MM2, "yield strength")
          .given("k_v", ONE, "allowable shear stress over yield strength")
          .line("τ = V/A_v", N_MM2, "mean shear stress of the webs", Reference.DERIVED)
          .line("F_v = k_v·F_y", N_MM2, "allowable shear stress", ASD)
          .require("τ ≤ F_v", "the webs carry the shear force", ASD);

  /** Axial force with bending to allowable stresses. */
  static final CalcSheet ASD_AXIAL =
      axial("Axial force with bending of the sheet piles, stress against yield strength")
          .given("M", KNM_M, "bending moment of the wall")
          .given("W_el", CM3_M, "elastic section modulus")
          .given("β_B", ONE, "share of it that counts where interlocks slip")
          .given("F_y", N_MM2, "yield strength")
          .given("k_b", ONE, "allowable stress over yield strength")
          .line("N_E = π²·E·I_e/L_c²", KN_M, "Euler load", Reference.DERIVED)
          .condition("N ≤ 0.04·N_E", "the axial force is too small to buckle the wall", EN_AXIAL)
          .line(
              "σ = N/(k_c·A) + M/(β_B·k_c·W_el)",
              N_MM2,
              "greatest stress of axial force and bending",
              Reference.DERIVED)
          .line("F_a = k_b·F_y", N_MM2, "allowable stress", ASD)
          .require("σ ≤ F_a", "axial force and bending together", ASD);

  /** Bending to EN 1993-5. */
  static final CalcSheet EN_BENDING_SHEET =
      resistance("Bending of the sheet piles, EN 1993-5")
          .given("M_Ed", KNM_M, "greatest bending moment of the wall")
          .given("V_Ed", KN_M, "greatest shear force of the wall, taken to act with it")
          .given("V_Rd", KN_M, "design shear resistance, from the check of shear")
          .choose(
              "ρ",
              ONE,
              "loss of bending resistance by shear",
              EN_BENDING,
              Choice.when("V_Ed ≤ 0.5·V_Rd", "0").or("V_Ed ≤ V_Rd", "(2·V_Ed/V_Rd − 1)²"))
          .line(
              "M_{V,Rd} = (1 − ρ)·M_{c,Rd}",
              KNM_M,
              "bending resistance beside shear; the whole section is reduced, on the safe side",
              EN_BENDING)
          .require("M_Ed ≤ M_{V,Rd}", "the sheet piles carry the bending moment", EN_BENDING);

  /** Shear to EN 1993-5. */
  static final CalcSheet EN_SHEAR =
      web("Shear of the sheet piles, EN 1993-5")
          .given("α_w", DEG, "slope of the webs")
          .given("f_y", N_MM2, "yield strength")
          .given("γ_M0", ONE, "partial factor of cross-sections")
          .line("ε = √(235[N/mm²]/f_y)", ONE, "factor of the yield strength", EN_CLASS)
          .line("c = (h − t_f)/sin(α_w)", MM, "length of a web", Reference.DERIVED)
          .line("t_r = k_c·t_w", MM, "thickness of a web after corrosion", Reference.DERIVED)
          .choose(
              "V_Rd",
              KN_M,
              "design shear resistance; webs more slender than 72·ε may buckle and are not covered",
              EN_BENDING,
              Choice.when("c/t_r ≤ 72·ε", "A_v·f_y/(√(3)·γ_M0)"))
          .require("V ≤ V_Rd", "the webs carry the shear force", EN_BENDING);

  /** Axial force with bending to EN 1993-5. */
  static final CalcSheet EN_AXIAL_SHEET =
      axial("Axial force with bending of the sheet piles, EN 1993-5")
          .given("M_Ed", KNM_M, "bending moment of the wall")
          .given("M_{V,Rd}", KNM_M, "bending resistance, from the check of bending")
          .given("f_y", N_MM2, "yield strength")
          .given("γ_M0", ONE, "partial factor of cross-sections")
          .line("N_cr = π²·E·I_e/L_c²", KN_M, "Euler load", EN_AXIAL)
          .condition("N ≤ 0.04·N_cr", "the axial force is too small to buckle the wall", EN_AXIAL)
          .line("N_{pl,Rd} = k_c·A·f_y/γ_M0", KN_M, "axial resistance", EN_AXIAL)
          .line("u = N/N_{pl,Rd} + M_Ed/M_{V,Rd}", ONE, "interaction, linear", EN_AXIAL)
          .require("u ≤ 1", "axial force and bending together", EN_AXIAL);

  private SheetPileSheets() {}

  private static CalcSheet thinned(String title) {
    return CalcSheet.named(title)
        .given("t_f", MM, "flange thickness")
        .given("Δ_c", MM, "loss by corrosion over the life of the wall, both faces together")
        .line(
            "k_c = (t_f − Δ_c)/t_f",
            ONE,
            "share of the section that is left, in proportion to thickness",
            Reference.PRACTICE);
  }

  private static CalcSheet web(String title) {
    return CalcSheet.named(title)
        .given("V", KN_M, "greatest shear force of the wall")
        .given("t_f", MM, "flange thickness")
        .given("t_w", MM, "web thickness")
        .given("Δ_c", MM, "loss by corrosion over the life of the wall, both faces together")
        .given("h", MM, "depth of the wall section")
        .given("b_w", MM, "length of wall that has one web")
        .line("k_c = (t_w − Δ_c)/t_w", ONE, "share of the web that is left", Reference.PRACTICE)
        .line(
            "A_v = k_c·t_w·(h − t_f)/b_w",
            CM2_M,
            "projected area of the webs",
            Reference.memory(EN_CODE, "5.2.2"));
  }

  private static CalcSheet axial(String title) {
    return thinned(title)
        .given("F_h", KN_M, "horizontal support force of the wall")
        .given("i", DEG, "inclination of the support below the horizontal")
        .given("A", CM2_M, "cross-section")
        .given("I", CM4_M, "second moment of area")
        .given("β_D", ONE, "share of it that counts where interlocks slip")
        .given("E", GPA, "modulus of elasticity")
        .given("L_c", M, "length between the support and the point held by the ground")
        .line("N = F_h·sin(i)/cos(i)", KN_M, "axial force of the wall", Reference.DERIVED)
        .line("I_e = β_D·k_c·I", CM4_M, "second moment of area that counts", Reference.DERIVED);
  }

  private static CalcSheet resistance(String title) {
    return thinned(title)
        .given("b", MM, "flat width of a flange between its rounded corners")
        .given("W_el", CM3_M, "elastic section modulus")
        .given("W_pl", CM3_M, "plastic section modulus")
        .given("β_B", ONE, "factor for interlocks that slip")
        .given("f_y", N_MM2, "yield strength")
        .given("γ_M0", ONE, "partial factor of cross-sections")
        .given("λ_2", ONE, "limit of class 2 of this shape")
        .given("λ_3", ONE, "limit of class 3 of this shape")
        .line("ε = √(235[N/mm²]/f_y)", ONE, "factor of the yield strength", EN_CLASS)
        .line("λ = b/(k_c·t_f)/ε", ONE, "slenderness of a flange", EN_CLASS)
        .choose(
            "W_c",
            CM3_M,
            "plastic modulus in class 1 or 2, elastic in class 3; class 4 is not covered",
            EN_BENDING,
            Choice.when("λ ≤ λ_2", "W_pl").or("λ ≤ λ_3", "W_el"))
        .line("M_{c,Rd} = β_B·k_c·W_c·f_y/γ_M0", KNM_M, "design moment of resistance", EN_BENDING);
  }
}
