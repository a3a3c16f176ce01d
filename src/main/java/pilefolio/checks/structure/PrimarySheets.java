package pilefolio.checks.structure;

import static pilefolio.units.Units.KN_M;
import static pilefolio.units.Units.KPA;
import static pilefolio.units.Units.M;
import static pilefolio.units.Units.MM;
import static pilefolio.units.Units.MPA;
import static pilefolio.units.Units.ONE;

import pilefolio.trace.CalcSheet;
import pilefolio.trace.Choice;
import pilefolio.trace.Reference;

/**
 * Calculation sheets of a primary pile that spans between its two secondaries as a plain arch.
 *
 * <p>A strip of unit height; the arch has half the thickness of the joint.
 */
final class PrimarySheets {
  private static final Reference ARCH = Reference.DERIVED;
  private static final Reference EN = Reference.memory("EN 1992-1-1:2004", "12.3.1");
  private static final Reference EN_SHEAR = Reference.memory("EN 1992-1-1:2004", "12.6.3");
  private static final Reference ACI = Reference.memory("ACI 318-14", "chapter 14");

  /** Contractor's limits, for weak mixes too. */
  static final CalcSheet PRACTICE =
      arch("Primary pile spanning between secondaries, usual limits")
          .line("f_c = k_s·f_m", MPA, "cylinder strength", Reference.DERIVED)
          .line("σ_lim = 0.4·f_c", MPA, "usual limit of compression", Reference.PRACTICE)
          .line("τ_lim = 0.06[MPa]·√(f_c/1[MPa])", MPA, "usual limit of shear", Reference.PRACTICE)
          .require("σ_a ≤ σ_lim", "compression of the arch", Reference.PRACTICE)
          .line("τ = V_j/c", MPA, "mean shear stress in the joint", ARCH)
          .require("τ ≤ τ_lim", "shear in the joint", Reference.PRACTICE);

  /** Plain concrete to EN 1992-1-1. */
  static final CalcSheet EN_PLAIN =
      arch("Primary pile spanning between secondaries, plain concrete to EN 1992-1-1")
          .choose(
              "f_ck",
              MPA,
              "characteristic cylinder strength from the mean; C12/15 is the weakest class",
              Reference.memory("EN 1992-1-1:2004", "Table 3.1"),
              Choice.when("k_s·f_m ≥ 20[MPa]", "k_s·f_m − 8[MPa]"))
          .given("γ_C", ONE, "partial factor of concrete")
          .given("α_{cc,pl}", ONE, "reduction of the compressive strength")
          .given("α_{ct,pl}", ONE, "reduction of the tensile strength")
          .line(
              "f_{ctk,0.05} = 0.7·0.30[MPa]·(f_ck/1[MPa])^(2/3)",
              MPA,
              "lower characteristic tensile strength",
              Reference.memory("EN 1992-1-1:2004", "Table 3.1"))
          .line("f_{cd,pl} = α_{cc,pl}·f_ck/γ_C", MPA, "design compressive strength", EN)
          .line("f_{ctd,pl} = α_{ct,pl}·f_{ctk,0.05}/γ_C", MPA, "design tensile strength", EN)
          .require("σ_a ≤ f_{cd,pl}", "compression of the arch", EN)
          .line("σ_cp = H/c", MPA, "mean compression of the joint by the thrust", EN_SHEAR)
          .line(
              "σ_{c,lim} = f_{cd,pl} − 2·√(f_{ctd,pl}·(f_{ctd,pl} + f_{cd,pl}))",
              MPA,
              "compression above which shear strength falls",
              EN_SHEAR)
          .line(
              "f_cvd = √(f_{ctd,pl}² + σ_cp·f_{ctd,pl} − (max(0, σ_cp − σ_{c,lim})/2)²)",
              MPA,
              "design shear strength",
              EN_SHEAR)
          .line("τ_cp = 1.5·V_j/c", MPA, "greatest shear stress of the joint", EN_SHEAR)
          .require("τ_cp ≤ f_cvd", "shear in the joint", EN_SHEAR);

  /** Plain concrete to ACI 318. */
  static final CalcSheet ACI_PLAIN =
      arch("Primary pile spanning between secondaries, plain concrete to ACI 318")
          .given("γ_H", ONE, "multiplier of earth and water pressure")
          .choose(
              "f'_c",
              MPA,
              "specified cylinder strength from the mean; 2500 psi is the least",
              Reference.memory("ACI 318-14", "19.2.1"),
              Choice.when("k_s·f_m ≥ 3500[psi]", "k_s·f_m − 1000[psi]"))
          .given("φ_c", ONE, "strength reduction factor")
          .line("σ_u = γ_H·σ_a", MPA, "factored compression of the arch", ACI)
          .line("σ_n = 0.60·f'_c", MPA, "nominal bearing stress of the arch", ACI)
          .require("σ_u ≤ φ_c·σ_n", "compression of the arch", ACI)
          .line("V_u = γ_H·V_j", KN_M, "factored shear in one joint", ACI)
          .line(
              "V_n = 4/3·1[psi]·√(f'_c/1[psi])·c",
              KN_M,
              "nominal shear strength, normal-weight concrete",
              ACI)
          .require("V_u ≤ φ_c·V_n", "shear in the joint", ACI);

  private PrimarySheets() {}

  private static CalcSheet arch(String title) {
    return CalcSheet.named(title)
        .given("p", KPA, "greatest pressure of earth and water on the exposed wall")
        .given("s", MM, "distance of the centres of neighbouring piles as set out")
        .given("D_p", MM, "diameter of the primary")
        .given("D_s", MM, "diameter of the secondary")
        .given("e_0", MM, "tolerance on position")
        .given("n", ONE, "tolerance on verticality, 1 in n")
        .given("z", M, "depth of the deepest excavation below the guide wall")
        .given("k_f", ONE, "rise of the arch over the thickness of the joint")
        .line(
            "d = s + √(2)·√(e_0² + (z/n)²)",
            MM,
            "likely distance of the centres at that depth",
            ARCH)
        .line("x = (d² − D_p²/4 + D_s²/4)/(2·d)", MM, "centre of the secondary to the joint", ARCH)
        .line("c = 2·√(D_s²/4 − x²)", MM, "thickness of the joint", ARCH)
        .line("l = 2·d − D_s", MM, "clear span between secondaries", ARCH)
        .line("f = k_f·c", MM, "rise of the arch", Reference.PRACTICE)
        .line("H = p·l²/(8·f)", KN_M, "thrust of the arch on a strip of unit height", ARCH)
        .line("σ_a = H/(c/2)", MPA, "compression in an arch of half the thickness", ARCH)
        .line("V_j = p·l/2", KN_M, "shear in one joint", ARCH)
        .given("f_m", MPA, "strength of the primary at 28 days")
        .given("k_s", ONE, "strength of a cylinder over that of the specimen");
  }
}
