package pilefolio.checks.structure;

import java.util.List;
import pilefolio.checks.CheckResult;
import pilefolio.checks.From;
import pilefolio.checks.Job;
import pilefolio.standards.Section;
import pilefolio.trace.Binding;
import pilefolio.trace.CalcSheet;
import pilefolio.trace.Calculation;

/** Shear of the beam in a secondary. */
final class BeamShear extends BeamCheck {
  /** Why a section may not be covered. */
  static final String SLENDER =
      "the web is so slender that it buckles in shear, which is not covered";

  @Override
  public String id() {
    return "beam-shear";
  }

  @Override
  public String title() {
    return "Shear of the beam";
  }

  @Override
  public List<CalcSheet> sheets() {
    return List.of(
        AiscBeam.ALLOWABLE.shear(),
        AiscBeam.ALLOWABLE.weakShear(),
        AiscBeam.DESIGN.shear(),
        AiscBeam.DESIGN.weakShear(),
        EnBeam.SHEAR,
        EnBeam.WEAK_SHEAR);
  }

  @Override
  List<CheckResult> examine(Job job, WallBeam beam) {
    return eachCombination(
        job,
        beam.run(),
        Effects::worstShear,
        effects -> aisc(job) ? aisc(job, beam, effects) : en(job, beam, effects),
        SLENDER);
  }

  private static Calculation aisc(Job job, WallBeam beam, Effects effects) {
    Section s = beam.section();
    AiscBeam code = AiscBeam.of(job);
    if (!beam.strong()) {
      Binding binding =
          code.weakShear()
              .bind()
              .set("V", effects.shear())
              .set("s_b", beam.spacing())
              .set("b_f", beam.property(s.width()))
              .set("t_f", beam.property(s.flange()))
              .set("F_y", beam.yieldStrength())
              .set("E", beam.elasticModulus(job.basis()));
      code.bind(binding, AiscBeam.On.SHEAR, job, effects.combination());
      return binding.calculate();
    }
    Binding binding =
        code.shear()
            .bind()
            .set("V", effects.shear())
            .set("s_b", beam.spacing())
            .set("d", beam.property(s.depth()))
            .set("t_w", beam.property(s.web()))
            .set("h_w", beam.property(s.webBetweenFillets()))
            .set("F_y", beam.yieldStrength())
            .set("E", beam.elasticModulus(job.basis()));
    code.bind(binding, AiscBeam.On.ROLLED_SHEAR, job, effects.combination());
    code.bind(binding, AiscBeam.On.SHEAR, job, effects.combination());
    return binding.calculate();
  }

  /** The calculation on European rules. */
  static Calculation en(Job job, WallBeam beam, Effects effects) {
    Section s = beam.section();
    if (!beam.strong()) {
      return EnBeam.WEAK_SHEAR
          .bind()
          .set("V", effects.shear())
          .set("s_b", beam.spacing())
          .set("b", beam.property(s.width()))
          .set("t_f", beam.property(s.flange()))
          .set("f_y", beam.yieldStrength())
          .set("γ_M0", From.factor(job, "steel.yield", effects.combination()))
          .calculate();
    }
    return EnBeam.SHEAR
        .bind()
        .set("V", effects.shear())
        .set("s_b", beam.spacing())
        .set("A", beam.property(s.area()))
        .set("b", beam.property(s.width()))
        .set("t_f", beam.property(s.flange()))
        .set("t_w", beam.property(s.web()))
        .set("r", beam.property(s.rootRadius()))
        .set("h_w", beam.property(s.webBetweenFlanges()))
        .set("f_y", beam.yieldStrength())
        .set("η", From.factor(job, "steel.shear.eta", effects.combination()))
        .set("γ_M0", From.factor(job, "steel.yield", effects.combination()))
        .calculate();
  }
}
