package pilefolio.checks.structure;

import static pilefolio.units.Units.DEG;
import static pilefolio.units.Units.KN;
import static pilefolio.units.Units.KN_M;
import static pilefolio.units.Units.KPA;
import static pilefolio.units.Units.M;
import static pilefolio.units.Units.MM;
import static pilefolio.units.Units.MPA;
import static pilefolio.units.Units.ONE;

import pilefolio.trace.CalcSheet;
import pilefolio.trace.Reference;

/** Calculation sheet of the concrete that holds a beam in its bore below the excavation. */
final class ToeConcreteSheets {

  /** Pressure of the flange on the concrete, and bond along the beam. */
  static final CalcSheet SOCKET =
      CalcSheet.named("Structural concrete round the foot of the beam")
          .given("p_t", KPA, "greatest net pressure below the excavation, on the length of wall")
          .given("s_b", M, "spacing of the beams")
          .given("h", MM, "depth of the beam")
          .given("b_f", MM, "flange width")
          .given("f_k", MPA, "strength of the concrete at 28 days")
          .given("k_s", ONE, "strength of a cylinder over that of the specimen")
          .line(
              "w_t = p_t·s_b", KN_M, "greatest load of one beam on its concrete", Reference.DERIVED)
          .line("σ_t = w_t/b_f", MPA, "pressure under the flange", Reference.DERIVED)
          .line("σ_lim = 0.4·k_s·f_k", MPA, "usual limit of compression", Reference.PRACTICE)
          .require("σ_t ≤ σ_lim", "the concrete carries the flange", Reference.PRACTICE)
          .given("F_h", KN_M, "horizontal support force of the wall")
          .given("i", DEG, "inclination of the support below the horizontal")
          .given("N_0", KN, "vertical load on one beam")
          .given("L_s", M, "length of the beam in the concrete below the excavation")
          .given("τ_b", MPA, "bond of steel and concrete")
          .line("N = N_0 + F_h·sin(i)/cos(i)·s_b", KN, "axial force of one beam", Reference.DERIVED)
          .line("U = 2·(h + b_f)", MM, "perimeter of the box round the beam", Reference.DERIVED)
          .line("N_b = τ_b·U·L_s", KN, "force that bond carries", Reference.DERIVED)
          .require("N ≤ N_b", "bond carries the axial force into the concrete", Reference.DERIVED);

  private ToeConcreteSheets() {}
}
