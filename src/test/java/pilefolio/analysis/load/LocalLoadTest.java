package pilefolio.analysis.load;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.function.DoubleUnaryOperator;
import org.hipparchus.analysis.integration.IterativeLegendreGaussIntegrator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LocalLoadTest {
  private static double integral(DoubleUnaryOperator f, double a, double b) {
    return new IterativeLegendreGaussIntegrator(10, 1e-9, 1e-12)
        .integrate(1_000_000, f::applyAsDouble, a, b);
  }

  // Equation from memory of Das, Principles of Foundation Engineering; values by hand.
  @ParameterizedTest
  @CsvSource({"0.5,7.171", "1,12.069", "2,14.262", "3,11.783", "4,8.775", "6,4.614"})
  void strip(double z, double expected) {
    assertEquals(expected, new StripLoad(2, 3, 40).pressure(z), 1e-3 * expected);
  }

  @ParameterizedTest
  @CsvSource({"0.5,4.502", "1,1.817", "2,0.405"})
  void stripAtTheWall(double z, double expected) {
    assertEquals(expected, new StripLoad(0, 1, 10).pressure(z), 1e-3 * expected);
  }

  // Resultant in closed form (Jarquio 1981, from memory) against the integral of the pressure.
  @Test
  void resultantOfAStrip() {
    StripLoad strip = new StripLoad(2, 3, 40);
    double p = integral(strip::pressure, 0, 6);
    assertEquals(56.988, p, 1e-3 * 56.988);
    assertEquals(p, strip.resultant(6), 1e-8 * p);
    double arm = integral(z -> z * strip.pressure(z), 0, 6) / p;
    assertEquals(2.755, arm, 1e-3 * 2.755);
  }

  @Test
  void aVeryWideStripAtTheWallPressesWithItsWholeLoad() {
    assertEquals(25, new StripLoad(0, 1e7, 25).pressure(4), 1e-4);
  }

  // Equations from memory of NAVFAC DM-7.02 after Terzaghi (1954), and of elasticity, doubled;
  // values by hand for 100 kN/m and a height of 6 m.
  @ParameterizedTest
  @CsvSource({
    "0.6,11.707,25.233,7.890,7.848",
    "1.2,16.917,25.248,12.683,12.616",
    "1.8,16.240,17.109,13.841,13.768",
    "2.4,13.216,10.716,12.691,12.624",
    "3.0,10.063,6.791,10.667,10.610",
    "4.5,4.861,2.546,6.059,6.027",
    "6.0,2.514,1.175,3.413,3.395"
  })
  void lineLoad(double z, double near, double nearElastic, double far, double farElastic) {
    assertEquals(near, new DesignLineLoad(1.5, 6, 100).pressure(z), 1e-3 * near);
    assertEquals(nearElastic, new ElasticLineLoad(1.5, 100).pressure(z), 1e-3 * nearElastic);
    assertEquals(far, new DesignLineLoad(3, 6, 100).pressure(z), 1e-3 * far);
    assertEquals(farElastic, new ElasticLineLoad(3, 100).pressure(z), 1e-3 * farElastic);
  }

  // Resultants and heights: NAVFAC DM-7.02 gives 0.55·Q and 0.64·Q/(m² + 1), from memory.
  @ParameterizedTest
  @CsvSource({"1.5,54.69,0.6077,55", "3.0,51.20,0.5580,51.2"})
  void resultantOfALineLoad(double x, double force, double arm, double published) {
    DesignLineLoad line = new DesignLineLoad(x, 6, 100);
    double p = integral(line::pressure, 0, 6);
    assertEquals(force, p, 0.01 * force);
    assertEquals(published, p, 0.01 * published);
    assertEquals(arm, 1 - integral(z -> z * line.pressure(z), 0, 6) / p / 6, 0.01 * arm);
  }

  @ParameterizedTest
  @CsvSource({"1.5,59.92,0.7103", "3.0,50.93,0.5580"})
  void resultantOfAnElasticLineLoad(double x, double force, double arm) {
    ElasticLineLoad line = new ElasticLineLoad(x, 100);
    double p = integral(line::pressure, 0, 6);
    assertEquals(force, p, 0.01 * force);
    assertEquals(arm, 1 - integral(z -> z * line.pressure(z), 0, 6) / p / 6, 0.01 * arm);
  }

  // Equations from memory of NAVFAC DM-7.02 after Terzaghi (1954); values by hand, 200 kN, 6 m.
  @ParameterizedTest
  @CsvSource({
    "0.6,3.166,1.399",
    "1.2,7.778,4.032",
    "1.8,8.960,5.629",
    "2.4,7.595,5.707",
    "3,5.643,4.917",
    "4.5,2.320,2.578",
    "6,0.997,1.259"
  })
  void pointLoad(double z, double near, double far) {
    assertEquals(near, new DesignPointLoad(1.8, 0, 6, 200).pressure(z), 1e-3 * near);
    assertEquals(far, new DesignPointLoad(3, 0, 6, 200).pressure(z), 1e-3 * far);
  }

  @Test
  void besideAPointLoad() {
    DesignPointLoad p = new DesignPointLoad(3, 2, 6, 200);
    assertEquals(0.63683, p.beside(), 1e-3 * 0.63683);
    assertEquals(3.131, p.pressure(3), 1e-3 * 3.131);
    assertEquals(0, new DesignPointLoad(1, 40, 6, 200).pressure(3), 0);
  }

  // NAVFAC DM-7.02 quotes 0.78 with R = 0.59·H at m = 0.4 and 0.60 at m = 0.5 (from memory).
  @Test
  void resultantOfAPointLoad() {
    double h = 6;
    DesignPointLoad half = new DesignPointLoad(3, 0, h, 200);
    double p = integral(half::pressure, 0, h);
    assertEquals(0.596, p * h / 200, 1e-3 * 0.596);
    assertEquals(0.60, p * h / 200, 0.01 * 0.60);
    DesignPointLoad close = new DesignPointLoad(2.4, 0, h, 200);
    double near = integral(close::pressure, 0, h);
    assertEquals(0.78, near * h / 200, 0.01 * 0.78);
    assertEquals(0.587, 1 - integral(z -> z * close.pressure(z), 0, h) / near / h, 1e-3 * 0.587);
  }

  // The area is the point load integrated; a long one is a strip.
  @Test
  void areaIsTheIntegralOfPoints() {
    AreaLoad area = new AreaLoad(2, 1.6, 2.4, 0.7, 150);
    double z = 1.9;
    double sum =
        integral(
            x -> integral(y -> new ElasticPointLoad(x, y, 150).pressure(z), -1.2 - 0.7, 1.2 - 0.7),
            2,
            3.6);
    assertEquals(sum, area.pressure(z), 1e-6 * sum);
    assertEquals(
        new StripLoad(2, 1.6, 150).pressure(z),
        new AreaLoad(2, 1.6, 1e5, 0, 150).pressure(z),
        1e-6 * sum);
  }

  @Test
  void aLineIsTheIntegralOfPoints() {
    double sum = integral(y -> new ElasticPointLoad(2, y, 100).pressure(1.5), -200, 200);
    assertEquals(new ElasticLineLoad(2, 100).pressure(1.5), sum, 1e-5 * sum);
  }

  @Test
  void nothingActsAboveTheLoad() {
    assertEquals(0, new StripLoad(1, 1, 10).pressure(-0.1), 0);
    assertEquals(0, new AreaLoad(1, 1, 1, 0, 10).pressure(0), 0);
    assertThrows(IllegalArgumentException.class, () -> new ElasticLineLoad(0, 10));
    assertThrows(IllegalArgumentException.class, () -> new StripLoad(-1, 1, 10));
  }

  @Test
  void straightPiecesStayCloseToTheCurve() {
    DesignLineLoad line = new DesignLineLoad(1.5, 6, 100);
    PressurePolyline p = PressurePolyline.of(level -> line.pressure(10 - level), 10, 0);
    assertTrue(p.points().size() < 30, "points " + p.points().size());
    double exact = integral(line::pressure, 0, 10);
    assertEquals(exact, p.force(), 0.01 * exact);
    for (double level = 0.05; level < 10; level += 0.1) {
      assertEquals(line.pressure(10 - level), p.at(level), 0.013 * 17);
    }
    assertEquals(0, p.at(11), 0);
  }
}
