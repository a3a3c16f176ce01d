package pilefolio.analysis.support;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Walers over their supports, against handbook coefficients and a stiffness method. */
class ContinuousBeamTest {

  /** Coefficients of equal spans under uniform load as beam tables of the trade print them. */
  @ParameterizedTest
  @CsvSource({
    "2, 0.125, 0.375, 1.25",
    "3, 0.100, 0.400, 1.10",
    "4, 0.1071, 0.393, 1.143",
    "5, 0.1053, 0.395, 1.132"
  })
  void equalSpans(int count, double moment, double endReaction, double firstInner) {
    ContinuousBeam beam = ContinuousBeam.equal(count, 1, 0, 1);
    assertEquals(moment, beam.supportMoments().get(1), 6e-5);
    assertEquals(endReaction, beam.reactions().get(0), 6e-4);
    assertEquals(firstInner, beam.reactions().get(1), 6e-4);
    assertEquals(count, beam.reactions().stream().mapToDouble(r -> r).sum(), 1e-12);
  }

  @Test
  void oneSpanHasNoSupportMoment() {
    ContinuousBeam beam = ContinuousBeam.equal(1, 4, 0, 3);
    assertEquals(List.of(0.0, 0.0), beam.supportMoments());
    assertEquals(List.of(6.0, 6.0), beam.reactions());
  }

  /** Unequal spans with overhangs by a stiffness matrix of rotations, solved by a library. */
  @Test
  void unequalSpansByRotations() {
    List<Double> spans = List.of(2.5, 4.0, 3.2, 5.1);
    double overhang = 0.8;
    double load = 37;
    int n = spans.size() + 1;
    RealMatrix k = new Array2DRowRealMatrix(n, n);
    RealVector fixed = new ArrayRealVector(n);
    for (int i = 0; i < spans.size(); i++) {
      double span = spans.get(i);
      k.addToEntry(i, i, 4 / span);
      k.addToEntry(i + 1, i + 1, 4 / span);
      k.addToEntry(i, i + 1, 2 / span);
      k.addToEntry(i + 1, i, 2 / span);
      fixed.addToEntry(i, load * span * span / 12);
      fixed.addToEntry(i + 1, -load * span * span / 12);
    }
    double end = load * overhang * overhang / 2;
    RealVector ends = new ArrayRealVector(n);
    ends.setEntry(0, end);
    ends.setEntry(n - 1, -end);
    RealVector rotation = new LUDecomposition(k).getSolver().solve(ends.subtract(fixed));
    List<Double> moments = new ContinuousBeam(spans, overhang, load).supportMoments();
    assertEquals(end, moments.get(0), 1e-9);
    for (int i = 0; i < spans.size(); i++) {
      double span = spans.get(i);
      double left =
          4 / span * rotation.getEntry(i)
              + 2 / span * rotation.getEntry(i + 1)
              + load * span * span / 12;
      assertEquals(left, moments.get(i), 1e-9, "support " + i);
    }
  }

  @Test
  void refusesWhatCannotBeBuilt() {
    assertThrows(IllegalArgumentException.class, () -> new ContinuousBeam(List.of(), 0, 1));
    assertThrows(IllegalArgumentException.class, () -> ContinuousBeam.equal(2, 0, 0, 1));
    assertThrows(IllegalArgumentException.class, () -> ContinuousBeam.equal(2, 3, -1, 1));
  }
}
