package pilefolio.checks.stability;

import static pilefolio.units.Units.KN_M3;
import static pilefolio.units.Units.ONE;

import java.util.Optional;
import pilefolio.analysis.seepage.FlowNet;
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
  private static final String NET = "flow net by finite volumes";

  static final CalcSheet SHEET =
      against(
          flow("Gradient where water leaves in front of the wall")
              .line("i_e = h/(π·A·(1 − cos(θ)))", ONE, "exit gradient at the wall", FLOW));

  static final CalcSheet BY_NET =
      against(
          byNet("Gradient where water leaves in front of the wall, by a flow net")
              .found("i_e", ONE, "exit gradient at the wall", NET)
              .line("i_m = h/D", ONE, "all of the head lost in front, for comparison", FLOW));

  private static CalcSheet against(CalcSheet sheet) {
    return sheet
        .given("γ", KN_M3, "saturated unit weight of the lightest layer")
        .given("γ_w", KN_M3, "unit weight of water")
        .given("F_i", ONE, "least factor")
        .line("i_c = (γ − γ_w)/γ_w", ONE, "critical gradient", Reference.DERIVED)
        .line("F = i_c/i_e", ONE, "factor of safety", Reference.PRACTICE)
        .require("F ≥ F_i", "water does not wash ground out", Reference.PRACTICE);
  }

  Piping() {
    super("piping", "Exit gradient in front of the wall", SHEET, BY_NET);
  }

  @Override
  Calculation calculate(
      Job job,
      DesignSituation s,
      ToeSeepage seepage,
      Optional<FlowNet> net,
      Given weight,
      Given leastWeight) {
    return net.map(n -> fill(seepage, n, leastWeight))
        .orElseGet(() -> fill(seepage, leastWeight))
        .set("F_i", From.factor(job, "piping.safety", s.combination().id()))
        .calculate();
  }

  /** Hands in all but the factor. */
  static Binding fill(ToeSeepage seepage, Given weight) {
    return bind(SHEET, seepage, seepage.solved())
        .set("γ", weight)
        .set("γ_w", From.layout(WATER, "fresh water"));
  }

  /** Hands in all but the factor, with a flow net. */
  static Binding fill(ToeSeepage seepage, FlowNet net, Given weight) {
    return bindNet(BY_NET, seepage)
        .set("i_e", From.method(net.exitGradient(), NET + ", " + net.cells() + " cells"))
        .set("γ", weight)
        .set("γ_w", From.layout(WATER, "fresh water"));
  }
}
