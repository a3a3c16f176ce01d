package pilefolio.output.figure;

import java.time.LocalDate;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import pilefolio.submittal.figure.ConcreteHeadData;
import pilefolio.submittal.figure.Curve;
import pilefolio.submittal.figure.Curve.Point;
import pilefolio.submittal.figure.Curve.Role;
import pilefolio.submittal.figure.DepthPlotData;
import pilefolio.submittal.figure.JointOverlapData;
import pilefolio.submittal.figure.Mark;
import pilefolio.submittal.figure.ProgrammeData;
import pilefolio.submittal.figure.SectionData;
import pilefolio.submittal.figure.SectionData.Ground;
import pilefolio.submittal.figure.SitePlanData;
import pilefolio.submittal.figure.SlipCircleData;
import pilefolio.submittal.figure.StrengthWindowData;

/** Made-up but plausible figures of ordinary and extreme size. */
final class Scenes {
  private Scenes() {}

  static List<Figure> all() {
    List<Figure> all = new ArrayList<>();
    all.addAll(SitePlanFigure.sheets(plan("plan-small", 10, false)));
    all.addAll(SitePlanFigure.sheets(plan("plan-large", 91, true)));
    all.addAll(SitePlanFigure.sheets(plan("plan-long", 240, true)));
    all.add(new SectionFigure(section("section-plain", 3, 1, false)));
    all.add(new SectionFigure(section("section-full", 10, 2, true)));
    all.add(new SectionFigure(section("section-none", 2, 0, true)));
    all.add(new DepthPlotFigure(forces("forces", 3)));
    all.add(new DepthPlotFigure(forces("forces-two", 2)));
    all.add(new JointOverlapFigure(joint("joint", 200)));
    all.add(new JointOverlapFigure(joint("joint-lost", 75)));
    all.add(new StrengthWindowFigure(window()));
    all.addAll(ProgrammeFigure.sheets(programme("programme", 24, 3)));
    all.addAll(ProgrammeFigure.sheets(programme("programme-long", 75, 6)));
    all.addAll(ProgrammeFigure.sheets(programme("programme-year", 365, 12)));
    all.add(new ConcreteHeadFigure(head()));
    all.add(new SlipCircleFigure(slip("slip-shallow", 6)));
    all.add(new SlipCircleFigure(slip("slip-high", 40)));
    return all;
  }

  static SitePlanData plan(String id, int count, boolean corner) {
    List<SitePlanData.PlanPile> piles = new ArrayList<>();
    double spacing = 0.61;
    for (int i = 0; i < count; i++) {
      double along = i * spacing;
      double x = along;
      double y = 0;
      if (corner && along > 32) {
        x = 32;
        y = along - 32;
      }
      boolean secondary = i % 2 == 1;
      int order =
          i % 4 == 0 ? i / 4 + 1 : i % 4 == 2 ? count / 4 + i / 4 + 2 : count / 2 + i / 2 + 2;
      piles.add(
          new SitePlanData.PlanPile(
              (secondary ? "S" : "P") + (i + 1),
              secondary,
              x,
              y,
              along,
              secondary ? 0.88 : 0.75,
              secondary,
              order));
    }
    List<SitePlanData.Outline> outlines =
        corner
            ? List.of(
                new SitePlanData.Outline(
                    "masonry house, two floors",
                    List.of(
                        new Point(3, -9),
                        new Point(19, -9),
                        new Point(19, -2.4),
                        new Point(3, -2.4))))
            : List.of();
    return new SitePlanData(
        id, "Piles and drilling order", "m", piles, outlines, OptionalDouble.of(70));
  }

