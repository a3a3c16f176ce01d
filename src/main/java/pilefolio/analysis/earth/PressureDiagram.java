package pilefolio.analysis.earth;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Pressure on one side of the wall in one state, from the top down, without gaps.
 *
 * @param mobilisation active or passive
 * @param segments stretches of linear pressure; breaks stand at layer boundaries, water levels and
 *     wherever another expression takes over
 */
public record PressureDiagram(Mobilisation mobilisation, List<PressureSegment> segments) {

  public PressureDiagram {
    segments = List.copyOf(segments);
  }

  /** Levels at which the diagram breaks, from the top down. */
  public List<Double> breaks() {
    List<Double> levels = new ArrayList<>();
    for (PressureSegment s : segments) {
      levels.add(s.top().level());
    }
    if (!segments.isEmpty()) {
      levels.add(segments.get(segments.size() - 1).bottom().level());
    }
    return levels;
  }

  /** The stretch that holds the interval between two levels; empty outside the diagram. */
  public Optional<PressureSegment> holding(double upper, double lower) {
    double mid = (upper + lower) / 2;
    for (PressureSegment s : segments) {
      if (mid <= s.top().level() && mid >= s.bottom().level()) {
        return Optional.of(s);
      }
    }
    return Optional.empty();
  }
}
