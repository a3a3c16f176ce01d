package pilefolio.submittal.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import pilefolio.analysis.sequence.Programme;
import pilefolio.analysis.sequence.Programme.PlannedPile;
import pilefolio.model.Neighbour;
import pilefolio.model.Pile;
import pilefolio.model.Submission;
import pilefolio.model.WallRun;
import pilefolio.submittal.Submittal;
import pilefolio.submittal.figure.Curve.Point;
import pilefolio.submittal.figure.SitePlanData.Outline;
import pilefolio.submittal.figure.SitePlanData.PlanPile;
import pilefolio.units.Units;

/**
 * A run seen from above, its line across the sheet from left to right. Runs are set out so that the
 * ground they retain lies to the left of their direction, which is the upper side of the plan.
 */
final class SitePlans {
  // What stands farther away would make the wall too small to read.
  private static final double FARTHEST_LENGTHS = 1.5;
  private static final double FARTHEST_LEAST = 15;
  private static final double BAND = 0.12;
  private static final double BAND_LEAST = 1.2;
  private static final double GAP = 0.03;

  private SitePlans() {}

  static SitePlanData of(Submittal submittal, WallRun run, Optional<Programme> programme) {
    DrawingUnits units = new DrawingUnits(submittal.system());
    List<Pile> piles = run.layout().piles();
    double length = last(piles).distance();
    double farthest = Math.max(FARTHEST_LEAST, FARTHEST_LENGTHS * length);
    List<Neighbour> beside = neighbours(submittal.job().submission(), run);
    List<Neighbour> drawn = beside.stream().filter(n -> n.distance().si() <= farthest).toList();
    List<Neighbour> far = beside.stream().filter(n -> n.distance().si() > farthest).toList();
    return new SitePlanData(
        "plan-" + run.id(),
        caption(units, run, piles, programme.isPresent(), drawn, far),
        units.symbol(Units.M),
        piles.stream().map(pile -> pile(units, run, pile, programme)).toList(),
        outlines(units, drawn, length),
        OptionalDouble.of(Math.toDegrees(run.line().bearing().si())));
  }

  private static Pile last(List<Pile> piles) {
    return piles.get(piles.size() - 1);
  }

  private static List<Neighbour> neighbours(Submission submission, WallRun run) {
    return submission.neighbours().stream().filter(n -> n.run().equals(run.id())).toList();
  }

  private static String caption(
      DrawingUnits units,
      WallRun run,
      List<Pile> piles,
      boolean ordered,
      List<Neighbour> drawn,
      List<Neighbour> far) {
    StringBuilder text = new StringBuilder("Plan of run " + run.id());
    text.append(", ").append(piles.get(0).mark()).append(" to ").append(last(piles).mark());
    text.append(ordered ? ", with the order of drilling." : "; no order of drilling was found.");
    text.append(" Retained ground is drawn above the wall, which is to the left of its direction.");
    if (!drawn.isEmpty()) {
      text.append(" Neighbours stand at their distance; their extent is not to scale.");
    }
    for (Neighbour n : far) {
      text.append(" Not drawn: ")
          .append(n.name())
          .append(", ")
          .append(units.text(n.distance().si(), Units.M))
          .append(" away.");
    }
    return text.toString();
  }

  private static PlanPile pile(
      DrawingUnits units, WallRun run, Pile pile, Optional<Programme> programme) {
    double along = units.metres(pile.distance());
    return new PlanPile(
        pile.mark(),
        !pile.primary(),
        along,
        0,
        along,
        units.metres(run.piles(pile.kind()).diameter().si()),
        run.piles(pile.kind()).beam().isPresent(),
        programme.flatMap(p -> p.pile(pile.mark())).map(PlannedPile::order).orElse(0));
  }

  /** A band along the wall for each neighbour, beside its own part of the wall. */
  private static List<Outline> outlines(
      DrawingUnits units, List<Neighbour> neighbours, double length) {
    List<Outline> outlines = new ArrayList<>();
    double nearest = neighbours.stream().mapToDouble(n -> n.distance().si()).min().orElse(0);
    double beyond = Math.max(BAND_LEAST, nearest / 2);
    double part = (length + 2 * beyond) / Math.max(1, neighbours.size());
    double depth = Math.max(BAND_LEAST, BAND * length);
    for (int i = 0; i < neighbours.size(); i++) {
      Neighbour n = neighbours.get(i);
      double near = units.metres(n.distance().si());
      double far = units.metres(n.distance().si() + depth);
      double left = units.metres(-beyond + (i + (i == 0 ? 0 : GAP)) * part);
      double right = units.metres(-beyond + (i + 1) * part);
      outlines.add(
          new Outline(
              DrawingUnits.words(n.name()) + ", " + units.text(n.distance().si(), Units.M),
              List.of(
                  new Point(left, near),
                  new Point(right, near),
                  new Point(right, far),
                  new Point(left, far))));
    }
    return outlines;
  }
}
