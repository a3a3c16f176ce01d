package pilefolio.checks.stability;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import pilefolio.analysis.earth.DrainedStrength;
import pilefolio.analysis.earth.SoilLayer;
import pilefolio.analysis.earth.SoilProfile;
import pilefolio.analysis.earth.Strength;
import pilefolio.analysis.earth.UndrainedStrength;
import pilefolio.analysis.stability.GroundLine;
import pilefolio.analysis.stability.SlipCircle;
import pilefolio.analysis.stability.SlipSearch;
import pilefolio.analysis.stability.SlipSection;
import pilefolio.analysis.stability.SlipSupport;
import pilefolio.analysis.stability.SlipWater;
import pilefolio.analysis.stability.StepSeepage;
import pilefolio.analysis.stability.StripLoad;
import pilefolio.checks.CaseFile;
import pilefolio.trace.Binding;
import pilefolio.trace.Calculation;
import pilefolio.trace.Given;
import pilefolio.trace.Source;

/**
 * Solves the problems of case files on seepage and slip circles.
 *
 * <p>Seepage: {@code h}, {@code D}, {@code D_b}, {@code γ} and the factors of the sheet; {@code
 * h_a} if it is not to be found. Slip circles: {@code surface} as pairs of x and level, {@code
 * layers} as for walls, {@code waterFront}, {@code waterBehind}, {@code loads} ({@code from},
 * {@code to}, {@code q}), {@code supports} ({@code level}, {@code N}, {@code i}, {@code free},
 * {@code bond}), {@code toe}, {@code slices}, {@code F_r} and either {@code circle} ({@code x},
 * {@code z}, {@code R}, {@code exit}, {@code entry}) or {@code floor} for a search below the toe.
 */
public final class StabilityCaseSolver {
  private static final double KILO = 1000;
  private static final Source CASE = new Source.Layout("case");

  private StabilityCaseSolver() {}

  /** Sheet of the prism. */
  public static Calculation heave(JsonNode p) {
    ToeSeepage seepage = seepage(p);
    boolean partial = p.has("γ_dst");
    Binding binding;
    if (p.has("h_a")) {
      StepSeepage solved = seepage.solved();
      binding =
          SeepageCheck.bind(
                  partial ? HydraulicHeave.PARTIAL : HydraulicHeave.FACTOR, seepage, solved)
              .set("h_a", value(p, "h_a"), CASE)
              .set("γ", value(p, "γ"), CASE)
              .set("γ_w", SeepageCheck.WATER, CASE);
    } else {
      binding =
          HydraulicHeave.fill(
              partial ? HydraulicHeave.PARTIAL : HydraulicHeave.FACTOR,
              seepage,
              new Given(value(p, "γ"), CASE));
    }
    if (partial) {
      binding.set("γ_dst", value(p, "γ_dst"), CASE).set("γ_stb", value(p, "γ_stb"), CASE);
    } else {
      binding.set("F_h", value(p, "F_h"), CASE);
    }
    return binding.calculate();
  }

  /** Sheet of the exit gradient. */
  public static Calculation piping(JsonNode p) {
    return Piping.fill(seepage(p), new Given(value(p, "γ"), CASE))
        .set("F_i", value(p, "F_i"), CASE)
        .calculate();
  }

  private static ToeSeepage seepage(JsonNode p) {
    double weight = value(p, "γ") / KILO;
    return new ToeSeepage(0, value(p, "h"), value(p, "D"), value(p, "D_b"), weight, weight);
  }

  /** Sheet of a slip circle. */
  public static Calculation slip(JsonNode p) {
    List<GroundLine.Point> points = new ArrayList<>();
    for (JsonNode point : p.path("surface")) {
      points.add(
          new GroundLine.Point(
              CaseFile.si(point.get(0).asText()), CaseFile.si(point.get(1).asText())));
    }
    double none = Double.NEGATIVE_INFINITY;
    SlipSection section =
        new SlipSection(
            new GroundLine(points),
            new SoilProfile(layers(p)),
            SlipWater.atRest(value(p, "waterFront", none), value(p, "waterBehind", none), 9.81),
            loads(p),
            supports(p));
    double toe = value(p, "toe");
    SlipSearch.Found found;
    if (p.has("circle")) {
      JsonNode c = p.get("circle");
      SlipCircle circle =
          new SlipCircle(
              value(c, "x"), value(c, "z"), value(c, "R"), value(c, "exit"), value(c, "entry"));
      found = new SlipSearch.Found(circle, 1, 1, false);
    } else {
      found = OverallStability.solve(section, toe, value(p, "floor")).orElseThrow();
    }
    return OverallStability.calculate(
        section,
        found,
        section.slices(found.circle(), p.path("slices").asInt(18)),
        new Given(toe, CASE),
        new Given(value(p, "F_r"), CASE));
  }

  private static List<StripLoad> loads(JsonNode p) {
    List<StripLoad> loads = new ArrayList<>();
    for (JsonNode load : p.path("loads")) {
      loads.add(
          new StripLoad(value(load, "from"), value(load, "to"), value(load, "q") / KILO, false));
    }
    return loads;
  }

  private static List<SlipSupport> supports(JsonNode p) {
    List<SlipSupport> supports = new ArrayList<>();
    for (JsonNode s : p.path("supports")) {
      supports.add(
          new SlipSupport(
              value(s, "level"),
              value(s, "N") / KILO,
              value(s, "i"),
              value(s, "free", Double.POSITIVE_INFINITY),
              value(s, "bond", 0)));
    }
    return supports;
  }

  private static List<SoilLayer> layers(JsonNode p) {
    List<SoilLayer> layers = new ArrayList<>();
    JsonNode all = p.path("layers");
    for (int i = 0; i < all.size(); i++) {
      JsonNode layer = all.get(i);
      double gamma = value(layer, "γ") / KILO;
      layers.add(
          new SoilLayer(
              layer.path("name").asText(),
              value(layer, "top"),
              i + 1 < all.size() ? value(all.get(i + 1), "top") : Double.NEGATIVE_INFINITY,
              gamma,
              value(layer, "γ_sat", KILO * gamma) / KILO,
              strength(layer)));
    }
    return layers;
  }

  private static Strength strength(JsonNode layer) {
    return layer.has("s_u")
        ? new UndrainedStrength(value(layer, "s_u") / KILO, 0, 0)
        : new DrainedStrength(value(layer, "c'", 0) / KILO, value(layer, "φ'"), 0, 0);
  }

  private static double value(JsonNode node, String name, double otherwise) {
    return node.has(name) ? value(node, name) : otherwise;
  }

  private static double value(JsonNode node, String name) {
    OptionalDouble found =
        node.has(name)
            ? OptionalDouble.of(CaseFile.si(node.get(name).asText()))
            : OptionalDouble.empty();
    return found.orElseThrow(
        () -> new IllegalArgumentException("the problem does not state " + name));
  }
}
