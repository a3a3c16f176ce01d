package pilefolio.checks;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Function;
import pilefolio.trace.Calculation;

/**
 * For checks whose sheet verifies a numerical method: states the problem, solves it, binds the
 * sheet.
 */
final class CaseSolvers {
  private static final Map<String, Function<JsonNode, Calculation>> BY_CHECK =
      new LinkedHashMap<>();

  private CaseSolvers() {}

  static Calculation solve(String checkId, JsonNode problem) {
    Function<JsonNode, Calculation> solver = BY_CHECK.get(checkId);
    if (solver == null) {
      throw new IllegalArgumentException("no case solver for " + checkId);
    }
    return solver.apply(problem);
  }
}
