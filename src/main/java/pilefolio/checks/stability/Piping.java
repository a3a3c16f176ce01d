package pilefolio.checks.stability;

import static pilefolio.units.Units.KN_M3;
import static pilefolio.units.Units.ONE;

import pilefolio.checks.From;
import pilefolio.checks.Job;
import pilefolio.checks.situation.DesignSituation;
import pilefolio.trace.Binding;
import pilefolio.trace.CalcSheet;
import pilefolio.trace.Calculation;
import pilefolio.trace.Given;
import pilefolio.trace.Reference;

/** Rising water washes ground out where it leaves in front of the wall. */
final class Piping extends SeepageCheck {
  static final CalcSheet SHEET =
      flow("Gradient where water leaves in front of the wall")
          .given("γ", KN_M3, "saturated unit weight of the lightest layer")
          .given("γ_w", KN_M3, "unit weight of water")
          .given("F_i", ONE, "least factor")
          .line("i_e = h/(π·A·(1 − cos(θ)))", ONE, "exit gradient at the wall", FLOW)
          .line("i_c = (γ − γ_w)/γ_w", ONE, "critical gradient", Reference.DERIVED)
          .line("F = i_c/i_e", ONE, "factor of safety", Reference.PRACTICE)
          .require("F ≥ F_i", "water does not wash ground out", Reference.PRACTICE);

  Piping() {
    super("piping", "Exit gradient in front of the wall", SHEET);
  }

  @Override
  Calculation calculate(
      Job job, DesignSituation s, ToeSeepage seepage, Given weight, Given leastWeight) {
    return fill(seepage, leastWeight)
        .set("F_i", From.factor(job, "piping.safety", s.combination().id()))
        .calculate();
  }

  /** Hands in all but the factor. */
  static Binding fill(ToeSeepage seepage, Given weight) {
    return bind(SHEET, seepage, seepage.solved())
        .set("γ", weight)
        .set("γ_w", From.layout(WATER, "fresh water"));
  }
}
