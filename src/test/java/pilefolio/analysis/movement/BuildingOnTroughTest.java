package pilefolio.analysis.movement;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BuildingOnTroughTest {

  // State of strain after Boscardin and Cording (1989); values by hand.
  @ParameterizedTest
  @CsvSource({
    "0, 1e-3, 0.500e-3",
    "0.2e-3, 1e-3, 0.610e-3",
    "0.5e-3, 1e-3, 0.809e-3",
    "1e-3, 2e-3, 1.618e-3"
  })
  void principalStrain(double horizontal, double distortion, double strain) {
    assertEquals(strain, GroundStrain.principal(horizontal, distortion), 1e-3 * strain);
  }

  // The deep beam in the form with L/H that is quoted for E/G = 2.6, after Burland and Wroth.
  @ParameterizedTest
  @CsvSource({"5, 10", "20, 10", "40, 8", "12, 12"})
  void deepBeamAgreesWithTheFormInLengthOverHeight(double length, double height) {
    double lh = length / height;
    DeepBeam sag = new DeepBeam(length, height, DeepBeam.MASONRY, DeepBeam.Bending.SAGGING);
    DeepBeam hog = new DeepBeam(length, height, DeepBeam.MASONRY, DeepBeam.Bending.HOGGING);
    assertEquals(1 / (0.167 * lh + 0.65 / lh), sag.bendingStrain(1), 3e-3 * sag.bendingStrain(1));
    assertEquals(1 / (1 + 0.256 * lh * lh), sag.diagonalStrain(1), 3e-3 * sag.diagonalStrain(1));
    assertEquals(1 / (0.083 * lh + 1.3 / lh), hog.bendingStrain(1), 5e-3 * hog.bendingStrain(1));
    assertEquals(1 / (1 + 0.064 * lh * lh), hog.diagonalStrain(1), 3e-3 * hog.diagonalStrain(1));
  }

  // L = 20 m, H = 10 m, hogging, deflection ratio 0.5e-3, horizontal strain 0.3e-3; by hand.
  @Test
  void hoggingBuildingWithHorizontalStrain() {
    DeepBeam beam = new DeepBeam(20, 10, DeepBeam.MASONRY, DeepBeam.Bending.HOGGING);
    assertEquals(0.6122e-3, beam.bendingStrain(0.5e-3), 0.6e-6);
    assertEquals(0.3980e-3, beam.diagonalStrain(0.5e-3), 0.4e-6);
    assertEquals(0.9122e-3, beam.bendingStrain(0.5e-3, 0.3e-3), 0.9e-6);
    assertEquals(0.5482e-3, beam.diagonalStrain(0.5e-3, 0.3e-3), 0.5e-6);
    assertEquals(DamageCategory.SLIGHT, DamageCategory.of(beam.greatestStrain(0.5e-3, 0.3e-3)));
  }

  // Limits of strain after Boscardin and Cording (1989).
  @ParameterizedTest
  @CsvSource({
    "0, 0",
    "0.0005, 0",
    "0.00051, 1",
    "0.00075, 1",
    "0.00076, 2",
    "0.0015, 2",
    "0.00151, 3",
    "0.003, 3",
    "0.0031, 4"
  })
  void categories(double strain, int number) {
    assertEquals(number, DamageCategory.of(strain).number());
  }

  @Test
  void aStrainThatIsNoNumberHasNoCategory() {
    assertThrows(IllegalArgumentException.class, () -> DamageCategory.of(Double.NaN));
  }

  // Sand, H = 10 m, 30 mm at the wall, building from 5 to 15 m: on the straight, 22.5 to 7.5 mm.
  @Test
  void onAStraightFlankABuildingTiltsWithoutBending() {
    BuildingOnTrough building =
        new BuildingOnTrough(
            new SettlementTrough(TroughShape.SAND_TRIANGLE, 10, 0.03, 0.04), 5, 15);
    assertEquals(0.0225, building.nearSettlement(), 1e-12);
    assertEquals(0.0150, building.differentialSettlement(), 1e-12);
    assertEquals(0.0015, building.greatestSlope(), 1e-12);
    assertEquals(0.0020, building.horizontalStrain(), 1e-12);
    assertEquals(1, building.parts().size());
    assertEquals(0, building.parts().get(0).deflection(), 1e-12);
  }

  // The same building from 15 to 25 m: 7.5 mm, 0 at 20 m, 0; chord at 20 m 3.75 mm.
  @Test
  void acrossTheEdgeOfTheTroughABuildingHogs() {
    BuildingOnTrough building =
        new BuildingOnTrough(
            new SettlementTrough(TroughShape.SAND_TRIANGLE, 10, 0.03, 0.04), 15, 25);
    BuildingPart part = building.parts().get(0);
    assertEquals(DeepBeam.Bending.HOGGING, part.bending());
    assertEquals(20, part.place(), 1e-9);
    assertEquals(0.00375, part.deflection(), 1e-12);
    assertEquals(0.375e-3, part.deflectionRatio(), 1e-12);
    assertEquals(0.0015, building.greatestSlope(), 1e-12);
    assertEquals(0.001, building.horizontalStrain(), 1e-12);
  }

  // Soft clay to 2 H, H = 10 m, 50 mm, building from 2 to 24 m. Bends at 7.5 and 20 m, parted at
  // 13.75 m where 25 mm are left. Sagging: chord at 7.5 m is 50 − 25·5.5/11.75 = 38.298 mm, so
  // 11.702 mm. Hogging: chord at 20 m is 25·(1 − 6.25/10.25) = 9.756 mm.
  @Test
  void aLongBuildingSagsAndHogs() {
    BuildingOnTrough building =
        new BuildingOnTrough(
            new SettlementTrough(TroughShape.SOFT_CLAY_TO_2H, 10, 0.05, 0.05), 2, 24);
    List<BuildingPart> parts = building.parts();
    assertEquals(2, parts.size());
    assertEquals(DeepBeam.Bending.SAGGING, parts.get(0).bending());
    assertEquals(13.75, parts.get(0).to(), 1e-12);
    assertEquals(11.702e-3, parts.get(0).deflection(), 5e-7);
    assertEquals(DeepBeam.Bending.HOGGING, parts.get(1).bending());
    assertEquals(9.756e-3, parts.get(1).deflection(), 5e-7);
    assertEquals(0.004, building.greatestSlope(), 1e-12);
  }

  // 1 − 0.636√r between r = 0 and 1 has its greatest depth under the chord at r = 1/4:
  // 0.636·(½ − ¼) = 0.159.
  @Test
  void spandrelBendsLikeAHillOnly() {
    BuildingOnTrough building =
        new BuildingOnTrough(new SettlementTrough(TroughShape.SPANDREL, 10, 0.02, 0.02), 0, 10);
    BuildingPart part = building.parts().get(0);
    assertEquals(1, building.parts().size());
    assertEquals(DeepBeam.Bending.HOGGING, part.bending());
    assertEquals(2.5, part.place(), 1e-4);
    assertEquals(0.159 * 0.02, part.deflection(), 1e-9);
  }

  @Test
  void concaveTroughIsDeepestHalfAHeightFromTheWall() {
    BuildingOnTrough building =
        new BuildingOnTrough(new SettlementTrough(TroughShape.CONCAVE, 10, 0.04, 0.03), 2, 9);
    assertEquals(0.04, building.greatestSettlement(), 1e-12);
    assertEquals(DeepBeam.Bending.SAGGING, building.parts().get(0).bending());
    assertTrue(building.parts().get(0).deflection() > 0);
    assertEquals(
        0,
        new BuildingOnTrough(building.trough(), 1, 5).horizontalStrain(),
        "ground between wall and deepest point moves as one");
  }

  @Test
  void beyondTheReachNothingMoves() {
    BuildingOnTrough building =
        new BuildingOnTrough(
            new SettlementTrough(TroughShape.SAND_TRIANGLE, 10, 0.03, 0.04), 21, 30);
    assertEquals(0, building.greatestSettlement());
    assertEquals(0, building.horizontalStrain());
    assertTrue(Screening.negligible(building.greatestSlope(), building.greatestSettlement()));
    assertThrows(
        IllegalArgumentException.class, () -> new BuildingOnTrough(building.trough(), 5, 5));
  }

  // Limits as quoted by Goh and Mair (2014).
  @Test
  void screeningAsksForBothLimits() {
    assertTrue(Screening.negligible(1.0 / 501, 0.0099));
    assertFalse(Screening.negligible(1.0 / 499, 0.0099));
    assertFalse(Screening.negligible(1.0 / 501, 0.0101));
  }
}
