package pilefolio.analysis.stability;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import pilefolio.analysis.earth.DrainedStrength;
import pilefolio.analysis.earth.SoilLayer;
import pilefolio.analysis.earth.SoilProfile;
import pilefolio.analysis.earth.Strength;
import pilefolio.analysis.earth.UndrainedStrength;

/** Circles below the toe of a wall: what they obey, and what water, loads and supports change. */
class WallSlipTest {
  private static final double TOE = -5;

  private static final SoilProfile LAYERS =
      new SoilProfile(
          List.of(
              new SoilLayer("sand", 8, 2, 18, 20, DrainedStrength.ofDegrees(0, 32, 0, 0)),
              new SoilLayer("clay", 2, -8, 18, 18, new UndrainedStrength(45, 1, 0)),
              new SoilLayer("gravel", -8, -20, 20, 21, DrainedStrength.ofDegrees(0, 36, 0, 0))));

  private static SlipSection section(
      SoilProfile profile, SlipWater water, List<StripLoad> loads, List<SlipSupport> supports) {
    return new SlipSection(GroundLine.step(0, 8), profile, water, loads, supports);
  }

  private static SlipSearch.Found find(SlipSection section) {
    return SlipSearch.belowWall(section, TOE, -20).find().orElseThrow();
  }

  private static SlipSection plain() {
    return section(LAYERS, SlipWater.none(), List.of(), List.of());
  }

  @Test
  void criticalCirclePassesBelowTheToeAndAboveTheKnownGround() {
    SlipSearch.Found found = find(plain());
    assertTrue(found.circle().level(0) <= TOE + 1e-6);
    assertTrue(found.circle().lowest() >= -20 - 1e-6);
    assertFalse(found.atEdge());
  }

  /** No circle drawn at random below the toe has a smaller factor than the one found. */
  @Test
  void noRandomCircleIsWorse() {
    SlipSection section = plain();
    SlipSearch search = SlipSearch.belowWall(section, TOE, -20);
    double least = search.find().orElseThrow().factor();
    Random random = new Random(7);
    int below = 0;
    for (int i = 0; i < 20000; i++) {
      GroundLine.Point exit = new GroundLine.Point(-0.5 - 40 * random.nextDouble(), 0);
      GroundLine.Point entry = new GroundLine.Point(0.5 + 40 * random.nextDouble(), 8);
      SlipCircle circle = SlipCircle.through(exit, entry, 0.1 + 1.4 * random.nextDouble());
      if (circle.level(0) <= TOE && circle.lowest() >= -20 && circle.y() >= 8) {
        below++;
        double factor = search.factor(circle, 30).orElse(Double.POSITIVE_INFINITY);
        assertTrue(factor > 0.995 * least, circle + " " + factor + " " + least);
      }
    }
    assertTrue(below > 1000);
  }

  /** Clay of one strength: the deeper the circle the better for the slide, down to hard ground. */
  @Test
  void hardGroundLimitsTheCircle() {
    SoilProfile clay =
        new SoilProfile(
            List.of(new SoilLayer("clay", 8, -30, 18, 18, new UndrainedStrength(40, 0, 0))));
    SlipSection section = section(clay, SlipWater.none(), List.of(), List.of());
    double shallow = SlipSearch.belowWall(section, TOE, -6).find().orElseThrow().factor();
    double deep = SlipSearch.belowWall(section, TOE, -25).find().orElseThrow().factor();
    assertTrue(deep <= shallow);
    assertTrue(
        SlipSearch.belowWall(section, TOE, -6).find().orElseThrow().circle().lowest() >= -6 - 1e-6);
  }

  @Test
  void waterAndLoadLowerTheFactor() {
    double dry = find(plain()).factor();
    double wet = find(section(LAYERS, SlipWater.atRest(0, 6, 9.81), List.of(), List.of())).factor();
    StripLoad road = new StripLoad(1, 11, 20, true);
    double loaded = find(section(LAYERS, SlipWater.none(), List.of(road), List.of())).factor();
    assertTrue(wet < dry && loaded < dry);
  }

  /** A strip load adds its force times its arm to the moment that drives. */
  @Test
  void loadActsByItsArm() {
    SoilProfile clay = uniform(new UndrainedStrength(40, 0, 0));
    StripLoad strip = new StripLoad(4, 6, 25, false);
    SlipCircle circle = circle(12);
    List<SlipSlice> without =
        section(clay, SlipWater.none(), List.of(), List.of()).slices(circle, 500);
    List<SlipSlice> with =
        section(clay, SlipWater.none(), List.of(strip), List.of()).slices(circle, 500);
    double more = driving(with) - driving(without);
    assertEquals(2 * 25 * (5 - circle.x()) / circle.radius(), more, 1e-3);
  }

  /** Variable load in front holds the ground back; it may be absent, so it is left out. */
  @Test
  void variableLoadThatHelpsIsLeftOut() {
    SoilProfile clay = uniform(new UndrainedStrength(40, 0, 0));
    SlipCircle circle = circle(12);
    StripLoad front = new StripLoad(-6, -4, 25, true);
    assertEquals(
        driving(section(clay, SlipWater.none(), List.of(), List.of()).slices(circle, 50)),
        driving(section(clay, SlipWater.none(), List.of(front), List.of()).slices(circle, 50)),
        0.05);
  }

