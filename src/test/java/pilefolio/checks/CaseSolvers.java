package pilefolio.checks;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Function;
import pilefolio.checks.geometry.JointOpenings;
import pilefolio.trace.Calculation;
import pilefolio.trace.Given;
import pilefolio.trace.Source;

/**
 * For checks whose sheet verifies a numerical method: states the problem, solves it, binds the
 * sheet.
 */
final class CaseSolvers {
  private static final Map<String, Function<JsonNode, Calculation>> BY_CHECK =
      new LinkedHashMap<>();

  static {
    BY_CHECK.put("joint-opening", CaseSolvers::jointOpening);
  }

  private CaseSolvers() {}

  private static Calculation jointOpening(JsonNode p) {
    return JointOpenings.solve(
        new JointOpenings.Problem(
            given(p, "D_p"),
            given(p, "D_s"),
            given(p, "s"),
            given(p, "e_0"),
            given(p, "n"),
            given(p, "k_σ"),
            given(p, "z"),
            given(p, "N"),
            given(p, "P_lim")));
  }

  private static Given given(JsonNode problem, String name) {
    return new Given(CaseFile.si(problem.path(name).asText()), new Source.Layout("case"));
  }

  static Calculation solve(String checkId, JsonNode problem) {
    Function<JsonNode, Calculation> solver = BY_CHECK.get(checkId);
    if (solver == null) {
      throw new IllegalArgumentException("no case solver for " + checkId);
    }
    return solver.apply(problem);
  }
}
