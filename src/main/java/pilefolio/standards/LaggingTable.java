package pilefolio.standards;

import com.fasterxml.jackson.core.type.TypeReference;
import java.util.List;
import java.util.Optional;
import pilefolio.trace.Reference;
import pilefolio.units.Units;

/**
 * Usual thickness of rough-cut, construction-grade timber lagging between soldier beams by ground,
 * depth and clear span. Remembered, not read: the user confirms it before relying on it.
 *
 * @param document documents that print the table
 * @param spans greatest clear spans of the columns, ft, rising
 * @param bands thicknesses by ground and depth
 * @param reference how the table is known
 */
public record LaggingTable(
    String document, List<Integer> spans, List<Band> bands, Reference reference) {

  /** Class of ground of the table. */
  public enum Ground {
    /**
     * Medium dense to dense sands and gravels, silts above the water table, clays stiff to very
     * stiff and not fissured, medium clays with γ·H/s_u below 5.
     */
    COMPETENT,
    /** Loose sands, clayey sands and silts below the water table, fissured stiff clays. */
    DIFFICULT,
    /**
     * Soft clays with γ·H/s_u above 5, slightly plastic silts and loose clayey sands below water.
     */
    DANGEROUS
  }

  /**
   * One row.
   *
   * @param ground class of ground
   * @param from least depth, ft
   * @param to greatest depth, ft
   * @param thickness by span, in; shorter than the spans where the table gives none
   */
  public record Band(Ground ground, int from, int to, List<Integer> thickness) {
    /** Copies the list. */
    public Band {
      thickness = List.copyOf(thickness);
    }
  }

  /**
   * A value that was looked up.
   *
   * @param thickness thickness, m
   * @param depth depth to which the row holds, m
   * @param span clear span to which the column holds, m
   * @param row depth and span of the place in the table, as documents print it
   */
  public record Entry(double thickness, double depth, double span, String row) {}

  private static final LaggingTable TABLE =
      DataFile.read("materials/lagging.json", new TypeReference<LaggingTable>() {});

  // A span or depth that equals a limit belongs to it, whatever the last bit says.
  private static final double SAME = 1e-9;

  /** Checks that thickness does not fall with span. */
  public LaggingTable {
    spans = List.copyOf(spans);
    bands = List.copyOf(bands);
    for (Band band : bands) {
      for (int i = 1; i < band.thickness().size(); i++) {
        if (band.thickness().get(i) < band.thickness().get(i - 1)) {
          throw new IllegalArgumentException("lagging table: thickness falls with span");
        }
      }
      if (band.thickness().size() > spans.size() || band.to() <= band.from()) {
        throw new IllegalArgumentException("lagging table: a row is out of order");
      }
    }
  }

  /** The table. */
  public static LaggingTable table() {
    return TABLE;
  }

  /**
   * Thickness at a depth and clear span. A span between two columns takes the wider one, a span
   * below the first column the first.
   *
   * @param ground class of ground
   * @param depth depth of the excavation, m, more than zero
   * @param span clear span, m, more than zero
   * @return empty where the table has no value
   */
  public Optional<Entry> at(Ground ground, double depth, double span) {
    double depthFeet = Units.of("ft").fromSi(depth);
    double spanFeet = Units.of("ft").fromSi(span);
    for (Band band : bands) {
      if (band.ground() != ground || !(depthFeet > 0) || depthFeet > band.to() + SAME) {
        continue;
      }
      for (int i = 0; i < band.thickness().size(); i++) {
        if (spanFeet <= spans.get(i) + SAME) {
          return Optional.of(
              new Entry(
                  Units.of("in").toSi(band.thickness().get(i)),
                  Units.of("ft").toSi(band.to()),
                  Units.of("ft").toSi(spans.get(i)),
                  "depth "
                      + band.from()
                      + " to "
                      + band.to()
                      + " ft, clear span to "
                      + spans.get(i)
                      + " ft"));
        }
      }
      return Optional.empty();
    }
    return Optional.empty();
  }
}
