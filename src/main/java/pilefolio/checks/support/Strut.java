package pilefolio.checks.support;

import pilefolio.checks.From;
import pilefolio.checks.Job;
import pilefolio.checks.RunCheck;
import pilefolio.checks.RunCheck.MissingInput;
import pilefolio.checks.situation.SupportStiffness;
import pilefolio.model.Beam;
import pilefolio.model.StrutMember;
import pilefolio.model.Support;
import pilefolio.standards.Section;
import pilefolio.standards.SectionTable;
import pilefolio.trace.Binding;
import pilefolio.trace.Calculation;
import pilefolio.trace.Given;

/**
 * A strut with the support it makes.
 *
 * @param job the job
 * @param support the support
 * @param member what it is made of
 */
record Strut(Job job, Support support, StrutMember member) {
  private static final double GRAVITY = 9.80665;
  private static final double STEEL = 7850;

  /** Why a strut may not be covered. */
  static final String OUTSIDE =
      "the section is too slender for the rules used, or the force is close to the Euler load";

  /** True for a rolled section. */
  boolean rolled() {
    return member.beam().isPresent();
  }

  /** The rolled beam. */
  Beam beam() {
    return job.submission().beam(member.beam().orElseThrow());
  }

  /** Its section. */
  Section section() {
    return section(beam());
  }

  /** The section of a beam. */
  static Section section(Beam beam) {
    return SectionTable.all()
        .find(beam.section())
        .orElseThrow(
            () ->
                new MissingInput(
                    "The section " + beam.section() + " is not in the section tables."));
  }

  /** A property of the rolled section. */
  Given property(double si) {
    return From.table(si, section().standard(), section().name());
  }

  /** A factor on loads that do not come from the ground. */
  static Given structural(Job job, String kind, String combination) {
    String key = "action.structural." + kind;
    return job.basis().has(key)
        ? From.factor(job, key, combination)
        : From.factor(job, "action." + kind + ".unfavourable", combination);
  }

  /** Yield strength. */
  Given yieldStrength() {
    return rolled()
        ? From.cell(beam().yieldStrength())
        : RunCheck.need(member.tubeYield(), "the yield strength of the tube");
  }

  /** Modulus of elasticity. */
  static Given elasticModulus(Job job) {
    return From.table(SupportStiffness.elasticModulus(job), "structural steel", "E");
  }

  /** Own weight with the load on the strut, N/m. */
  Given load() {
    double mass =
        rolled() ? section().mass() : STEEL * SupportStiffness.area(job, member).orElseThrow();
    return From.layout(GRAVITY * mass + member.load().si(), "own weight and load on the strut");
  }

  /** Eccentricity: the user's, or a tenth of the depth. */
  Given eccentricity() {
    double depth = rolled() ? section().depth() : member.tubeDiameter().orElseThrow().si();
    return member
        .eccentricity()
        .map(From::cell)
        .orElse(From.layout(0.1 * depth, "a tenth of the depth, contractor’s practice"));
  }

  /** Binds what the sheets of both codes ask for. */
  void bind(Binding binding, Demand demand) {
    Calculation temperature = StrutTemperature.calculate(this);
    binding
        .set("T", demand.force())
        .set("s", From.cell(support.spacing()))
        .set("i", From.cell(support.inclination()))
        .set("N_T", From.line(StrutTemperature.CHECK, temperature, "N_T"))
        .set("γ_Q", structural(job, "variable", demand.combination()))
        .set("γ_G", structural(job, "permanent", demand.combination()))
        .set("L", From.cell(member.length()))
        .set("K", From.cell(member.effectiveLength()))
        .set("E", elasticModulus(job))
        .set("w", load())
        .set("e", eccentricity());
    if (!rolled()) {
      binding
          .set("D", RunCheck.need(member.tubeDiameter(), "the diameter of the tube"))
          .set("t", RunCheck.need(member.tubeWall(), "the wall thickness of the tube"));
    }
  }
}
