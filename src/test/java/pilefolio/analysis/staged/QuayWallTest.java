package pilefolio.analysis.staged;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Anchored quay wall of the ISSMGE ERTC10 workshop, Dublin 2005: 92.15 kN/m in the tie and 218.9
 * kNm/m, as quoted by others; part of the geometry is inferred, so agreement is to five per cent.
 */
class QuayWallTest {
  private static final double KA = 0.23;
  private static final double KP = 6.51;
  private static final double K0 = 1 - Math.sin(Math.toRadians(35));
  private static final double GAMMA_WATER = 9.81;

  private record Sand(double surface, double water, double load) implements SoilSide {
    @Override
    public SpringLaw at(double level, double seenFrom) {
      double u = Math.max(0, GAMMA_WATER * (water - level));
      if (seenFrom > surface) {
        return new SpringLaw(0, 0, 0, 0, u);
      }
      double dry = surface - Math.max(level, Math.min(water, surface));
      double wet = surface - level - dry;
      double sigma = load + 18 * dry + (20 - GAMMA_WATER) * wet;
      double modulus = 10_000 + 2_000 * (surface - level);
      return new SpringLaw(K0 * sigma, KA * sigma, KP * sigma, modulus, u);
    }

    @Override
    public List<Double> breaks() {
      return List.of(surface, water);
    }
  }

  @Test
  void tieAndMoment() {
    ElasticSupport tie = new ElasticSupport("T", -1.5, 10_000, 0, ElasticSupport.Action.ONE_WAY);
    Sand behind = new Sand(0, -4.7, 11);
    WallStage level =
        new WallStage("tie", behind, new Sand(0, -4.7, 11), 0, 100_000, List.of(tie), List.of());
    WallStage dug =
        new WallStage("dig", behind, new Sand(-8.5, -5, 0), -8.5, 100_000, List.of(tie), List.of());
    StageState s =
        StagedAnalysis.of(StagedWall.of(0, -8.5 - 2.65, GroundMemory.NONE, List.of(level, dug)))
            .stages()
            .get(1);
    assertEquals(92.15, s.supports().get(0).force(), 0.05 * 92.15);
    assertEquals(218.9, -s.leastMoment().value(), 0.05 * 218.9);
  }
}
