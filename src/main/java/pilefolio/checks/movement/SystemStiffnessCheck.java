package pilefolio.checks.movement;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import pilefolio.checks.CheckResult;
import pilefolio.checks.Family;
import pilefolio.checks.From;
import pilefolio.checks.Job;
import pilefolio.checks.RunCheck;
import pilefolio.checks.Subject;
import pilefolio.checks.situation.PileToes;
import pilefolio.checks.situation.WallStiffness;
import pilefolio.model.GroundProfile;
import pilefolio.model.Layer;
import pilefolio.model.Stage;
import pilefolio.model.Support;
import pilefolio.model.WallRun;
import pilefolio.trace.Calculation;
import pilefolio.trace.Source;

/** Stiffness of wall and supports in one number; said of walls whose movement is asked for. */
public final class SystemStiffnessCheck extends RunCheck {

  /** The check. */
  public SystemStiffnessCheck() {
    super(
        "system-stiffness",
        "Stiffness of wall and supports",
        Family.MOVEMENT,
        MovementSheets.STIFFNESS_OF_SYSTEM);
  }

  @Override
  public boolean derivation() {
    return true;
  }

  @Override
  protected List<CheckResult> check(Job job, WallRun run) {
    List<Support> supports = job.submission().supports(run);
    Optional<Stage> lowest = PileToes.lowestStage(job, run);
    Optional<Calculation> stiffness = WallStiffness.of(job, run);
    boolean asked =
        run.analysis().displacementLimit().isPresent()
            || !WallMovements.of(job, run).stages().isEmpty();
    if (!asked || supports.isEmpty() || lowest.isEmpty() || stiffness.isEmpty()) {
      return List.of();
    }
    Support highest =
        supports.stream().max(Comparator.comparingDouble(s -> s.level().si())).orElseThrow();
    double levels = supports.stream().mapToDouble(s -> s.level().si()).distinct().count();
    if (highest.level().si() <= lowest.get().excavation().si()) {
      return List.of();
    }
    return List.of(
        CheckResult.of(
            this,
            Subject.run(run.id()),
            MovementSheets.STIFFNESS_OF_SYSTEM
                .bind()
                .set(
                    "EI",
                    stiffness.get().value("EI"),
                    new Source.Method("bending stiffness of the wall"))
                .set("z_1", From.cell(highest.level()))
                .set("z_e", From.cell(lowest.get().excavation()))
                .set("n", From.layout(levels, "levels of supports of the run"))
                .set(
                    "γ_t",
                    From.layout(
                        meanWeight(job.submission().profile(run), run, lowest.get()),
                        "mean of the layers by thickness"))
                .calculate()));
  }

  /** Mean unit weight over the retained height, N/m³. */
  static double meanWeight(GroundProfile profile, WallRun run, Stage stage) {
    double top = run.levels().retained().si();
    double bottom = stage.excavation().si();
    double water = stage.waterBehind().map(v -> v.si()).orElse(Double.NEGATIVE_INFINITY);
    double weight = 0;
    for (int i = 0; i < profile.layers().size(); i++) {
      Layer layer = profile.layers().get(i);
      // Ground above the first layer's top, if any, counts as the first layer.
      double upper = Math.min(top, i == 0 ? top : layer.top().si());
      double lower = Math.max(bottom, profile.bottom(i));
      if (upper > lower) {
        double line = Math.min(upper, Math.max(lower, water));
        weight += layer.unitWeight().si() * (upper - line);
        weight += layer.unitWeightBelow().si() * (line - lower);
      }
    }
    return weight / (top - bottom);
  }
}
