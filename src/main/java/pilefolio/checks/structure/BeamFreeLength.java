package pilefolio.checks.structure;

import java.util.List;
import pilefolio.checks.CheckResult;
import pilefolio.checks.From;
import pilefolio.checks.Job;
import pilefolio.standards.Section;
import pilefolio.trace.Binding;
import pilefolio.trace.CalcSheet;
import pilefolio.trace.Calculation;
import pilefolio.trace.Given;

/** Lateral-torsional buckling of a beam that stands out of the concrete. */
final class BeamFreeLength extends BeamCheck {

  @Override
  public String id() {
    return "beam-free-length";
  }

  @Override
  public String title() {
    return "Beam above the concrete";
  }

  @Override
  public List<CalcSheet> sheets() {
    return List.of(
        AiscBeam.ALLOWABLE.unrestrained(), AiscBeam.DESIGN.unrestrained(), EnBeam.UNRESTRAINED);
  }

  @Override
  List<CheckResult> examine(Job job, WallBeam beam) {
    if (beam.freeLength(job.submission()) <= 0 || !beam.strong()) {
      return List.of();
    }
    return eachCombination(
        job,
        beam.run(),
        Effects::worstMoment,
        effects -> aisc(job) ? aisc(job, beam, effects) : en(job, beam, effects),
        BeamBending.SLENDER);
  }

  private static Given free(Job job, WallBeam beam) {
    return From.layout(beam.freeLength(job.submission()), beam.freeLengthName());
  }

  private static Given uniform() {
    return From.layout(1, "uniform moment, the least favourable");
  }

  private static Calculation aisc(Job job, WallBeam beam, Effects effects) {
    Section s = beam.section();
    AiscBeam code = AiscBeam.of(job);
    Binding binding =
        code.unrestrained()
            .bind()
            .set("M", effects.moment())
            .set("s_b", beam.spacing())
            .set("L_b", free(job, beam))
            .set("C_b", uniform())
            .set("F_y", beam.yieldStrength())
            .set("E", beam.elasticModulus(job.basis()))
            .set("Z_x", beam.property(s.plasticModulus()))
            .set("S_x", beam.property(s.elasticModulus()))
            .set("r_y", beam.property(s.weakRadius()))
            .set("r_ts", beam.property(s.effectiveRadius()))
            .set("J", beam.property(s.torsionConstant()))
            .set("h_o", beam.property(s.flangeCentres()));
    code.bind(binding, AiscBeam.On.BENDING, job, effects.combination());
    return binding.calculate();
  }

  private static Calculation en(Job job, WallBeam beam, Effects effects) {
    Section s = beam.section();
    Calculation bending = BeamBending.calculation(job, beam, effects);
    return EnBeam.UNRESTRAINED
        .bind()
        .set("M", effects.moment())
        .set("s_b", beam.spacing())
        .set("L", free(job, beam))
        .set("C_1", uniform())
        .set("f_y", beam.yieldStrength())
        .set("E", beam.elasticModulus(job.basis()))
        .set("G", beam.shearModulus())
        .set("W", From.line(new BeamBending(), bending, "W"))
        .set("I_z", beam.property(s.weakInertia()))
        .set("I_t", beam.property(s.torsionConstant()))
        .set("I_w", beam.property(s.warpingConstant()))
        .set("h", beam.property(s.depth()))
        .set("b", beam.property(s.width()))
        .set("λ_{LT,0}", From.factor(job, "steel.ltb.plateau", effects.combination()))
        .set("β_LT", From.factor(job, "steel.ltb.beta", effects.combination()))
        .set("γ_M1", From.factor(job, "steel.buckling", effects.combination()))
        .calculate();
  }
}
