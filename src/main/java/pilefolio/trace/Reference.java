package pilefolio.trace;

import java.util.Objects;

/**
 * Where a formula, a factor or a limit comes from.
 *
 * @param document short name of the document with its year; empty for practice and derivations
 * @param clause clause, table or equation; may be empty
 * @param known how it is known
 */
public record Reference(String document, String clause, Known known) {

  /** Equilibrium, geometry or a definition: needs no document. */
  public static final Reference DERIVED = new Reference("", "", Known.DERIVED);

  /** Common practice without a published source. */
  public static final Reference PRACTICE = new Reference("", "", Known.PRACTICE);

  /** Checks the parts. */
  public Reference {
    Objects.requireNonNull(document);
    Objects.requireNonNull(clause);
    Objects.requireNonNull(known);
    boolean named = known == Known.READ || known == Known.QUOTED || known == Known.MEMORY;
    if (named == document.isEmpty()) {
      throw new IllegalArgumentException("a " + known + " reference and document do not fit");
    }
  }

  /** A reference that was read. */
  public static Reference read(String document, String clause) {
    return new Reference(document, clause, Known.READ);
  }

  /** A reference that was read where another document quotes it. */
  public static Reference quoted(String document, String clause) {
    return new Reference(document, clause, Known.QUOTED);
  }

  /** A remembered reference. */
  public static Reference memory(String document, String clause) {
    return new Reference(document, clause, Known.MEMORY);
  }

  /** The words that documents print. */
  public String text() {
    String place = clause.isEmpty() ? document : document + ", " + clause;
    return switch (known) {
      case READ -> place;
      case QUOTED -> place + ", as quoted; confirm against the original";
      case MEMORY -> "after " + place + "; to be confirmed by the user";
      case PRACTICE -> "contractor’s practice";
      case DERIVED -> "by derivation";
    };
  }

  /** The short form for the margin of a calculation. */
  public String margin() {
    String place = clause.isEmpty() ? document : document + ", " + clause;
    return switch (known) {
      case READ -> place;
      case QUOTED -> place + " (as quoted)";
      case MEMORY -> "after " + place + " †";
      case PRACTICE -> "practice";
      case DERIVED -> "";
    };
  }
}
