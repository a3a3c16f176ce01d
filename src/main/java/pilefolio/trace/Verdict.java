package pilefolio.trace;

import java.util.Objects;
import java.util.OptionalDouble;

/**
 * The outcome of a check.
 *
 * @param result one of three
 * @param utilisation demand over capacity; absent where a ratio has no meaning; infinite where
 *     there is no capacity
 * @param reason why it was not checked, or empty
 */
public record Verdict(Result result, OptionalDouble utilisation, String reason) {

  /** The three results. */
  public enum Result {
    /** Every requirement holds. */
    SATISFIED("satisfied"),
    /** At least one requirement does not hold. */
    NOT_SATISFIED("not satisfied"),
    /** The question could not be answered. */
    NOT_CHECKED("not checked");

    private final String words;

    Result(String words) {
      this.words = words;
    }

    /** The words that documents print. */
    public String words() {
      return words;
    }
  }

  /** Checks the parts. */
  public Verdict {
    Objects.requireNonNull(result);
    Objects.requireNonNull(utilisation);
    if ((result == Result.NOT_CHECKED) == reason.isEmpty()) {
      throw new IllegalArgumentException("exactly a check that was not made has a reason");
    }
  }

  /** A check that was made. */
  public static Verdict of(boolean satisfied, OptionalDouble utilisation) {
    return new Verdict(satisfied ? Result.SATISFIED : Result.NOT_SATISFIED, utilisation, "");
  }

  /** A check that could not be made. */
  public static Verdict notChecked(String reason) {
    return new Verdict(Result.NOT_CHECKED, OptionalDouble.empty(), reason);
  }

  /** True only if the check was made and holds. */
  public boolean satisfied() {
    return result == Result.SATISFIED;
  }

  /** For sorting the worst first: not satisfied, then not checked, then by utilisation. */
  public double severity() {
    double base =
        switch (result) {
          case NOT_SATISFIED -> 2e9;
          case NOT_CHECKED -> 1e9;
          case SATISFIED -> 0;
        };
    return base + Math.min(utilisation.orElse(0), 1e8);
  }
}
