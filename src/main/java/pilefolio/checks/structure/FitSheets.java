package pilefolio.checks.structure;

import static pilefolio.units.Units.CM3;
import static pilefolio.units.Units.KN;
import static pilefolio.units.Units.KNM;
import static pilefolio.units.Units.KNM_M;
import static pilefolio.units.Units.KN_M;
import static pilefolio.units.Units.M;
import static pilefolio.units.Units.MM;
import static pilefolio.units.Units.MPA;
import static pilefolio.units.Units.N_MM2;
import static pilefolio.units.Units.ONE;

import pilefolio.trace.CalcSheet;
import pilefolio.trace.Choice;
import pilefolio.trace.Reference;

/** Calculation sheets of how the beam sits in its pile. */
final class FitSheets {
  private static final Reference GEOMETRY = Reference.DERIVED;

  /** Concrete between the corner of the beam and the bore. */
  static final CalcSheet COVER =
      CalcSheet.named("Cover of the beam in the bore")
          .given("D_s", MM, "diameter of the secondary")
          .given("h", MM, "depth of the beam")
          .given("b", MM, "flange width")
          .given("e_b", MM, "tolerance on the position of the beam in the bore")
          .given("c_min", MM, "least cover")
          .line("d_g = √(h² + b²)", MM, "diagonal of the beam", GEOMETRY)
          .line("c_0 = (D_s − d_g)/2", MM, "cover of a beam in the middle of the bore", GEOMETRY)
          .line("c_e = c_0 − e_b", MM, "cover at the corner if the beam stands off", GEOMETRY)
          .require("c_e ≥ c_min", "concrete all round the beam", Reference.PRACTICE);

  /** A beam that ends below cut-off. */
  static final CalcSheet BELOW_CUT_OFF =
      CalcSheet.named("Top of the beam below cut-off level")
          .given("z_c", M, "cut-off level")
          .given("z_t", M, "top of the beam")
          .given("c_t", M, "least concrete above the beam")
          .line("Δ_t = z_c − z_t", M, "concrete between cut-off and the beam", GEOMETRY)
          .require("Δ_t ≥ c_t", "the pile is trimmed clear of the beam", Reference.PRACTICE);

  /** A beam that stands out of the pile. */
  static final CalcSheet ABOVE_CUT_OFF =
      CalcSheet.named("Top of the beam above cut-off level")
          .given("z_p", M, "level of the working platform")
          .given("z_t", M, "top of the beam")
          .require("z_p ≥ z_t", "the beam ends below the working platform", Reference.PRACTICE);

  /** Concrete below the foot of the beam, EN 1992-1-1. */
  static final CalcSheet FOOT_EN =
      CalcSheet.named("Pile below the foot of the beam, plain concrete to EN 1992-1-1")
          .given("M", KNM_M, "greatest bending moment of the wall below the beam")
          .given("V", KN_M, "greatest shear force of the wall below the beam")
          .given("s_b", M, "spacing of the secondaries")
          .given("D_s", MM, "diameter of the secondary")
          .given("f_k", MPA, "strength of the secondary at 28 days")
          .given("k_s", ONE, "strength of a cylinder over that of the specimen")
          .choose(
              "f_ck",
              MPA,
              "characteristic cylinder strength; C12/15 is the weakest class",
              Reference.memory("EN 1992-1-1:2004", "Table 3.1"),
              Choice.when("k_s·f_k ≥ 12[MPa]", "k_s·f_k"))
          .given("γ_C", ONE, "partial factor of concrete")
          .given("α_{ct,pl}", ONE, "reduction of the tensile strength")
          .line(
              "f_{ctd,pl} = α_{ct,pl}·0.7·0.30[MPa]·(f_ck/1[MPa])^(2/3)/γ_C",
              MPA,
              "design tensile strength",
              Reference.memory("EN 1992-1-1:2004", "12.3.1"))
          .line("W = π·D_s³/32", CM3, "elastic section modulus of the pile", GEOMETRY)
          .line("M_Ed = M·s_b", KNM, "bending moment of one pile", GEOMETRY)
          .line("M_Rd = f_{ctd,pl}·W", KNM, "moment at which plain concrete cracks", GEOMETRY)
          .require("M_Ed ≤ M_Rd", "bending below the beam", GEOMETRY)
          .line("τ = 4·V·s_b/(3·π·D_s²/4)", MPA, "greatest shear stress of a full circle", GEOMETRY)
          .require(
              "τ ≤ f_{ctd,pl}",
              "shear below the beam",
              Reference.memory("EN 1992-1-1:2004", "12.6.3"));

