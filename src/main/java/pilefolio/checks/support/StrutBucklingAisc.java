package pilefolio.checks.support;

import java.util.List;
import pilefolio.checks.CheckResult;
import pilefolio.checks.Job;
import pilefolio.model.Support;
import pilefolio.standards.DesignBasis;
import pilefolio.standards.Section;
import pilefolio.trace.Binding;
import pilefolio.trace.Calculation;

/** Buckling of struts and rakers after AISC 360. */
final class StrutBucklingAisc extends SupportCheck {
  StrutBucklingAisc() {
    super(
        "strut-buckling-aisc",
        "Buckling of a strut, AISC 360",
        AiscStrut.of(AiscSafety.ALLOWABLE).rolled(),
        AiscStrut.of(AiscSafety.ALLOWABLE).tube(),
        AiscStrut.of(AiscSafety.DESIGN).rolled(),
        AiscStrut.of(AiscSafety.DESIGN).tube());
  }

  @Override
  List<CheckResult> examine(Job job, Support support) {
    if (job.basis().steel() == DesignBasis.SteelCode.EN_1993) {
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
    AiscSafety safety = AiscSafety.of(strut.job());
    AiscStrut sheets = AiscStrut.of(safety);
    Binding binding = (strut.rolled() ? sheets.rolled() : sheets.tube()).bind();
    strut.bind(binding, demand);
    binding.set("F_y", strut.yieldStrength());
    if (strut.rolled()) {
      Section s = strut.section();
      binding
          .set("A_g", strut.property(s.area()))
          .set("I_x", strut.property(s.inertia()))
          .set("r_x", strut.property(s.radius()))
          .set("r_y", strut.property(s.weakRadius()))
          .set("b_f", strut.property(s.width()))
          .set("t_f", strut.property(s.flange()))
          .set("h_w", strut.property(s.webBetweenFillets()))
          .set("t_w", strut.property(s.web()))
          .set("Z_x", strut.property(s.plasticModulus()))
          .set("S_x", strut.property(s.elasticModulus()))
          .set("r_ts", strut.property(s.effectiveRadius()))
          .set("J", strut.property(s.torsionConstant()))
          .set("h_o", strut.property(s.flangeCentres()));
    }
    safety.bind(binding, AiscSafety.On.COMPRESSION, strut.job(), demand.combination());
    safety.bind(binding, AiscSafety.On.BENDING, strut.job(), demand.combination());
    return binding.calculate();
  }
}
