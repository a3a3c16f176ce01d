package pilefolio.checks.support;

import java.util.List;
import pilefolio.checks.CheckResult;
import pilefolio.checks.From;
import pilefolio.checks.Job;
import pilefolio.model.BucklingCurve;
import pilefolio.model.Support;
import pilefolio.standards.DesignBasis;
import pilefolio.standards.Section;
import pilefolio.trace.Binding;
import pilefolio.trace.Calculation;

/** Buckling of struts and rakers after EN 1993-1-1. */
final class StrutBucklingEn extends SupportCheck {
  StrutBucklingEn() {
    super("strut-buckling-en", "Buckling of a strut, EN 1993-1-1", EnStrut.ROLLED, EnStrut.TUBE);
  }

  @Override
  List<CheckResult> examine(Job job, Support support) {
    if (job.basis().steel() != DesignBasis.SteelCode.EN_1993) {
      return List.of();
    }
    return members(job)
        .strut(support)
        .map(
            member ->
                eachCombination(
                    job,
                    support,
                    demand -> List.of(calculate(new Strut(job, support, member), demand)),
                    Strut.OUTSIDE))
        .orElse(List.of());
  }

  private static Calculation calculate(Strut strut, Demand demand) {
    Job job = strut.job();
    String combination = demand.combination();
    Binding binding = (strut.rolled() ? EnStrut.ROLLED : EnStrut.TUBE).bind();
    strut.bind(binding, demand);
    binding
        .set("f_y", strut.yieldStrength())
        .set("γ_M1", From.factor(job, "steel.buckling", combination));
    if (strut.rolled()) {
      Section s = strut.section();
      binding
          .set("A", strut.property(s.area()))
          .set("I", strut.property(s.inertia()))
          .set("I_z", strut.property(s.weakInertia()))
          .set("h", strut.property(s.depth()))
          .set("b", strut.property(s.width()))
          .set("t_f", strut.property(s.flange()))
          .set("t_w", strut.property(s.web()))
          .set("r", strut.property(s.rootRadius()))
          .set("h_w", strut.property(s.webBetweenFlanges()))
          .set("W_pl", strut.property(s.plasticModulus()))
          .set("W_el", strut.property(s.elasticModulus()))
          .set("I_t", strut.property(s.torsionConstant()))
          .set("I_w", strut.property(s.warpingConstant()))
          .set("G", From.table(81e9, "EN 1993-1-1", "steel"))
          .set("λ_{LT,0}", From.factor(job, "steel.ltb.plateau", combination))
          .set("β_LT", From.factor(job, "steel.ltb.beta", combination));
    } else {
      BucklingCurve curve = strut.member().curve();
      binding.set(
          "α", From.table(curve.imperfection(), "EN 1993-1-1, buckling curves", curve.label()));
    }
    return binding.calculate();
  }
}
