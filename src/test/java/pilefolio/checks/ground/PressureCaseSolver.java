package pilefolio.checks.ground;

import com.fasterxml.jackson.databind.JsonNode;
import pilefolio.analysis.earth.Mobilisation;
import pilefolio.analysis.earth.Side;
import pilefolio.analysis.earth.WallGround;
import pilefolio.analysis.wall.WallLoading;
import pilefolio.checks.CaseFile;
import pilefolio.checks.stability.WallCaseSolver;
import pilefolio.trace.Calculation;

/**
 * Finds the pressure diagrams of case files and fills the sheets that redo them. The problem is
 * that of a wall ({@link WallCaseSolver}) with its {@code toe}; {@code side} is {@code behind} or
 * {@code front}.
 */
public final class PressureCaseSolver {
  private PressureCaseSolver() {}

  /** Sheet of active pressure. */
  public static Calculation active(JsonNode problem) {
    return solve(problem, Mobilisation.ACTIVE, new ActivePressure());
  }

  /** Sheet of passive pressure. */
  public static Calculation passive(JsonNode problem) {
    return solve(problem, Mobilisation.PASSIVE, new PassivePressure());
  }

  private static Calculation solve(JsonNode problem, Mobilisation state, PressureCheck check) {
    WallLoading loading = WallCaseSolver.loading(problem);
    WallGround ground = loading.ground();
    double toe = CaseFile.si(problem.path("toe").asText());
    boolean behind = problem.path("side").asText().equals("behind");
    Side side = behind ? ground.behind() : ground.front();
    return PressureSheet.calculate(
        check.sheet(ground, behind),
        ground,
        side,
        behind ? loading.pressures().behind(state, toe) : loading.pressures().front(state, toe),
        PressureSheet.plain(side, ground.factors()));
  }
}
