package pilefolio.checks;

import java.util.ArrayList;
import java.util.List;

/**
 * What a check is about.
 *
 * @param run id of the wall run, or empty for the whole job
 * @param piles marks of piles or joints that share the calculation, or empty
 * @param stage construction stage, or empty
 * @param combination combination of the design basis, or empty
 */
public record Subject(String run, String piles, String stage, String combination) {

  /** The whole job. */
  public static final Subject JOB = new Subject("", "", "", "");

  /** A wall run. */
  public static Subject run(String run) {
    return new Subject(run, "", "", "");
  }

  /** The same, for some piles. */
  public Subject piles(String marks) {
    return new Subject(run, marks, stage, combination);
  }

  /** The same, in a stage. */
  public Subject stage(String name) {
    return new Subject(run, piles, name, combination);
  }

  /** The same, in a combination. */
  public Subject combination(String id) {
    return new Subject(run, piles, stage, id);
  }

  /** The words that documents print. */
  public String label() {
    List<String> parts = new ArrayList<>();
    if (!run.isEmpty()) {
      parts.add("run " + run);
    }
    if (!piles.isEmpty()) {
      parts.add(piles);
    }
    if (!stage.isEmpty()) {
      parts.add(stage);
    }
    if (!combination.isEmpty()) {
      parts.add(combination);
    }
    return parts.isEmpty() ? "whole job" : String.join(", ", parts);
  }
}
