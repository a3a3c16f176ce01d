package pilefolio.checks.structure;

import java.util.List;
import pilefolio.checks.CheckResult;
import pilefolio.checks.From;
import pilefolio.checks.Job;
import pilefolio.checks.Subject;
import pilefolio.model.WallRun;
import pilefolio.standards.Section;
import pilefolio.trace.Binding;
import pilefolio.trace.CalcSheet;
import pilefolio.trace.Calculation;

/** Bending of the beam in a secondary, held sideways by the concrete. */
final class BeamBending extends BeamCheck {
  /** Why a section may not be covered. */
  static final String SLENDER =
      "the flange or the web of the section is too slender for the rules used";

  @Override
  public String id() {
    return "beam-bending";
  }

  @Override
  public String title() {
    return "Bending of the beam";
  }

  @Override
  public List<CalcSheet> sheets() {
    return List.of(
        AiscBeam.ALLOWABLE.strong(),
        AiscBeam.ALLOWABLE.weak(),
        AiscBeam.DESIGN.strong(),
        AiscBeam.DESIGN.weak(),
        EnBeam.STRONG,
        EnBeam.WEAK);
  }

  @Override
  List<CheckResult> withoutBeam(WallRun run) {
    return List.of(
        CheckResult.notChecked(
            this,
            Subject.run(run.id()),
            (run.type().secant() ? "the secondaries" : "the piles")
                + " have no steel beam; reinforcing cages are not covered"));
  }

  @Override
  List<CheckResult> examine(Job job, WallBeam beam) {
    return eachCombination(
        job, beam.run(), Effects::worstMoment, effects -> calculation(job, beam, effects), SLENDER);
  }

  /** The calculation that other checks of the beam build on. */
  static Calculation calculation(Job job, WallBeam beam, Effects effects) {
    return aisc(job) ? aisc(job, beam, effects) : en(job, beam, effects);
  }

  private static Calculation aisc(Job job, WallBeam beam, Effects effects) {
    Section s = beam.section();
    AiscBeam code = AiscBeam.of(job);
    CalcSheet sheet = beam.strong() ? code.strong() : code.weak();
    Binding binding =
        sheet
            .bind()
            .set("M", effects.moment())
            .set("s_b", beam.spacing())
            .set("b_f", beam.property(s.width()))
            .set("t_f", beam.property(s.flange()))
            .set("F_y", beam.yieldStrength())
            .set("E", beam.elasticModulus(job.basis()));
    code.bind(binding, AiscBeam.On.BENDING, job, effects.combination());
    if (beam.strong()) {
      binding
          .set("Z_x", beam.property(s.plasticModulus()))
          .set("S_x", beam.property(s.elasticModulus()))
          .set("h_w", beam.property(s.webBetweenFillets()))
          .set("t_w", beam.property(s.web()));
    } else {
      binding
          .set("Z_y", beam.property(s.weakPlasticModulus()))
          .set("S_y", beam.property(s.weakElasticModulus()));
    }
    return binding.calculate();
  }

  private static Calculation en(Job job, WallBeam beam, Effects effects) {
    Section s = beam.section();
    CalcSheet sheet = beam.strong() ? EnBeam.STRONG : EnBeam.WEAK;
    Binding binding =
        sheet
            .bind()
            .set("M", effects.moment())
            .set("s_b", beam.spacing())
            .set("b", beam.property(s.width()))
            .set("t_f", beam.property(s.flange()))
            .set("t_w", beam.property(s.web()))
            .set("r", beam.property(s.rootRadius()))
            .set("f_y", beam.yieldStrength())
            .set("γ_M0", From.factor(job, "steel.yield", effects.combination()));
    if (beam.strong()) {
      binding
          .set("W_{pl,y}", beam.property(s.plasticModulus()))
          .set("W_{el,y}", beam.property(s.elasticModulus()))
          .set("h_w", beam.property(s.webBetweenFlanges()));
    } else {
      binding
          .set("W_{pl,z}", beam.property(s.weakPlasticModulus()))
          .set("W_{el,z}", beam.property(s.weakElasticModulus()));
    }
    return binding.calculate();
  }
}
