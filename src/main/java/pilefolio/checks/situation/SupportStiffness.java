package pilefolio.checks.situation;

import java.util.Optional;
import java.util.OptionalDouble;
import pilefolio.checks.From;
import pilefolio.checks.Job;
import pilefolio.model.GroundAnchor;
import pilefolio.model.StrutMember;
import pilefolio.model.Support;
import pilefolio.standards.DesignBasis;
import pilefolio.standards.Section;
import pilefolio.standards.SectionTable;
import pilefolio.trace.Given;
import pilefolio.units.Units;

/**
 * Stiffness of one support along its axis, N/m: as entered, or E·A/L of its steel. A strut between
 * two walls that are loaded alike shortens from both ends, so half its length counts.
 */
public final class SupportStiffness {
  private SupportStiffness() {}

  /** The stiffness with its origin; empty if neither the cell nor the members give it. */
  public static Optional<Given> of(Job job, Support support) {
    if (support.stiffness().isPresent()) {
      return support.stiffness().map(From::cell);
    }
    Optional<GroundAnchor> anchor = job.submission().members().anchor(support);
    if (anchor.isPresent()) {
      double length = AnchorFreeLength.length(job, support, anchor.get()).si();
      return Optional.of(
          From.layout(
              anchor.get().modulus().si() * anchor.get().tendonArea() / length,
              "E·A/L of the tendon over its free length"));
    }
    return job.submission().members().strut(support).flatMap(m -> strut(job, m));
  }

  /** Horizontal stiffness for a metre of wall, N/m a metre: by the square of the cosine. */
  public static OptionalDouble perMetre(Job job, Support support) {
    double cosine = Math.cos(support.inclination().si());
    return of(job, support).stream()
        .mapToDouble(k -> k.si() * cosine * cosine / support.spacing().si())
        .findFirst();
  }

  private static Optional<Given> strut(Job job, StrutMember member) {
    double length = member.length().si() / member.farEnd().yielding();
    return area(job, member)
        .map(area -> From.layout(elasticModulus(job) * area / length, "E·A/L of the strut"));
  }

  /** Cross-section of a strut, m²; empty if its section is in no table. */
  public static Optional<Double> area(Job job, StrutMember member) {
    if (member.beam().isPresent()) {
      return SectionTable.all()
          .find(job.submission().beam(member.beam().get()).section())
          .map(Section::area);
    }
    double outer = member.tubeDiameter().orElseThrow().si();
    double inner = outer - 2 * member.tubeWall().orElseThrow().si();
    return Optional.of(Math.PI / 4 * (outer * outer - inner * inner));
  }

  /** Modulus of elasticity of structural steel as the steel code has it, Pa. */
  public static double elasticModulus(Job job) {
    return job.basis().steel() == DesignBasis.SteelCode.EN_1993
        ? 210e9
        : Units.of("ksi").toSi(29000);
  }
}
