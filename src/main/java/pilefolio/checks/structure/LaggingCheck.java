package pilefolio.checks.structure;

import java.util.List;
import java.util.Optional;
import pilefolio.checks.CheckResult;
import pilefolio.checks.From;
import pilefolio.checks.Job;
import pilefolio.checks.Subject;
import pilefolio.model.Lagging;
import pilefolio.model.Stage;
import pilefolio.model.Value;
import pilefolio.model.WallRun;
import pilefolio.model.WallType;
import pilefolio.trace.Binding;
import pilefolio.trace.Given;

/** A check of what stands between the soldier beams of one type of wall. */
abstract class LaggingCheck extends BeamCheck {
  private final WallType type;

  LaggingCheck(WallType type) {
    this.type = type;
  }

  @Override
  final boolean asked(WallRun run) {
    return run.type() == type;
  }

  @Override
  final List<CheckResult> withoutBeam(WallRun run) {
    return List.of(notChecked(run, "the run has no soldier beams, so the span is not known"));
  }

  @Override
  final List<CheckResult> examine(Job job, WallBeam beam) {
    if (job.submission().stages(beam.run()).isEmpty()) {
      return List.of();
    }
    Optional<Lagging> lagging = beam.run().beams().lagging();
    if (lagging.isEmpty()) {
      return List.of(notChecked(beam.run(), "the workbook does not describe the lagging"));
    }
    return examine(job, beam, lagging.get());
  }

  /** The check of one run with its lagging. */
  abstract List<CheckResult> examine(Job job, WallBeam beam, Lagging lagging);

  final CheckResult notChecked(WallRun run, String reason) {
    return CheckResult.notChecked(this, Subject.run(run.id()), reason);
  }

  /** Spacing and flange. */
  static Binding span(Binding binding, WallBeam beam) {
    return binding.set("s", beam.spacing()).set("b_f", beam.property(beam.section().width()));
  }

  /** Pressure on the exposed wall, what of it reaches the lagging, and the span. */
  static Binding strip(Binding binding, Job job, WallBeam beam, Effects effects) {
    return span(binding, beam)
        .set("p", effects.pressure())
        .set("k_a", arching(job, beam.run(), effects.combination()));
  }

  /** Water does not arch. */
  private static Given arching(Job job, WallRun run, String combination) {
    boolean wet =
        job.submission().stages(run).stream()
            .anyMatch(
                (Stage stage) ->
                    stage
                        .waterBehind()
                        .map(Value::si)
                        .map(level -> level > stage.excavation().si())
                        .orElse(false));
    return wet
        ? From.layout(1, "water stands behind the lagging and does not arch")
        : From.factor(job, "lagging.arching", combination);
  }
}
