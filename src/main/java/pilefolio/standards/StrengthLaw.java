package pilefolio.standards;

import com.fasterxml.jackson.core.type.TypeReference;
import java.util.List;
import java.util.Optional;
import pilefolio.trace.Reference;

/**
 * A law of strength gain with its coefficients.
 *
 * @param id stable name
 * @param title as printed
 * @param law form of the law
 * @param s coefficient of the cement, EN form; else 0
 * @param a constant in days, ACI form; else 0
 * @param b constant, ACI form; else 0
 * @param reference where the coefficients come from
 */
public record StrengthLaw(
    String id, String title, Form law, double s, double a, double b, Reference reference) {

  /** Form of a law of strength gain, t in days. */
  public enum Form {
    /** f/f28 = exp(s·(1 − √(28/t))). */
    EN_1992,
    /** f/f28 = t/(a + b·t). */
    ACI_209
  }

  private static final List<StrengthLaw> ALL =
      DataFile.read("installation/strength.json", new TypeReference<List<StrengthLaw>>() {});

  /** Checks that the coefficients of the form are there. */
  public StrengthLaw {
    boolean complete = law == Form.EN_1992 ? s > 0 : a > 0 && b > 0;
    if (!complete) {
      throw new IllegalArgumentException(id + ": coefficients do not fit the form");
    }
  }

  /** Every law. */
  public static List<StrengthLaw> all() {
    return ALL;
  }

  /** The law with an id, or empty. */
  public static Optional<StrengthLaw> find(String id) {
    return ALL.stream().filter(law -> law.id().equals(id)).findFirst();
  }

  /**
   * Strength over the strength at 28 days.
   *
   * @param days age at 20 °C, more than 0
   */
  public double ratio(double days) {
    if (!(days > 0)) {
      throw new IllegalArgumentException("age must be positive: " + days);
    }
    return law == Form.EN_1992 ? Math.exp(s * (1 - Math.sqrt(28 / days))) : days / (a + b * days);
  }
}
