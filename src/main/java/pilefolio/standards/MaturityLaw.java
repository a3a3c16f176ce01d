package pilefolio.standards;

import com.fasterxml.jackson.core.type.TypeReference;
import java.util.List;
import java.util.Optional;
import pilefolio.trace.Reference;

/**
 * How time at a temperature counts against time at 20 °C.
 *
 * @param id stable name
 * @param title as printed
 * @param law form of the law
 * @param datum temperature at which hardening stops, °C; Nurse-Saul form
 * @param activation activation energy over the gas constant, K; Arrhenius form
 * @param base reference temperature, °C
 * @param reference where it comes from
 */
public record MaturityLaw(
    String id,
    String title,
    Form law,
    double datum,
    double activation,
    double base,
    Reference reference) {

  /** Form of a maturity law. */
  public enum Form {
    /** Temperature above a datum, times time. */
    NURSE_SAUL,
    /** Exponential of the inverse absolute temperature. */
    ARRHENIUS
  }

  private static final List<MaturityLaw> ALL =
      DataFile.read("installation/maturity.json", new TypeReference<List<MaturityLaw>>() {});

  /** Every law. */
  public static List<MaturityLaw> all() {
    return ALL;
  }

  /** The law with an id, or empty. */
  public static Optional<MaturityLaw> find(String id) {
    return ALL.stream().filter(law -> law.id().equals(id)).findFirst();
  }
}
