package pilefolio.checks.situation;

import java.util.List;
import pilefolio.analysis.staged.StageState;
import pilefolio.model.Stage;
import pilefolio.model.Support;

/**
 * One step of a staged analysis: supports placed under the ground of the stage before, or the whole
 * stage as the workbook has it.
 *
 * @param stage the stage of the workbook
 * @param placed supports placed in this step; empty for the step of the whole stage
 * @param state the wall in equilibrium
 */
public record StagedStep(Stage stage, List<Support> placed, StageState state) {

  /** Copies the list. */
  public StagedStep {
    placed = List.copyOf(placed);
  }

  /** True for the step that ends the stage. */
  public boolean complete() {
    return placed.isEmpty();
  }
}
