package pilefolio.checks.structure;

import static pilefolio.units.Units.KNM_M;
import static pilefolio.units.Units.KN_M;
import static pilefolio.units.Units.MM;
import static pilefolio.units.Units.MPA;
import static pilefolio.units.Units.ONE;

import pilefolio.trace.CalcSheet;
import pilefolio.trace.Reference;
import pilefolio.units.Unit;
import pilefolio.units.Units;

/** Calculation sheets of shotcrete that spans between soldier beams. */
final class ShotcreteSheets {
  private static final Unit CM2_M = Units.of("cm²/m");
  private static final Unit CM3_M = Units.of("cm³/m");
  private static final Reference ACI_22 = Reference.memory("ACI 318-14", "22.2");
  private static final Reference ACI_SHEAR = Reference.memory("ACI 318-14", "22.5.5");
  private static final Reference ACI_PLAIN = Reference.memory("ACI 318-14", "14.5");
  private static final Reference EN = Reference.memory("EN 1992-1-1:2004", "3.1.7");
  private static final Reference EN_SHEAR = Reference.memory("EN 1992-1-1:2004", "6.2.2");
  private static final Reference EN_PLAIN = Reference.memory("EN 1992-1-1:2004", "12.3.1");
  private static final Reference EN_TENSION = Reference.memory("EN 1992-1-1:2004", "Table 3.1");

  /** Reinforced strip to ACI 318. */
  static final CalcSheet ACI_REINFORCED =
      factored("Shotcrete lagging with reinforcement, ACI 318")
          .given("d", MM, "depth of the reinforcement from the compressed face")
          .given("A_s", CM2_M, "reinforcement across the span, on a strip of unit height")
          .given("f_y", MPA, "yield strength of the reinforcement")
          .given("f'_c", MPA, "specified cylinder strength")
          .given("φ_f", ONE, "strength reduction factor of bending")
          .given("φ_v", ONE, "strength reduction factor of shear")
          .line("a = A_s·f_y/(0.85·f'_c)", MM, "depth of the stress block", ACI_22)
          .condition("a ≤ 0.3·d", "the reinforcement yields well before the concrete", ACI_22)
          .line("M_n = A_s·f_y·(d − a/2)", KNM_M, "nominal moment", ACI_22)
          .line("M_d = φ_f·M_n", KNM_M, "design moment", ACI_22)
          .require("M_u ≤ M_d", "the strip carries the bending moment", ACI_22)
          .line("V_n = 2·1[psi]·√(f'_c/1[psi])·d", KN_M, "nominal shear strength", ACI_SHEAR)
          .line("V_d = φ_v·V_n", KN_M, "design shear strength", ACI_SHEAR)
          .require("V_u ≤ V_d", "the strip carries the shear force", ACI_SHEAR);

  /** Plain strip to ACI 318. */
  static final CalcSheet ACI_PLAIN_STRIP =
      factored("Shotcrete lagging without reinforcement, ACI 318")
          .given("t", MM, "thickness of the shotcrete")
          .given("f'_c", MPA, "specified cylinder strength")
          .given("φ_c", ONE, "strength reduction factor of plain concrete")
          .line("S = t²/6", CM3_M, "section modulus of a strip", Reference.DERIVED)
          .line("M_n = 5·1[psi]·√(f'_c/1[psi])·S", KNM_M, "nominal moment", ACI_PLAIN)
          .line("M_d = φ_c·M_n", KNM_M, "design moment", ACI_PLAIN)
          .require("M_u ≤ M_d", "the strip carries the bending moment", ACI_PLAIN)
          .line("V_n = 4/3·1[psi]·√(f'_c/1[psi])·t", KN_M, "nominal shear strength", ACI_PLAIN)
          .line("V_d = φ_c·V_n", KN_M, "design shear strength", ACI_PLAIN)
          .require("V_u ≤ V_d", "the strip carries the shear force", ACI_PLAIN);

  /** Reinforced strip to EN 1992-1-1. */
  static final CalcSheet EN_REINFORCED =
      LaggingSheets.strip("Shotcrete lagging with reinforcement, EN 1992-1-1")
          .given("d", MM, "depth of the reinforcement from the compressed face")
          .given("A_s", CM2_M, "reinforcement across the span, on a strip of unit height")
          .given("f_yk", MPA, "yield strength of the reinforcement")
          .given("f_ck", MPA, "characteristic cylinder strength")
          .given("α_cc", ONE, "reduction of the compressive strength")
          .given("γ_C", ONE, "partial factor of concrete")
          .given("γ_S", ONE, "partial factor of reinforcement")
          .line("f_cd = α_cc·f_ck/γ_C", MPA, "design compressive strength", EN)
          .line("f_yd = f_yk/γ_S", MPA, "design strength of the reinforcement", EN)
          .line("x = A_s·f_yd/(0.8·f_cd)", MM, "depth of the neutral axis", EN)
          .condition("x ≤ 0.45·d", "the reinforcement yields well before the concrete", EN)
          .line("M_Rd = A_s·f_yd·(d − 0.4·x)", KNM_M, "design moment of resistance", EN)
          .require("M ≤ M_Rd", "the strip carries the bending moment", EN)
          .line("k = min(2, 1 + √(200[mm]/d))", ONE, "size factor", EN_SHEAR)
          .line("ρ_l = min(0.02, A_s/d)", ONE, "share of reinforcement", EN_SHEAR)
          .line(
              "v_Rd = max(0.18/γ_C·k·(100·ρ_l·f_ck/1[MPa])^(1/3)·1[MPa],"
                  + " 0.035·k^1.5·√(f_ck/1[MPa])·1[MPa])",
              MPA,
              "design shear strength without stirrups",
              EN_SHEAR)
          .line("V_Rd = v_Rd·d", KN_M, "design shear resistance", EN_SHEAR)
          .require("V ≤ V_Rd", "the strip carries the shear force", EN_SHEAR);

  /** Plain strip to EN 1992-1-1. */
  static final CalcSheet EN_PLAIN_STRIP =
      LaggingSheets.strip("Shotcrete lagging without reinforcement, EN 1992-1-1")
          .given("t", MM, "thickness of the shotcrete")
          .given("f_ck", MPA, "characteristic cylinder strength")
          .given("γ_C", ONE, "partial factor of concrete")
          .given("α_{ct,pl}", ONE, "reduction of the tensile strength")
          .line(
              "f_{ctk,0.05} = 0.7·0.30[MPa]·(f_ck/1[MPa])^(2/3)",
              MPA,
              "lower characteristic tensile strength",
              EN_TENSION)
          .line("f_{ctd,pl} = α_{ct,pl}·f_{ctk,0.05}/γ_C", MPA, "design tensile strength", EN_PLAIN)
          .line("S = t²/6", CM3_M, "section modulus of a strip", Reference.DERIVED)
          .line("M_Rd = f_{ctd,pl}·S", KNM_M, "design moment of resistance", EN_PLAIN)
          .require("M ≤ M_Rd", "the strip carries the bending moment", EN_PLAIN)
          .line("V_Rd = f_{ctd,pl}·t/1.5", KN_M, "design shear resistance", EN_PLAIN)
          .require("V ≤ V_Rd", "the strip carries the shear force", EN_PLAIN);

  private ShotcreteSheets() {}

  private static CalcSheet factored(String title) {
    return LaggingSheets.strip(title)
        .given("γ_H", ONE, "multiplier of earth and water pressure")
        .line("M_u = γ_H·M", KNM_M, "factored moment", ACI_22)
        .line("V_u = γ_H·V", KN_M, "factored shear force", ACI_22);
  }
}
