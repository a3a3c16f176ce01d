package pilefolio.checks.support;

import static pilefolio.units.Units.ONE;

import pilefolio.checks.From;
import pilefolio.checks.Job;
import pilefolio.standards.DesignBasis;
import pilefolio.trace.Binding;
import pilefolio.trace.CalcSheet;
import pilefolio.trace.Reference;
import pilefolio.units.Unit;

/** How AISC 360 keeps its margin: allowable strength, or design strength. */
enum AiscSafety {
  /** Nominal strength over a safety factor, service loads. */
  ALLOWABLE("allowable strength", "allowable", "1.6"),
  /** Nominal strength times a resistance factor, factored loads. */
  DESIGN("design strength", "design", "1.0");

  private final String title;
  private final String adjective;
  private final String level;

  AiscSafety(String title, String adjective, String level) {
    this.title = title;
    this.adjective = adjective;
    this.level = level;
  }

  /** A factor of the code. */
  enum On {
    /** Flexure. */
    BENDING("b", "steel.bending", "steel.bending.resistance"),
    /** Shear. */
    SHEAR("v", "steel.shear", "steel.shear.resistance"),
    /** Compression. */
    COMPRESSION("c", "steel.compression", "steel.compression.resistance");

    private final String index;
    private final String safetyKey;
    private final String resistanceKey;

    On(String index, String safetyKey, String resistanceKey) {
      this.index = index;
      this.safetyKey = safetyKey;
      this.resistanceKey = resistanceKey;
    }
  }

  /** That of the design basis. */
  static AiscSafety of(Job job) {
    return job.basis().steel() == DesignBasis.SteelCode.AISC_360 ? ALLOWABLE : DESIGN;
  }

  /** A title with the format in it. */
  String titled(String what) {
    return what + ", AISC 360 " + title;
  }

  /** Multiplier that brings a load to strength level. */
  String level() {
    return level;
  }

  /** Adds the factor that the strength is divided by or multiplied with. */
  CalcSheet given(CalcSheet sheet, On on) {
    return this == ALLOWABLE
        ? sheet.given(
            "Ω_" + on.index,
            ONE,
            "safety factor of " + on.name().toLowerCase(java.util.Locale.ROOT))
        : sheet.given(
            "φ_" + on.index,
            ONE,
            "resistance factor of " + on.name().toLowerCase(java.util.Locale.ROOT));
  }

  /** The formula of the available strength. */
  String available(String nominal, On on) {
    return this == ALLOWABLE ? nominal + "/Ω_" + on.index : "φ_" + on.index + "·" + nominal;
  }

  /** Adds the available strength. */
  CalcSheet available(
      CalcSheet sheet,
      String symbol,
      String nominal,
      Unit unit,
      String meaning,
      On on,
      Reference reference) {
    return sheet.line(
        symbol + " = " + available(nominal, on), unit, adjective + " " + meaning, reference);
  }

  /** Binds the factor. */
  void bind(Binding binding, On on, Job job, String combination) {
    if (this == ALLOWABLE) {
      binding.set("Ω_" + on.index, From.factor(job, on.safetyKey, combination));
    } else {
      binding.set("φ_" + on.index, From.factor(job, on.resistanceKey, combination));
    }
  }
}
