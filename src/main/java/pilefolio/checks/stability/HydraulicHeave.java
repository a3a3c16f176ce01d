package pilefolio.checks.stability;

import static pilefolio.units.Units.KN_M3;
import static pilefolio.units.Units.KPA;
import static pilefolio.units.Units.M;
import static pilefolio.units.Units.ONE;

import java.util.Optional;
import pilefolio.analysis.seepage.FlowNet;
import pilefolio.analysis.stability.StepSeepage;
import pilefolio.checks.From;
import pilefolio.checks.Job;
import pilefolio.checks.situation.DesignSituation;
import pilefolio.trace.Binding;
import pilefolio.trace.CalcSheet;
import pilefolio.trace.Calculation;
import pilefolio.trace.Given;
import pilefolio.trace.Reference;

/** Rising water lifts the prism of ground in front of the toe. */
final class HydraulicHeave extends SeepageCheck {
  private static final Reference PRISM =
      Reference.memory("Terzaghi (1943), Theoretical Soil Mechanics", "");
  private static final Reference HYD = Reference.read("EN 1997-1:2004", "(2.9b)");

  private static final String NET = "flow net by finite volumes";

  static final CalcSheet FACTOR = factor(mapped("Prism in front of the toe, factor of safety"));
  static final CalcSheet PARTIAL = partial(mapped("Prism in front of the toe, partial factors"));
  static final CalcSheet NET_FACTOR =
      factor(netted("Prism in front of the toe by a flow net, factor of safety"));
  static final CalcSheet NET_PARTIAL =
      partial(netted("Prism in front of the toe by a flow net, partial factors"));

  private static CalcSheet factor(CalcSheet sheet) {
    return prism(sheet)
        .given("F_h", ONE, "least factor")
        .line("F = W/U", ONE, "factor of safety", PRISM)
        .require("F ≥ F_h", "water does not lift the prism", PRISM);
  }

  private static CalcSheet partial(CalcSheet sheet) {
    return prism(sheet)
        .given("γ_dst", ONE, "multiplier of the seepage force")
        .given("γ_stb", ONE, "multiplier of the weight under water")
        .line("S_d = γ_dst·U", KPA, "design seepage force per area", HYD)
        .line("G_d = γ_stb·W", KPA, "design weight under water per area", HYD)
        .require("S_d ≤ G_d", "water does not lift the prism", HYD)
        .note(
            "The condition is written in seepage force and weight under water, (2.9b). The form in"
                + " total stress and pore pressure, (2.9a), with the same factors on all of the"
                + " pore pressure asks for more; the National Annex may say which applies.");
  }

  private static CalcSheet netted(String title) {
    return byNet(title)
        .found("h_a", M, "mean head under the prism, from the wall to D/2", NET)
        .condition("h_a ≤ h", "not more than all of the difference", FLOW);
  }

  private static CalcSheet mapped(String title) {
    return flow(title)
        .line("h_t = h·θ/π", M, "head at the toe above that in front", FLOW)
        .found(
            "h_a",
            M,
            "mean head under the prism, from the wall to D/2",
            "the same flow along the level of the toe")
        .condition("h_a ≤ h_t", "it falls away from the toe", FLOW);
  }

  private static CalcSheet prism(CalcSheet sheet) {
    return sheet
        .given("γ", KN_M3, "mean unit weight of the prism, saturated")
        .given("γ_w", KN_M3, "unit weight of water")
        .line("W = (γ − γ_w)·D", KPA, "weight under water per area", PRISM)
        .line("U = γ_w·h_a", KPA, "seepage force per area", PRISM);
  }

  HydraulicHeave() {
    super(
        "hydraulic-heave",
        "Hydraulic heave in front of the toe",
        FACTOR,
        PARTIAL,
        NET_FACTOR,
        NET_PARTIAL);
  }

  @Override
  Calculation calculate(
      Job job,
      DesignSituation s,
      ToeSeepage seepage,
      Optional<FlowNet> net,
      Given weight,
      Given leastWeight) {
    boolean partial = job.basis().has("heave.permanent.destabilising");
    String combination = s.combination().id();
    Binding binding =
        net.map(n -> fill(partial ? NET_PARTIAL : NET_FACTOR, seepage, n, weight))
            .orElseGet(() -> fill(partial ? PARTIAL : FACTOR, seepage, weight));
    if (partial) {
      binding
          .set("γ_dst", From.factor(job, "heave.permanent.destabilising", combination))
          .set("γ_stb", From.factor(job, "heave.permanent.stabilising", combination));
    } else {
      binding.set("F_h", From.factor(job, "heave.prism.safety", combination));
    }
    return binding.calculate();
  }

  /** Hands in all but the factors. */
  static Binding fill(CalcSheet sheet, ToeSeepage seepage, Given weight) {
    StepSeepage solved = seepage.solved();
    return bind(sheet, seepage, solved)
        .set("h_a", From.method(solved.meanHeadUnderPrism(), "the flow, 400 steps"))
        .set("γ", weight)
        .set("γ_w", From.layout(WATER, "fresh water"));
  }

  /** Hands in all but the factors, with a flow net. */
  static Binding fill(CalcSheet sheet, ToeSeepage seepage, FlowNet net, Given weight) {
    double head = net.meanExcessHeadAtToe(seepage.front() / 2);
    return bindNet(sheet, seepage)
        .set("h_a", From.method(head, NET + ", " + net.cells() + " cells"))
        .set("γ", weight)
        .set("γ_w", From.layout(WATER, "fresh water"));
  }
}
