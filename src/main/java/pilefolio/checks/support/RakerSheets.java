package pilefolio.checks.support;

import static pilefolio.units.Units.DEG;
import static pilefolio.units.Units.KN;
import static pilefolio.units.Units.KN_M;
import static pilefolio.units.Units.KN_M3;
import static pilefolio.units.Units.KPA;
import static pilefolio.units.Units.M;
import static pilefolio.units.Units.MM;
import static pilefolio.units.Units.ONE;

import pilefolio.trace.CalcSheet;
import pilefolio.trace.Reference;

/** Calculation sheet of the footing on which a raker stands in the excavation. */
final class RakerSheets {
  /** Bearing and sliding of the footing. */
  static final CalcSheet FOOTING =
      CalcSheet.named("Footing of a raker")
          .given("T", KN_M, "horizontal support force")
          .given("s", M, "spacing along the wall")
          .given("i", DEG, "inclination of the raker, down from the wall")
          .given("B", M, "length of the base in the direction of the raker")
          .given("L", M, "width of the base along the wall")
          .given("t", M, "thickness")
          .given("γ_c", KN_M3, "unit weight of concrete")
          .given("ω", DEG, "tilt of the base towards the raker")
          .given("e", MM, "distance of the axis of the raker from the middle of the base")
          .given("q_R", KPA, "bearing resistance; allowable or design value as the basis needs")
          .given("μ", ONE, "friction coefficient of the base, likewise")
          .given("P_R", KN, "horizontal resistance in front of the footing, likewise")
          .line("H = T·s", KN, "horizontal part of the force in the raker", Reference.DERIVED)
          .line(
              "V = T·s·sin(i)/cos(i)",
              KN,
              "vertical part: down on the footing, up into the wall",
              Reference.DERIVED)
          .line("W = γ_c·B·L·t", KN, "weight of the footing", Reference.DERIVED)
          .line("N = (V + W)·cos(ω) + H·sin(ω)", KN, "force square to the base", Reference.DERIVED)
          .line("S = H·cos(ω) − (V + W)·sin(ω)", KN, "force along the base", Reference.DERIVED)
          .condition("e ≤ B/3", "at least a third of the base bears", Reference.PRACTICE)
          .line(
              "q = N/((B − 2·abs(e))·L)", KPA, "pressure on the part that bears", Reference.DERIVED)
          .line("R_S = N·μ + P_R", KN, "resistance to sliding", Reference.DERIVED)
          .require("q ≤ q_R", "the ground carries the footing", Reference.DERIVED)
          .require("S ≤ R_S", "the footing does not slide", Reference.DERIVED)
          .note(
              "The wall must carry V upward by its weight, friction or a connection. The berm before"
                  + " the wall stays until the raker is tight; the ground around the footing is not"
                  + " dug out, softened by water or run over while the raker is loaded.");

  private RakerSheets() {}
}
