package pilefolio.analysis.apparent;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;
import pilefolio.analysis.apparent.GroundBeside.Kind;
import pilefolio.analysis.apparent.GroundBeside.Piece;
import pilefolio.analysis.earth.DrainedStrength;
import pilefolio.analysis.earth.OutsideRange;
import pilefolio.analysis.earth.Rankine;
import pilefolio.analysis.earth.SoilLayer;
import pilefolio.analysis.earth.SoilProfile;
import pilefolio.analysis.earth.UndrainedStrength;

class GroundBesideTest {

  /** Own arithmetic; the averages are the definitions. */
  @Test
  void sandWithWater() {
    SoilProfile profile =
        new SoilProfile(
            List.of(
                new SoilLayer("a", 0, -4, 18, 20, DrainedStrength.ofDegrees(0, 30, 0, 0)),
                new SoilLayer("b", -4, -20, 18, 20, DrainedStrength.ofDegrees(5, 36, 0, 0))));
    GroundBeside g = GroundBeside.of(profile, 0, -10, -2, 9.81);
    assertEquals(Kind.SAND, g.kind());
    assertEquals(3, g.pieces().size());
    assertEquals((2 * 18 + 8 * 10.19) / 10, g.unitWeight(), 1e-12);
    double tan = 0.4 * Math.tan(Math.toRadians(30)) + 0.6 * Math.tan(Math.toRadians(36));
    assertEquals(tan, g.tanPhi(), 1e-12);
    assertEquals(Rankine.active(Math.atan(tan)), g.kA(), 1e-12);
  }

  /** Total weight in clay whatever the water; strength at mid-height of each piece. */
  @Test
  void clayWithStrengthGrowing() {
    SoilProfile profile =
        new SoilProfile(
            List.of(
                new SoilLayer("a", 1, -3, 18, 19, new UndrainedStrength(20, 2, 0)),
                new SoilLayer("b", -3, -12, 17, 17.5, new UndrainedStrength(30, 0, 0)),
                new SoilLayer("c", -12, -15, 17, 17.5, new UndrainedStrength(90, 0, 0)),
                new SoilLayer("d", -15, -18, 17, 17.5, new UndrainedStrength(20, 0, 0))));
    GroundBeside g = GroundBeside.of(profile, 0, -10, -1, 9.81);
    assertEquals(Kind.CLAY, g.kind());
    assertEquals((18 + 2 * 19 + 7 * 17.5) / 10, g.unitWeight(), 1e-12);
    assertEquals((23 + 2 * 26 + 7 * 30) / 10.0, g.su(), 1e-12);
    GroundBeside.SoftBelow soft = g.softBelow(profile, -10);
    assertEquals(2, soft.thickness(), 1e-12);
    assertEquals(30, soft.su(), 1e-12);
  }

  /**
   * Sand over clay, after Peck (1943) from memory: 3 m of sand, 17.3 kN/m³, 35°, over 3.5 m of clay
   * with q_u = 57 kPa; own arithmetic with K = 1 and n = 0.75.
   */
  @Test
  void sandOverClay() {
    double tan = Math.tan(Math.toRadians(35));
    GroundBeside g =
        GroundBeside.of(
            List.of(new Piece("sand", 3, 17.3, tan, 0), new Piece("clay", 3.5, 18.1, 0, 28.5)));
    assertEquals(Kind.SAND_OVER_CLAY, g.kind());
    assertEquals((17.3 * 9 * tan + 3.5 * 0.75 * 57) / (2 * 6.5), g.su(), 1e-9);
    assertEquals((17.3 * 3 + 18.1 * 3.5) / 6.5, g.unitWeight(), 1e-9);
  }

  @Test
  void clayOverSandIsRefused() {
    assertThrows(
        OutsideRange.class,
        () ->
            GroundBeside.of(
                List.of(new Piece("clay", 3, 18, 0, 30), new Piece("sand", 3, 18, 0.7, 0))));
  }
}
