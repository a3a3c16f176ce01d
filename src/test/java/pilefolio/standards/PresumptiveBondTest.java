package pilefolio.standards;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumSet;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pilefolio.model.BondGround;
import pilefolio.trace.Known;

/** Presumptive bond against FHWA-IF-99-015. */
class PresumptiveBondTest {

  /** Tables 6 and 8, kN/m. */
  @ParameterizedTest
  @CsvSource({
    "SAND_GRAVEL_LOOSE, 145",
    "SAND_GRAVEL_MEDIUM_DENSE, 220",
    "SAND_GRAVEL_DENSE, 290",
    "SAND_LOOSE, 100",
    "SAND_MEDIUM_DENSE, 145",
    "SAND_DENSE, 190",
    "SAND_SILT_LOOSE, 70",
    "SAND_SILT_MEDIUM_DENSE, 100",
    "SAND_SILT_DENSE, 130",
    "SILT_CLAY_STIFF, 30",
    "SILT_CLAY_HARD, 60",
    "GRANITE, 730",
    "DOLOMITIC_LIMESTONE, 580",
    "SOFT_LIMESTONE, 440",
    "SANDSTONE, 440",
    "SLATE, 360",
    "SOFT_SHALE, 150"
  })
  void loadTransfer(BondGround ground, double transfer) {
    assertEquals(transfer, PresumptiveBond.in(ground).transfer());
    assertEquals(Known.READ, PresumptiveBond.in(ground).reference().known());
  }

  /** Table 7, MPa. */
  @ParameterizedTest
  @CsvSource({
    "SAND_DENSE, 0.07, 0.14",
    "SILT_CLAY_HARD, 0.03, 0.07",
    "GRANITE, 1.7, 3.1",
    "DOLOMITIC_LIMESTONE, 1.4, 2.1",
    "SOFT_LIMESTONE, 1.0, 1.4",
    "SLATE, 0.8, 1.4",
    "SOFT_SHALE, 0.2, 0.8",
    "SANDSTONE, 0.8, 1.7",
    "WEATHERED_SANDSTONE, 0.7, 0.8",
    "CHALK, 0.2, 1.1",
    "WEATHERED_MARL, 0.15, 0.25",
    "CONCRETE, 1.4, 2.8",
    "SOFT_SILTY_CLAY_PRESSURE, 0.03, 0.07",
    "SILTY_CLAY_PRESSURE, 0.03, 0.07",
    "STIFF_PLASTIC_CLAY_PRESSURE, 0.03, 0.10",
    "VERY_STIFF_PLASTIC_CLAY_PRESSURE, 0.07, 0.17",
    "STIFF_CLAY_PRESSURE, 0.10, 0.25",
    "VERY_STIFF_CLAY_PRESSURE, 0.14, 0.35",
    "VERY_STIFF_SANDY_SILT_PRESSURE, 0.28, 0.38",
    "FINE_SAND_PRESSURE, 0.08, 0.38",
    "COARSE_SAND_MEDIUM_PRESSURE, 0.11, 0.66",
    "COARSE_SAND_DENSE_PRESSURE, 0.25, 0.97",
    "SILTY_SAND_PRESSURE, 0.17, 0.41",
    "DENSE_TILL_PRESSURE, 0.30, 0.52",
    "SANDY_GRAVEL_MEDIUM_PRESSURE, 0.21, 1.38",
    "SANDY_GRAVEL_DENSE_PRESSURE, 0.28, 1.38"
  })
  void bondStress(BondGround ground, double low, double high) {
    assertEquals(low, PresumptiveBond.in(ground).low() / 1000, 1e-12);
    assertEquals(high, PresumptiveBond.in(ground).high() / 1000, 1e-12);
  }

  /** The same table in kip/ft as older standards print it: 1 kip/ft is 14.59 kN/m. */
  @ParameterizedTest
  @CsvSource({
    "SAND_GRAVEL_LOOSE, 10", "SAND_GRAVEL_MEDIUM_DENSE, 15", "SAND_GRAVEL_DENSE, 20",
    "SAND_LOOSE, 7", "SAND_MEDIUM_DENSE, 10", "SAND_DENSE, 13",
    "SAND_SILT_LOOSE, 5", "SAND_SILT_MEDIUM_DENSE, 7", "SAND_SILT_DENSE, 9",
    "SILT_CLAY_STIFF, 2", "SILT_CLAY_HARD, 4"
  })
  void inKips(BondGround ground, double kips) {
    assertEquals(14.59 * kips, PresumptiveBond.in(ground).transfer(), 3);
  }

  @Test
  void everyGroundHasItsRow() {
    Set<BondGround> known =
        PresumptiveBond.all().stream().map(PresumptiveBond::ground).collect(Collectors.toSet());
    assertEquals(EnumSet.allOf(BondGround.class), known);
    assertEquals(known.size(), PresumptiveBond.all().size());
    assertTrue(
        PresumptiveBond.all().stream()
            .filter(b -> b.medium() == PresumptiveBond.Medium.ROCK && b.transfer() > 0)
            .allMatch(b -> b.transfer() >= 150));
  }
}
