package pilefolio.submittal.figure;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import pilefolio.model.WallRun;
import pilefolio.submittal.Submittal;
import pilefolio.submittal.figure.Curve.Point;
import pilefolio.trace.Calculation;
import pilefolio.trace.Calculation.RowValues;
import pilefolio.units.NumberText;
import pilefolio.units.Units;

/**
 * Strength of the primaries with age: the check of the window worked out for many strengths. Runs
 * that share mix and window share the figure.
 */
final class StrengthWindows {
  static final String CHECK = "strength-window";
  private static final String PLANNED = "strength-at-cutting";
  private static final int STEPS = 200;
  private static final double BEYOND = 1.15;
  // A window that stays open for longer is drawn up to the age of the strength test.
  private static final double LONGEST = Units.D.toSi(60);
  private static final double USUAL = Units.D.toSi(28);

  private StrengthWindows() {}

  /** What makes two runs share a figure. */
  private record Key(String mix, double first, double last) {}

  static List<StrengthWindowData> of(Submittal submittal) {
    Map<Key, List<WallRun>> groups = new LinkedHashMap<>();
    Map<Key, Calculation> sheets = new LinkedHashMap<>();
    for (WallRun run : submittal.job().submission().secantRuns()) {
      sheet(submittal, CHECK, "t_1", run)
          .ifPresent(
              sheet -> {
                Key key = new Key(run.primary().mix(), sheet.value("t_1"), sheet.value("t_2"));
                groups.computeIfAbsent(key, k -> new ArrayList<>()).add(run);
                sheets.putIfAbsent(key, sheet);
              });
    }
    List<StrengthWindowData> figures = new ArrayList<>();
    groups.forEach((key, runs) -> figures.add(figure(submittal, runs, sheets.get(key))));
    return figures;
  }

  private static Optional<Calculation> sheet(
      Submittal submittal, String check, String symbol, WallRun run) {
    return Results.of(submittal, check, run.id()).flatMap(result -> Results.sheet(result, symbol));
  }

  private static StrengthWindowData figure(
      Submittal submittal, List<WallRun> runs, Calculation sheet) {
    DrawingUnits units = new DrawingUnits(submittal.system());
    TreeSet<Double> planned = new TreeSet<>();
    for (WallRun run : runs) {
      sheet(submittal, PLANNED, "f_max", run)
          .ifPresent(
              s -> {
                for (RowValues row : s.table("secondaries").rows()) {
                  planned.add(row.values().get("t_y"));
                  planned.add(row.values().get("t_o"));
                }
              });
    }
    double first = sheet.value("t_1");
    double last = sheet.value("t_2");
    double end =
        BEYOND
            * Math.max(
                Math.max(first, last > LONGEST ? USUAL : last),
                planned.isEmpty() ? 0 : planned.last());
    String mix = runs.get(0).primary().mix();
    List<String> names = runs.stream().map(WallRun::id).toList();
    return new StrengthWindowData(
        "window-" + names.get(0),
        "Strength of the primaries of "
            + (names.size() > 1 ? "runs " : "run ")
            + String.join(", ", names)
            + " with age, mix "
            + mix
            + " at "
            + units.text(sheet.value("θ"), Units.CELSIUS)
            + ", and the window in which their neighbours may be drilled.",
        units.scale("Age of the primaries", Units.D),
        units.scale("Strength", Units.MPA),
        List.of(
            new Curve(
                "strength of mix " + DrawingUnits.words(mix),
                Curve.Role.MAIN,
                growth(units, sheet, end))),
        units.of(sheet.value("f_s"), Units.MPA),
        "stands from " + units.text(sheet.value("f_s"), Units.MPA),
        units.of(sheet.value("f_c"), Units.MPA),
        "cut up to " + units.text(sheet.value("f_c"), Units.MPA),
        first < last
            ? List.of(units.of(first, Units.D), units.of(Math.min(last, end), Units.D))
            : List.of(),
        planned(units, planned));
  }

  /** Ages at which a strength would be reached, as the check finds the first age to cut. */
  private static List<Point> growth(DrawingUnits units, Calculation sheet, double end) {
    List<Point> points = new ArrayList<>();
    points.add(new Point(0, 0));
    points.add(new Point(units.of(sheet.value("t_r"), Units.D), 0));
    TreeSet<Double> strengths = new TreeSet<>();
    double greatest = Math.max(sheet.value("f_c"), 1.3 * sheet.value("f_28"));
    for (int i = 1; i <= STEPS; i++) {
      strengths.add(greatest * i / STEPS);
    }
    strengths.add(sheet.value("f_s"));
    strengths.add(sheet.value("f_c"));
    double before = 0;
    for (double strength : strengths) {
      double age;
      try {
        age = SheetSweep.given(sheet, "f_s", strength).value("t_1");
      } catch (ArithmeticException neverReached) {
        break;
      }
      // Past the greatest strength of the law its inverse turns back.
      if (age > end || age < before) {
        break;
      }
      points.add(new Point(units.of(age, Units.D), units.of(strength, Units.MPA)));
      before = age;
    }
    return points;
  }

  private static List<Mark> planned(DrawingUnits units, SortedSet<Double> ages) {
    if (ages.isEmpty()) {
      return List.of();
    }
    List<Mark> marks = new ArrayList<>();
    marks.add(mark(units, "youngest when cut", ages.first()));
    if (ages.last() > ages.first()) {
      marks.add(mark(units, "oldest when cut", ages.last()));
    }
    return marks;
  }

  private static Mark mark(DrawingUnits units, String words, double age) {
    return new Mark(
        units.of(age, Units.D), words + " " + NumberText.fixed(Units.D.fromSi(age), 1) + " d");
  }
}
