package pilefolio.analysis.apparent;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import pilefolio.analysis.earth.OutsideRange;
import pilefolio.analysis.earth.Rankine;
import pilefolio.analysis.wall.NetPressure;
import pilefolio.analysis.wall.NetSegment;

class BeamOnSupportsTest {
  private static final double PER_MILLE = 1e-3;

  private static BeamOnSupports cutInSand() {
    ApparentEnvelope e = StrutEnvelopes.sand(0, -9, 17, Rankine.active(Math.toRadians(35)));
    return new BeamOnSupports(e.pressure(), List.of(-2.0, -5.0, -8.0), new Base.Overhang());
  }

  private static void near(List<Double> expected, List<Double> actual, double relative) {
    assertEquals(expected.size(), actual.size());
    for (int i = 0; i < expected.size(); i++) {
      assertEquals(expected.get(i), actual.get(i), relative * Math.abs(expected.get(i)));
    }
  }

  /** Das, 7th ed., Example 10.1: hinge at the middle strut; moment and struts at 3 m. */
  @Test
  void cutInStiffClayByHinges() {
    BeamOnSupports beam =
        new BeamOnSupports(
            StrutEnvelopes.stiffClay(0, -7, 18, 0.3).pressure(),
            List.of(-1.0, -3.5, -6.0),
            new Base.Overhang());
    SupportReactions r = beam.solve(Idealisation.HINGE);
    near(
        List.of(162.06, 271.2, 162.06), r.reactions().stream().map(x -> 3 * x).toList(), PER_MILLE);
    assertEquals(27.03, r.greatestMoment(), PER_MILLE * 27.03);
    assertEquals(0, r.supportMoments().get(1), 0);
    // Zero shear 1.1958 m above the middle strut, own arithmetic.
    assertEquals(-3.5 + 1.1958, r.statics().orElseThrow().least().level(), 1e-3);
    assertEquals(37.8 * 5.25, r.sum(), 1e-9);
  }

  /** Das, 7th ed., Example 10.2; moments by own arithmetic. */
  @Test
  void cutInSandByHinges() {
    SupportReactions r = cutInSand().solve(Idealisation.HINGE);
    near(List.of(112.29, 58.39, 71.87), r.reactions(), PER_MILLE);
    near(
        List.of(449.16, 233.56, 287.48),
        r.reactions().stream().map(x -> 4 * x).toList(),
        PER_MILLE);
    assertEquals(53.90, r.supportMoments().get(0), PER_MILLE * 53.9);
    assertEquals(13.47, r.supportMoments().get(2), PER_MILLE * 13.5);
    // The span moments run from tension on the retained side through zero to the excavated side.
    near(List.of(-9.36, -23.96), r.spanMoments(), PER_MILLE);
    assertEquals(53.90, r.greatestMoment(), PER_MILLE * 53.9);
  }

  /** The same cut by the other idealisations, own arithmetic. */
  @Test
  void cutInSandByTheOtherIdealisations() {
    SupportReactions tributary = cutInSand().solve(Idealisation.TRIBUTARY);
    near(List.of(94.33, 80.85, 67.38), tributary.reactions(), PER_MILLE);
    SupportReactions continuous = cutInSand().solve(Idealisation.CONTINUOUS);
    near(List.of(107.80, 67.38, 67.38), continuous.reactions(), PER_MILLE);
    near(List.of(53.9, 13.475, 13.475), continuous.supportMoments(), PER_MILLE);
  }

  @ParameterizedTest
  @EnumSource(Idealisation.class)
  void everyIdealisationCarriesTheWholeLoad(Idealisation idealisation) {
    BeamOnSupports cut = cutInSand();
    assertEquals(cut.load().force(), cut.solve(idealisation).sum(), 1e-9);
    BeamOnSupports onGround =
        new BeamOnSupports(cut.load(), cut.supports(), new Base.Reaction(-9.6));
    assertEquals(cut.load().force(), onGround.solve(idealisation).sum(), 1e-9);
  }

  /**
   * Two anchor levels with surcharge, 15° inclination, 2.5 m apart: formulas of FHWA-IF-99-015 from
   * memory, statics checked, own arithmetic.
   */
  @Test
  void anchoredWallByTributaryAreas() {
    double kA = Rankine.active(Math.toRadians(33));
    ApparentEnvelope e =
        AnchorTrapezoid.holding(0, -10, List.of(-2.5, -6.25), AnchorTrapezoid.sandLoad(18, 10, kA));
    BeamOnSupports beam =
        new BeamOnSupports(
            Superposed.of(e.pressure(), uniform(0, -10, 10 * kA)),
            List.of(-2.5, -6.25),
            new Base.Reaction(-10));
    SupportReactions r = beam.solve(Idealisation.TRIBUTARY);
    near(List.of(167.20, 171.03), r.reactions(), 2e-3);
    assertEquals(36.16, r.baseReaction().orElseThrow(), 2e-3 * 36.16);
    assertEquals(74.77, r.supportMoments().get(0), 2e-3 * 74.77);
    near(List.of(-65.41, -65.41), r.spanMoments(), 2e-3);
    assertEquals(74.77, r.greatestMoment(), 2e-3 * 74.77);
    near(
        List.of(432.8, 442.7),
        r.reactions().stream().map(x -> 2.5 * x / Math.cos(Math.toRadians(15))).toList(),
        2e-3);
  }

