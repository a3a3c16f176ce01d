package pilefolio.checks.support;

import java.util.List;
import pilefolio.checks.CheckResult;
import pilefolio.checks.From;
import pilefolio.checks.Job;
import pilefolio.checks.RunCheck;
import pilefolio.model.Support;
import pilefolio.trace.Binding;
import pilefolio.trace.CalcSheet;
import pilefolio.trace.Calculation;

/** Tendon of ground anchors under the design force and at lock-off. */
final class AnchorTendon extends SupportCheck {
  AnchorTendon() {
    super(
        "anchor-tendon",
        "Tendon of an anchor",
        AnchorSheets.TENDON,
        AnchorSheets.TENDON_EN,
        AnchorSheets.TENDON_LRFD);
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
    Job job = anchor.job();
    String combination = demand.combination();
    CalcSheet sheet =
        switch (anchor.format()) {
          case ALLOWABLE_STRESS -> AnchorSheets.TENDON;
          case PARTIAL_FACTORS -> AnchorSheets.TENDON_EN;
          case LOAD_AND_RESISTANCE -> AnchorSheets.TENDON_LRFD;
        };
    Binding binding = sheet.bind();
    anchor.bind(binding, demand);
    binding
        .set("A_t", anchor.tendonArea())
        .set("f_pu", From.cell(anchor.member().strength()))
        .set(
            "P_0",
            anchor
                .support()
                .lockOff()
                .map(From::cell)
                .orElse(From.layout(0, "no lock-off load is entered")))
        .set("f_L", From.factor(job, "anchor.tendon.lockoff", combination));
    switch (anchor.format()) {
      case ALLOWABLE_STRESS -> binding.set("f_T", From.factor(job, "anchor.tendon", combination));
      case PARTIAL_FACTORS ->
          binding
              .set(
                  "f_y",
                  RunCheck.need(
                      anchor.member().proofStrength(), "the proof strength of the tendon"))
              .set("γ_s", From.factor(job, "anchor.tendon.material", combination));
      case LOAD_AND_RESISTANCE ->
          binding.set("φ_t", From.factor(job, "anchor.tendon.high", combination));
    }
    return binding.calculate();
  }
}
