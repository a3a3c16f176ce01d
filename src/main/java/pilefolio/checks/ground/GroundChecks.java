package pilefolio.checks.ground;

import java.util.List;
import pilefolio.checks.Check;

/** The checks of the ground, in the order of the calculation package. */
public final class GroundChecks {
  /** Every check of the family. */
  public static final List<Check> ALL =
      List.of(
          new DrainedDesignStrength(),
          new UndrainedDesignStrength(),
          new RankineCoefficients(),
          new CoulombCoefficients(),
          new AnnexCCoefficients(),
          new CaquotKeriselCoefficients(),
          new UndrainedCoefficients(),
          new StripLoadPressure(),
          new LineLoadPressure(),
          new PointLoadPressure(),
          new FootingLoadPressure(),
          new PassiveWidthCheck(),
          new ActivePressure(),
          new PassivePressure());

  private GroundChecks() {}
}
