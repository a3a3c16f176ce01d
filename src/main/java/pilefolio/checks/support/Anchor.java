package pilefolio.checks.support;

import java.util.Optional;
import pilefolio.checks.From;
import pilefolio.checks.Job;
import pilefolio.checks.RunCheck.MissingInput;
import pilefolio.checks.situation.AnchorFreeLength;
import pilefolio.checks.stability.SupportForces;
import pilefolio.model.GroundAnchor;
import pilefolio.model.Support;
import pilefolio.standards.Combination;
import pilefolio.standards.DesignBasis;
import pilefolio.standards.PresumptiveBond;
import pilefolio.trace.Binding;
import pilefolio.trace.Given;

/**
 * Anchors with the support they make.
 *
 * @param job the job
 * @param support the support
 * @param member what they are made of
 */
record Anchor(Job job, Support support, GroundAnchor member) {
  // A length that the engine sizes is set on whole half metres.
  private static final double STEP = 0.5;

  /** Why an anchor may not be covered. */
  static final String OUTSIDE = "the values given leave a line without a result";

  /** Bond of the tables. */
  PresumptiveBond bond() {
    return PresumptiveBond.in(member.ground());
  }

  /** True in rock. */
  boolean rock() {
    return bond().medium() == PresumptiveBond.Medium.ROCK;
  }

  /** How the basis writes safety. */
  DesignBasis.Format format() {
    return job.basis().format();
  }

  /** Binds force, spacing and inclination. */
  void bind(Binding binding, Demand demand) {
    binding
        .set("T", demand.force())
        .set("s", From.cell(support.spacing()))
        .set("i", From.cell(support.inclination()));
  }

  /** Free length: the user's or sized. */
  Given freeLength() {
    return AnchorFreeLength.length(job, support, member);
  }

  /** Bond length: the user's, or the least that every combination allows, on half metres. */
  Given bondLength() {
    if (member.bondLength().isPresent()) {
      return From.cell(member.bondLength().get());
    }
    double least = leastBond();
    Given open = From.layout(least, "not known yet");
    for (Combination combination : job.combinations()) {
      Optional<SupportForces.Found> found = SupportForces.of(job, support, combination.id());
      if (found.isEmpty()) {
        throw new MissingInput(
            "The bond length is sized when the force in every combination is known.");
      }
      Demand demand = new Demand(found.get());
      least = Math.max(least, AnchorBondLength.calculate(this, demand, open).value("L_req"));
    }
    return From.layout(
        Math.ceil(least / STEP - 1e-9) * STEP, "least length, rounded up to half metres");
  }

  /** Least bond length of the kind of ground, m. */
  double leastBond() {
    return rock() ? 3 : 4.5;
  }

  /** Greatest bond length that still counts, m. */
  double greatestBond() {
    return rock() ? 10 : 12;
  }

  /** Area of the tendon. */
  Given tendonArea() {
    return From.layout(member.tendonArea(), "count times area of one");
  }
}
