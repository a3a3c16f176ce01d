package pilefolio.checks.situation;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pilefolio.analysis.staged.StageState;
import pilefolio.analysis.staged.StagedOutcome;
import pilefolio.analysis.staged.StagedWall;
import pilefolio.model.Stage;
import pilefolio.standards.Combination;

/**
 * A wall run taken through its stages in one combination.
 *
 * @param combination the combination
 * @param effectFactor factor that turns effects into design effects
 * @param wall what was analysed
 * @param steps steps in equilibrium, in order of time
 * @param outcome how it ended
 * @param failedStage the stage of the workbook without equilibrium, if there is one
 */
public record StagedSolution(
    Combination combination,
    double effectFactor,
    StagedWall wall,
    List<StagedStep> steps,
    StagedOutcome outcome,
    Optional<Stage> failedStage) {

  /** Copies the list. */
  public StagedSolution {
    steps = List.copyOf(steps);
  }

  /** True if every stage is in equilibrium. */
  public boolean converged() {
    return outcome instanceof StagedOutcome.Converged;
  }

  /** How the wall fails; empty if it stands. */
  public Optional<StagedOutcome.Collapsed> collapse() {
    return outcome instanceof StagedOutcome.Collapsed c ? Optional.of(c) : Optional.empty();
  }

  /** The steps that end a stage. */
  public List<StagedStep> complete() {
    return steps.stream().filter(StagedStep::complete).toList();
  }

  /** The states of every step. */
  public List<StageState> states() {
    List<StageState> all = new ArrayList<>();
    steps.forEach(s -> all.add(s.state()));
    return all;
  }
}
