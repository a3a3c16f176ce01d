package pilefolio.checks.support;

import java.util.List;
import pilefolio.checks.CheckResult;
import pilefolio.checks.From;
import pilefolio.checks.Job;
import pilefolio.model.Support;
import pilefolio.trace.Binding;
import pilefolio.trace.Binding.Row;
import pilefolio.trace.Calculation;
import pilefolio.trace.Given;

/** Loads of the tests of ground anchors, and what is accepted. */
final class AnchorTests extends SupportCheck {
  // Steps of a proof test, shares of the design load; the test load follows them.
  private static final List<Double> STEPS = List.of(0.25, 0.5, 0.75, 1.0, 1.2);

  AnchorTests() {
    super("anchor-tests", "Tests of an anchor", AnchorSheets.TESTS);
  }

  @Override
  List<CheckResult> examine(Job job, Support support) {
    return members(job)
        .anchor(support)
        .map(
            member -> {
              Anchor anchor = new Anchor(job, support, member);
              return eachCombination(
                  job, support, demand -> List.of(calculate(anchor, demand)), Anchor.OUTSIDE);
            })
        .orElse(List.of());
  }

  private static Calculation calculate(Anchor anchor, Demand demand) {
    String combination = demand.combination();
    Given multiplier = From.factor(anchor.job(), "anchor.test", combination);
    Binding binding = AnchorSheets.TESTS.bind();
    anchor.bind(binding, demand);
    binding
        .set("m_p", multiplier)
        .set("A_t", anchor.tendonArea())
        .set("f_pu", From.cell(anchor.member().strength()))
        .set("E", From.cell(anchor.member().modulus()))
        .set("L_f", anchor.freeLength())
        .set("L_b", anchor.bondLength())
        .set("L_j", From.cell(anchor.member().jackLength()))
        .set("f_P", From.factor(anchor.job(), "anchor.tendon.test", combination));
    int number = 1;
    for (double step : STEPS) {
      if (step < multiplier.si() - 1e-9) {
        binding.row(
            "steps",
            Row.of(String.valueOf(number++)).set("m", From.layout(step, "step of a proof test")));
      }
    }
    binding.row("steps", Row.of(String.valueOf(number)).set("m", multiplier));
    return binding.calculate();
  }
}
