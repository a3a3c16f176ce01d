package pilefolio.checks.stability;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import pilefolio.analysis.earth.SoilLayer;
import pilefolio.analysis.seepage.FlowNet;
import pilefolio.analysis.seepage.FlowProblem;
import pilefolio.analysis.seepage.PermeableLayer;
import pilefolio.analysis.stability.StepSeepage;
import pilefolio.checks.Job;
import pilefolio.checks.situation.DesignSituation;

/**
 * Water that flows round the toe of a closed wall in drained ground, m and kN/m³.
 *
 * @param exit level at which it leaves the ground in front, m
 * @param head difference of water levels, m
 * @param front depth of the toe below the exit, m
 * @param behind depth of the toe below the entry, m
 * @param weight mean saturated unit weight of the ground between exit and toe, kN/m³
 * @param leastWeight least saturated unit weight there, kN/m³
 */
record ToeSeepage(
    double exit, double head, double front, double behind, double weight, double leastWeight) {
  private static final double LEAST_HEAD = 0.01;

  /** Depth of the net below the toe over the depth of the toe behind. */
  private static final double DEEP = 4;

  /** The flow of a situation; empty if the wall holds back no head or stands in clay. */
  static Optional<ToeSeepage> of(Job job, DesignSituation s) {
    OptionalDouble toe = WallSolutions.toe(job, s.run());
    double behind = SlipModel.waterBehind(s);
    if (toe.isEmpty() || !s.run().type().closed() || behind <= toe.getAsDouble()) {
      return Optional.empty();
    }
    BaseOfExcavation base = BaseOfExcavation.of(s);
    double front = SlipModel.waterFront(s);
    double level = front == Double.NEGATIVE_INFINITY ? base.base() : front;
    double exit = Math.min(level, base.base());
    double entry = Math.min(behind, s.run().levels().retained().si());
    double head = behind - level;
    if (head < LEAST_HEAD || exit <= toe.getAsDouble() || entry < exit) {
      return Optional.empty();
    }
    double least = Double.POSITIVE_INFINITY;
    for (SoilLayer layer : base.profile().layers()) {
      if (layer.topLevel() > toe.getAsDouble() - 1e-6 && layer.bottomLevel() < exit) {
        if (layer.isUndrained()) {
          return Optional.empty();
        }
        least = Math.min(least, layer.gammaBelow());
      }
    }
    return Optional.of(
        new ToeSeepage(
            exit,
            head,
            exit - toe.getAsDouble(),
            entry - toe.getAsDouble(),
            base.meanWeight(exit, toe.getAsDouble(), exit),
            least));
  }

  /** The flow solved for deep uniform ground. */
  StepSeepage solved() {
    return StepSeepage.of(front, behind, head);
  }

  /**
   * A flow net of the same flow in uniform ground, with a middle in front that nothing crosses.
   *
   * @param width of the excavation, m
   */
  FlowNet between(double width) {
    double entry = behind - front;
    double level = Math.max(0, entry - head);
    double toe = -front;
    double base = toe - DEEP * behind;
    return FlowNet.solve(
        new FlowProblem(
            List.of(PermeableLayer.isotropic(entry + 1, base, 1)),
            entry,
            level + head,
            0,
            level,
            toe,
            FlowProblem.FAR * behind,
            width / 2));
  }
}
