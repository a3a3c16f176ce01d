package pilefolio.checks.situation;

import java.util.Optional;
import java.util.function.Function;
import pilefolio.analysis.earth.OutsideRange;
import pilefolio.analysis.earth.WallGround;
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
import pilefolio.model.CantileverMethod;
import pilefolio.model.ProppedMethod;

/**
 * The wall in one design situation.
 *
 * @param situation the situation
 * @param method the method that the user chose for a cantilever or a wall with one support; the
 *     part below the lowest support where there are several
 * @param loading pressures; empty if a method refuses the ground
 * @param equilibrium the wall in equilibrium; empty if there is none
 * @param cause the kind of reason why there is no equilibrium; empty if there is one, or if a
 *     method refuses the ground
 * @param reason why there is no equilibrium; empty if there is one
 */
public record WallSolution(
    DesignSituation situation,
    WallMethod method,
    Optional<WallLoading> loading,
    Optional<Equilibrium> equilibrium,
    Optional<NoEquilibrium.Cause> cause,
    String reason) {

  /** Solves a situation. */
  public static WallSolution of(DesignSituation situation) {
    return of(situation, DesignSituation::ground);
  }

  /** Solves a situation with simplified seepage in place of a flow net. */
  static WallSolution withSimplifiedSeepage(DesignSituation situation) {
    return of(situation, DesignSituation::simplifiedGround);
  }

  private static WallSolution of(
      DesignSituation situation, Function<DesignSituation, WallGround> ground) {
    WallMethod method = method(situation);
    WallLoading loading;
    try {
      loading = new WallLoading(ground.apply(situation));
    } catch (OutsideRange e) {
      return new WallSolution(
          situation, method, Optional.empty(), Optional.empty(), Optional.empty(), e.getMessage());
    }
    WallOutcome outcome = method.solve(loading);
    if (outcome instanceof NoEquilibrium none) {
      return new WallSolution(
          situation,
          method,
          Optional.of(loading),
          Optional.empty(),
          Optional.of(none.cause()),
          none.reason());
    }
    return new WallSolution(
        situation,
        method,
        Optional.of(loading),
        Optional.of((Equilibrium) outcome),
        Optional.empty(),
        "");
  }

  private static WallMethod method(DesignSituation s) {
    if (s.supports().size() > 1) {
      return new LowestSpan(s.lowestSupport().orElseThrow().level().si());
    }
    if (s.support().isPresent()) {
      double level = s.support().get().level().si();
      return s.submission().methods().propped() == ProppedMethod.FREE_EARTH
          ? new FreeEarthSupport(level)
          : new FixedEarthSupport(level, DesignSituation.SIMPLIFIED_INCREASE);
    }
    return s.submission().methods().cantilever() == CantileverMethod.SIMPLIFIED
        ? new SimplifiedCantilever(DesignSituation.SIMPLIFIED_INCREASE)
        : new FourForceCantilever(FourForceCantilever.Change.ABRUPT);
  }

  /** Embedment to build below the design excavation level, margin included, m. */
  public double requiredEmbedment() {
    return equilibrium.orElseThrow().requiredEmbedment() * situation.embedmentIncrease();
  }

  /** Toe level to build, margin included, m. */
  public double requiredToe() {
    return situation.designExcavation() - requiredEmbedment();
  }
}
