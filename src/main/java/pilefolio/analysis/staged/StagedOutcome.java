package pilefolio.analysis.staged;

import java.util.List;

/** What a staged analysis ends with. */
public sealed interface StagedOutcome permits StagedOutcome.Converged, StagedOutcome.Collapsed {

  /** The stages in equilibrium, in order of time. */
  List<StageState> stages();

  /**
   * Every stage is in equilibrium.
   *
   * @param stages all stages
   */
  record Converged(List<StageState> stages) implements StagedOutcome {
    public Converged {
      stages = List.copyOf(stages);
    }
  }

  /**
   * A stage has no equilibrium.
   *
   * @param stages the stages before it
   * @param index index of the stage that fails, from 0
   * @param stage name of that stage
   * @param mechanism how the wall fails
   * @param reason why, as a sentence without its full stop
   * @param failure numbers of the mechanism; nil if it is none
   */
  record Collapsed(
      List<StageState> stages,
      int index,
      String stage,
      Mechanism mechanism,
      String reason,
      Failure failure)
      implements StagedOutcome {
    public Collapsed {
      stages = List.copyOf(stages);
    }
  }
}
