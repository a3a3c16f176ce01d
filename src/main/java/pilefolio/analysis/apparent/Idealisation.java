package pilefolio.analysis.apparent;

/** How a wall on several supports is turned into something that statics can solve. */
public enum Idealisation {
  /** Simple beams between hinges at all supports but the first, overhang at the top. */
  HINGE,
  /** Each support carries the pressure up to halfway to its neighbours. */
  TRIBUTARY,
  /** One beam on rigid supports with constant stiffness. */
  CONTINUOUS
}