  static SectionData section(String id, int layers, int panels, boolean propped) {
    List<SectionData.Layer> ground = new ArrayList<>();
    String[] names = {
      "Made ground",
      "Soft clay",
      "Loose sand",
      "Peaty silt",
      "Medium dense sand",
      "Gravel",
      "Firm clay",
      "Silty sand",
      "Stiff clay, fissured",
      "Weathered mudstone"
    };
    Ground[] kinds = {
      Ground.FILL,
      Ground.CLAY,
      Ground.SAND,
      Ground.SILT,
      Ground.SAND,
      Ground.GRAVEL,
      Ground.CLAY,
      Ground.SILT,
      Ground.CLAY,
      Ground.ROCK
    };
    double top = 32.4;
    for (int i = 0; i < layers; i++) {
      double thick = layers == 10 ? (i % 3 == 0 ? 0.5 : 2.3) : 18.0 / layers;
      ground.add(new SectionData.Layer(names[i], kinds[i], top, top - thick));
      top -= thick;
    }
    List<Mark> levels =
        List.of(
            new Mark(32.4, "+32.40 ground"),
            new Mark(32.1, "+32.10 top of wall"),
            new Mark(31.9, "+31.90 top of beam"),
            new Mark(30.8, "+30.80 prop"),
            new Mark(29.5, "+29.50 water behind"),
            new Mark(26.9, "+26.90 excavation"),
            new Mark(26.5, "+26.50 with over-excavation"),
            new Mark(26.4, "+26.40 water in front"),
            new Mark(22.0, "+22.00 toe of primaries"),
            new Mark(20.3, "+20.30 bottom of beam"),
            new Mark(19.9, "+19.90 toe of secondaries"));
    List<SectionData.PressurePanel> shown = new ArrayList<>();
    if (panels > 0) {
      shown.add(
          new SectionData.PressurePanel(
              "effective earth pressure, kPa",
              List.of(
                  new Curve(
                      "active",
                      Role.MAIN,
                      List.of(
                          new Point(3, 32.1),
                          new Point(15, 28),
                          new Point(11, 28),
                          new Point(42, 19.9)))),
              List.of(
                  new Curve(
                      "passive, factored",
                      Role.SECOND,
                      List.of(new Point(0, 26.5), new Point(160, 19.9))))));
    }
    if (panels > 1) {
      shown.add(
          new SectionData.PressurePanel(
              "water pressure, kPa",
              List.of(
                  new Curve("water", Role.WATER, List.of(new Point(0, 29.5), new Point(88, 19.9)))),
              List.of(
                  new Curve(
                      "water", Role.WATER, List.of(new Point(0, 26.4), new Point(88, 19.9))))));
    }
    List<SectionData.Support> supports =
        propped
            ? List.of(
                new SectionData.Support(
                    30.8, layers == 10, 20, layers == 10 ? "anchor A1" : "prop 1"))
            : List.of();
    return new SectionData(
        id,
        "Section at stage 3",
        "level, m",
        ground,
        32.4,
        26.9,
        26.5,
        OptionalDouble.of(29.5),
        OptionalDouble.of(26.4),
        32.1,
        22.0,
        19.9,
        0.88,
        List.of(31.9, 20.3),
        supports,
        "surcharge 10 kPa",
        levels,
        shown);
  }

  static DepthPlotData forces(String id, int count) {
    List<Point> shear = new ArrayList<>();
    List<Point> moment = new ArrayList<>();
    List<Point> moved = new ArrayList<>();
    for (int i = 0; i <= 60; i++) {
      double z = i * 0.2;
      shear.add(new Point(120 * Math.sin(z / 1.9) * (1 - z / 14), 32.1 - z));
      moment.add(new Point(-30 + 310 * Math.sin(z / 3.9) * (1 - z / 15), 32.1 - z));
      moved.add(new Point(18 * Math.cos(z / 7.9), 32.1 - z));
    }
    List<DepthPlotData.Panel> panels = new ArrayList<>();
    panels.add(
        new DepthPlotData.Panel(
            "shear, kN/m",
            List.of(new Curve("combination 1", Role.MAIN, shear)),
            List.of(
                new DepthPlotData.Extreme(94.9, 29.3, "94.9 kN/m"),
                new DepthPlotData.Extreme(-44, 22.9, "−44.0 kN/m"))));
    panels.add(
        new DepthPlotData.Panel(
            "bending moment, kN·m/m",
            List.of(
                new Curve("combination 1", Role.MAIN, moment),
                new Curve(
                    "combination 2",
                    Role.SECOND,
                    moment.stream().map(p -> new Point(p.x() * 1.12, p.y())).toList())),
            List.of(new DepthPlotData.Extreme(202, 27.3, "202 kN·m/m at +27.30"))));
    if (count > 2) {
      panels.add(
          new DepthPlotData.Panel(
              "displacement, mm",
              List.of(new Curve("characteristic", Role.THIRD, moved)),
              List.of()));
    }
    return new DepthPlotData(
        id,
        "Shear force and bending moment",
        "level, m",
        false,
        panels,
        List.of(
            new Mark(30.8, "prop +30.80"),
            new Mark(26.9, "excavation +26.90"),
            new Mark(26.5, "over-excavation +26.50"),
            new Mark(22.0, "toe of primaries")));
  }

  static JointOverlapData joint(String id, double slope) {
    double setOut = 205;
    List<Point> full = new ArrayList<>();
    List<Point> rss = new ArrayList<>();
    for (int i = 0; i <= 12; i++) {
      double z = i;
      double e = 25 + z * 1000 / slope;
      full.add(new Point(setOut - 2 * e, z));
      rss.add(new Point(setOut - Math.sqrt(2) * e, z));
    }
    double lost = (setOut / 2 - 25) * slope / 1000;
    return new JointOverlapData(
        id,
        "Overlap left with depth",
        "overlap of neighbouring piles, mm",
        "depth below guide wall, m",
        setOut,
        new Curve("both piles lean apart", Role.MAIN, full),
        new Curve("root of the sum of squares", Role.SECOND, rss),
        50,
        "required 50 mm",
        List.of(
            new Mark(0.6, "cut-off 0.60 m"),
            new Mark(5.2, "excavation 5.20 m"),
            new Mark(10.4, "toe of primaries 10.40 m")),
        lost < 12 ? "contact lost at " + Math.round(lost * 100) / 100.0 + " m" : "",
        lost);
  }

