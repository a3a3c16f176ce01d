package pilefolio.checks.movement;

import java.util.List;
import pilefolio.checks.Check;

/** The checks of movement, in the order of the calculation package. */
public final class MovementChecks {
  /** Every check of the family. */
  public static final List<Check> ALL =
      List.of(
          new SystemStiffnessCheck(),
          new WallDisplacementCheck(),
          new GroundSettlement(),
          new NeighbourSettlement(),
          new NeighbourDamage(),
          new TriggerLevels());

  private MovementChecks() {}
}
