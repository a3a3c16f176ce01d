package pilefolio.checks.stability;

import static pilefolio.units.Units.KNM_M;
import static pilefolio.units.Units.KN_M;
import static pilefolio.units.Units.KPA;
import static pilefolio.units.Units.M;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import pilefolio.analysis.wall.Equilibrium;
import pilefolio.analysis.wall.NetSegment;
import pilefolio.analysis.wall.PointForce;
import pilefolio.analysis.wall.WallStatics;
import pilefolio.checks.Check;
import pilefolio.checks.CheckResult;
import pilefolio.checks.Family;
import pilefolio.checks.From;
import pilefolio.checks.Job;
import pilefolio.checks.situation.RunDesign;
import pilefolio.checks.situation.WallSolution;
import pilefolio.model.WallRun;
import pilefolio.trace.Binding;
import pilefolio.trace.Binding.Row;
import pilefolio.trace.CalcSheet;
import pilefolio.trace.CalcTable;
import pilefolio.trace.Calculation;
import pilefolio.trace.Reference;
import pilefolio.trace.Source;

/**
 * Shear force and bending moment from the top of the wall down to its toe, where both end at zero.
 */
public final class WallEffectsCheck implements Check {
  private static final String TABLE = "wall";
  private static final double KILO = 1000;
  private static final double SAME_LEVEL = 1e-9;
  private static final double ONE_MILLIMETRE = 0.001;
  private static final double NO_PRESSURE = 1e-9;

  static final CalcSheet SHEET =
      CalcSheet.named("Shear and moment of the wall")
          .given("V_t", KN_M, "shear at the top of the wall")
          .given("M_t", KNM_M, "moment at the top of the wall")
          .note(
              "Net pressure and forces toward the excavation are positive, and so is a moment with"
                  + " tension on the retained side. Rows end where net pressure changes its law or"
                  + " sign, at the support, and where shear passes through zero, to the"
                  + " millimetre. The last row ends at zero: the wall is in equilibrium.")
          .table(
              CalcTable.of(TABLE, "From the top of the wall to its toe", "stretch")
                  .given("z_1", M, "level of the top")
                  .given("z_2", M, "level of the bottom")
                  .given("p_1", KPA, "net pressure, top")
                  .given("p_2", KPA, "net pressure, bottom")
                  .given("F", KN_M, "concentrated force at the top of the stretch")
                  .carried("V_0", KN_M, "shear from above", "V_2", "V_t")
                  .carried("M_1", KNM_M, "moment at the top", "M_2", "M_t")
                  .line("V_1 = V_0 + F", KN_M, "shear at the top", Reference.DERIVED)
                  .line(
                      "V_2 = V_1 + (p_1 + p_2)/2·(z_1 − z_2)",
                      KN_M,
                      "shear at the bottom",
                      Reference.DERIVED)
                  .line(
                      "M_2 = M_1 + V_1·(z_1 − z_2) + (z_1 − z_2)²/6·(2·p_1 + p_2)",
                      KNM_M,
                      "moment at the bottom",
                      Reference.DERIVED)
                  .largest("M_l", "M_2", "greatest moment")
                  .smallest("M_s", "M_2", "least moment")
                  .largest("V_{l,1}", "V_1", "greatest shear at a top")
                  .smallest("V_{s,1}", "V_1", "least shear at a top")
                  .largest("V_{l,2}", "V_2", "greatest shear at a bottom")
                  .smallest("V_{s,2}", "V_2", "least shear at a bottom"))
          .line("M_E = max(M_l, −M_s)", KNM_M, "moment the wall must resist", Reference.DERIVED)
          .line(
              "V_E = max(V_{l,1}, −V_{s,1}, V_{l,2}, −V_{s,2})",
              KN_M,
              "shear the wall must resist",
              Reference.DERIVED);

  @Override
  public String id() {
    return "wall-effects";
  }

  @Override
  public String title() {
    return "Shear and moment of the wall";
  }

  @Override
  public Family family() {
    return Family.STABILITY;
  }

  @Override
  public List<CalcSheet> sheets() {
    return List.of(SHEET);
  }

  @Override
  public boolean derivation() {
    return true;
  }

