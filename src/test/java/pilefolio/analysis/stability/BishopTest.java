package pilefolio.analysis.stability;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import pilefolio.analysis.earth.DrainedStrength;
import pilefolio.analysis.earth.SoilLayer;
import pilefolio.analysis.earth.SoilProfile;
import pilefolio.analysis.earth.Strength;
import pilefolio.analysis.earth.UndrainedStrength;

class BishopTest {
  private static SoilProfile ground(double top, double gamma, Strength strength) {
    return new SoilProfile(
        List.of(new SoilLayer("soil", top, Double.NEGATIVE_INFINITY, gamma, gamma, strength)));
  }

  /** Giam and Donald (1989), EX1(a): 10 m at 2H:1V, c' 3 kPa, φ' 19.6°, 20 kN/m³; answer 1.00. */
  static SlipSection simpleSlope() {
    return SlipSection.dry(
        new GroundLine(
            List.of(
                new GroundLine.Point(20, 25),
                new GroundLine.Point(30, 25),
                new GroundLine.Point(50, 35),
                new GroundLine.Point(70, 35))),
        ground(35, 20, DrainedStrength.ofDegrees(3, 19.6, 0, 0)));
  }

  private static SlipCircle circle() {
    // Starts where it meets the crest, at level 35.
    double half = Math.sqrt(28.546 * 28.546 - 18.546 * 18.546);
    return new SlipCircle(29.617, 53.546, 28.546, 30.0, 29.617 + half);
  }

  @Test
  void simpleSlopeOnTheGivenCircle() {
    List<SlipSlice> slices = simpleSlope().slices(circle(), 2000);
    assertEquals(0.9850, Bishop.factor(slices, 0).orElseThrow(), 0.001);
    assertEquals(0.9499, Bishop.ordinary(slices, 0).orElseThrow(), 0.001);
    assertEquals(25, circle().lowest(), 0.01);
  }

  @Test
  void fewSlicesDo() {
    double few = Bishop.factor(simpleSlope().slices(circle(), 20), 0).orElseThrow();
    assertEquals(0.9850, few, 0.002);
  }

  @Test
  void searchFindsTheSimpleSlope() {
    SlipSearch search = new SlipSearch(simpleSlope(), 22, 34, 42, 66, OptionalDouble.empty(), -100);
    SlipSearch.Found found = search.find().orElseThrow();
    double fine = search.factor(found.circle(), 2000).orElseThrow();
    assertEquals(0.985, fine, 0.00985);
    assertTrue(found.examined() > 500 && found.examined() < 20000);
  }

  /** Second opinion: Spencer (1967), which satisfies forces as well; close on circles. */
  @Test
  void spencerAgrees() {
    List<SlipSlice> slices = simpleSlope().slices(circle(), 400);
    double bishop = Bishop.factor(slices, 0).orElseThrow();
    assertEquals(bishop, Spencer.factor(slices), 0.005 * bishop);
  }

  @Test
  void spencerAgreesWithWaterAndLoad() {
    SlipSection dry = simpleSlope();
    SlipSection wet =
        new SlipSection(
            dry.surface(),
            dry.profile(),
            SlipWater.atRest(27, 27, 9.81),
            List.of(new StripLoad(50, 60, 15, false)),
            List.of());
    List<SlipSlice> slices =
        wet.slices(new SlipCircle(32, 50, 28, 32 - Math.sqrt(159), 32 + Math.sqrt(559)), 400);
    double bishop = Bishop.factor(slices, 0).orElseThrow();
    assertEquals(bishop, Spencer.factor(slices), 0.01 * bishop);
  }

  /** Without friction moments alone decide: strength times arc times radius over moment. */
  @Test
  void withoutFrictionTheArcDecides() {
    SlipSection section =
        SlipSection.dry(GroundLine.step(0, 6), ground(6, 18, new UndrainedStrength(40, 0, 0)));
    double x = -2;
    double y = 9;
    double radius = Math.hypot(2, 9);
    double entry = x + Math.sqrt(radius * radius - 9);
    SlipCircle circle = new SlipCircle(x, y, radius, 0, entry);
    double angle = Math.asin((entry - x) / radius) - Math.asin(2 / radius);
    // Moment of the ground by fine strips of its own.
    double moment = 0;
    int strips = 100000;
    for (int i = 0; i < strips; i++) {
      double at = entry * (i + 0.5) / strips;
      double base = y - Math.sqrt(radius * radius - (at - x) * (at - x));
      moment += 18 * (6 - base) * entry / strips * (at - x);
    }
    double closed = 40 * radius * radius * angle / moment;
    assertEquals(
        closed, Bishop.factor(section.slices(circle, 1000), 0).orElseThrow(), 1e-4 * closed);
  }

  /** Taylor (1937), toe circles in clay: c/(γ·H·F) for slopes of 90, 75, 60 and 53 degrees. */
  @Test
  void stabilityNumbersOfTaylor() {
    double[] slopes = {90, 75, 60, 53};
    double[] numbers = {0.261, 0.219, 0.191, 0.181};
    for (int i = 0; i < slopes.length; i++) {
      double crest = slopes[i] == 90 ? 0 : 1 / Math.tan(Math.toRadians(slopes[i]));
      SlipSection section =
          SlipSection.dry(
              new GroundLine(List.of(new GroundLine.Point(0, 0), new GroundLine.Point(crest, 1))),
              ground(1, 1, new UndrainedStrength(1, 0, 0)));
      // Toe circles: the exit stands at the toe.
      SlipSearch search =
          new SlipSearch(section, -1e-6, 0, crest + 0.05, crest + 3, OptionalDouble.empty(), -5);
      SlipSearch.Found found = search.find().orElseThrow();
      double factor = search.factor(found.circle(), 400).orElseThrow();
      assertEquals(numbers[i], 1 / factor, 0.005 * numbers[i]);
    }
  }

  @Test
  void verticalCutInClay() {
    SlipSection section =
        SlipSection.dry(GroundLine.step(0, 6), ground(6, 18, new UndrainedStrength(40, 0, 0)));
    SlipSearch search = new SlipSearch(section, -6, 0, 0.01, 18, OptionalDouble.empty(), -6);
    SlipSearch.Found found = search.find().orElseThrow();
    assertEquals(1.419, search.factor(found.circle(), 400).orElseThrow(), 0.005 * 1.419);
  }
}
