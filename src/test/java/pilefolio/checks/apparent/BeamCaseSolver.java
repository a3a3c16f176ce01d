package pilefolio.checks.apparent;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import pilefolio.analysis.apparent.Base;
import pilefolio.analysis.apparent.BeamOnSupports;
import pilefolio.analysis.apparent.Idealisation;
import pilefolio.analysis.wall.NetPressure;
import pilefolio.analysis.wall.NetSegment;
import pilefolio.checks.CaseFile;
import pilefolio.trace.Calculation;

/**
 * Solves the beams of case files: {@code pressure} from the top down in stretches with {@code top},
 * {@code bottom}, {@code p_t}, {@code p_b}; levels of {@code supports}; {@code foot}, the level of
 * the reaction of the ground, or an overhang if left out.
 */
public final class BeamCaseSolver {
  private static final double KILO = 1000;

  private BeamCaseSolver() {}

  /** Sheet of one idealisation. */
  public static Calculation solve(JsonNode p, Idealisation idealisation) {
    List<NetSegment> pressure = new ArrayList<>();
    for (JsonNode s : p.path("pressure")) {
      pressure.add(
          new NetSegment(si(s, "top"), si(s, "bottom"), si(s, "p_t") / KILO, si(s, "p_b") / KILO));
    }
    List<Double> supports = new ArrayList<>();
    List<String> names = new ArrayList<>();
    for (JsonNode s : p.path("supports")) {
      supports.add(CaseFile.si(s.asText()));
      names.add("S" + supports.size());
    }
    Base base = p.has("foot") ? new Base.Reaction(si(p, "foot")) : new Base.Overhang();
    return ApparentBeams.calculate(
        new BeamOnSupports(new NetPressure(pressure), supports, base), idealisation, names);
  }

  private static double si(JsonNode node, String name) {
    return CaseFile.si(node.get(name).asText());
  }
}
