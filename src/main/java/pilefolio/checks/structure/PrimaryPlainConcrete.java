package pilefolio.checks.structure;

import java.util.List;
import pilefolio.checks.From;
import pilefolio.checks.Job;
import pilefolio.model.WallRun;
import pilefolio.model.WallType;
import pilefolio.standards.DesignBasis;
import pilefolio.trace.Binding;
import pilefolio.trace.CalcSheet;
import pilefolio.trace.Calculation;

/** The primary of structural concrete as an arch of plain concrete, by the concrete code. */
final class PrimaryPlainConcrete extends PrimaryCheck {

  @Override
  public String id() {
    return "primary-plain-concrete";
  }

  @Override
  public String title() {
    return "Primary of plain structural concrete";
  }

  @Override
  public List<CalcSheet> sheets() {
    return List.of(PrimarySheets.EN_PLAIN, PrimarySheets.ACI_PLAIN);
  }

  /** Codes for structural concrete say nothing on the weak mixes of soft and firm primaries. */
  @Override
  boolean applies(Job job, WallRun run) {
    return run.type() == WallType.HARD_HARD;
  }

  @Override
  Calculation calculation(Job job, WallRun run, Effects effects) {
    String combination = effects.combination();
    boolean aci = job.basis().concrete() == DesignBasis.ConcreteCode.ACI_318;
    Binding binding = (aci ? PrimarySheets.ACI_PLAIN : PrimarySheets.EN_PLAIN).bind();
    PrimarySpan.bind(binding, job, run, effects);
    if (aci) {
      binding
          .set("γ_H", From.factor(job, "concrete.earth", combination))
          .set("φ_c", From.factor(job, "concrete.plain", combination));
    } else {
      binding
          .set("γ_C", From.factor(job, "concrete.material", combination))
          .set("α_{cc,pl}", From.factor(job, "concrete.plain.compression", combination))
          .set("α_{ct,pl}", From.factor(job, "concrete.plain.tension", combination));
    }
    return binding.calculate();
  }
}
