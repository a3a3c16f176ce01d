package pilefolio.analysis.sequence;

/** The rules that can keep a pile from a day. */
public enum SequenceRule {
  /** A primary is too young to stand or too hard to cut. */
  STRENGTH_WINDOW("strength window of the primaries"),
  /** The two primaries of a secondary differ too much in age. */
  AGE_DIFFERENCE("age difference of the two primaries"),
  /** A pile close by is too fresh. */
  FRESH_PILE("distance to fresh piles"),
  /** No rig has time left. */
  SHIFT("time in the shift"),
  /** The day's concrete is used up. */
  CONCRETE("concrete per day"),
  /** The site does not work on the days that would suit. */
  WORKING_DAYS("working days"),
  /** The last permitted day has passed. */
  LATEST_DAY("latest day"),
  /** A primary it needs has no day itself. */
  PRIMARY_MISSING("its primary has no day");

  private final String words;

  SequenceRule(String words) {
    this.words = words;
  }

  /**
   * The rule in words, for print.
   *
   * @return the words
   */
  public String words() {
    return words;
  }
}
