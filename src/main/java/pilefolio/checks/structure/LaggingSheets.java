package pilefolio.checks.structure;

import static pilefolio.units.Units.KNM_M;
import static pilefolio.units.Units.KN_M;
import static pilefolio.units.Units.KPA;
import static pilefolio.units.Units.M;
import static pilefolio.units.Units.MM;
import static pilefolio.units.Units.MPA;
import static pilefolio.units.Units.ONE;

import pilefolio.trace.CalcSheet;
import pilefolio.trace.Reference;
import pilefolio.units.Unit;
import pilefolio.units.Units;

/** Calculation sheets of timber lagging between soldier beams. */
final class LaggingSheets {
  private static final Unit CM3_M = Units.of("cm³/m");
  private static final Reference TABLE = Reference.memory("FHWA-RD-75-130 (1976)", "");
  private static final Reference NDS =
      Reference.memory("National Design Specification for Wood Construction", "");
  private static final Reference EC5 = Reference.memory("EN 1995-1-1:2004", "2.4.1");
  private static final Reference EC5_SHEAR = Reference.memory("EN 1995-1-1:2004", "6.1.7");

  /** Thickness against the usual table. */
  static final CalcSheet THICKNESS =
      span(CalcSheet.named("Thickness of timber lagging by table"))
          .note("The place in the table, with its depth and span, stands beside its value.")
          .given("t_t", MM, "thickness of the table, rough-cut boards of construction grade")
          .given("t", MM, "nominal thickness of the boards")
          .require("t ≥ t_t", "the boards are as thick as the table asks", TABLE);

  /** Boards to allowable stresses. */
  static final CalcSheet ALLOWABLE =
      board("Bending and shear of timber lagging, allowable stress")
          .given("F_b", MPA, "reference design value of bending")
          .given("F_v", MPA, "reference design value of shear")
          .given("k_t", ONE, "product of the adjustment factors")
          .line("F'_b = k_t·F_b", MPA, "allowable bending stress", NDS)
          .require("σ ≤ F'_b", "the boards carry the bending moment", NDS)
          .line("τ = 1.5·V/t_e", MPA, "greatest shear stress, at the flange", Reference.DERIVED)
          .line("F'_v = k_t·F_v", MPA, "allowable shear stress", NDS)
          .require("τ ≤ F'_v", "the boards carry the shear force", NDS);

  /** Boards to EN 1995-1-1. */
  static final CalcSheet EN =
      board("Bending and shear of timber lagging, EN 1995-1-1")
          .given("f_{m,k}", MPA, "characteristic bending strength")
          .given("f_{v,k}", MPA, "characteristic shear strength")
          .given("k_t", ONE, "modification factor of duration and moisture")
          .given("γ_{M,t}", ONE, "partial factor of timber")
          .given("k_cr", ONE, "share of the width that cracks leave for shear")
          .line("f_{m,d} = k_t·f_{m,k}/γ_{M,t}", MPA, "design bending strength", EC5)
          .require("σ ≤ f_{m,d}", "the boards carry the bending moment", EC5)
          .line("τ = 1.5·V/(k_cr·t_e)", MPA, "greatest shear stress, at the flange", EC5_SHEAR)
          .line("f_{v,d} = k_t·f_{v,k}/γ_{M,t}", MPA, "design shear strength", EC5)
          .require("τ ≤ f_{v,d}", "the boards carry the shear force", EC5_SHEAR);

  private LaggingSheets() {}

  /** The clear span between the flanges of two beams. */
  static CalcSheet span(CalcSheet sheet) {
    return sheet
        .given("s", M, "spacing of the beams")
        .given("b_f", MM, "flange width of a beam")
        .line("L = s − b_f", M, "clear span between flanges", Reference.DERIVED);
  }

  /** Pressure, moment and shear of a strip of unit height on a clear span. */
  static CalcSheet strip(String title) {
    return span(CalcSheet.named(title)
            .given("p", KPA, "greatest pressure of earth and water on the exposed wall")
            .given("k_a", ONE, "share of it that reaches the lagging; the rest arches"))
        .line("p_l = k_a·p", KPA, "pressure on the lagging", Reference.PRACTICE)
        .line("M = p_l·L²/8", KNM_M, "bending moment of a strip of unit height", Reference.DERIVED)
        .line("V = p_l·L/2", KN_M, "shear force at the flange", Reference.DERIVED);
  }

  private static CalcSheet board(String title) {
    return strip(title)
        .given("t", MM, "nominal thickness of the boards")
        .given("Δ_t", MM, "by how much rough-cut boards run under it")
        .line("t_e = t − Δ_t", MM, "thickness that counts", Reference.DERIVED)
        .line("S = t_e²/6", CM3_M, "section modulus of a strip", Reference.DERIVED)
        .line("σ = M/S", MPA, "bending stress", Reference.DERIVED);
  }
}
