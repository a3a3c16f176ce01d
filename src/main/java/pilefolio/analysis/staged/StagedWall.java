package pilefolio.analysis.staged;

import java.util.List;

/**
 * A wall and its stages.
 *
 * @param topLevel level of its top, m
 * @param toeLevel level of its toe, m
 * @param elementLength greatest length of a beam element, m, more than zero
 * @param toe what holds the toe beside the ground
 * @param memory what the ground remembers
 * @param displacementLimit displacement beyond which the wall counts as collapsed, m, more than
 *     zero; theory of small displacements ends long before the length of the wall
 * @param stages at least one, in order of time
 */
public record StagedWall(
    double topLevel,
    double toeLevel,
    double elementLength,
    ToeCondition toe,
    GroundMemory memory,
    double displacementLimit,
    List<WallStage> stages) {

  /** Elements no longer than this, m, where nothing else is asked for. */
  public static final double USUAL_ELEMENT = 0.1;

  /** Displacement at which a wall counts as collapsed, as a share of its length. */
  public static final double USUAL_LIMIT = 0.1;

  /**
   * @throws IllegalArgumentException if a value leaves its range or a support lies off the wall
   */
  public StagedWall {
    stages = List.copyOf(stages);
    if (!(topLevel > toeLevel)) {
      throw new IllegalArgumentException("the top of the wall must lie above its toe");
    }
    if (!(elementLength > 0 && displacementLimit > 0) || stages.isEmpty()) {
      throw new IllegalArgumentException(
          "a staged wall needs elements, a limit of displacement and stages");
    }
    for (WallStage stage : stages) {
      for (ElasticSupport s : stage.supports()) {
        if (!(s.level() <= topLevel + 1e-9 && s.level() >= toeLevel - 1e-9)) {
          throw new IllegalArgumentException("support " + s.id() + " lies off the wall");
        }
      }
    }
  }

  /** A wall with a free toe, usual elements and usual limit. */
  public static StagedWall of(
      double topLevel, double toeLevel, GroundMemory memory, List<WallStage> stages) {
    return new StagedWall(
        topLevel,
        toeLevel,
        USUAL_ELEMENT,
        ToeCondition.FREE,
        memory,
        USUAL_LIMIT * (topLevel - toeLevel),
        stages);
  }
}
