package pilefolio.analysis.sequence;

import java.util.Set;

/**
 * A rig with its crew.
 *
 * @param name name of the rig
 * @param minutes minutes of a shift in which piles can be made, availability already taken off
 * @param runs wall runs it works on; empty for all
 */
public record Crew(String name, double minutes, Set<String> runs) {

  /**
   * Checks the shift.
   *
   * @throws IllegalArgumentException if the shift has no minutes
   */
  public Crew {
    runs = Set.copyOf(runs);
    if (!(minutes > 0)) {
      throw new IllegalArgumentException(name + ": a shift needs minutes to work in");
    }
  }

  boolean worksOn(String run) {
    return runs.isEmpty() || runs.contains(run);
  }
}
