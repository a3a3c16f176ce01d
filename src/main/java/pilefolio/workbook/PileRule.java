package pilefolio.workbook;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import pilefolio.findings.Finding;
import pilefolio.model.PileKind;
import pilefolio.units.NumberText;

/** Piles overlap, reach deep enough, and their beams fit into them. */
final class PileRule implements Rule {
  /** Least embedment below the last excavation, m. */
  private static final double LEAST_EMBEDMENT = 1.0;

  /** The ground should be known this many diameters below the toe. */
  private static final double KNOWN_BELOW_TOE = 3;

  private static final Range USUAL_SPACING = new Range(0.70, 0.92);
  private static final double LEAST_RATIO = 0.8;

  @Override
  public void check(Book book, KnownNames names, Consumer<Finding> findings) {
    for (Row run : book.rows(WallSheet.RUNS)) {
      Optional<String> id = run.find(WallSheet.RUN_ID);
      if (id.isPresent()) {
        List<Row> rows = book.where(WallSheet.PILES, WallSheet.RUN, id.get());
        Optional<Row> primary = of(rows, PileKind.PRIMARY);
        Optional<Row> secondary = of(rows, PileKind.SECONDARY);
        if (primary.isPresent() && secondary.isPresent()) {
          spacing(run, primary.get(), secondary.get(), findings);
          depths(primary.get(), secondary.get(), findings);
        }
        rows.forEach(row -> levels(run, row, book, findings));
        secondary
            .or(() -> of(rows, PileKind.SINGLE))
            .ifPresent(row -> embedment(id.get(), row, book, findings));
      }
    }
    book.rows(WallSheet.PILES).forEach(row -> loads(row, findings));
  }

  private static Optional<Row> of(List<Row> rows, PileKind kind) {
    return rows.stream()
        .filter(row -> row.find(WallSheet.PILE_KIND).filter(k -> k == kind).isPresent())
        .findFirst();
  }

  private static void spacing(Row run, Row primary, Row secondary, Consumer<Finding> findings) {
    Optional<Double> spacing = run.si(WallSheet.SPACING);
    Optional<Double> primaryDiameter = primary.si(WallSheet.DIAMETER);
    Optional<Double> secondaryDiameter = secondary.si(WallSheet.DIAMETER);
    if (spacing.isEmpty() || primaryDiameter.isEmpty() || secondaryDiameter.isEmpty()) {
      return;
    }
    double mean = (primaryDiameter.get() + secondaryDiameter.get()) / 2;
    double ratio = spacing.get() / mean;
    if (ratio >= 1) {
      findings.accept(
          FindingKind.NO_OVERLAP.at(
              run.place(WallSheet.SPACING),
              "the piles do not overlap: the spacing is "
                  + NumberText.significant(ratio, 3)
                  + " diameters",
              USUAL_SPACING.contains(ratio / 2)
                  ? "was the spacing of two primaries entered? the next secondary stands at half"
                      + " of it"
                  : "the spacing must be less than the mean diameter"));
    } else if (!USUAL_SPACING.contains(ratio)) {
      findings.accept(
          FindingKind.UNUSUAL_SPACING.at(
              run.place(WallSheet.SPACING),
              "the spacing is " + NumberText.significant(ratio, 3) + " diameters",
              "0.70 to 0.92 is usual; it is used as it stands"));
    }
    if (secondaryDiameter.get() < LEAST_RATIO * primaryDiameter.get()) {
      findings.accept(
          FindingKind.SECONDARY_MUCH_THINNER.at(
              secondary.place(WallSheet.DIAMETER),
              "the secondaries are thinner than 0.8 times the primaries",
              "make sure that the two rows were not taken for each other"));
    }
  }

  private static void depths(Row primary, Row secondary, Consumer<Finding> findings) {
    if (primary.find(WallSheet.TOE).isEmpty()) {
      findings.accept(
          FindingKind.MISSING.at(
              primary.place(WallSheet.TOE),
              "Toe level is empty",
              "the engine sizes secondaries only; give the toe of the primaries"));
    }
    Optional<Double> primaryToe = primary.si(WallSheet.TOE);
    Optional<Double> secondaryToe = secondary.si(WallSheet.TOE);
    if (primaryToe.isPresent()
        && secondaryToe.isPresent()
        && primaryToe.get() < secondaryToe.get()) {
      findings.accept(
          FindingKind.PRIMARY_DEEPER.at(
              primary.place(WallSheet.TOE),
              "the primaries are deeper than the secondaries",
              "make sure that the two rows were not taken for each other"));
    }
  }

