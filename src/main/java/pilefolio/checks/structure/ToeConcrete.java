package pilefolio.checks.structure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pilefolio.analysis.wall.NetSegment;
import pilefolio.checks.CheckResult;
import pilefolio.checks.From;
import pilefolio.checks.Job;
import pilefolio.checks.Subject;
import pilefolio.checks.situation.PileToes;
import pilefolio.checks.situation.RunDesign;
import pilefolio.checks.situation.WallSolution;
import pilefolio.model.AxialLoad;
import pilefolio.model.PileSpec;
import pilefolio.model.Value;
import pilefolio.model.WallRun;
import pilefolio.standards.Combination;
import pilefolio.trace.Binding;
import pilefolio.trace.CalcSheet;
import pilefolio.trace.Given;

/** The structural concrete in the bore of a soldier beam or king pile below the excavation. */
final class ToeConcrete extends BeamCheck {
  private static final double KILO = 1000;

  @Override
  public String id() {
    return "toe-concrete";
  }

  @Override
  public String title() {
    return "Structural concrete round the foot of the beam";
  }

  @Override
  public List<CalcSheet> sheets() {
    return List.of(ToeConcreteSheets.SOCKET);
  }

  @Override
  boolean asked(WallRun run) {
    return run.type().kingOrSoldierBeams() && run.beams().structuralToe();
  }

  @Override
  List<CheckResult> examine(Job job, WallBeam beam) {
    List<CheckResult> results = new ArrayList<>();
    for (Combination combination : job.combinations()) {
      results.add(result(job, beam, combination.id()));
    }
    return results;
  }

  private CheckResult result(Job job, WallBeam beam, String combination) {
    Subject subject = Subject.run(beam.run().id()).combination(combination);
    Optional<Effects> effects = Effects.of(job, beam.run(), combination);
    if (effects.isEmpty()) {
      return CheckResult.notChecked(
          this, subject, "a stage of the wall has no equilibrium, so pressures are not known");
    }
    PileSpec piles = beam.run().bearing().orElseThrow();
    Optional<Double> foot =
        beam.placing()
            .toe()
            .map(Value::si)
            .or(() -> PileToes.of(job, beam.run(), piles.kind()).map(Given::si));
    if (foot.isEmpty()) {
      return CheckResult.notChecked(this, subject, "the level of the foot is not known");
    }
    List<WallSolution> solutions =
        RunDesign.of(job, beam.run()).solutions().stream()
            .filter(s -> s.situation().combination().id().equals(combination))
            .toList();
    double pressure = solutions.stream().mapToDouble(ToeConcrete::greatest).max().orElse(0);
    double excavation =
        solutions.stream().mapToDouble(s -> s.situation().designExcavation()).min().orElseThrow();
    Optional<AxialLoad> load = piles.load();
    double vertical = load.map(l -> l.permanent().si() + l.variable().si()).orElse(0.0);
    Binding binding =
        ToeConcreteSheets.SOCKET
            .bind()
            .set("p_t", From.method(KILO * pressure, "diagrams of net pressure of all stages"))
            .set("s_b", beam.spacing())
            .set("h", beam.property(beam.section().depth()))
            .set("b_f", beam.property(beam.section().width()))
            .set("F_h", effects.get().supportForce())
            .set("i", BeamAxial.inclination(job, beam.run()))
            .set("N_0", From.layout(vertical, "permanent and variable load of the workbook"))
            .set(
                "L_s",
                From.layout(
                    Math.max(0, excavation - foot.get()),
                    "design excavation less foot of the beam"))
            .set("τ_b", From.factor(job, "toe.bond", combination));
    ConcreteStrength.bind(binding, "f_k", job.submission().mix(piles));
    return CheckResult.of(this, subject, binding.calculate());
  }

  /** Greatest net pressure below the excavation, on the length of wall, kPa. */
  private static double greatest(WallSolution solution) {
    double excavation = solution.situation().designExcavation();
    double greatest = 0;
    for (NetSegment s : solution.equilibrium().orElseThrow().statics().pressure().segments()) {
      if (s.topLevel() <= excavation + 1e-9) {
        greatest =
            Math.max(greatest, Math.max(Math.abs(s.topPressure()), Math.abs(s.bottomPressure())));
      }
    }
    return greatest;
  }
}
