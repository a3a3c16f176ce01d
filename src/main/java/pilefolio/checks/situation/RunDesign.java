package pilefolio.checks.situation;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import pilefolio.checks.Job;
import pilefolio.model.Submission;
import pilefolio.model.WallRun;
import pilefolio.standards.DesignBasis;

/**
 * The solutions of a wall run in all of its situations.
 *
 * @param run the run
 * @param solutions one for each stage and combination in which the wall retains ground and has at
 *     most one support in place
 */
public record RunDesign(WallRun run, List<WallSolution> solutions) {

  // A toe that the engine sizes is set on whole decimetres.
  private static final double TOE_STEP = 0.1;

  public RunDesign {
    solutions = List.copyOf(solutions);
  }

  private record Key(String run) {}

  /** Every situation of a run, solved once for the whole job. */
  public static RunDesign of(Job job, WallRun run) {
    return job.shared(new Key(run.id()), RunDesign.class, j -> of(j.submission(), j.basis(), run));
  }

  /** Solves every situation of a run. */
  public static RunDesign of(Submission submission, DesignBasis basis, WallRun run) {
    return new RunDesign(
        run, DesignSituation.of(submission, basis, run).stream().map(WallSolution::of).toList());
  }

  /** The solution that needs the deepest toe. */
  public Optional<WallSolution> deepest() {
    return solutions.stream()
        .filter(s -> s.equilibrium().isPresent())
        .min(Comparator.comparingDouble(WallSolution::requiredToe));
  }

  /**
   * Toe level of the wall, m: the user's, or else the least deep one that all situations allow, on
   * whole decimetres; empty if a situation has no equilibrium and the user gives no toe.
   */
  public OptionalDouble toe() {
    if (run.toe().isPresent()) {
      return OptionalDouble.of(run.toe().get().si());
    }
    if (solutions.stream().anyMatch(s -> s.equilibrium().isEmpty())) {
      return OptionalDouble.empty();
    }
    return deepest()
        .map(s -> OptionalDouble.of(Math.floor(s.requiredToe() / TOE_STEP + 1e-9) * TOE_STEP))
        .orElse(OptionalDouble.empty());
  }
}
