package pilefolio.checks.structure;

import pilefolio.checks.From;
import pilefolio.model.Beam;
import pilefolio.model.BeamInPile;
import pilefolio.model.BeamOrientation;
import pilefolio.model.Stage;
import pilefolio.model.Submission;
import pilefolio.model.Support;
import pilefolio.model.WallRun;
import pilefolio.standards.DesignBasis;
import pilefolio.standards.Section;
import pilefolio.standards.SteelGrade;
import pilefolio.trace.Given;
import pilefolio.trace.Source;
import pilefolio.units.Units;

/**
 * The beam in the secondaries of a run, with its section.
 *
 * @param run the run
 * @param placing how it stands in the pile
 * @param beam the beam
 * @param section its section
 */
record WallBeam(WallRun run, BeamInPile placing, Beam beam, Section section) {

  /** True if the beam bends about its strong axis. */
  boolean strong() {
    return beam.orientation() == BeamOrientation.STRONG;
  }

  /** A property of the section. */
  Given property(double si) {
    return From.table(si, section.standard(), section.name());
  }

  /** Yield strength as entered. */
  Given yieldStrength() {
    return From.cell(beam.yieldStrength());
  }

  /** Spacing of the beams along the wall: every second pile of a secant wall has one. */
  Given spacing() {
    return run.type().secant()
        ? new Given(
            2 * run.line().spacing().si(), new Source.Layout("twice the distance of neighbours"))
        : From.cell(run.line().spacing());
  }

  /** Modulus of elasticity: of the grade, or as the steel code has it. */
  Given elasticModulus(DesignBasis basis) {
    return SteelGrade.find(beam.grade())
        .map(grade -> From.table(grade.elasticModulus(), grade.standard(), grade.grade()))
        .orElseGet(
            () ->
                basis.steel() != DesignBasis.SteelCode.EN_1993
                    ? From.table(Units.of("ksi").toSi(29000), "AISC 360", "steel")
                    : From.table(210e9, "EN 1993-1-1", "steel"));
  }

  /** Shear modulus, likewise. */
  Given shearModulus() {
    return SteelGrade.find(beam.grade())
        .map(grade -> From.table(grade.shearModulus(), grade.standard(), grade.grade()))
        .orElseGet(() -> From.table(81e9, "EN 1993-1-1", "steel"));
  }

  /**
   * Length of the beam that nothing holds sideways, m. In a wall of piles it is the part above the
   * concrete, nil if the beam ends in the pile. A soldier beam or king pile is held by its supports
   * and by the ground below the excavation; the longest length of all stages counts.
   */
  double freeLength(Submission submission) {
    if (!run.type().kingOrSoldierBeams()) {
      return Math.max(0, placing.top().si() - run.levels().cutOff().si());
    }
    double longest = 0;
    for (Stage stage : submission.stages(run)) {
      double from = placing.top().si();
      for (Support support : submission.supports(stage)) {
        longest = Math.max(longest, from - support.level().si());
        from = support.level().si();
      }
      longest = Math.max(longest, from - stage.excavation().si());
    }
    return longest;
  }

  /** What that length is, in words. */
  String freeLengthName() {
    return run.type().kingOrSoldierBeams()
        ? "longest length between top, supports and excavation"
        : "top of the beam less cut-off level";
  }
}
