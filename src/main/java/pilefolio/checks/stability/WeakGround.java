package pilefolio.checks.stability;

import static pilefolio.units.Units.KPA;
import static pilefolio.units.Units.ONE;

import java.util.List;
import pilefolio.analysis.earth.Coefficients;
import pilefolio.analysis.earth.Mobilisation;
import pilefolio.analysis.earth.PressureNode;
import pilefolio.analysis.earth.PressureSegment;
import pilefolio.analysis.earth.SoilLayer;
import pilefolio.analysis.wall.WallLoading;
import pilefolio.trace.CalcSheet;
import pilefolio.trace.Calculation;
import pilefolio.trace.Reference;
import pilefolio.trace.Source;

/** Why undrained ground below the excavation cannot hold a wall at any depth. */
final class WeakGround {
  private static final double KILO = 1000;
  private static final double JUST_BELOW = 1e-6;

  static final CalcSheet SHEET =
      CalcSheet.named("Undrained ground below the excavation")
          .given("σ_b", KPA, "vertical stress behind at excavation level")
          .given("σ_f", KPA, "vertical stress in front at excavation level")
          .given("s_u", KPA, "undrained strength below the excavation")
          .given("K_ac", ONE, "active coefficient on strength")
          .given("K_pc", ONE, "passive coefficient on strength")
          .given("F", ONE, "divisor of passive pressure")
          .line(
              "σ_l = K_ac·s_u + (σ_f + K_pc·s_u)/F",
              KPA,
              "stress behind at which resistance is used up",
              Reference.DERIVED)
          .require(
              "σ_b < σ_l",
              "passive pressure in front exceeds active pressure behind",
              Reference.DERIVED);

  private WeakGround() {}

  static Calculation calculate(WallLoading loading) {
    double level = loading.excavationLevel() - JUST_BELOW;
    SoilLayer layer = loading.ground().profile().below(level);
    Coefficients k = loading.pressures().coefficients(layer);
    Source stress = new Source.Method("stress from the surface down");
    Source coefficient = new Source.Layout("coefficient of the layer");
    return SHEET
        .bind()
        .set(
            "σ_b",
            KILO * last(loading.pressures().behind(Mobilisation.ACTIVE, level).segments()).sigmaV(),
            stress)
        .set(
            "σ_f",
            KILO * last(loading.pressures().front(Mobilisation.PASSIVE, level).segments()).sigmaV(),
            stress)
        .set("s_u", KILO * layer.cohesionAt(level), new Source.Layout("design value"))
        .set("K_ac", k.kAc(), coefficient)
        .set("K_pc", k.kPc(), coefficient)
        .set(
            "F",
            loading.ground().factors().passiveDivisor(),
            new Source.Layout("margin of the basis"))
        .calculate();
  }

  private static PressureNode last(List<PressureSegment> segments) {
    return segments.get(segments.size() - 1).bottom();
  }
}
