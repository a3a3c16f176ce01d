package pilefolio.checks.stability;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import pilefolio.analysis.staged.ElasticSupport;
import pilefolio.analysis.staged.GroundMemory;
import pilefolio.analysis.staged.SoilSide;
import pilefolio.analysis.staged.SpringLaw;
import pilefolio.analysis.staged.StagedAnalysis;
import pilefolio.analysis.staged.StagedOutcome;
import pilefolio.analysis.staged.StagedWall;
import pilefolio.analysis.staged.WallStage;
import pilefolio.trace.Calculation;
import pilefolio.trace.Given;
import pilefolio.trace.Source;
import pilefolio.units.Units;

/**
 * A wall in dry uniform sand with one support: dug to {@code first} (by default to the support),
 * the support placed, dug to {@code dug}. Lengths are depths below the top.
 */
public final class StagedCaseSolver {
  private static final double KILO = 1000;

  private StagedCaseSolver() {}

  /** Equilibrium or collapse of the last stage. */
  public static Calculation equilibrium(JsonNode p) {
    StagedWall wall = wall(p);
    StagedOutcome outcome = StagedAnalysis.of(wall);
    return outcome instanceof StagedOutcome.Collapsed c
        ? StagedEquilibrium.collapse(c, wall).orElseThrow()
        : StagedEquilibrium.calculate(outcome.stages().get(2));
  }

  /** Effects of the last stage, with a factor of 1.35. */
  public static Calculation effects(JsonNode p) {
    return StagedEffects.calculate(
        StagedAnalysis.of(wall(p)).stages().get(2), new Given(1.35, new Source.Layout("case")));
  }

  private static double si(JsonNode p, String name, String standard) {
    String text = p.path(name).asText(standard);
    int space = text.indexOf(' ');
    return space < 0
        ? Double.parseDouble(text)
        : Units.of(text.substring(space + 1)).toSi(Double.parseDouble(text.substring(0, space)));
  }

  private static StagedWall wall(JsonNode p) {
    double support = si(p, "tie", "");
    double first = p.has("first") ? si(p, "first", "") : support;
    double dug = si(p, "dug", "");
    boolean passive = p.path("passiveBehind").asBoolean();
    SoilSide behind = sand(p, 0, si(p, "load", "0 kPa") / KILO, passive);
    ElasticSupport tie =
        new ElasticSupport(
            "T",
            -support,
            si(p, "stiffness", "10000000 kN/m²") / KILO,
            0,
            ElasticSupport.Action.ONE_WAY);
    double ei = 60_000;
    return StagedWall.of(
        0,
        -si(p, "length", ""),
        GroundMemory.NONE,
        List.of(
            new WallStage(
                "stage 1",
                sand(p, 0, si(p, "load", "0 kPa") / KILO, true),
                sand(p, -first, 0, true),
                -first,
                ei,
                List.of(),
                List.of()),
            new WallStage(
                "stage 2, placing",
                sand(p, 0, si(p, "load", "0 kPa") / KILO, true),
                sand(p, -first, 0, true),
                -first,
                ei,
                List.of(tie),
                List.of()),
            new WallStage(
                "stage 2", behind, sand(p, -dug, 0, true), -dug, ei, List.of(tie), List.of())));
  }

  private static SoilSide sand(JsonNode p, double surface, double load, boolean passive) {
    double gamma = si(p, "γ", "") / KILO;
    double k0 = si(p, "K_0", "");
    double ka = si(p, "K_a", "");
    double kp = passive ? si(p, "K_p", "") : ka;
    double k = si(p, "k", "") / KILO;
    return new SoilSide() {
      @Override
      public SpringLaw at(double level, double seenFrom) {
        if (seenFrom >= surface) {
          return SpringLaw.NOTHING;
        }
        double sigma = load + gamma * (surface - level);
        return new SpringLaw(k0 * sigma, ka * sigma, kp * sigma, k, 0);
      }

      @Override
      public List<Double> breaks() {
        return List.of(surface);
      }
    };
  }
}
