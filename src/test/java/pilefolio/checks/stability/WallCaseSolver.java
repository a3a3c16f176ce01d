package pilefolio.checks.stability;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pilefolio.analysis.earth.CoefficientMethod;
import pilefolio.analysis.earth.CohesionRule;
import pilefolio.analysis.earth.DrainedStrength;
import pilefolio.analysis.earth.PressureFactors;
import pilefolio.analysis.earth.Side;
import pilefolio.analysis.earth.SoilLayer;
import pilefolio.analysis.earth.SoilProfile;
import pilefolio.analysis.earth.Strength;
import pilefolio.analysis.earth.UndrainedStrength;
import pilefolio.analysis.earth.WallGround;
import pilefolio.analysis.earth.WaterFlow;
import pilefolio.analysis.wall.Equilibrium;
import pilefolio.analysis.wall.FixedEarthSupport;
import pilefolio.analysis.wall.FourForceCantilever;
import pilefolio.analysis.wall.FreeEarthSupport;
import pilefolio.analysis.wall.LowestSpan;
import pilefolio.analysis.wall.NoEquilibrium;
import pilefolio.analysis.wall.SimplifiedCantilever;
import pilefolio.analysis.wall.WallLoading;
import pilefolio.analysis.wall.WallMethod;
import pilefolio.analysis.wall.WallOutcome;
import pilefolio.checks.CaseFile;
import pilefolio.trace.Calculation;
import pilefolio.trace.Given;
import pilefolio.trace.Source;

/**
 * Solves the walls of case files and fills the sheets of stability with the result. A problem
 * states
 *
 * <ul>
 *   <li>{@code layers}: from the top down, each with {@code name}, {@code top}, {@code γ}, {@code
 *       γ_sat} (γ if left out) and either {@code φ'}, {@code c'}, {@code δ_a/φ'}, {@code δ_p/φ'} or
 *       {@code s_u}, {@code a/s_u}; the last one has no end unless {@code base} gives it;
 *   <li>{@code ground}, {@code excavation}, {@code overdig}; {@code water} or {@code waterBehind}
 *       and {@code waterFront} (dry if left out), {@code γ_w}, {@code flow};
 *   <li>{@code q_G}, {@code q_Q} on the ground behind;
 *   <li>{@code coefficients}, {@code tensionBehind}, {@code tensionFront}: names of the constants;
 *   <li>{@code γ_φ}, {@code γ_cu}, {@code γ_G}, {@code γ_Q}, {@code γ_P} and the divisor {@code F}
 *       of passive pressure, 1 if left out;
 *   <li>{@code method} where the check does not fix it, {@code support}, {@code toe}, {@code f_D},
 *       {@code f_s}, {@code F_r}.
 * </ul>
 */
public final class WallCaseSolver {
  private static final double KILO = 1000;
  private static final Source CASE = new Source.Layout("case");

  private final JsonNode p;

  private WallCaseSolver(JsonNode problem) {
    p = problem;
  }

  /** The pressures of a wall. */
  public static WallLoading loading(JsonNode problem) {
    return new WallCaseSolver(problem).loading();
  }

  /** Sheet of the four-force cantilever, or of weak ground. */
  public static Calculation fourForces(JsonNode problem) {
    return new WallCaseSolver(problem).embedment(new FullCantileverEmbedment(), "four forces");
  }

  /** Sheet of the simplified cantilever, or of weak ground. */
  public static Calculation simplified(JsonNode problem) {
    return new WallCaseSolver(problem).embedment(new SimplifiedCantileverEmbedment(), "simplified");
  }

  /** Sheet of free earth, or of weak ground. */
  public static Calculation freeEarth(JsonNode problem) {
    return new WallCaseSolver(problem).embedment(new FreeEarthEmbedment(), "free earth");
  }

  /** Sheet of the part below the lowest support, or of weak ground. */
  public static Calculation lowestSpan(JsonNode problem) {
    return new WallCaseSolver(problem).embedment(new LowestSpanEmbedment(), "lowest span");
  }

  /** Sheet of fixed earth, or of weak ground. */
  public static Calculation fixedEarth(JsonNode problem) {
    return new WallCaseSolver(problem).embedment(new FixedEarthEmbedment(), "fixed earth");
  }

  /** Sheet of shear and moment. */
  public static Calculation effects(JsonNode problem) {
    WallCaseSolver wall = new WallCaseSolver(problem);
    return WallEffectsCheck.calculate(
        equilibrium(wall.method(problem.path("method").asText()).solve(wall.loading())));
  }

  /** Sheet of the reserve of passive pressure. */
  public static Calculation reserve(JsonNode problem) {
    WallCaseSolver wall = new WallCaseSolver(problem);
    double toe = wall.si("toe");
    boolean supported = problem.has("support");
    return PassiveReserveCheck.calculate(
        wall.loading(),
        toe,
        given(supported ? wall.si("support") : toe),
        !supported
            ? PassiveReserveCheck.Turning.ABOUT_TOE
            : problem.path("several").asBoolean()
                ? PassiveReserveCheck.Turning.BELOW_LOWEST
                : PassiveReserveCheck.Turning.ABOUT_SUPPORT,
        given(wall.si("F_r")));
  }

