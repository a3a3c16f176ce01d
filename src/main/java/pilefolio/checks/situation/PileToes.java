package pilefolio.checks.situation;

import java.util.Comparator;
import java.util.Optional;
import pilefolio.checks.From;
import pilefolio.checks.Job;
import pilefolio.model.PileKind;
import pilefolio.model.PileSpec;
import pilefolio.model.Stage;
import pilefolio.model.Value;
import pilefolio.model.WallRun;
import pilefolio.trace.Given;

/** Levels of the pile toes: the user's, or those the engine sizes. */
public final class PileToes {
  private static final double STEP = 0.1;

  private PileToes() {}

  private record Key(String run, PileKind kind) {}

  /**
   * Toe level of the primaries or secondaries of a run. Secondaries without a level reach as deep
   * as the wall needs for its equilibrium; primaries without one reach the level down to which the
   * joints must stay closed, on whole decimetres.
   *
   * @return the level with its origin; empty if it is to be sized and cannot be
   */
  public static Optional<Given> of(Job job, WallRun run, PileKind kind) {
    Optional<Value> entered = run.find(kind).flatMap(PileSpec::toe);
    if (entered.isPresent()) {
      return entered.map(From::cell);
    }
    return job.shared(new Key(run.id(), kind), Sized.class, j -> sized(j, run, kind)).toe();
  }

  private record Sized(Optional<Given> toe) {}

  private static Sized sized(Job job, WallRun run, PileKind kind) {
    if (kind != PileKind.PRIMARY) {
      return new Sized(Optional.empty());
    }
    return new Sized(
        lowestStage(job, run)
            .map(
                stage -> {
                  double level =
                      stage.excavation().si() - job.submission().methods().cutOffMargin().si();
                  return From.layout(
                      Math.floor(level / STEP + 1e-9) * STEP, "sized to close the joints");
                }));
  }

  /** The stage with the lowest excavation in front of a run. */
  public static Optional<Stage> lowestStage(Job job, WallRun run) {
    return job.submission().stages(run).stream()
        .min(Comparator.comparingDouble(stage -> stage.excavation().si()));
  }
}
