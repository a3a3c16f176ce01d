package pilefolio.analysis.movement;

/**
 * Categories of damage to a building by its greatest tensile strain. Burland et al. (1977), limits
 * of strain after Boscardin and Cording (1989). Widths of cracks are typical, not a definition.
 */
public enum DamageCategory {
  /** Hairline cracks less than 0.1 mm. */
  NEGLIGIBLE(0, "negligible", "hairline cracks, up to 0.1 mm", 0.0005),
  /** Fine cracks, treated when decorating. */
  VERY_SLIGHT(1, "very slight", "fine cracks up to 1 mm, treated when decorating", 0.00075),
  /** Cracks that are easily filled. */
  SLIGHT(2, "slight", "cracks up to 5 mm, easily filled; doors may stick slightly", 0.0015),
  /** Cracks that need opening up. */
  MODERATE(
      3, "moderate", "cracks of 5 to 15 mm, or several over 3 mm; some masonry replaced", 0.003),
  /** Extensive repair or rebuilding. */
  SEVERE(
      4,
      "severe to very severe",
      "cracks over 15 mm; walls replaced, stability may be in danger",
      Double.POSITIVE_INFINITY);

  private final int number;
  private final String title;
  private final String words;
  private final double limit;

  DamageCategory(int number, String title, String words, double limit) {
    this.number = number;
    this.title = title;
    this.words = words;
    this.limit = limit;
  }

  /** The category of a greatest tensile strain; a strain on a limit belongs to the lower one. */
  public static DamageCategory of(double strain) {
    for (DamageCategory c : values()) {
      if (strain <= c.limit) {
        return c;
      }
    }
    throw new IllegalArgumentException("not a strain: " + strain);
  }

  /** Number of the category; 4 stands for 4 and 5, which strain does not tell apart. */
  public int number() {
    return number;
  }

  /** Name. */
  public String title() {
    return title;
  }

  /** What an owner would see. */
  public String words() {
    return words;
  }

  /** Greatest tensile strain of the category; infinite for the last. */
  public double limit() {
    return limit;
  }
}
