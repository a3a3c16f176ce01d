package pilefolio.checks;

import java.util.List;
import java.util.stream.Stream;
import pilefolio.checks.apparent.ApparentChecks;
import pilefolio.checks.concrete.ConcreteChecks;
import pilefolio.checks.geometry.GeometryChecks;
import pilefolio.checks.ground.GroundChecks;
import pilefolio.checks.movement.MovementChecks;
import pilefolio.checks.pile.PileChecks;
import pilefolio.checks.rig.RigChecks;
import pilefolio.checks.sensitivity.SensitivityChecks;
import pilefolio.checks.sequence.SequenceChecks;
import pilefolio.checks.stability.StabilityChecks;
import pilefolio.checks.structure.StructureChecks;
import pilefolio.checks.support.SupportChecks;

/** The explicit list of all checks, in the order of the calculation package. */
public final class Checks {
  /** Every check. */
  public static final List<Check> ALL =
      Stream.of(
              GroundChecks.ALL,
              StabilityChecks.ALL,
              ApparentChecks.ALL,
              StructureChecks.ALL,
              SupportChecks.ALL,
              PileChecks.ALL,
              MovementChecks.ALL,
              SensitivityChecks.ALL,
              GeometryChecks.ALL,
              SequenceChecks.ALL,
              ConcreteChecks.ALL,
              RigChecks.ALL)
          .flatMap(List::stream)
          .toList();

  private Checks() {}
}
