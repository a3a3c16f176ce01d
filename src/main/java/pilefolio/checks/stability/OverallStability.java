package pilefolio.checks.stability;

import static pilefolio.units.Units.DEG;
import static pilefolio.units.Units.KNM_M;
import static pilefolio.units.Units.KN_M;
import static pilefolio.units.Units.KPA;
import static pilefolio.units.Units.M;
import static pilefolio.units.Units.ONE;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import pilefolio.analysis.earth.OutsideRange;
import pilefolio.analysis.stability.Bishop;
import pilefolio.analysis.stability.SlipCircle;
import pilefolio.analysis.stability.SlipSearch;
import pilefolio.analysis.stability.SlipSection;
import pilefolio.analysis.stability.SlipSlice;
import pilefolio.analysis.stability.SlipSupport;
import pilefolio.checks.CheckResult;
import pilefolio.checks.Family;
import pilefolio.checks.From;
import pilefolio.checks.Job;
import pilefolio.checks.RunCheck;
import pilefolio.checks.Subject;
import pilefolio.checks.situation.DesignSituation;
import pilefolio.model.WallRun;
import pilefolio.trace.Binding;
import pilefolio.trace.Binding.Row;
import pilefolio.trace.CalcSheet;
import pilefolio.trace.CalcTable;
import pilefolio.trace.Calculation;
import pilefolio.trace.Given;
import pilefolio.trace.Reference;
import pilefolio.trace.Source;

/** The ground with the wall in it slides on a circle below the toe. */
public final class OverallStability extends RunCheck {
  /** Table of slices. */
  public static final String SLICES = "slices";

  private static final String SUPPORTS = "supports";
  private static final double KILO = 1000;
  private static final int WANTED = 18;
  private static final Reference BISHOP = Reference.memory("Bishop (1955), Géotechnique 5(1)", "");
  private static final String SEARCH = "search for the least factor";

  static final CalcSheet PLAIN = sheet("Critical slip circle below the toe", false);
  static final CalcSheet SUPPORTED = sheet("Critical slip circle, supported wall", true);

  private static CalcSheet sheet(String title, boolean supported) {
    CalcSheet head =
        CalcSheet.named(title)
            .given("z_t", M, "level of the toe of the wall")
            .found("x_c", M, "centre, from the face of the wall toward the retained ground", SEARCH)
            .found("z_c", M, "level of the centre", SEARCH)
            .found("R", M, "radius", SEARCH)
            .found("F", ONE, "factor of safety", "iteration of the simplified method of Bishop")
            .line(
                "z_w = z_c − √(R² − x_c²)", M, "level of the circle at the wall", Reference.DERIVED)
            .condition("z_w − z_t ≤ 0.01[m]", "it passes below the wall", Reference.DERIVED)
            .table(
                CalcTable.of(SLICES, "Slices from the excavation to the retained ground", "layer")
                    .given(
                        "x", M, "middle of the base, along the circle, from the face of the wall")
                    .given("b", M, "width")
                    .given("W", KN_M, "weight of ground")
                    .given("Q", KN_M, "load on top")
                    .given("u", KPA, "pore pressure at the base")
                    .given("c", KPA, "cohesion or undrained strength")
                    .given("φ", DEG, "friction angle")
                    .line("α = asin((x − x_c)/R)", DEG, "slope of the base", Reference.DERIVED)
                    .line("T = (W + Q)·sin(α)", KN_M, "driving force", BISHOP)
                    .line(
                        "S = (c·b + max(W + Q − u·b, 0)·tan(φ))/(cos(α) + sin(α)·tan(φ)/F)",
                        KN_M,
                        "strength along the base",
                        BISHOP)
                    .sum("ΣT", "T", "driving forces")
                    .sum("ΣS", "S", "strengths"))
            .given("M_w", KNM_M, "moment of free water about the centre, against the slide");
    if (supported) {
      head =
          head.table(
                  CalcTable.of(SUPPORTS, "Supports", "support")
                      .given("z_s", M, "level")
                      .given("N", KN_M, "force along the axis")
                      .given("i", DEG, "below the horizontal")
                      .given("η", ONE, "share from beyond the circle")
                      .line(
                          "M = η·N·((z_c − z_s)·cos(i) + x_c·sin(i))",
                          KNM_M,
                          "moment about the centre",
                          Reference.DERIVED)
                      .sum("ΣM", "M", "moments of supports"))
              .line("T_s = (M_w + ΣM)/R", KN_M, "held by water and supports", Reference.DERIVED);
    } else {
      head = head.line("T_s = M_w/R", KN_M, "held by water", Reference.DERIVED);
    }
    return head.line("F_c = ΣS/(ΣT − T_s)", ONE, "factor from the table", BISHOP)
        .condition("abs(F_c − F) ≤ 0.001·F", "the factor satisfies its own equation", BISHOP)
        .given("F_r", ONE, "least factor")
        .require("F ≥ F_r", "the ground with the wall does not slide", Reference.DERIVED)
        .note(
            "Weights, water, loads and strengths carry the factors of the basis. Strength and weight"
                + " of the wall itself are left out; circles through the wall are not examined.");
  }

  /** The check. */
  public OverallStability() {
    super(
        "overall-stability",
        "Overall stability on a slip circle",
        Family.STABILITY,
        PLAIN,
        SUPPORTED);
  }

