package pilefolio.checks.concrete;

import java.util.List;
import pilefolio.checks.Check;

/** The checks of concrete and boring, in the order of the calculation package. */
public final class ConcreteChecks {
  /** Every check of the family. */
  public static final List<Check> ALL =
      List.of(
          new AugerRevolutions(),
          ConcreteVolume.CHECK,
          new InitialHead(),
          new LiftRate(),
          new PumpStrokes(),
          new CasingHead(),
          new CasingDrop(),
          new ConcretePressure(),
          new Spoil());

  private ConcreteChecks() {}
}
