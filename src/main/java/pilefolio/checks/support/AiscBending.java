package pilefolio.checks.support;

import static pilefolio.units.Units.KNM;
import static pilefolio.units.Units.M;
import static pilefolio.units.Units.ONE;

import pilefolio.trace.CalcSheet;
import pilefolio.trace.Choice;
import pilefolio.trace.Reference;

/** Bending of rolled sections after AISC 360: lines that sheets of struts and walers share. */
final class AiscBending {
  private static final Reference F2 = Reference.quoted("AISC 360-22", "F2");
  private static final String COMPACT = "λ_f ≤ 0.38·√(E/F_y) and λ_w ≤ 3.76·√(E/F_y)";

  private AiscBending() {}

  /**
   * Adds the nominal moment of an I section about its strong axis.
   *
   * @param length symbol of the length over which nothing holds the beam sideways
   */
  static CalcSheet unheld(CalcSheet sheet, String length) {
    String l = length;
    return sheet
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
            "nominal moment of a compact section, C_b = 1",
            F2,
            Choice.when(COMPACT + " and " + l + " ≤ L_p", "M_p")
                .or(
                    COMPACT + " and " + l + " ≤ L_r",
                    "M_p − (M_p − 0.7·F_y·S_x)·(" + l + " − L_p)/(L_r − L_p)")
                .or(
                    COMPACT,
                    "min(M_p, π²·E/(" + l + "/r_ts)²·√(1 + 0.078·j·(" + l + "/r_ts)²)·S_x)"));
  }
}
