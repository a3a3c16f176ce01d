package pilefolio.analysis.reliability;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Numbers found outside this code by a non-central chi-square and by quadrature. */
class JointOpeningTest {

  @ParameterizedTest
  @CsvSource({
    "10, 5, 51.539, 1.979588e-2, 2.341325e-2, 5e-9",
    "15, 2.5, 39.528, 3.645179e-3, 4.274582e-3, 5e-10",
    "15, 5, 76.035, 8.151219e-2, 9.832872e-2, 5e-9",
    "20, 3.3333, 67.828, 5.893754e-2, 7.061053e-2, 5e-9",
    "10, 2.5, 27.951, 7.390116e-5, 8.605255e-5, 5e-12",
  })
  void oneJoint(
      double depth, double lean, double sigma, double along, double both, double tolerance) {
    double spread = new PileSpread(12.5, lean).at(depth);
    assertEquals(sigma, spread, 0.0005);
    assertEquals(along, JointOpening.alongWall(150, spread), tolerance);
    assertEquals(both, JointOpening.bothAxes(450, 600, spread), tolerance);
    assertEquals(both, JointOpening.bothAxes(450, 600, spread, spread), tolerance);
  }

  @Test
  void correlatedAndAnisotropic() {
    double sigma = new PileSpread(12.5, 5).at(10);
    assertEquals(1.80467e-3, JointOpening.alongWall(150, sigma, 0.5), 5e-9);
    assertEquals(2.085456e-2, JointOpening.bothAxes(450, 600, sigma, 30), 5e-9);
  }

  @Test
  void twoNeighbouringJoints() {
    double sigma = new PileSpread(12.5, 5).at(10);
    double one = JointOpening.alongWall(150, sigma);
    double both = JointOpening.bothOfTwo(150, sigma);
    assertEquals(1.929e-6, both, 5e-10);
    assertEquals(0.039590, 2 * one - both, 5e-7);
    assertEquals(0.039200, 1 - (1 - one) * (1 - one), 5e-7);
    assertEquals(1.0 / 6, JointOpening.bothOfTwo(0, sigma), 1e-12, "orthant probability");
  }

  @ParameterizedTest
  @CsvSource({"5, 8.769", "2.5, 17.539", "3.3333333333333335, 13.154", "6.666666666666667, 6.577"})
  void depthOfOnePercent(double lean, double depth) {
    PileSpread spread = new PileSpread(12.5, lean);
    double found = JointOpening.depthAlongWall(150, spread, 0.01);
    assertEquals(depth, found, 0.0005);
    double planar = JointOpening.depthBothAxes(450, 600, spread, 0.01);
    assertTrue(planar < found);
    assertEquals(0.01, JointOpening.bothAxes(450, 600, spread.at(planar)), 1e-9);
  }

  @Test
  void limits() {
    assertEquals(0.5, JointOpening.alongWall(0, 40));
    assertEquals(0, JointOpening.alongWall(1, 0));
    assertEquals(1, JointOpening.alongWall(-1, 0));
    assertEquals(0, JointOpening.bothAxes(450, 600, 0));
    assertEquals(Math.exp(-4.5), JointOpening.marcumQ(0, 3), 1e-15);
    assertEquals(1, JointOpening.marcumQ(2, 0));
    assertEquals(0, JointOpening.depthAlongWall(20, new PileSpread(12.5, 5), 0.01));
    assertEquals(
        Double.POSITIVE_INFINITY, JointOpening.depthAlongWall(150, new PileSpread(12.5, 0), 0.01));
    assertThrows(IllegalArgumentException.class, () -> JointOpening.alongWall(100, 30, 1));
    assertThrows(IllegalArgumentException.class, () -> JointOpening.alongWall(100, -1));
  }

  @Test
  void marcumQOfLargeArgumentsTendsToTheNormalTail() {
    assertEquals(NormalTail.above(2), JointOpening.marcumQ(1000, 1002), 1e-3);
    assertEquals(
        JointOpening.bothAxes(450, 600, 1.5, 1.5), JointOpening.bothAxes(450, 600, 1.5), 1e-15);
    assertEquals(
        1, JointOpening.bothAxes(450, 600, 20, 20) / JointOpening.bothAxes(450, 600, 20), 1e-9);
  }

  @Test
  void conventions() {
    assertEquals(1.96, ToleranceConvention.ONE_AXIS_95.sigmas(), 0.005);
    assertEquals(2.4477, ToleranceConvention.RADIAL_95.sigmas(), 5e-5);
    PileSpread spread = PileSpread.of(25, 100, ToleranceConvention.TWO_SIGMA);
    assertEquals(new PileSpread(12.5, 5), spread);
  }
}
