package pilefolio.checks.structure;

import java.util.List;
import pilefolio.checks.CheckResult;
import pilefolio.checks.From;
import pilefolio.checks.Job;
import pilefolio.model.Lagging;
import pilefolio.model.WallType;
import pilefolio.standards.DesignBasis;
import pilefolio.trace.Binding;
import pilefolio.trace.CalcSheet;
import pilefolio.trace.Calculation;

/** Shotcrete between soldier beams. */
final class ShotcreteLagging extends LaggingCheck {

  ShotcreteLagging() {
    super(WallType.SOLDIER_SHOTCRETE);
  }

  @Override
  public String id() {
    return "shotcrete-lagging";
  }

  @Override
  public String title() {
    return "Shotcrete between the beams";
  }

  @Override
  public List<CalcSheet> sheets() {
    return List.of(
        ShotcreteSheets.ACI_REINFORCED,
        ShotcreteSheets.ACI_PLAIN_STRIP,
        ShotcreteSheets.EN_REINFORCED,
        ShotcreteSheets.EN_PLAIN_STRIP);
  }

  @Override
  List<CheckResult> examine(Job job, WallBeam beam, Lagging lagging) {
    if (lagging.concreteStrength().isEmpty()) {
      return List.of(
          notChecked(beam.run(), "the workbook does not give the strength of the shotcrete"));
    }
    if (lagging.mesh().isPresent()
        && (lagging.meshDepth().isEmpty() || lagging.meshYield().isEmpty())) {
      return List.of(
          notChecked(
              beam.run(), "the workbook does not give the depth and yield strength of the mesh"));
    }
    return eachCombination(
        job,
        beam.run(),
        Effects::worstPressure,
        effects -> calculation(job, beam, lagging, effects),
        "the values given leave a line without a result");
  }

  private static Calculation calculation(Job job, WallBeam beam, Lagging lagging, Effects effects) {
    boolean aci = job.basis().concrete() == DesignBasis.ConcreteCode.ACI_318;
    boolean meshed = lagging.mesh().isPresent();
    CalcSheet sheet =
        aci
            ? meshed ? ShotcreteSheets.ACI_REINFORCED : ShotcreteSheets.ACI_PLAIN_STRIP
            : meshed ? ShotcreteSheets.EN_REINFORCED : ShotcreteSheets.EN_PLAIN_STRIP;
    Binding binding = strip(sheet.bind(), job, beam, effects);
    String combination = effects.combination();
    if (meshed) {
      binding
          .set("d", From.cell(lagging.meshDepth().orElseThrow()))
          .set("A_s", From.cell(lagging.mesh().orElseThrow()))
          .set(aci ? "f_y" : "f_yk", From.cell(lagging.meshYield().orElseThrow()));
    } else {
      binding.set("t", From.cell(lagging.thickness()));
    }
    binding.set(aci ? "f'_c" : "f_ck", From.cell(lagging.concreteStrength().orElseThrow()));
    if (aci) {
      binding.set("γ_H", From.factor(job, "concrete.earth", combination));
      if (meshed) {
        binding
            .set("φ_f", From.factor(job, "concrete.flexure", combination))
            .set("φ_v", From.factor(job, "concrete.shear", combination));
      } else {
        binding.set("φ_c", From.factor(job, "concrete.plain", combination));
      }
    } else {
      binding.set("γ_C", From.factor(job, "concrete.material", combination));
      if (meshed) {
        binding
            .set("α_cc", From.factor(job, "concrete.compression", combination))
            .set("γ_S", From.factor(job, "concrete.reinforcement", combination));
      } else {
        binding.set("α_{ct,pl}", From.factor(job, "concrete.plain.tension", combination));
      }
    }
    return binding.calculate();
  }
}
