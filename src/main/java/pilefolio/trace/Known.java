package pilefolio.trace;

/** How a fact is known; decides what a document may print beside it. */
public enum Known {
  /** Read in the document named. */
  READ,
  /** Read where another document quotes the one named. */
  QUOTED,
  /** Remembered; the user confirms the clause. */
  MEMORY,
  /** Common practice without a published source. */
  PRACTICE,
  /** Follows from geometry, equilibrium or a definition. */
  DERIVED
}
