package pilefolio.checks.apparent;

import java.util.ArrayList;
import java.util.List;
import pilefolio.analysis.apparent.Base;
import pilefolio.analysis.apparent.BeamOnSupports;
import pilefolio.analysis.apparent.Idealisation;
import pilefolio.analysis.apparent.SupportReactions;
import pilefolio.analysis.wall.NetPressure;
import pilefolio.checks.Job;
import pilefolio.checks.situation.ApparentDesign;
import pilefolio.model.Support;
import pilefolio.trace.Binding;
import pilefolio.trace.Binding.Row;
import pilefolio.trace.CalcSheet;
import pilefolio.trace.Calculation;
import pilefolio.trace.Source;

/** Support forces and moments under apparent pressure, by one idealisation; each is a check. */
public final class ApparentBeams extends ApparentCheck {
  private static final Source LAYOUT = new Source.Layout("supports and foot of the wall");
  private static final Source STATICS = new Source.Method("exact integrals of the pressure");
  private static final Source MOMENTS = new Source.Method("moments at the supports");

  private final Idealisation idealisation;

  private ApparentBeams(String id, String title, CalcSheet sheet, Idealisation idealisation) {
    super(id, title, List.of(sheet));
    this.idealisation = idealisation;
  }

  /** Beams between hinges. */
  public static ApparentBeams hinge() {
    return new ApparentBeams(
        "apparent-hinge",
        "Support forces under apparent pressure, hinges",
        BeamSheets.HINGE,
        Idealisation.HINGE);
  }

  /** Tributary areas. */
  public static ApparentBeams tributary() {
    return new ApparentBeams(
        "apparent-tributary",
        "Support forces under apparent pressure, tributary areas",
        BeamSheets.TRIBUTARY,
        Idealisation.TRIBUTARY);
  }

  /** A continuous beam. */
  public static ApparentBeams continuous() {
    return new ApparentBeams(
        "apparent-continuous",
        "Support forces under apparent pressure, continuous beam",
        BeamSheets.CONTINUOUS,
        Idealisation.CONTINUOUS);
  }

  /** The check of an idealisation. */
  public static ApparentBeams of(Idealisation idealisation) {
    return switch (idealisation) {
      case HINGE -> hinge();
      case TRIBUTARY -> tributary();
      case CONTINUOUS -> continuous();
    };
  }

  @Override
  public boolean derivation() {
    return idealisation == Idealisation.TRIBUTARY;
  }

  @Override
  Calculation calculate(Job job, ApparentDesign design) {
    ApparentDesign.Solved solved = design.solved().orElseThrow();
    List<String> names =
        new ArrayList<>(design.situation().supports().stream().map(Support::id).toList());
    return calculate(solved.beam(), idealisation, names);
  }

  /** Fills the sheet of an idealisation. */
  static Calculation calculate(
      BeamOnSupports beam, Idealisation idealisation, List<String> supports) {
    List<String> names = new ArrayList<>(supports);
    if (beam.base() instanceof Base.Reaction) {
      names.add("ground");
    }
    SupportReactions r = beam.solve(idealisation);
    return idealisation == Idealisation.TRIBUTARY
        ? areas(beam, names)
        : spans(beam, idealisation, r, names);
  }

  private static Binding begin(CalcSheet sheet, BeamOnSupports beam) {
    return sheet
        .bind()
        .set(
            "ΣF",
            KILO * beam.load().force(),
            new Source.Line("apparent-pressure", "Apparent pressure", "ΣF"));
  }