  static StrengthWindowData window() {
    List<Point> slow = new ArrayList<>();
    List<Point> fast = new ArrayList<>();
    for (int h = 8; h <= 240; h += 4) {
      double t = h / 24.0;
      slow.add(new Point(h, 18 * Math.exp(0.38 * (1 - Math.sqrt(28 / t)))));
      fast.add(new Point(h, 10 * Math.exp(0.25 * (1 - Math.sqrt(28 / t)))));
    }
    return new StrengthWindowData(
        "window",
        "Strength of the primaries and the window for their neighbours",
        "age, h",
        "compressive strength, MPa",
        List.of(
            new Curve("mix M1, 15 °C", Role.MAIN, slow),
            new Curve("mix M2, 15 °C", Role.SECOND, fast)),
        2,
        "stands up to drilling 2.0 MPa",
        12,
        "tool can cut 12.0 MPa",
        List.of(34.0, 190.0),
        List.of(
            new Mark(48, "earliest 48 h"),
            new Mark(55, "median 55 h"),
            new Mark(168, "latest 168 h")));
  }

  static ProgrammeData programme(String id, int days, int rows) {
    List<ProgrammeData.Day> calendar = new ArrayList<>();
    String[] weekdays = {"M", "T", "W", "T", "F", "S", "S"};
    for (int d = 0; d < days; d++) {
      LocalDate date = LocalDate.of(2026, 3, 16).plusDays(d);
      String month =
          date.getMonth().getDisplayName(TextStyle.FULL, Locale.UK) + " " + date.getYear();
      calendar.add(
          new ProgrammeData.Day(
              month, date.getDayOfMonth(), weekdays[d % 7], d % 7 >= 5 || d == 18));
    }
    List<ProgrammeData.Row> list = new ArrayList<>();
    for (int r = 0; r < rows; r++) {
      List<ProgrammeData.Bar> bars = new ArrayList<>();
      int start = r * days / rows;
      for (int d = start; d < Math.min(days, start + days / rows + 3); d++) {
        if (!calendar.get(d).off()) {
          int last = d;
          while (last + 1 < days && !calendar.get(last + 1).off() && last - d < 3) {
            last++;
          }
          bars.add(new ProgrammeData.Bar(d, last, "P" + (d * 4 + 1) + "–P" + (last * 4 + 13)));
          d = last;
        }
      }
      list.add(
          new ProgrammeData.Row(
              r % 2 == 0 ? "Run A, primaries" : "Run A, secondaries with beams, crew 2",
              r % 2 == 1,
              bars));
    }
    return new ProgrammeData(id, "Programme day by day", calendar, list);
  }

  static SlipCircleData slip(String id, double centre) {
    double radius = centre + 9;
    double exit = -3 - Math.sqrt(radius * radius - centre * centre);
    double entry = -3 + Math.sqrt(radius * radius - (centre - 6) * (centre - 6));
    List<Double> slices = new ArrayList<>();
    for (int i = 1; i < 16; i++) {
      slices.add(exit + (entry - exit) * i / 16);
    }
    return new SlipCircleData(
        id,
        "A slip circle below the toe of a wall.",
        List.of(
            new SectionData.Layer("Fill", Ground.FILL, 6, 3.5),
            new SectionData.Layer("Thin silt", Ground.SILT, 3.5, 3.3),
            new SectionData.Layer("Sand of a long name", Ground.SAND, 3.3, -4),
            new SectionData.Layer("Clay", Ground.CLAY, -4, -12)),
        6,
        0,
        OptionalDouble.of(4),
        OptionalDouble.of(-0.5),
        5.6,
        -7,
        new SlipCircleData.Circle(-3, centre, radius, exit, entry, "F = 1.42"),
        slices,
        List.of(new SlipCircleData.Tie(3, 12, 4), new SlipCircleData.Tie(1, 0, 0)),
        List.of(
            new Mark(6, "ground 6.00 m"),
            new Mark(0, "design excavation 0.00 m"),
            new Mark(0.3, "excavation 0.30 m"),
            new Mark(-7, "toe −7.00 m"),
            new Mark(-9, "lowest point of the circle −9.00 m")),
        "m");
  }

  static ConcreteHeadData head() {
    return new ConcreteHeadData(
        "head",
        "Concrete and casing shoe while the casing is drawn",
        "concrete placed, m³",
        "level, m",
        List.of(
            new Curve(
                "concrete",
                Role.MAIN,
                List.of(
                    new Point(0, 19.9),
                    new Point(2, 23.2),
                    new Point(2, 22.8),
                    new Point(4, 26.1),
                    new Point(4, 25.7),
                    new Point(7.4, 32.3))),
            new Curve(
                "casing shoe",
                Role.SECOND,
                List.of(
                    new Point(0, 19.9),
                    new Point(2, 19.9),
                    new Point(2, 21.2),
                    new Point(4, 21.2),
                    new Point(4, 24),
                    new Point(7.4, 29))),
            new Curve(
                "water outside", Role.WATER, List.of(new Point(0, 29.5), new Point(7.4, 29.5)))),
        List.of(new Mark(32.1, "+32.10 cut-off"), new Mark(29.5, "+29.50 water")));
  }
}
