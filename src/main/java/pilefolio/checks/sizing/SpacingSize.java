package pilefolio.checks.sizing;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import pilefolio.checks.Check;
import pilefolio.checks.Family;
import pilefolio.checks.Job;
import pilefolio.model.Value;
import pilefolio.model.WallRun;
import pilefolio.units.DisplaySystem;
import pilefolio.units.NumberText;
import pilefolio.units.Unit;
import pilefolio.units.Units;

/**
 * The widest spacing of soldier beams, on a grid of the documents' units, with which every check of
 * the wall, its members and its capacity holds.
 *
 * @param run id of the run
 * @param toeIsSized true if the toe follows from each spacing
 */
record SpacingSize(String run, boolean toeIsSized) {
  private static final List<Double> METRES = grid(3.0, 1.0, 0.1);
  private static final List<Double> FEET = grid(10, 3.5, 0.5);

  private static List<Double> grid(double widest, double narrowest, double step) {
    List<Double> values = new ArrayList<>();
    int count = (int) Math.round((widest - narrowest) / step);
    for (int i = 0; i <= count; i++) {
      values.add(NumberText.parse(NumberText.fixed(widest - i * step, 2)));
    }
    return List.copyOf(values);
  }

  /** Checks whose answers depend on the spacing. */
  static boolean asked(Check check) {
    return check.family() == Family.STRUCTURE || ToeSize.asked(check);
  }

  /** The spacings in question, the widest first. */
  static List<Double> grid(Job job) {
    return unit(job).equals(Units.M) ? METRES : FEET;
  }

  static Unit unit(Job job) {
    return job.submission().project().documentUnits() == DisplaySystem.US
        ? Units.of("ft")
        : Units.M;
  }

  /** The job with a spacing of the grid, and the toe that goes with it if that is sized too. */
  Job with(Job job, int index) {
    WallRun old = ToeSize.run(job, run);
    Value spacing =
        Value.assumed(
            grid(job).get(index), unit(job), old.line().spacing().cell(), "spacing, sized");
    Job placed =
        new Job(job.submission().with(old.with(old.line().withSpacing(spacing))), job.basis());
    return toeIsSized ? ToeSize.sized(placed, run, OptionalDouble.empty()) : placed;
  }

  /** What falls short with a spacing of the grid. */
  Shortfalls shortfalls(Job job, int index) {
    return Shortfalls.of(with(job, index), Set.of(run), SpacingSize::asked);
  }

  /** Index of the widest that suffices, or of the one that comes nearest. */
  int widest(Job job) {
    List<Shortfalls> all = new ArrayList<>();
    for (int i = 0; i < grid(job).size(); i++) {
      all.add(shortfalls(job, i));
      if (all.get(i).isEmpty()) {
        return i;
      }
    }
    return Shortfalls.best(all);
  }
}
