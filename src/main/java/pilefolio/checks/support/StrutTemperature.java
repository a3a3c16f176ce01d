package pilefolio.checks.support;

import java.util.List;
import pilefolio.checks.CheckResult;
import pilefolio.checks.From;
import pilefolio.checks.Job;
import pilefolio.checks.RunCheck.MissingInput;
import pilefolio.checks.situation.SupportStiffness;
import pilefolio.model.StrutMember;
import pilefolio.model.Support;
import pilefolio.trace.Binding;
import pilefolio.trace.Calculation;
import pilefolio.trace.Given;

/** Force that a strut gains when it warms between walls that hold it. */
final class StrutTemperature extends SupportCheck {
  static final StrutTemperature CHECK = new StrutTemperature();

  StrutTemperature() {
    super(
        "strut-temperature",
        "Force in a strut from temperature",
        StrutTemperatureSheets.SHARE,
        StrutTemperatureSheets.STIFFNESS);
  }

  @Override
  public boolean derivation() {
    return true;
  }

  @Override
  List<CheckResult> examine(Job job, Support support) {
    return members(job)
        .strut(support)
        .map(
            member ->
                List.of(
                    answered(
                        subject(job, support),
                        () -> List.of(calculate(new Strut(job, support, member))),
                        Strut.OUTSIDE)))
        .orElse(List.of());
  }

  /** The force for one strut. */
  static Calculation calculate(Strut strut) {
    StrutMember member = strut.member();
    boolean byStiffness = member.wallStiffness().isPresent();
    Binding binding =
        (byStiffness ? StrutTemperatureSheets.STIFFNESS : StrutTemperatureSheets.SHARE).bind();
    if (byStiffness) {
      binding
          .set("L", From.cell(member.length()))
          .set("s", From.cell(strut.support().spacing()))
          .set("k_w", From.cell(member.wallStiffness().get()))
          .set(
              "n_w",
              From.layout(
                  member.farEnd().yielding(), "the far end is: " + member.farEnd().label()));
    } else {
      binding.set("β", From.cell(member.restraint()));
    }
    return binding
        .set("A", area(strut))
        .set("E", Strut.elasticModulus(strut.job()))
        .set("ΔT", From.cell(member.temperatureRise()))
        .calculate();
  }

  private static Given area(Strut strut) {
    if (strut.rolled()) {
      return strut.property(strut.section().area());
    }
    return SupportStiffness.area(strut.job(), strut.member())
        .map(area -> From.layout(area, "ring of the tube"))
        .orElseThrow(() -> new MissingInput("The workbook does not give the tube whole."));
  }
}
