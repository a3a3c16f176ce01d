package pilefolio.checks.concrete;

import pilefolio.model.ConcreteSupply;
import pilefolio.model.PileKind;
import pilefolio.model.Value;

/** Values of the concrete supply by kind of pile. */
final class Supply {
  private Supply() {}

  static Value overbreak(ConcreteSupply supply, PileKind kind) {
    return kind == PileKind.PRIMARY ? supply.overbreakPrimary() : supply.overbreakSecondary();
  }
}
