package pilefolio.checks.stability;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import pilefolio.analysis.earth.CoefficientMethod;
import pilefolio.analysis.earth.CohesionRule;
import pilefolio.analysis.earth.DrainedStrength;
import pilefolio.analysis.earth.PressureFactors;
import pilefolio.analysis.earth.Side;
import pilefolio.analysis.earth.SoilLayer;
import pilefolio.analysis.earth.SoilProfile;
import pilefolio.analysis.earth.Strength;
import pilefolio.analysis.earth.UndrainedStrength;
import pilefolio.analysis.earth.WallGround;
import pilefolio.analysis.earth.WaterFlow;
import pilefolio.analysis.wall.Equilibrium;
import pilefolio.analysis.wall.FixedEarthSupport;
import pilefolio.analysis.wall.FourForceCantilever;
import pilefolio.analysis.wall.FreeEarthSupport;
import pilefolio.analysis.wall.SimplifiedCantilever;
import pilefolio.analysis.wall.WallLoading;
import pilefolio.analysis.wall.WallMethod;
import pilefolio.trace.Calculation;
import pilefolio.trace.Given;
import pilefolio.trace.Printer;
import pilefolio.trace.Source;
import pilefolio.units.DisplaySystem;

/** The sheets redo what the numerical work found, in any ground, and print in both systems. */
class StabilitySheetsTest {
  private static final Source TEST = new Source.Layout("test");
  private static final double SUPPORT = -1.1;

  private record Pair(EmbedmentCheck check, WallMethod method, boolean supported) {}

  private static final List<Pair> ALL =
      List.of(
          new Pair(
              new FullCantileverEmbedment(),
              new FourForceCantilever(FourForceCantilever.Change.ABRUPT),
              false),
          new Pair(new SimplifiedCantileverEmbedment(), new SimplifiedCantilever(1.2), false),
          new Pair(new FreeEarthEmbedment(), new FreeEarthSupport(SUPPORT), true),
          new Pair(new FixedEarthEmbedment(), new FixedEarthSupport(SUPPORT, 1.2), true));

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void sheetsRedoTheEquilibriumOfLayeredGround(long seed) {
    WallLoading loading = new WallLoading(ground(new Random(seed)));
    int solved = 0;
    for (Pair pair : ALL) {
      if (!(pair.method().solve(loading) instanceof Equilibrium e)) {
        continue;
      }
      solved++;
      double required = e.requiredEmbedment() * 1.1;
      Calculation enough = sheet(pair, loading, e, e.excavationLevel() - required - 0.01);
      Calculation tooShort = sheet(pair, loading, e, e.excavationLevel() - required + 0.01);
      assertTrue(enough.verdict().satisfied(), pair.method() + " seed " + seed);
      assertTrue(!tooShort.verdict().satisfied(), pair.method() + " seed " + seed);
      assertEquals(required, enough.value("d_r"), 1e-9);
      if (pair.supported()) {
        assertEquals(
            1000 * e.supportForce().orElseThrow(), enough.value("T"), 1e-3, "support force");
      }
      Calculation effects = WallEffectsCheck.calculate(e);
      assertEquals(
          1000 * Math.abs(e.statics().governing().moment()), effects.value("M_E"), 5, "moment");
      assertEquals(
          1000 * Math.abs(e.statics().greatestShear().shear()), effects.value("V_E"), 5, "shear");
      var rows = effects.table("wall").rows();
      assertEquals(0, rows.get(rows.size() - 1).values().get("V_2"), 1e-3, "shear at the toe");
      assertEquals(0, rows.get(rows.size() - 1).values().get("M_2"), 1e-2, "moment at the toe");
      for (DisplaySystem system : DisplaySystem.values()) {
        new Printer(system).print(enough);
        new Printer(system).print(effects);
      }
    }
    assertTrue(solved >= 3, "solved " + solved);
  }

  @Test
  void reserveAboutTheSupportIsOneAtTheFreeEarthToe() {
    for (long seed = 1; seed <= 8; seed++) {
      WallLoading loading = new WallLoading(ground(new Random(seed)).withFactors(factors(1)));
      if (!(new FreeEarthSupport(SUPPORT).solve(loading) instanceof Equilibrium e)) {
        continue;
      }
      Given centre = new Given(SUPPORT, TEST);
      Given one = new Given(1, TEST);
      assertEquals(
          1,
          PassiveReserveCheck.calculate(
                  loading, e.toeLevel(), centre, PassiveReserveCheck.Turning.ABOUT_SUPPORT, one)
              .value("F_p"),
          1e-9,
          "seed " + seed);
      Calculation deeper =
          PassiveReserveCheck.calculate(
              loading, e.toeLevel() - 1, centre, PassiveReserveCheck.Turning.ABOUT_SUPPORT, one);
      assertTrue(deeper.value("F_p") > 1, "seed " + seed);
      new Printer(DisplaySystem.US).print(deeper);
    }
  }

  private static Calculation sheet(Pair pair, WallLoading loading, Equilibrium e, double toe) {
    return pair.check()
        .calculate(
            loading,
            e,
            new EmbedmentInputs(
                new Given(e.excavationLevel(), TEST),
                new Given(toe, TEST),
                new Given(1.1, TEST),
                pair.supported() ? Optional.of(new Given(SUPPORT, TEST)) : Optional.empty()));
  }

  private static PressureFactors factors(double divisor) {
    return new PressureFactors(1.35, 1.5, 1.35, divisor, PressureFactors.DivisorOn.WHOLE_PASSIVE);
  }

  /** Ten layers, every third one undrained, with water, loads and rules for cohesion. */
  private static WallGround ground(Random random) {
    List<SoilLayer> layers = new ArrayList<>();
    double top = 0;
    for (int i = 0; i < 10; i++) {
      double bottom = i == 9 ? Double.NEGATIVE_INFINITY : top - 0.6 - 1.8 * random.nextDouble();
      Strength strength =
          i % 3 == 2
              ? new UndrainedStrength(50 + 40 * random.nextDouble(), 3 * random.nextDouble(), 0.5)
              : DrainedStrength.ofDegrees(
                  i % 2 == 0 ? 0 : 6 * random.nextDouble(), 27 + 9 * random.nextDouble(), 0.6, 0.5);
      layers.add(
          new SoilLayer(
              "layer " + (i + 1),
              top,
              bottom,
              17 + 2 * random.nextDouble(),
              19 + 2 * random.nextDouble(),
              strength));
      top = bottom;
    }
    double height = 3.5 + 1.5 * random.nextDouble();
    CohesionRule rule =
        new CohesionRule(
            random.nextBoolean()
                ? CohesionRule.Tension.DRY_CRACK
                : CohesionRule.Tension.WATER_FILLED_CRACK,
            random.nextBoolean() ? 5 : 0);
    return new WallGround(
        new SoilProfile(layers),
        CoefficientMethod.EN1997_ANNEX_C2,
        new Side(0, -1.7 - random.nextDouble(), 5, 10),
        Side.unloaded(-height, -height - random.nextDouble()),
        random.nextBoolean() ? WaterFlow.HYDROSTATIC : WaterFlow.LINEAR_SEEPAGE,
        WallGround.GAMMA_WATER,
        rule,
        rule,
        factors(1.25));
  }
}