  /** Ground as heavy as water under water: only the pressure on the upright cut is left. */
  @Test
  void freeWaterInFrontHolds() {
    // Clay as heavy as water with water up to the retained surface: no moment is left.
    SoilProfile clay =
        new SoilProfile(
            List.of(
                new SoilLayer(
                    "clay",
                    8,
                    Double.NEGATIVE_INFINITY,
                    9.81,
                    9.81,
                    new UndrainedStrength(40, 0, 0))));
    SlipSection section = section(clay, SlipWater.atRest(8, 8, 9.81), List.of(), List.of());
    SlipCircle circle = circle(8 + 1e-9);
    double driving = driving(section.slices(circle, 4000));
    double holding = section.holdingMoment(circle) / circle.radius();
    // The moment of water cut off upright above the exit: its pressure on the upright cut.
    double cut = 9.81 * 8 * 8 / 2 * (circle.y() - 8.0 / 3) / circle.radius();
    assertEquals(cut, holding, 1e-9);
    assertEquals(holding, driving, 1e-3 * cut);
  }

  @Test
  void anchorCountsBeyondTheCircle() {
    SlipCircle circle = circle(12);
    double inclination = Math.toRadians(20);
    SlipSupport whole = new SlipSupport(5, 150, inclination, 40, 6);
    SlipSupport none = new SlipSupport(5, 150, inclination, 2, 3);
    assertEquals(1, whole.share(circle), 1e-12);
    assertEquals(0, none.share(circle), 1e-12);
    // Half of the bond beyond: the crossing lies in its middle.
    double crossing = crossing(circle, 5, inclination);
    assertEquals(0.5, new SlipSupport(5, 150, inclination, crossing - 3, 6).share(circle), 1e-9);
    double arm = (circle.y() - 5) * Math.cos(inclination) + circle.x() * Math.sin(inclination);
    assertEquals(150 * arm, whole.moment(circle), 1e-9);
    SlipSection anchored = section(LAYERS, SlipWater.none(), List.of(), List.of(whole));
    assertTrue(find(anchored).factor() > find(plain()).factor());
  }

  private static double crossing(SlipCircle circle, double level, double inclination) {
    double low = 0;
    double high = 100;
    for (int i = 0; i < 80; i++) {
      double s = (low + high) / 2;
      double x = s * Math.cos(inclination) - circle.x();
      double y = level - s * Math.sin(inclination) - circle.y();
      if (Math.hypot(x, y) < circle.radius()) {
        low = s;
      } else {
        high = s;
      }
    }
    return low;
  }

  @Test
  void seepageRaisesPressureInFrontOnly() {
    SlipWater rest = new SlipWater(0, 6, 0, TOE, 0, 9.81, List.of());
    SlipWater seepage = new SlipWater(0, 6, 0, TOE, 2.5, 9.81, List.of());
    assertEquals(9.81 * 3, rest.pressure(-1, -3), 1e-9);
    assertEquals(9.81 * (3 + 2.5 * 0.6), seepage.pressure(-1, -3), 1e-9);
    assertEquals(9.81 * (8 + 2.5), seepage.pressure(-1, -8), 1e-9);
    assertEquals(9.81 * 9, seepage.pressure(1, -3), 1e-9);
    assertEquals(0, seepage.pressure(1, 7), 1e-12);
  }

  @Test
  void confinedWaterHasItsOwnLevel() {
    SlipWater water =
        new SlipWater(0, 6, 0, TOE, 0, 10, List.of(new SlipWater.Confined(-8, -20, 9)));
    assertEquals(10 * 19, water.pressure(1, -10), 1e-9);
    assertEquals(10 * 19, water.pressure(-1, -10), 1e-9);
    assertEquals(10 * 13, water.pressure(1, -7), 1e-9);
  }

  /** Random ground of every kind: the search ends and answers or says that it cannot. */
  @Test
  void searchEndsInAnyGround() {
    Random random = new Random(3);
    for (int i = 0; i < 10; i++) {
      Strength strength =
          i % 2 == 0
              ? new UndrainedStrength(5 + 100 * random.nextDouble(), random.nextDouble() * 5, 0)
              : DrainedStrength.ofDegrees(
                  random.nextDouble() * 5, 15 + 25 * random.nextDouble(), 0, 0);
      SlipSection section =
          section(
              uniform(strength),
              SlipWater.atRest(-3 + 2 * random.nextDouble(), 7 * random.nextDouble(), 9.81),
              List.of(new StripLoad(0, 100, 20 * random.nextDouble(), true)),
              List.of());
      SlipSearch search =
          new SlipSearch(section, -40, -0.4, 0.4, 40, OptionalDouble.of(-1 - i), -25);
      search.find().ifPresent(f -> assertTrue(f.factor() > 0 && f.examined() < 20000));
    }
  }

  private static SoilProfile uniform(Strength strength) {
    return new SoilProfile(
        List.of(new SoilLayer("soil", 8, Double.NEGATIVE_INFINITY, 18, 20, strength)));
  }

  /** A circle about (−3, y) below the toe. */
  private static SlipCircle circle(double y) {
    double radius = y + 7;
    double exit = -3 - Math.sqrt(radius * radius - y * y);
    double entry = -3 + Math.sqrt(radius * radius - (y - 8) * (y - 8));
    return new SlipCircle(-3, y, radius, exit, entry);
  }

  private static double driving(List<SlipSlice> slices) {
    return slices.stream().mapToDouble(SlipSlice::driving).sum();
  }
}
