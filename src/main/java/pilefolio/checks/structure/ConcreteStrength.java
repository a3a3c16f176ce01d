package pilefolio.checks.structure;

import pilefolio.checks.From;
import pilefolio.model.Mix;
import pilefolio.model.StrengthSpecimen;
import pilefolio.trace.Binding;
import pilefolio.trace.Given;

/** Hands the strength of a mix to a sheet. */
final class ConcreteStrength {
  private static final double CUBE = 0.8;

  private ConcreteStrength() {}

  /** Binds the strength entered and what a cylinder has of it. */
  static void bind(Binding binding, String symbol, Mix mix) {
    binding.set(symbol, From.cell(mix.strength())).set("k_s", cylinderShare(mix));
  }

  private static Given cylinderShare(Mix mix) {
    return mix.specimen() == StrengthSpecimen.CUBE
        ? From.layout(CUBE, "cube strength entered")
        : From.layout(1, "cylinder strength entered");
  }
}
