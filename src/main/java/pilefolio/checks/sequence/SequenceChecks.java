package pilefolio.checks.sequence;

import java.util.List;
import pilefolio.checks.Check;

/** The checks of sequence and age, in the order of the calculation package. */
public final class SequenceChecks {
  /** Every check of the family. */
  public static final List<Check> ALL =
      List.of(
          CycleTime.CHECK,
          WindowOfPrimaries.CHECK,
          new ProgrammeFound(),
          new StrengthAtCutting(),
          new FlankAges(),
          new FreshPiles(),
          new TruckFleet(),
          new ConcreteDay());

  private SequenceChecks() {}
}