  private static Calculation spans(
      BeamOnSupports beam, Idealisation idealisation, SupportReactions r, List<String> names) {
    boolean continuous = idealisation == Idealisation.CONTINUOUS;
    Binding b = begin(continuous ? BeamSheets.CONTINUOUS : BeamSheets.HINGE, beam);
    List<Double> z = beam.points();
    int n = z.size();
    double[] m = new double[n];
    for (int i = 0; i < r.supportMoments().size(); i++) {
      m[i] = r.supportMoments().get(i);
    }
    double[] fromAbove = new double[n];
    double[] fromBelow = new double[n];
    double[] turnAbove = new double[n];
    double[] turnBelow = new double[n];
    for (int i = 0; i + 1 < n; i++) {
      double length = z.get(i) - z.get(i + 1);
      NetPressure load = beam.load().between(z.get(i), z.get(i + 1));
      double about = load.momentAbout(z.get(i + 1));
      fromBelow[i] = (about + m[i] - m[i + 1]) / length;
      fromAbove[i + 1] = load.force() - fromBelow[i];
      double clamp1 = beam.fixedEnd(z.get(i), z.get(i + 1), true);
      double clamp2 = beam.fixedEnd(z.get(i), z.get(i + 1), false);
      turnBelow[i] = (2 * (m[i] - clamp1) - (clamp2 - m[i + 1])) * length / 6;
      turnAbove[i + 1] = (2 * (clamp2 - m[i + 1]) - (m[i] - clamp1)) * length / 6;
      Row row =
          Row.of(names.get(i) + " to " + names.get(i + 1))
              .set("z_1", z.get(i), LAYOUT)
              .set("z_2", z.get(i + 1), LAYOUT)
              .set("P", KILO * load.force(), STATICS)
              .set("M_P", KILO * about, STATICS)
              .set("M_1", KILO * m[i], MOMENTS)
              .set("M_2", KILO * m[i + 1], MOMENTS)
              .set("M_s", KILO * r.spanMoments().get(i), STATICS);
      if (continuous) {
        row = row.set("M_{c,1}", KILO * clamp1, STATICS).set("M_{c,2}", KILO * clamp2, STATICS);
      }
      b.row(BeamSheets.SPANS, row);
    }
    turnAbove[0] = turnBelow[0];
    turnBelow[n - 1] = turnAbove[n - 1];
    Source spans = new Source.Layout("table of the spans");
    for (int i = 0; i < n; i++) {
      Row row =
          Row.of(names.get(i))
              .set("z", z.get(i), LAYOUT)
              .set("Q", KILO * overhang(beam, i), STATICS)
              .set("R_a", KILO * fromAbove[i], spans)
              .set("R_b", KILO * fromBelow[i], spans);
      if (continuous) {
        row = row.set("Φ_a", KILO * turnAbove[i], spans).set("Φ_b", KILO * turnBelow[i], spans);
      }
      b.row(BeamSheets.SUPPORTS, row);
    }
    return b.calculate();
  }

  private static double overhang(BeamOnSupports beam, int point) {
    List<Double> z = beam.points();
    double top = point == 0 ? beam.load().above(z.get(0)).force() : 0;
    double bottom =
        point == z.size() - 1
            ? beam.load().between(z.get(point), Double.NEGATIVE_INFINITY).force()
            : 0;
    return top + bottom;
  }

  private static Calculation areas(BeamOnSupports beam, List<String> names) {
    List<Double> z = beam.points();
    int n = z.size();
    double first = z.get(0);
    double last = z.get(n - 1);
    NetPressure load = beam.load();
    Binding b =
        begin(BeamSheets.TRIBUTARY, beam)
            .set("M_o", KILO * load.above(first).momentAbout(first), STATICS)
            .set(
                "M_u",
                // Nothing below gives a plain nought, not a negative one.
                0 - KILO * load.between(last, Double.NEGATIVE_INFINITY).momentAbout(last),
                STATICS);
    for (int i = 0; i < n; i++) {
      double level = z.get(i);
      double top = i == 0 ? load.topLevel() : (z.get(i - 1) + level) / 2;
      double bottom = i + 1 < n ? (level + z.get(i + 1)) / 2 : Math.min(level, load.bottomLevel());
      b.row(
          BeamSheets.SUPPORTS,
          Row.of(names.get(i))
              .set("z", level, LAYOUT)
              .set("z_a", top, LAYOUT)
              .set("z_b", bottom, LAYOUT)
              .set("p_a", KILO * mean(load, top, level), STATICS)
              .set("p_b", KILO * mean(load, level, bottom), STATICS));
      if (i + 1 < n) {
        b.row(
            BeamSheets.SPANS,
            Row.of(names.get(i) + " to " + names.get(i + 1))
                .set("z_1", level, LAYOUT)
                .set("z_2", z.get(i + 1), LAYOUT)
                .set("p_x", KILO * beam.greatestPressure(level, z.get(i + 1)), STATICS));
      }
    }
    return b.calculate();
  }

  private static double mean(NetPressure load, double upper, double lower) {
    return upper - lower < 1e-9 ? 0 : load.between(upper, lower).force() / (upper - lower);
  }
}
