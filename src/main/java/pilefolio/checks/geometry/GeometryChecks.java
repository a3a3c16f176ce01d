package pilefolio.checks.geometry;

import java.util.List;
import pilefolio.checks.Check;

/** The checks of geometry in the ground, in the order of the calculation package. */
public final class GeometryChecks {
  /** Every check of the family. */
  public static final List<Check> ALL =
      List.of(
          Levels.CHECK,
          new ToleranceChoice(),
          new PrimaryCut(),
          new JointOverlap(),
          new JointThickness(),
          new JointOpenings(),
          new CastingLevel());

  private GeometryChecks() {}
}