  private static void levels(Row run, Row piles, Book book, Consumer<Finding> findings) {
    Optional<Double> toe = piles.si(WallSheet.TOE);
    Optional<Double> cutOff = run.si(WallSheet.CUT_OFF);
    if (toe.isPresent() && cutOff.isPresent() && toe.get() >= cutOff.get()) {
      findings.accept(
          FindingKind.TOE_ABOVE_CUT_OFF.at(
              piles.place(WallSheet.TOE),
              "the toe is not below the cut-off level",
              "give a level, not a depth"));
      return;
    }
    Optional<Double> base =
        book.first(GroundSheet.PROFILES, GroundSheet.PROFILE_ID, run.find(WallSheet.PROFILE))
            .flatMap(row -> row.si(GroundSheet.BASE));
    Optional<Double> diameter = piles.si(WallSheet.DIAMETER);
    if (toe.isPresent() && base.isPresent() && diameter.isPresent()) {
      double wanted = toe.get() - KNOWN_BELOW_TOE * diameter.get();
      if (base.get() > wanted + 1e-9) {
        findings.accept(
            FindingKind.GROUND_KNOWN_TOO_SHALLOW.at(
                piles.place(WallSheet.TOE),
                "the ground is known to less than 3 diameters below the toe",
                "extend the profile; a boring must reach deeper than the piles"));
      }
    }
    beam(run, piles, findings);
  }

  private static void beam(Row run, Row piles, Consumer<Finding> findings) {
    if (piles.find(WallSheet.BEAM).isEmpty()) {
      return;
    }
    Optional<Double> top = piles.si(WallSheet.BEAM_TOP);
    if (top.isEmpty()) {
      findings.accept(
          FindingKind.BEAM_LEVELS_MISSING.at(
              piles.place(WallSheet.BEAM_TOP),
              "the beam has no top level",
              WallSheet.BEAM_TOP.expected(WallSheet.BEAM_TOP.unit())));
      return;
    }
    Optional<Double> foot = piles.si(WallSheet.BEAM_TOE);
    Optional<Double> toe = piles.si(WallSheet.TOE);
    Optional<Double> platform = run.si(WallSheet.PLATFORM);
    if (platform.isPresent() && top.get() > platform.get() + GroundRule.FLOOD) {
      wrongBeam(
          piles,
          WallSheet.BEAM_TOP,
          "the beam ends more than a metre above the platform",
          findings);
    }
    if (foot.isPresent() && foot.get() >= top.get()) {
      wrongBeam(piles, WallSheet.BEAM_TOE, "the foot of the beam is not below its top", findings);
    } else if (foot.isPresent() && toe.isPresent() && foot.get() < toe.get() - 1e-9) {
      wrongBeam(piles, WallSheet.BEAM_TOE, "the beam is longer than its bore", findings);
    }
  }

  private static void wrongBeam(
      Row piles, NumberColumn column, String found, Consumer<Finding> findings) {
    findings.accept(
        FindingKind.BEAM_LEVELS_WRONG.at(
            piles.place(column), found, "give levels, from toe of pile to platform"));
  }

  private static void embedment(String run, Row secondary, Book book, Consumer<Finding> findings) {
    Optional<Double> toe = secondary.si(WallSheet.TOE);
    Optional<Double> last =
        book.where(StageSheet.STAGES, StageSheet.RUN, run).stream()
            .flatMap(stage -> stage.si(StageSheet.EXCAVATION).stream())
            .min(Double::compare);
    if (toe.isPresent() && last.isPresent() && toe.get() > last.get() - LEAST_EMBEDMENT + 1e-9) {
      findings.accept(
          FindingKind.TOE_TOO_SHALLOW.at(
              secondary.place(WallSheet.TOE),
              "the toe is less than 1 m below the deepest excavation",
              "lower the toe, or leave it empty to have it sized"));
    }
  }

  private static void loads(Row piles, Consumer<Finding> findings) {
    boolean loaded =
        piles.find(WallSheet.PERMANENT_LOAD).filter(load -> load.si() > 0).isPresent()
            || piles.find(WallSheet.VARIABLE_LOAD).filter(load -> load.si() > 0).isPresent();
    if (loaded && piles.find(WallSheet.BEAM).isEmpty()) {
      findings.accept(
          FindingKind.LOAD_WITHOUT_BEAM.at(
              piles.place(WallSheet.PERMANENT_LOAD),
              "the pile is loaded but has no beam",
              "give it a beam, or leave the load empty"));
    }
  }
}