  @Override
  public List<CheckResult> run(Job job) {
    List<CheckResult> results = new ArrayList<>();
    for (WallRun run : job.submission().runs()) {
      for (WallSolution solution : RunDesign.of(job, run).solutions()) {
        results.add(
            solution
                .equilibrium()
                .map(e -> CheckResult.of(this, solution.situation().subject(), calculate(e)))
                .orElseGet(
                    () ->
                        CheckResult.notChecked(
                            this,
                            solution.situation().subject(),
                            "no equilibrium: " + solution.reason())));
      }
    }
    return results;
  }

  /** Fills the sheet for a wall in equilibrium. */
  public static Calculation calculate(Equilibrium e) {
    WallStatics statics = e.statics();
    Binding binding =
        SHEET.bind().set("V_t", From.layout(0, "free end")).set("M_t", From.layout(0, "free end"));
    TreeSet<Double> extremes = new TreeSet<>();
    for (WallStatics.Extreme extreme : statics.extremes()) {
      extremes.add(Math.round(extreme.level() * KILO) / KILO);
    }
    TreeSet<Double> points = new TreeSet<>();
    for (PointForce force : statics.forces()) {
      points.add(force.level());
    }
    Source level = new Source.Layout("break of the diagrams");
    Source net = new Source.Layout("behind less in front");
    Source force = new Source.Layout("support or toe force, toward the excavation");
    int number = 1;
    for (NetSegment whole : statics.pressure().segments()) {
      for (NetSegment s : pieces(whole, points, extremes)) {
        binding.row(
            TABLE,
            Row.of(String.valueOf(number++))
                .set("z_1", s.topLevel(), level)
                .set("z_2", s.bottomLevel(), level)
                .set("p_1", KILO * s.topPressure(), net)
                .set("p_2", KILO * s.bottomPressure(), net)
                .set("F", KILO * forceAt(statics, s.topLevel()), force));
      }
    }
    double toe = statics.toeLevel();
    if (forceAt(statics, toe) != 0) {
      binding.row(
          TABLE,
          Row.of("toe")
              .set("z_1", toe, level)
              .set("z_2", toe, level)
              .set("p_1", 0, net)
              .set("p_2", 0, net)
              .set("F", KILO * forceAt(statics, toe), force));
    }
    return binding.calculate();
  }

  private static double forceAt(WallStatics statics, double level) {
    return statics.forces().stream()
        .filter(f -> f.level() == level)
        .mapToDouble(PointForce::force)
        .sum();
  }

  /**
   * A stretch cut at point forces, where its pressure passes through zero, and at extremes of the
   * moment that lie more than a millimetre from any other cut.
   */
  private static List<NetSegment> pieces(
      NetSegment whole, Set<Double> points, Set<Double> extremes) {
    NetSegment s =
        new NetSegment(
            whole.topLevel(),
            whole.bottomLevel(),
            clean(whole.topPressure()),
            clean(whole.bottomPressure()));
    TreeSet<Double> levels = new TreeSet<>();
    for (double point : points) {
      if (point < s.topLevel() - SAME_LEVEL && point > s.bottomLevel() + SAME_LEVEL) {
        levels.add(point);
      }
    }
    double zero = Double.NaN;
    if (s.topPressure() * s.bottomPressure() < 0) {
      zero = s.topLevel() - s.height() * s.topPressure() / (s.topPressure() - s.bottomPressure());
      levels.add(zero);
    }
    levels.add(s.bottomLevel());
    TreeSet<Double> ends = new TreeSet<>(levels);
    ends.add(s.topLevel());
    for (double extreme : extremes) {
      Double above = ends.ceiling(extreme);
      Double below = ends.floor(extreme);
      if (above != null
          && below != null
          && above - extreme > ONE_MILLIMETRE
          && extreme - below > ONE_MILLIMETRE) {
        levels.add(extreme);
      }
    }
    List<NetSegment> pieces = new ArrayList<>();
    double upper = s.topLevel();
    for (double lower : levels.descendingSet()) {
      pieces.add(
          new NetSegment(
              upper, lower, upper == zero ? 0 : s.at(upper), lower == zero ? 0 : s.at(lower)));
      upper = lower;
    }
    return pieces;
  }

  /** Rounding noise of pressures taken as none, kPa. */
  private static double clean(double pressure) {
    return Math.abs(pressure) < NO_PRESSURE ? 0 : pressure;
  }
}
