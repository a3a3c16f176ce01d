package pilefolio.checks.structure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pilefolio.analysis.wall.Equilibrium;
import pilefolio.analysis.wall.WallStatics;
import pilefolio.checks.CheckResult;
import pilefolio.checks.From;
import pilefolio.checks.Job;
import pilefolio.checks.Subject;
import pilefolio.checks.situation.PileToes;
import pilefolio.checks.situation.RunDesign;
import pilefolio.checks.situation.WallSolution;
import pilefolio.model.PileKind;
import pilefolio.model.Value;
import pilefolio.model.WallRun;
import pilefolio.standards.Combination;
import pilefolio.standards.DesignBasis;
import pilefolio.trace.Binding;
import pilefolio.trace.CalcSheet;
import pilefolio.trace.Calculation;
import pilefolio.trace.Given;

/** The plain concrete of a secondary below the foot of its beam. */
final class BeamFoot extends BeamCheck {
  private static final double KILO = 1000;
  private static final int STEPS = 400;
  private static final double SAME_LEVEL = 1e-6;

  @Override
  public String id() {
    return "beam-foot";
  }

  @Override
  public String title() {
    return "Pile below the foot of the beam";
  }

  @Override
  public List<CalcSheet> sheets() {
    return List.of(FitSheets.FOOT_EN, FitSheets.FOOT_ACI);
  }

  /** Lean mix round a soldier beam is not counted. */
  @Override
  boolean asked(WallRun run) {
    return !run.type().kingOrSoldierBeams() || run.beams().structuralToe();
  }

  @Override
  List<CheckResult> examine(Job job, WallBeam beam) {
    Optional<Value> foot = beam.placing().toe();
    Optional<Given> toe = PileToes.of(job, beam.run(), PileKind.SECONDARY);
    boolean endsAbove =
        foot.isPresent() && toe.isPresent() && foot.get().si() > toe.get().si() + SAME_LEVEL;
    if (!endsAbove) {
      return List.of();
    }
    List<CheckResult> results = new ArrayList<>();
    for (Combination combination : job.combinations()) {
      results.add(result(job, beam, foot.get().si(), combination.id()));
    }
    return results;
  }

  private CheckResult result(Job job, WallBeam beam, double foot, String combination) {
    Subject subject = Subject.run(beam.run().id()).combination(combination);
    if (Effects.of(job, beam.run(), combination).isEmpty()) {
      return CheckResult.notChecked(
          this, subject, "a stage of the wall has no equilibrium, so its diagrams are not known");
    }
    double moment = 0;
    double shear = 0;
    for (WallSolution solution : RunDesign.of(job, beam.run()).solutions()) {
      if (solution.situation().combination().id().equals(combination)) {
        Below below = Below.of(solution.equilibrium().get(), foot);
        moment = Math.max(moment, below.moment());
        shear = Math.max(shear, below.shear());
      }
    }
    try {
      return CheckResult.of(
          this, subject, calculation(job, beam, combination, new Below(moment, shear)));
    } catch (ArithmeticException e) {
      return CheckResult.notChecked(
          this, subject, "the concrete of the secondaries is weaker than the code covers");
    }
  }

  /**
   * Greatest effects below a level.
   *
   * @param moment kNm/m
   * @param shear kN/m
   */
  private record Below(double moment, double shear) {
    static Below of(Equilibrium equilibrium, double level) {
      WallStatics statics = equilibrium.statics();
      double moment = 0;
      double shear = 0;
      double height = level - statics.toeLevel();
      for (int i = 0; height > 0 && i <= STEPS; i++) {
        double at = level - height * i / STEPS;
        moment = Math.max(moment, Math.abs(statics.momentAt(at)));
        shear = Math.max(shear, Math.abs(statics.shearAt(at)));
      }
      return new Below(moment, shear);
    }
  }

  private static Calculation calculation(Job job, WallBeam beam, String combination, Below below) {
    boolean aci = job.basis().concrete() == DesignBasis.ConcreteCode.ACI_318;
    String method = "diagrams of the wall below the foot of the beam";
    Binding binding =
        (aci ? FitSheets.FOOT_ACI : FitSheets.FOOT_EN)
            .bind()
            .set("M", From.method(KILO * below.moment(), method))
            .set("V", From.method(KILO * below.shear(), method))
            .set("s_b", beam.spacing())
            .set("D_s", From.cell(beam.run().bearing().orElseThrow().diameter()));
    ConcreteStrength.bind(binding, "f_k", job.submission().mix(beam.run().bearing().orElseThrow()));
    if (aci) {
      binding
          .set("γ_H", From.factor(job, "concrete.earth", combination))
          .set("φ_c", From.factor(job, "concrete.plain", combination));
    } else {
      binding
          .set("γ_C", From.factor(job, "concrete.material", combination))
          .set("α_{ct,pl}", From.factor(job, "concrete.plain.tension", combination));
    }
    return binding.calculate();
  }
}
