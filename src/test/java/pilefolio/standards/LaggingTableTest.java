package pilefolio.standards;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pilefolio.standards.LaggingTable.Ground;
import pilefolio.units.Units;

/**
 * The table of FHWA-RD-75-130 (1976), from memory: thickness in inches at spans of 5 to 10 ft; 0
 * where it has no value.
 */
class LaggingTableTest {
  private static final double[] SPANS = {5, 6, 7, 8, 9, 10};

  @ParameterizedTest
  @CsvSource({
    "COMPETENT,25,2 3 3 3 4 4",
    "COMPETENT,60,3 3 3 4 4 5",
    "DIFFICULT,25,3 3 3 4 4 5",
    "DIFFICULT,60,3 3 4 4 5 5",
    "DANGEROUS,15,3 3 4 5 0 0",
    "DANGEROUS,25,3 4 5 6 0 0",
    "DANGEROUS,35,4 5 6 0 0 0"
  })
  void everyValue(Ground ground, double depth, String row) {
    String[] values = row.split(" ");
    for (int i = 0; i < SPANS.length; i++) {
      var entry =
          LaggingTable.table()
              .at(ground, Units.of("ft").toSi(depth), Units.of("ft").toSi(SPANS[i]));
      assertEquals(
          Double.parseDouble(values[i]),
          entry.map(e -> Units.of("in").fromSi(e.thickness())).orElse(0.0),
          1e-12);
    }
  }

  @Test
  void betweenColumnsTheWiderSpanCounts() {
    var entry = LaggingTable.table().at(Ground.COMPETENT, 6, 2.0).orElseThrow();
    assertEquals(Units.of("in").toSi(3), entry.thickness(), 1e-12);
    assertEquals("depth 0 to 25 ft, clear span to 7 ft", entry.row());
  }

  @Test
  void nothingOutside() {
    assertTrue(LaggingTable.table().at(Ground.COMPETENT, 19, 2).isEmpty(), "deeper than 60 ft");
    assertTrue(LaggingTable.table().at(Ground.COMPETENT, 6, 3.1).isEmpty(), "wider than 10 ft");
    assertTrue(LaggingTable.table().at(Ground.DANGEROUS, 11, 1).isEmpty(), "deeper than 35 ft");
  }
}
