package pilefolio.analysis.wall;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static pilefolio.analysis.wall.WallCases.NO_END;
import static pilefolio.analysis.wall.WallCases.loading;
import static pilefolio.analysis.wall.WallCases.near;
import static pilefolio.analysis.wall.WallCases.smoothWall;
import static pilefolio.analysis.wall.WallCases.solved;
import static pilefolio.analysis.wall.WallCases.uniformClay;
import static pilefolio.analysis.wall.WallCases.uniformSand;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pilefolio.analysis.earth.CoefficientMethod;
import pilefolio.analysis.earth.DrainedStrength;
import pilefolio.analysis.earth.Side;
import pilefolio.analysis.earth.SoilLayer;
import pilefolio.analysis.earth.SoilProfile;
import pilefolio.analysis.earth.Strength;
import pilefolio.analysis.earth.UndrainedStrength;
import pilefolio.analysis.earth.WallGround;
import pilefolio.analysis.earth.WaterFlow;

class SupportedWallTest {

  // Das, Principles of Foundation Engineering, 8th ed., Ex. 14.7, as a public test set recomputes
  // it
  // with the tie 1.52 m down.
  @Test
  void anchoredWallInSandWithWater() {
    WallGround g =
        smoothWall(
                List.of(
                    new SoilLayer(
                        "sand", 0, NO_END, 16, 19.5, DrainedStrength.ofDegrees(0, 30, 0, 0))),
                9.15,
                -3.05)
            .withGammaWater(9.80665);
    Equilibrium e = solved(new FreeEarthSupport(-1.52), loading(g));
    near(1.3918 + 2.68362, e.theoreticalEmbedment(), 1e-3);
    near(116.104, e.supportForce().orElseThrow(), 1e-3);
    near(353.01, -e.statics().least().moment(), 1e-3);
    near(7.0631, -e.statics().least().level(), 1e-3);
  }

  // Exact free and fixed earth by hand; the fixed one by double integration of the moment.
  @ParameterizedTest
  @CsvSource({
    "30,3.0561,114.542,300.03,4.8596,96.282,219.21,176.14,237.79",
    "35,2.2745,85.647,209.89,3.7963,70.782,148.04,131.49,210.04"
  })
  void freeAndFixedEarth(
      double phi,
      double freeDepth,
      double freeForce,
      double freeMoment,
      double fixedDepth,
      double fixedForce,
      double span,
      double fixing,
      double toeForce) {
    WallLoading loading = loading(uniformSand(phi, 18, 8));
    Equilibrium free = solved(new FreeEarthSupport(-1.5), loading);
    near(freeDepth, free.theoreticalEmbedment(), 1e-4);
    near(freeForce, free.supportForce().orElseThrow(), 1e-4);
    near(freeMoment, -free.statics().least().moment(), 1e-4);
    Equilibrium fixed = solved(new FixedEarthSupport(-1.5, 1.2), loading);
    near(fixedDepth, fixed.theoreticalEmbedment(), 2e-3);
    near(fixedForce, fixed.supportForce().orElseThrow(), 2e-3);
    near(span, -fixed.statics().least().moment(), 2e-3);
    near(fixing, fixed.statics().greatest().moment(), 2e-3);
    near(toeForce, fixed.toeForce().orElseThrow(), 2e-3);
    near(1.2 * fixedDepth, fixed.requiredEmbedment(), 2e-3);
    assertEquals(0, fixed.statics().offsetFromToeTangent(-1.5), 1e-5);
    assertEquals(0, fixed.statics().momentAt(fixed.toeLevel()), 1e-6);
  }

  // The hinge at zero net pressure, by hand.
  @ParameterizedTest
  @CsvSource({"30,4.8730,96.000,218.04", "35,3.6855,72.951,156.56"})
  void equivalentBeam(double phi, double depth, double force, double span) {
    Equilibrium e = solved(new EquivalentBeam(-1.5, 1.2), loading(uniformSand(phi, 18, 8)));
    near(depth, e.theoreticalEmbedment(), 2e-3);
    near(force, e.supportForce().orElseThrow(), 2e-3);
    near(span, -e.statics().least().moment(), 2e-3);
  }

  @Test
  void supportOffTheWallOrTooLowIsAnAnswer() {
    WallLoading loading = loading(uniformSand(30, 18, 6));
    assertEquals(
        NoEquilibrium.Cause.SUPPORT_OFF_WALL,
        assertInstanceOf(NoEquilibrium.class, new FreeEarthSupport(0.5).solve(loading)).cause());
    assertEquals(
        NoEquilibrium.Cause.SUPPORT_TOO_LOW,
        assertInstanceOf(NoEquilibrium.class, new FixedEarthSupport(-5.5, 1).solve(loading))
            .cause());
    assertEquals(
        NoEquilibrium.Cause.UNDRAINED_GROUND_TOO_WEAK,
        assertInstanceOf(
                NoEquilibrium.class,
                new FreeEarthSupport(-1).solve(loading(uniformClay(25, 18, 6))))
            .cause());
  }

  // Equilibrium and moment curves over many layers, by summing a fine grid instead of polynomials.
  @ParameterizedTest
  @CsvSource({"HYDROSTATIC", "LINEAR_SEEPAGE"})
  void twelveLayersAgreeWithAFineGrid(WaterFlow flow) {
    List<SoilLayer> layers = new ArrayList<>();
    for (int i = 0; i < 12; i++) {
      Strength s =
          i % 4 == 3
              ? new UndrainedStrength(60 + 4 * i, 2, 0.5)
              : DrainedStrength.ofDegrees(i % 3, 29 + 0.4 * i, 0.6, 0.5);
      layers.add(
          new SoilLayer(
              "layer " + (i + 1), -1.3 * i, i == 11 ? NO_END : -1.3 * (i + 1), 18, 20, s));
    }
    WallGround g =
        WallGround.simple(
                new SoilProfile(layers),
                CoefficientMethod.EN1997_ANNEX_C2,
                new Side(0, -2.2, 5, 10),
                new Side(-5.5, -6, 0, 0))
            .withFlow(flow);
    WallLoading loading = loading(g);
    for (WallMethod m :
        List.of(
            new FreeEarthSupport(-1),
            new FixedEarthSupport(-1, 1.2),
            new EquivalentBeam(-1, 1.2),
            new SimplifiedCantilever(1.2),
            new FourForceCantilever(FourForceCantilever.Change.ABRUPT),
            new FourForceCantilever(FourForceCantilever.Change.STRAIGHT_LINE))) {
      Equilibrium e = solved(m, loading);
      assertTrue(e.theoreticalEmbedment() > 0.5, m.toString());
      WallStatics w = e.statics();
      int n = 20000;
      double step = (w.topLevel() - w.toeLevel()) / n;
      double level = w.governing().level();
      double shear = 0;
      double moment = 0;
      for (int i = 0; i < n; i++) {
        double z = w.topLevel() - (i + 0.5) * step;
        if (z < level) {
          break;
        }
        double p = w.pressure().justBelow(z);
        shear += p * step;
        moment += p * step * (z - level);
      }
      for (PointForce f : w.forces()) {
        if (f.level() > level) {
          shear += f.force();
          moment += f.force() * (f.level() - level);
        }
      }
      // The grid misplaces each jump of pressure by up to half a step.
      assertEquals(moment, w.momentAt(level), 0.1, m.toString());
      assertEquals(shear, w.shearAt(level), 0.1, m.toString());
      assertEquals(0, w.shearAt(level), 1e-6, m.toString());
    }
  }
}