  private static NetPressure uniform(double top, double bottom, double p) {
    return new NetPressure(List.of(new NetSegment(top, bottom, p, p)));
  }

  /** One anchor with a hinge at the base: T = (23H² − 10·H·H_1)/(54·(H − H_1))·p, GEC 4, memory. */
  @Test
  void oneAnchor() {
    ApparentEnvelope e = AnchorTrapezoid.holding(0, -9, List.of(-3.0), 300);
    BeamOnSupports beam = new BeamOnSupports(e.pressure(), List.of(-3.0), new Base.Reaction(-9));
    for (Idealisation i : List.of(Idealisation.HINGE, Idealisation.CONTINUOUS)) {
      SupportReactions r = beam.solve(i);
      double t = (23 * 81 - 10 * 9 * 3.0) / (54 * 6) * e.ordinate();
      assertEquals(t, r.reactions().get(0), 1e-9);
      assertEquals(300 - t, r.baseReaction().orElseThrow(), 1e-9);
      assertEquals(13.0 / 54 * 9 * e.ordinate(), r.supportMoments().get(0), 1e-9);
    }
  }

  /** Three equal spans under uniform load: 0.4, 1.1, 1.1, 0.4 wL and 0.1 wL² (handbook values). */
  @Test
  void threeEqualSpans() {
    BeamOnSupports beam =
        new BeamOnSupports(uniform(0, -9, 10), List.of(0.0, -3.0, -6.0), new Base.Reaction(-9));
    SupportReactions r = beam.solve(Idealisation.CONTINUOUS);
    near(List.of(12.0, 33.0, 33.0), r.reactions(), 1e-9);
    assertEquals(12, r.baseReaction().orElseThrow(), 1e-9);
    near(List.of(9.0, 9.0), r.supportMoments().subList(1, 3), 1e-9);
    // 0.08 wL² in the outer spans, 0.025 wL² in the middle.
    near(List.of(-7.2, -2.25, -7.2), r.spanMoments(), 1e-9);
  }

  /**
   * Propped cantilever under a triangle, from Roark-type handbook formulas by a half of a symmetric
   * two-span beam: R at the far end wL/10 with the load growing toward the middle support.
   */
  @Test
  void twoSpansUnderTriangles() {
    NetPressure roof =
        new NetPressure(List.of(new NetSegment(0, -4, 0, 30), new NetSegment(-4, -8, 30, 0)));
    SupportReactions r =
        new BeamOnSupports(roof, List.of(0.0, -4.0), new Base.Reaction(-8))
            .solve(Idealisation.CONTINUOUS);
    assertEquals(30 * 4 / 10.0, r.reactions().get(0), 1e-9);
    assertEquals(30 * 16 / 15.0, r.supportMoments().get(1), 1e-9);
    assertEquals(12, r.baseReaction().orElseThrow(), 1e-9);
  }

  @Test
  void residualsVanish() {
    for (Idealisation i : List.of(Idealisation.HINGE, Idealisation.CONTINUOUS)) {
      var statics =
          new BeamOnSupports(cutInSand().load(), cutInSand().supports(), new Base.Reaction(-10.2))
              .solve(i)
              .statics()
              .orElseThrow();
      assertEquals(0, statics.forceResidual(), 1e-9);
      assertEquals(0, statics.momentResidual(), 1e-8);
    }
  }

  @Test
  void whatCannotStandIsRefused() {
    NetPressure p = uniform(0, -9, 10);
    assertThrows(
        OutsideRange.class, () -> new BeamOnSupports(p, List.of(-3.0), new Base.Overhang()));
    assertThrows(
        OutsideRange.class, () -> new BeamOnSupports(p, List.of(-3.0), new Base.Reaction(-8)));
    assertThrows(
        OutsideRange.class, () -> new BeamOnSupports(p, List.of(-5.0, -3.0), new Base.Overhang()));
    assertTrue(
        Stream.of(Idealisation.values())
            .noneMatch(
                i ->
                    new BeamOnSupports(p, List.of(-3.0, -6.0), new Base.Overhang())
                        .solve(i)
                        .anyPulls()));
  }
}
