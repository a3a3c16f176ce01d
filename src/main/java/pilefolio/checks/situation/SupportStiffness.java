package pilefolio.checks.situation;

import java.util.Optional;
import pilefolio.checks.From;
import pilefolio.checks.Job;
import pilefolio.model.FarEnd;
import pilefolio.model.GroundAnchor;
import pilefolio.model.StrutMember;
import pilefolio.model.Support;
import pilefolio.standards.SectionTable;
import pilefolio.trace.Given;

/**
 * Stiffness of one support along its axis, N/m: as entered, or E·A/L of its steel. A strut between
 * two walls that are loaded alike shortens from both ends, so half its length counts.
 */
public final class SupportStiffness {
  private static final double STEEL = 210e9;

  private SupportStiffness() {}

  /** The stiffness with its origin; empty if neither the cell nor the members give it. */
  public static Optional<Given> of(Job job, Support support) {
    if (support.stiffness().isPresent()) {
      return support.stiffness().map(From::cell);
    }
    Optional<GroundAnchor> anchor = job.submission().members().anchor(support);
    if (anchor.isPresent()) {
      GroundAnchor a = anchor.get();
      return a.freeLength()
          .map(
              free ->
                  From.layout(
                      a.modulus().si() * a.tendonArea() / free.si(),
                      "E·A/L of the tendon over its free length"));
    }
    Optional<StrutMember> strut = job.submission().members().strut(support);
    if (strut.isEmpty()) {
      return Optional.empty();
    }
    StrutMember m = strut.get();
    double length = m.length().si() / (m.farEnd() == FarEnd.WALL ? 2 : 1);
    return area(job, m)
        .map(a -> From.layout(STEEL * a / length, "E·A/L of the strut, E = 210 kN/mm²"));
  }

  private static Optional<Double> area(Job job, StrutMember m) {
    if (m.beam().isPresent()) {
      return SectionTable.all()
          .find(job.submission().beam(m.beam().get()).section())
          .map(s -> s.area());
    }
    if (m.tubeDiameter().isPresent() && m.tubeWall().isPresent()) {
      double t = m.tubeWall().get().si();
      return Optional.of(Math.PI * (m.tubeDiameter().get().si() - t) * t);
    }
    return Optional.empty();
  }
}
