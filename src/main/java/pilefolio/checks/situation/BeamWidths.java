package pilefolio.checks.situation;

import java.util.Optional;
import pilefolio.analysis.earth.ActingWidth;
import pilefolio.analysis.earth.PassiveWidth;
import pilefolio.checks.From;
import pilefolio.model.PileSpec;
import pilefolio.model.SheetPiling;
import pilefolio.model.Submission;
import pilefolio.model.Value;
import pilefolio.model.WallRun;
import pilefolio.standards.Section;
import pilefolio.standards.SectionTable;
import pilefolio.trace.Given;

/** Widths on which pressure acts on the piles of a run below the excavation. */
public final class BeamWidths {
  private BeamWidths() {}

  /** The widths of a run; a wall without gaps for anything but soldier beams and king piles. */
  public static ActingWidth of(Submission submission, WallRun run) {
    if (!single(run)) {
      return ActingWidth.WHOLE;
    }
    double spacing = run.line().spacing().si();
    double width = width(submission, run).map(Given::si).orElse(spacing);
    if (width >= spacing) {
      return ActingWidth.WHOLE;
    }
    return ActingWidth.piles(spacing, width, rule(run));
  }

  /** True if the piles of a run stand singly below the excavation. */
  public static boolean single(WallRun run) {
    return run.type().kingOrSoldierBeams() && !sheetsReachToe(run);
  }

  /** Sheet piles between king piles close the wall below the excavation if they end no higher. */
  private static boolean sheetsReachToe(WallRun run) {
    Optional<Value> toe = run.bearing().flatMap(PileSpec::toe);
    return run.sheets().isPresent()
        && run.sheets()
            .flatMap(SheetPiling::toe)
            .map(s -> toe.isPresent() && s.si() <= toe.get().si() + 1e-9)
            .orElse(false);
  }

  /**
   * Width of one pile in the ground: its bore where structural concrete fills it, the flange of its
   * beam otherwise; empty if the section is not known.
   */
  public static Optional<Given> width(Submission submission, WallRun run) {
    if (run.beams().structuralToe()) {
      return run.bearing().map(PileSpec::diameter).map(From::cell);
    }
    return run.bearing()
        .flatMap(submission::beam)
        .flatMap(beam -> SectionTable.all().find(beam.section()))
        .map((Section s) -> From.table(s.width(), s.standard(), s.name()));
  }

  /** The rule of the user for the width that resists. */
  public static PassiveWidth rule(WallRun run) {
    return switch (run.beams().width()) {
      case THREE_WIDTHS -> PassiveWidth.THREE_WIDTHS;
      case ARCHING -> PassiveWidth.ARCHING;
      case OWN_WIDTH -> PassiveWidth.OWN_WIDTH;
    };
  }
}
