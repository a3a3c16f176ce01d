package pilefolio.standards;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import pilefolio.trace.Reference;

/**
 * The rules and factors a job is designed to.
 *
 * @param id stable name, such as {@code ec7-da1}
 * @param title as printed
 * @param format how safety is written
 * @param steel code of the steel checks
 * @param concrete code of the concrete checks
 * @param combinations sets of factors that are run
 * @param factors every factor that a check uses, in the order in which they are printed
 * @param further recommended values of the same tables that no check uses; they are not printed and
 *     cannot be changed, so that nobody relies on a change without effect
 * @param references documents the basis rests on
 * @param overrides what the user changed; empty for a basis as published
 */
public record DesignBasis(
    String id,
    String title,
    Format format,
    SteelCode steel,
    ConcreteCode concrete,
    List<Combination> combinations,
    List<Factor> factors,
    List<Factor> further,
    List<Use> references,
    List<Entered> overrides) {

  /** How a basis writes safety. */
  public enum Format {
    /** Service loads against resistances divided by a factor of safety. */
    ALLOWABLE_STRESS,
    /** Factored actions against resistances of factored strengths. */
    PARTIAL_FACTORS,
    /** Factored loads against nominal resistances times resistance factors. */
    LOAD_AND_RESISTANCE
  }

  /** Code of the steel checks. */
  public enum SteelCode {
    /** AISC 360, allowable strength. */
    AISC_360,
    /** AISC 360, load and resistance factors. */
    AISC_360_LRFD,
    /** EN 1993-1-1. */
    EN_1993
  }

  /** Code of the concrete checks. */
  public enum ConcreteCode {
    /** ACI 318. */
    ACI_318,
    /** EN 1992-1-1. */
    EN_1992
  }

  /**
   * A document and what it is used for.
   *
   * @param reference the document
   * @param use what for
   */
  public record Use(Reference reference, String use) {}

  /**
   * A value the user entered in place of a published one.
   *
   * @param key key of the factor
   * @param combination combination, or {@link Factor#ALL}
   * @param published value of the basis as published, as text
   * @param entered value of the user, as text
   */
  public record Entered(String key, String combination, String published, String entered) {}

  /** Checks that keys are unique and that each factor has a value in each combination. */
  public DesignBasis {
    Objects.requireNonNull(id);
    Objects.requireNonNull(title);
    Objects.requireNonNull(format);
    Objects.requireNonNull(steel);
    Objects.requireNonNull(concrete);
    combinations = List.copyOf(combinations);
    factors = List.copyOf(factors);
    further = List.copyOf(further);
    references = List.copyOf(references);
    overrides = List.copyOf(overrides);
    if (combinations.isEmpty()) {
      throw new IllegalArgumentException(id + ": no combination");
    }
    Map<String, String> keyOf = new LinkedHashMap<>();
    for (Factor factor : Stream.concat(factors.stream(), further.stream()).toList()) {
      if (keyOf.containsValue(factor.key()) || keyOf.put(factor.symbol(), factor.key()) != null) {
        throw new IllegalArgumentException(id + ": key or symbol twice, " + factor.key());
      }
      combinations.forEach(combination -> factor.in(combination.id()));
    }
  }

  /** True if the basis has such a factor. */
  public boolean has(String key) {
    return find(key).isPresent();
  }

  /**
   * The factor with a key.
   *
   * @throws IllegalArgumentException if the basis has none
   */
  public Factor factor(String key) {
    return find(key).orElseThrow(() -> new IllegalArgumentException(id + " has no factor " + key));
  }

  /**
   * The value of a factor in a combination.
   *
   * @throws IllegalArgumentException if there is none
   */
  public double value(String key, String combination) {
    return factor(key).in(combination);
  }

  /** The combination with an id, or empty. */
  public Optional<Combination> combination(String combination) {
    return combinations.stream().filter(c -> c.id().equals(combination)).findFirst();
  }

  /** True if the user changed the factor in a combination. */
  public boolean isOverridden(String key, String combination) {
    return overrides.stream()
        .anyMatch(
            o ->
                o.key().equals(key)
                    && (o.combination().equals(combination) || o.combination().equals(Factor.ALL)));
  }

  private Optional<Factor> find(String key) {
    return Stream.concat(factors.stream(), further.stream())
        .filter(factor -> factor.key().equals(key))
        .findFirst();
  }

  /**
   * A basis with the user's values on top.
   *
   * @param basis the basis; unknown or impossible entries are left out of it
   * @param refused what was left out
   */
  public record Changed(DesignBasis basis, List<Refusal> refused) {
    /** Copies the list. */
    public Changed {
      refused = List.copyOf(refused);
    }
  }

  /**
   * An entry that was not applied.
   *
   * @param entry key as the user wrote it
   * @param reason why, as a sentence for the user
   */
  public record Refusal(String entry, String reason) {}

  /**
   * This basis with the user's values on top.
   *
   * @param entries value by key; {@code key@combination} changes one combination only
   */
  public Changed with(Map<String, Double> entries) {
    Map<String, Factor> changed = new LinkedHashMap<>();
    factors.forEach(factor -> changed.put(factor.key(), factor));
    List<Entered> made = new ArrayList<>(overrides);
    List<Refusal> refused = new ArrayList<>();
    entries.forEach(
        (entry, value) -> {
          int at = entry.indexOf('@');
          String key = at < 0 ? entry : entry.substring(0, at);
          String combination = at < 0 ? Factor.ALL : entry.substring(at + 1);
          Factor factor = changed.get(key);
          String reason = refusal(key, factor, combination, value);
          if (!reason.isEmpty()) {
            refused.add(new Refusal(entry, reason));
            return;
          }
          made.add(new Entered(key, combination, published(factor, combination), text(value)));
          changed.put(key, replaced(factor, combination, value));
        });
    DesignBasis basis =
        new DesignBasis(
            id,
            title,
            format,
            steel,
            concrete,
            combinations,
            List.copyOf(changed.values()),
            further,
            references,
            made);
    return new Changed(basis, refused);
  }

  private String refusal(String key, Factor factor, String combination, double value) {
    if (factor == null && has(key)) {
      return "no check uses this factor";
    }
    if (factor == null) {
      return "the basis " + id + " has no factor of this name";
    }
    if (!combination.equals(Factor.ALL) && combination(combination).isEmpty()) {
      return "the basis " + id + " has no combination " + combination;
    }
    if (!(value >= factor.low() && value <= factor.high())) {
      return "the value must lie between " + text(factor.low()) + " and " + text(factor.high());
    }
    return "";
  }

  private Factor replaced(Factor factor, String combination, double value) {
    Map<String, Double> values = new LinkedHashMap<>();
    for (Combination c : combinations) {
      boolean hit = combination.equals(Factor.ALL) || combination.equals(c.id());
      values.put(c.id(), hit ? value : factor.in(c.id()));
    }
    return new Factor(
        factor.key(),
        factor.symbol(),
        factor.meaning(),
        factor.unit(),
        values,
        factor.low(),
        factor.high(),
        factor.reference());
  }

  private String published(Factor factor, String combination) {
    if (!combination.equals(Factor.ALL)) {
      return text(factor.in(combination));
    }
    List<String> values = combinations.stream().map(c -> text(factor.in(c.id()))).toList();
    return factor.isUniform() ? values.get(0) : String.join(" / ", values);
  }

  private static String text(double value) {
    return pilefolio.units.NumberText.usual(value);
  }
}
