package pilefolio.analysis.staged;

/** What holds the toe beside the ground. */
public enum ToeCondition {
  /** Nothing. */
  FREE,
  /** It cannot move, but turn. */
  PINNED,
  /** It cannot turn, but move. */
  GUIDED,
  /** It can neither move nor turn. */
  FIXED
}
