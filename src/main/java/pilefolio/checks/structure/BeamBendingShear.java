package pilefolio.checks.structure;

import java.util.List;
import pilefolio.checks.CheckResult;
import pilefolio.checks.From;
import pilefolio.checks.Job;
import pilefolio.trace.CalcSheet;
import pilefolio.trace.Calculation;

/** The bending strength left beside shear, on European rules. */
final class BeamBendingShear extends BeamCheck {

  @Override
  public String id() {
    return "beam-bending-with-shear";
  }

  @Override
  public String title() {
    return "Bending of the beam beside shear";
  }

  @Override
  public List<CalcSheet> sheets() {
    return List.of(EnBeam.WITH_SHEAR);
  }

  /** AISC 360 asks for no interaction in rolled webs; across the web the shear check limits it. */
  @Override
  List<CheckResult> examine(Job job, WallBeam beam) {
    if (aisc(job) || !beam.strong()) {
      return List.of();
    }
    return eachCombination(
        job,
        beam.run(),
        Effects::worstMoment,
        effects -> calculation(job, beam, effects),
        BeamShear.SLENDER);
  }

  private static Calculation calculation(Job job, WallBeam beam, Effects effects) {
    Calculation bending = BeamBending.calculation(job, beam, effects);
    Calculation shear = BeamShear.en(job, beam, effects);
    return EnBeam.WITH_SHEAR
        .bind()
        .set("V_Ed", From.line(new BeamShear(), shear, "V_Ed"))
        .set("V_{pl,Rd}", From.line(new BeamShear(), shear, "V_{pl,Rd}"))
        .set("M_Ed", From.line(new BeamBending(), bending, "M_Ed"))
        .set("M_{c,Rd}", From.line(new BeamBending(), bending, "M_{c,Rd}"))
        .set("h_w", beam.property(beam.section().webBetweenFlanges()))
        .set("t_w", beam.property(beam.section().web()))
        .set("f_y", beam.yieldStrength())
        .set("γ_M0", From.factor(job, "steel.yield", effects.combination()))
        .calculate();
  }
}
