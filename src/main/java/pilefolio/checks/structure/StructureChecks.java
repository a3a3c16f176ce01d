package pilefolio.checks.structure;

import java.util.List;
import pilefolio.checks.Check;

/** The checks of beams and primaries, in the order of the calculation package. */
public final class StructureChecks {
  /** Every check of the family. */
  public static final List<Check> ALL =
      List.of(
          new BeamYield(),
          new BeamBending(),
          new BeamShear(),
          new BeamBendingShear(),
          new BeamRestraint(),
          new BeamFreeLength(),
          new BeamAxial(),
          new BeamCover(),
          new BeamTop(),
          new BeamFoot(),
          new PrimaryArch(),
          new PrimaryPlainConcrete(),
          new ToeConcrete(),
          new LaggingThickness(),
          new LaggingBending(),
          new ShotcreteLagging(),
          new SheetPileBending(),
          new SheetPileShear(),
          new SheetPileAxial());

  private StructureChecks() {}
}
