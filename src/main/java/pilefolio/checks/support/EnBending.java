package pilefolio.checks.support;

import static pilefolio.units.Units.CM3;
import static pilefolio.units.Units.KN;
import static pilefolio.units.Units.KNM;
import static pilefolio.units.Units.ONE;

import pilefolio.trace.CalcSheet;
import pilefolio.trace.Choice;
import pilefolio.trace.Reference;

/** Bending of rolled sections after EN 1993-1-1: lines that sheets of struts and walers share. */
final class EnBending {
  private static final String CODE = "EN 1993-1-1:2005";

  /** Classes of cross-sections. */
  static final Reference CLASS = Reference.quoted(CODE, "Table 5.2");

  private static final Reference LTB = Reference.quoted(CODE, "6.3.2.3");

  private EnBending() {}

  /** Adds the slenderness of flange and web. */
  static CalcSheet plates(CalcSheet sheet) {
    return sheet
        .line("ε = √(235[N/mm²]/f_y)", ONE, "strength factor", CLASS)
        .line("λ_f = ((b − t_w)/2 − r)/t_f", ONE, "slenderness of the flange", CLASS)
        .line("λ_w = (h_w − 2·r)/t_w", ONE, "slenderness of the web", CLASS);
  }

  /**
   * Adds the buckling resistance to bending about the strong axis.
   *
   * @param length symbol of the length over which nothing holds the beam sideways
   * @param plastic limits within which the plastic section modulus counts
   * @param elastic limits within which the elastic one counts
   */
  static CalcSheet unheld(CalcSheet sheet, String length, String plastic, String elastic) {
    return sheet
        .choose(
            "W",
            CM3,
            "section modulus of class 1 or 2, or of class 3",
            CLASS,
            Choice.when(plastic, "W_pl").or(elastic, "W_el"))
        .line(
            "N_{cr,z} = π²·E·I_z/" + length + "²",
            KN,
            "Euler load about the weak axis",
            Reference.DERIVED)
        .line(
            "M_cr = N_{cr,z}·√(I_w/I_z + G·I_t/N_{cr,z})",
            KNM,
            "elastic critical moment, C_1 = 1",
            Reference.quoted("SCI P364", "Example 3"))
        .line("λ_LT = √(W·f_y/M_cr)", ONE, "slenderness", LTB)
        .choose(
            "α_LT",
            ONE,
            "imperfection of the buckling curve, rolled I",
            LTB,
            Choice.when("h/b ≤ 2", "0.34").otherwise("0.49"))
        .line("Φ_LT = 0.5·(1 + α_LT·(λ_LT − λ_{LT,0}) + β_LT·λ_LT²)", ONE, "auxiliary value", LTB)
        .choose(
            "χ_LT",
            ONE,
            "reduction for buckling",
            LTB,
            Choice.when("λ_LT ≤ λ_{LT,0}", "1")
                .otherwise("min(1, 1/λ_LT², 1/(Φ_LT + √(Φ_LT² − β_LT·λ_LT²)))"))
        .line("M_{b,Rd} = χ_LT·W·f_y/γ_M1", KNM, "resistance to bending", LTB);
  }
}
