package pilefolio.checks.support;

import java.util.List;
import pilefolio.analysis.support.ContinuousBeam;
import pilefolio.trace.Binding;
import pilefolio.trace.Binding.Row;
import pilefolio.trace.Given;
import pilefolio.trace.Source;

/** Solves the continuous beam of a waler and hands its moments to the sheet. */
final class WalerBeam {
  private static final Source FOUND = new Source.Method("equation of three moments");

  private WalerBeam() {}

  /**
   * Binds loads and moments.
   *
   * @param binding of a waler sheet
   * @param force horizontal support force, N/m
   * @param inclination of the supports, rad
   * @param spacing of the supports, m
   * @param overhang beyond the last support, m
   * @param spans count of spans between joints of the waler
   */
  static Binding solve(
      Binding binding, Given force, Given inclination, Given spacing, Given overhang, int spans) {
    double s = spacing.si();
    double load = force.si() / Math.cos(inclination.si());
    List<Double> moments = ContinuousBeam.equal(spans, s, overhang.si(), load).supportMoments();
    binding
        .set("T", force)
        .set("i", inclination)
        .set("s", spacing)
        .set("a", overhang)
        .set("S_0", load * s * s * s / 24 - s * (2 * moments.get(0) + moments.get(1)) / 6, FOUND);
    for (int k = 0; k < spans; k++) {
      binding.row(
          "spans",
          Row.of(String.valueOf(k + 1))
              .set("M_l", moments.get(k), FOUND)
              .set("M_r", moments.get(k + 1), FOUND));
    }
    return binding;
  }
}
