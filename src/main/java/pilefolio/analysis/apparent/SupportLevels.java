package pilefolio.analysis.apparent;

import java.util.List;
import pilefolio.analysis.earth.OutsideRange;

/** Where supports may stand. */
final class SupportLevels {
  private SupportLevels() {}

  /**
   * Refuses support levels that do not fall from the top to above the excavation.
   *
   * @throws OutsideRange naming the level
   */
  static void require(List<Double> supports, double top, double excavation) {
    if (supports.isEmpty()) {
      throw new OutsideRange("an apparent pressure envelope needs a support");
    }
    double above = top + 1e-9;
    for (double level : supports) {
      if (!(level <= above && level > excavation)) {
        throw new OutsideRange(
            "support level "
                + level
                + " m does not lie below the one above it, between the ground and the excavation");
      }
      above = level - 1e-6;
    }
  }
}
