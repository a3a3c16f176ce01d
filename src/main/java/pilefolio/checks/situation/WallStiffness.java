package pilefolio.checks.situation;

import static pilefolio.units.Units.MM;

import java.util.List;
import java.util.Optional;
import pilefolio.checks.From;
import pilefolio.checks.Job;
import pilefolio.model.Beam;
import pilefolio.model.BeamOrientation;
import pilefolio.model.SheetPiling;
import pilefolio.model.WallRun;
import pilefolio.standards.DesignBasis;
import pilefolio.standards.Section;
import pilefolio.standards.SectionTable;
import pilefolio.standards.SteelGrade;
import pilefolio.trace.CalcSheet;
import pilefolio.trace.Calculation;
import pilefolio.trace.Given;
import pilefolio.trace.Reference;
import pilefolio.units.Unit;
import pilefolio.units.Units;

/**
 * Bending stiffness of a wall per length, N·m²/m: the user's value, or that of its steel. Concrete
 * around a beam is left out, because it cracks and its primaries are not joined to it.
 */
public final class WallStiffness {
  private static final Unit STIFFNESS = Units.of("kN·m²/m");

  /** The user's value. */
  public static final CalcSheet ENTERED =
      CalcSheet.named("Bending stiffness entered")
          .given("EI_w", STIFFNESS, "bending stiffness per length of wall, entered")
          .line("EI = EI_w", STIFFNESS, "bending stiffness used", Reference.DERIVED);

  /** Beams at a spacing. */
  public static final CalcSheet BEAMS =
      CalcSheet.named("Bending stiffness of beams at a spacing")
          .given("E", Units.of("N/mm²"), "modulus of elasticity of the steel")
          .given("I", Units.of("cm⁴"), "second moment of area of one beam")
          .given("s_b", MM, "spacing of the beams along the wall")
          .line("EI = E·I/s_b", STIFFNESS, "bending stiffness per length", Reference.DERIVED)
          .note("Concrete around the beams is left out.");

  /** Sheet piles. */
  public static final CalcSheet SHEETS =
      CalcSheet.named("Bending stiffness of sheet piles")
          .given("E", Units.of("N/mm²"), "modulus of elasticity of the steel")
          .given("I_w", Units.of("cm⁴/m"), "second moment of area per length of wall")
          .line("EI = E·I_w", STIFFNESS, "bending stiffness per length", Reference.DERIVED);

  /** Every sheet. */
  public static final List<CalcSheet> ALL = List.of(ENTERED, BEAMS, SHEETS);

  private WallStiffness() {}

  private record Key(String run) {}

  private record Found(Optional<Calculation> calculation) {}

  /**
   * The stiffness of a run as a calculation whose line {@code EI} is the value; empty if neither
   * the workbook gives it nor the section is known.
   */
  public static Optional<Calculation> of(Job job, WallRun run) {
    return job.shared(new Key(run.id()), Found.class, j -> new Found(make(j, run))).calculation();
  }

  private static Optional<Calculation> make(Job job, WallRun run) {
    if (run.analysis().stiffness().isPresent()) {
      return Optional.of(
          ENTERED
              .bind()
              .set("EI_w", From.cell(run.analysis().stiffness().orElseThrow()))
              .calculate());
    }
    if (run.type().sheetPiles() && run.sheets().isPresent()) {
      SheetPiling sheets = run.sheets().orElseThrow();
      return Optional.of(
          SHEETS
              .bind()
              .set("E", steel(job, ""))
              .set("I_w", From.cell(sheets.secondMoment()))
              .calculate());
    }
    return run.bearing()
        .flatMap(piles -> job.submission().beam(piles))
        .flatMap(beam -> beams(job, run, beam));
  }

  private static Optional<Calculation> beams(Job job, WallRun run, Beam beam) {
    return SectionTable.all().find(beam.section()).map(section -> beams(job, run, beam, section));
  }

  private static Calculation beams(Job job, WallRun run, Beam beam, Section section) {
    boolean strong = beam.orientation() == BeamOrientation.STRONG;
    Given spacing =
        run.type().secant()
            ? From.layout(2 * run.line().spacing().si(), "twice the distance of neighbours")
            : From.cell(run.line().spacing());
    return BEAMS
        .bind()
        .set("E", steel(job, beam.grade()))
        .set(
            "I",
            From.table(
                strong ? section.inertia() : section.weakInertia(),
                section.standard(),
                section.name()))
        .set("s_b", spacing)
        .calculate();
  }

  private static Given steel(Job job, String grade) {
    return SteelGrade.find(grade)
        .map(g -> From.table(g.elasticModulus(), g.standard(), g.grade()))
        .orElseGet(
            () ->
                job.basis().steel() != DesignBasis.SteelCode.EN_1993
                    ? From.table(Units.of("ksi").toSi(29000), "AISC 360", "steel")
                    : From.table(210e9, "EN 1993-1-1", "steel"));
  }
}