  /** Concrete below the foot of the beam, ACI 318. */
  static final CalcSheet FOOT_ACI =
      CalcSheet.named("Pile below the foot of the beam, plain concrete to ACI 318")
          .given("M", KNM_M, "greatest bending moment of the wall below the beam")
          .given("V", KN_M, "greatest shear force of the wall below the beam")
          .given("s_b", M, "spacing of the secondaries")
          .given("D_s", MM, "diameter of the secondary")
          .given("f_k", MPA, "strength of the secondary at 28 days")
          .given("k_s", ONE, "strength of a cylinder over that of the specimen")
          .choose(
              "f'_c",
              MPA,
              "specified cylinder strength; 2500 psi is the least",
              Reference.memory("ACI 318-14", "19.2.1"),
              Choice.when("k_s·f_k ≥ 2500[psi]", "k_s·f_k"))
          .given("γ_H", ONE, "multiplier of earth and water pressure")
          .given("φ_c", ONE, "strength reduction factor")
          .line("W = π·D_s³/32", CM3, "elastic section modulus of the pile", GEOMETRY)
          .line("M_u = γ_H·M·s_b", KNM, "factored bending moment of one pile", GEOMETRY)
          .line(
              "M_n = 5·1[psi]·√(f'_c/1[psi])·W",
              KNM,
              "nominal moment of plain normal-weight concrete",
              Reference.memory("ACI 318-14", "14.5.2"))
          .require("M_u ≤ φ_c·M_n", "bending below the beam", GEOMETRY)
          .line("V_u = γ_H·V·s_b", KN, "factored shear force of one pile", GEOMETRY)
          .line(
              "V_n = 4/3·1[psi]·√(f'_c/1[psi])·0.8·D_s²",
              KN,
              "nominal shear strength of a circle, b_w = D and d = 0.8 D",
              Reference.memory("ACI 318-14", "14.5.5"))
          .require("V_u ≤ φ_c·V_n", "shear below the beam", GEOMETRY);

  /** Concrete that holds the compression flange. */
  static final CalcSheet RESTRAINT =
      CalcSheet.named("Concrete that holds the beam sideways")
          .given("M", KNM_M, "greatest bending moment of the wall")
          .given("s_b", M, "spacing of the beams")
          .given("h", MM, "depth of the beam")
          .given("t_f", MM, "flange thickness")
          .given("f_k", MPA, "strength of the secondary at 28 days")
          .given("k_s", ONE, "strength of a cylinder over that of the specimen")
          .line("F_f = M·s_b/(h − t_f)", KN, "force in the compression flange", GEOMETRY)
          .line("F_r = 0.025·F_f", KN, "force that keeps the flange straight", Reference.PRACTICE)
          .line(
              "σ_r = F_r/(t_f·h)",
              MPA,
              "pressure of the edge of the flange on a length equal to the depth",
              GEOMETRY)
          .line("σ_lim = 0.4·k_s·f_k", MPA, "usual limit of compression", Reference.PRACTICE)
          .require("σ_r ≤ σ_lim", "the concrete holds the flange", Reference.PRACTICE);

  /** Yield strength entered against the grade. */
  static final CalcSheet YIELD =
      CalcSheet.named("Yield strength of the beam by its thickness")
          .given("f_y", N_MM2, "yield strength entered")
          .given("f_{y,t}", N_MM2, "yield strength of the grade at the flange thickness")
          .condition(
              "f_y ≤ f_{y,t}", "the strength entered is one that the grade has", Reference.DERIVED);

  private FitSheets() {}
}