  /** Sheet of the force in a support. */
  public static Calculation supportForce(JsonNode problem) {
    WallCaseSolver wall = new WallCaseSolver(problem);
    Equilibrium e = equilibrium(wall.method(problem.path("method").asText()).solve(wall.loading()));
    return SupportForceCheck.SHEET
        .bind()
        .set("T", KILO * e.supportForce().orElseThrow(), CASE)
        .set("s", wall.si("s"), CASE)
        .set("α", wall.si("α"), CASE)
        .set("N_R", wall.si("N_R"), CASE)
        .calculate();
  }

  private Calculation embedment(EmbedmentCheck check, String method) {
    WallLoading loading = loading();
    WallOutcome outcome = method(method).solve(loading);
    if (outcome instanceof NoEquilibrium none
        && none.cause() == NoEquilibrium.Cause.UNDRAINED_GROUND_TOO_WEAK) {
      return WeakGround.calculate(loading);
    }
    return check.calculate(
        loading,
        equilibrium(outcome),
        new EmbedmentInputs(
            given(loading.excavationLevel()),
            given(si("toe")),
            given(or("f_D", 1)),
            p.has("support") ? Optional.of(given(si("support"))) : Optional.empty()));
  }

  private WallMethod method(String name) {
    return switch (name) {
      case "four forces" -> new FourForceCantilever(FourForceCantilever.Change.ABRUPT);
      case "straight line" -> new FourForceCantilever(FourForceCantilever.Change.STRAIGHT_LINE);
      case "simplified" -> new SimplifiedCantilever(si("f_s"));
      case "free earth" -> new FreeEarthSupport(si("support"));
      case "lowest span" -> new LowestSpan(si("support"));
      case "fixed earth" -> new FixedEarthSupport(si("support"), si("f_s"));
      default -> throw new IllegalArgumentException("no method is called " + name);
    };
  }

  private static Equilibrium equilibrium(WallOutcome outcome) {
    if (outcome instanceof NoEquilibrium none) {
      throw new IllegalArgumentException(none.reason());
    }
    return (Equilibrium) outcome;
  }

  private WallLoading loading() {
    double ground = si("ground");
    Side behind = new Side(ground, water("waterBehind"), or("q_G", 0) / KILO, or("q_Q", 0) / KILO);
    Side front = Side.unloaded(si("excavation"), water("waterFront")).loweredBy(or("overdig", 0));
    return new WallLoading(
        new WallGround(
            new SoilProfile(layers()),
            CoefficientMethod.valueOf(p.path("coefficients").asText("RANKINE")),
            behind,
            front,
            WaterFlow.valueOf(p.path("flow").asText("HYDROSTATIC")),
            p.has("γ_w") ? si("γ_w") / KILO : WallGround.GAMMA_WATER,
            rule("tensionBehind"),
            rule("tensionFront"),
            new PressureFactors(
                    or("γ_G", 1),
                    or("γ_Q", 1),
                    or("γ_P", 1),
                    or("F", 1),
                    PressureFactors.DivisorOn.WHOLE_PASSIVE)
                .withWater(or("γ_{G,w}", or("γ_G", 1)))));
  }

  private double water(String side) {
    return or(side, or("water", si("ground") - 1000));
  }

  private CohesionRule rule(String side) {
    return new CohesionRule(
        CohesionRule.Tension.valueOf(p.path(side).asText("DRY_CRACK")), or("k_m", 0) / KILO);
  }

  private List<SoilLayer> layers() {
    List<SoilLayer> layers = new ArrayList<>();
    JsonNode all = p.path("layers");
    for (int i = 0; i < all.size(); i++) {
      JsonNode layer = all.get(i);
      double gamma = value(layer, "γ") / KILO;
      layers.add(
          new SoilLayer(
              layer.path("name").asText(),
              value(layer, "top"),
              i + 1 < all.size()
                  ? value(all.get(i + 1), "top")
                  : or("base", Double.NEGATIVE_INFINITY),
              gamma,
              layer.has("γ_sat") ? value(layer, "γ_sat") / KILO : gamma,
              strength(layer)));
    }
    return layers;
  }

  private Strength strength(JsonNode layer) {
    if (layer.has("s_u")) {
      return new UndrainedStrength(
          value(layer, "s_u") / KILO / or("γ_cu", 1), 0, value(layer, "a/s_u", 0));
    }
    double phi = Math.atan(Math.tan(value(layer, "φ'")) / or("γ_φ", 1));
    return new DrainedStrength(
        value(layer, "c'", 0) / KILO / or("γ_φ", 1),
        phi,
        phi * value(layer, "δ_a/φ'", 0),
        phi * value(layer, "δ_p/φ'", 0));
  }

  private static Given given(double si) {
    return new Given(si, CASE);
  }

  private double si(String name) {
    return value(p, name);
  }

  private double or(String name, double otherwise) {
    return value(p, name, otherwise);
  }

  private static double value(JsonNode node, String name, double otherwise) {
    return node.has(name) ? value(node, name) : otherwise;
  }

  private static double value(JsonNode node, String name) {
    if (!node.has(name)) {
      throw new IllegalArgumentException("the problem does not state " + name);
    }
    return CaseFile.si(node.get(name).asText());
  }
}
