package pilefolio.analysis.staged;

import java.util.ArrayList;
import java.util.List;

/**
 * Extremes over stages at one level.
 *
 * @param level level, m
 * @param leastMoment least moment, kNm/m
 * @param greatestMoment greatest moment, kNm/m
 * @param leastShear least shear force, kN/m
 * @param greatestShear greatest shear force, kN/m
 * @param leastDisplacement least displacement, m
 * @param greatestDisplacement greatest displacement, m
 */
public record Envelope(
    double level,
    double leastMoment,
    double greatestMoment,
    double leastShear,
    double greatestShear,
    double leastDisplacement,
    double greatestDisplacement) {

  /** The envelope of stages of one wall, node by node from the top down; empty without stages. */
  public static List<Envelope> of(List<StageState> stages) {
    List<Envelope> all = new ArrayList<>();
    int nodes = stages.isEmpty() ? 0 : stages.get(0).nodes().size();
    for (int i = 0; i < nodes; i++) {
      Envelope e = null;
      for (StageState s : stages) {
        WallNode n = s.nodes().get(i);
        Envelope here =
            new Envelope(
                n.level(),
                n.moment(),
                n.moment(),
                Math.min(n.shearAbove(), n.shearBelow()),
                Math.max(n.shearAbove(), n.shearBelow()),
                n.displacement(),
                n.displacement());
        e = e == null ? here : e.with(here);
      }
      all.add(e);
    }
    return all;
  }

  private Envelope with(Envelope o) {
    return new Envelope(
        level,
        Math.min(leastMoment, o.leastMoment),
        Math.max(greatestMoment, o.greatestMoment),
        Math.min(leastShear, o.leastShear),
        Math.max(greatestShear, o.greatestShear),
        Math.min(leastDisplacement, o.leastDisplacement),
        Math.max(greatestDisplacement, o.greatestDisplacement));
  }
}
