package pilefolio.checks.situation;

import static pilefolio.units.Units.DEG;
import static pilefolio.units.Units.M;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import pilefolio.checks.From;
import pilefolio.checks.Job;
import pilefolio.checks.Subject;
import pilefolio.model.Drainage;
import pilefolio.model.GroundAnchor;
import pilefolio.model.GroundProfile;
import pilefolio.model.Layer;
import pilefolio.model.Stage;
import pilefolio.model.Support;
import pilefolio.model.Value;
import pilefolio.model.WallRun;
import pilefolio.trace.CalcSheet;
import pilefolio.trace.Calculation;
import pilefolio.trace.Given;
import pilefolio.trace.Reference;

/**
 * Free length of anchors: the bond length begins behind the wedge that rises from the excavation.
 *
 * @param run the wall run
 * @param support the support
 * @param calculation the sheet
 */
public record AnchorFreeLength(WallRun run, Support support, Calculation calculation) {
  private static final Reference RULES = Reference.memory("FHWA-IF-99-015", "chapter 5");
  // A length that the engine sizes is set on whole half metres.
  private static final double STEP = 0.5;

  /** The sheet. */
  public static final CalcSheet SHEET =
      CalcSheet.named("Free length of an anchor behind the wedge")
          .given("z_G", M, "ground level behind the wall")
          .given("z_A", M, "level of the anchor at the wall")
          .given("z_E", M, "lowest excavation while the anchor holds")
          .given("φ", DEG, "least friction angle over the retained height; nil if undrained")
          .given("i", DEG, "inclination below the horizontal")
          .given("L_min", M, "least free length of the kind of tendon")
          .given("L_f", M, "free length")
          .line("H = z_G − z_E", M, "retained height", Reference.DERIVED)
          .line("h = z_A − z_E", M, "height of the anchor above the excavation", Reference.DERIVED)
          .line("α = 45[°] + φ/2", DEG, "rise of the critical surface", RULES)
          .line(
              "L_w = h·cos(α)/sin(α + i)",
              M,
              "length along the anchor to the critical surface",
              Reference.DERIVED)
          .line("L_x = max(1.5[m], H/5)", M, "length beyond the critical surface", RULES)
          .line("L_req = max(L_w + L_x, L_min)", M, "least free length", RULES)
          .require("L_f ≥ L_req", "the bond length begins behind the critical surface", RULES);

  /** The sheets of a support that is anchored: one for each run that it holds. */
  public static List<AnchorFreeLength> of(Job job, Support support, GroundAnchor anchor) {
    List<WallRun> runs = job.submission().runs(support);
    Given length = length(job, support, anchor, runs);
    return runs.stream()
        .map(
            run -> new AnchorFreeLength(run, support, calculate(job, run, support, anchor, length)))
        .toList();
  }

  /** Free length, m, the user's or the least that every run allows on half metres. */
  public static Given length(Job job, Support support, GroundAnchor anchor) {
    return length(job, support, anchor, job.submission().runs(support));
  }

  private static Given length(Job job, Support support, GroundAnchor anchor, List<WallRun> runs) {
    if (anchor.freeLength().isPresent()) {
      return From.cell(anchor.freeLength().get());
    }
    Given none = From.layout(0, "not known yet");
    double least =
        runs.stream()
            .mapToDouble(run -> calculate(job, run, support, anchor, none).value("L_req"))
            .max()
            .orElse(anchor.tendon().leastFreeLength());
    return From.layout(
        Math.ceil(least / STEP - 1e-9) * STEP, "least length, rounded up to half metres");
  }

  private static Calculation calculate(
      Job job, WallRun run, Support support, GroundAnchor anchor, Given length) {
    Stage deepest = deepest(job, run, support);
    return SHEET
        .bind()
        .set("z_G", From.cell(run.levels().retained()))
        .set("z_A", From.cell(support.level()))
        .set("z_E", From.cell(deepest.excavation()))
        .set("φ", friction(job, run, deepest.excavation().si()))
        .set("i", From.cell(support.inclination()))
        .set(
            "L_min",
            From.layout(
                anchor.tendon().leastFreeLength(),
                "least free length of "
                    + anchor.tendon().label().toLowerCase(java.util.Locale.ROOT)))
        .set("L_f", length)
        .calculate();
  }

  /** The stage with the lowest excavation of those in which a support is in place. */
  static Stage deepest(Job job, WallRun run, Support support) {
    return job.submission().stages(run).stream()
        .filter(stage -> stage.supports().contains(support.id()))
        .min(Comparator.comparingDouble((Stage stage) -> stage.excavation().si()))
        .orElseThrow();
  }

  private static Given friction(Job job, WallRun run, double excavation) {
    GroundProfile profile = job.submission().profile(run);
    Optional<Value> least = Optional.empty();
    for (int i = 0; i < profile.layers().size(); i++) {
      Layer layer = profile.layers().get(i);
      boolean above =
          layer.top().si() > excavation && profile.bottom(i) < run.levels().retained().si();
      if (!above) {
        continue;
      }
      if (layer.drainage() != Drainage.DRAINED || layer.frictionAngle().isEmpty()) {
        return From.layout(0, "undrained ground over the retained height");
      }
      Value angle = layer.frictionAngle().get();
      least = least.filter(l -> l.si() <= angle.si()).or(() -> Optional.of(angle));
    }
    return least.map(From::cell).orElse(From.layout(0, "no layer over the retained height"));
  }

  /** What the sheet is about. */
  public Subject subject() {
    return Subject.run(run.id()).piles("support " + support.id());
  }
}