  /**
   * A situation with its critical circle.
   *
   * @param situation stage and combination
   * @param section ground, water, loads and supports
   * @param toe level of the toe of the wall, m
   * @param found the circle with the least factor
   * @param slices slices of that circle, as printed
   */
  public record Critical(
      DesignSituation situation,
      SlipSection section,
      double toe,
      SlipSearch.Found found,
      List<SlipSlice> slices) {
    /** Copies the list. */
    public Critical {
      slices = List.copyOf(slices);
    }

    /** Factor of safety with the slices as printed. */
    public double factor() {
      SlipCircle circle = found.circle();
      return Bishop.factor(slices, section.holdingMoment(circle) / circle.radius()).orElseThrow();
    }
  }

  private record Key(String run) {}

  private record Searched(Map<Subject, Optional<Critical>> bySubject) {}

  /** Critical circles of a run by stage and combination; empty where the search has no answer. */
  public static Map<Subject, Optional<Critical>> circles(Job job, WallRun run) {
    return job.shared(new Key(run.id()), Searched.class, j -> search(j, run)).bySubject();
  }

  private static Searched search(Job job, WallRun run) {
    Map<Subject, Optional<Critical>> found = new HashMap<>();
    OptionalDouble toe = WallSolutions.toe(job, run);
    for (DesignSituation s : LowestStages.of(job, run)) {
      found.put(
          s.subject(), toe.isEmpty() ? Optional.empty() : critical(job, s, toe.getAsDouble()));
    }
    return new Searched(Map.copyOf(found));
  }

  private static Optional<Critical> critical(Job job, DesignSituation s, double toe) {
    SlipSection section;
    try {
      section = SlipModel.section(job, s, toe);
    } catch (OutsideRange e) {
      return Optional.empty();
    }
    return solve(section, toe, s.profile().base().si())
        .map(f -> new Critical(s, section, toe, f, section.slices(f.circle(), WANTED)));
  }

  /** The critical circle of a section below a toe and above a floor. */
  static Optional<SlipSearch.Found> solve(SlipSection section, double toe, double floor) {
    return toe > floor ? SlipSearch.belowWall(section, toe, floor).find() : Optional.empty();
  }

  @Override
  protected List<CheckResult> check(Job job, WallRun run) {
    List<CheckResult> results = new ArrayList<>();
    Map<Subject, Optional<Critical>> circles = circles(job, run);
    for (DesignSituation s : LowestStages.of(job, run)) {
      Optional<Critical> critical = circles.get(s.subject());
      if (critical.isEmpty()) {
        results.add(CheckResult.notChecked(this, s.subject(), reason(job, s)));
      } else {
        Critical c = critical.get();
        Given toe =
            run.toe()
                .map(From::cell)
                .orElseGet(() -> From.method(c.toe(), "toe sized by the program"));
        results.add(
            CheckResult.of(
                this,
                s.subject(),
                calculate(
                    c.section(),
                    c.found(),
                    c.slices(),
                    toe,
                    From.factor(job, "overall.safety", s.combination().id()))));
      }
    }
    return results;
  }

  private static String reason(Job job, DesignSituation s) {
    OptionalDouble toe = WallSolutions.toe(job, s.run());
    if (toe.isEmpty()) {
      return "a stage of this run has no equilibrium, so no toe is known";
    }
    return toe.getAsDouble() <= s.profile().base().si()
        ? "the ground is not known below the toe of the wall"
        : "the ground or its water cannot be described, or no circle below the toe and within the known"
            + " ground gives an answer";
  }

  /** Fills the sheet. */
  static Calculation calculate(
      SlipSection section,
      SlipSearch.Found found,
      List<SlipSlice> slices,
      Given toe,
      Given required) {
    SlipCircle circle = found.circle();
    boolean supported = !section.supports().isEmpty();
    double supports = section.supports().stream().mapToDouble(p -> p.moment(circle)).sum();
    double holding = section.holdingMoment(circle);
    double factor = Bishop.factor(slices, holding / circle.radius()).orElseThrow();
    Source method = new Source.Method(SEARCH + " among " + found.examined() + " circles");
    Binding binding =
        (supported ? SUPPORTED : PLAIN)
            .bind()
            .set("z_t", toe)
            .set("x_c", circle.x(), method)
            .set("z_c", circle.y(), method)
            .set("R", circle.radius(), method)
            .set("F", factor, new Source.Method("iteration"))
            .set("M_w", From.layout(KILO * (holding - supports), "free water above ground level"))
            .set("F_r", required);
    Source slice = new Source.Layout("geometry and layers");
    Source strength = new Source.Layout("design strength at the base");
    for (SlipSlice s : slices) {
      binding.row(
          SLICES,
          Row.of(s.layer())
              .set("x", circle.x() + circle.radius() * Math.sin(s.alphaRad()), slice)
              .set("b", s.width(), slice)
              .set("W", KILO * s.weight(), slice)
              .set("Q", KILO * s.load(), slice)
              .set("u", KILO * s.pore(), slice)
              .set("c", KILO * s.cohesion(), strength)
              .set("φ", s.phiRad(), strength));
    }
    if (supported) {
      int number = 1;
      for (SlipSupport p : section.supports()) {
        Source force = new Source.Layout("force of the wall calculation");
        binding.row(
            SUPPORTS,
            Row.of(String.valueOf(number++))
                .set("z_s", p.level(), force)
                .set("N", KILO * p.force(), force)
                .set("i", p.inclinationRad(), force)
                .set("η", p.share(circle), new Source.Layout("length beyond the circle")));
      }
    }
    return binding.calculate();
  }
}
