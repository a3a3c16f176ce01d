package pilefolio.analysis.staged;

import java.util.List;

/** The ground and water on one side of the wall in one stage. */
public interface SoilSide {

  /**
   * The law at a level. At a level where the ground changes there are two; the one of the stretch
   * that holds {@code seenFrom} is meant.
   *
   * @param level level, m
   * @param seenFrom the same level, or one just above or below it, m
   */
  SpringLaw at(double level, double seenFrom);

  /** Levels at which the law jumps or changes its slope, m, in any order. */
  List<Double> breaks();

  /** A side without ground and water. */
  static SoilSide nothing() {
    return uniform(SpringLaw.NOTHING);
  }

  /** The same law at every level. */
  static SoilSide uniform(SpringLaw law) {
    return new SoilSide() {
      @Override
      public SpringLaw at(double level, double seenFrom) {
        return law;
      }

      @Override
      public List<Double> breaks() {
        return List.of();
      }
    };
  }
}
