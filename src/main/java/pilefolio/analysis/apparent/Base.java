package pilefolio.analysis.apparent;

/** What holds the wall below its lowest support. */
public sealed interface Base permits Base.Overhang, Base.Reaction {

  /** Nothing: the part below the lowest support hangs from it. */
  record Overhang() implements Base {}

  /**
   * A reaction of the ground.
   *
   * @param level where it acts, m: the excavation level or a point below it
   */
  record Reaction(double level) implements Base {}
}
