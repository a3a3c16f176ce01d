package pilefolio.bench;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import pilefolio.analysis.staged.ElasticSupport;
import pilefolio.analysis.staged.GroundMemory;
import pilefolio.analysis.staged.SoilSide;
import pilefolio.analysis.staged.SpringLaw;
import pilefolio.analysis.staged.StagedAnalysis;
import pilefolio.analysis.staged.StagedWall;
import pilefolio.analysis.staged.ToeCondition;
import pilefolio.analysis.staged.WallStage;

/** Time of one converged stage of a strutted wall, warm, against the number of elements. */
public final class StagedBenchmark {
  private static final int WARM_UP = 400;
  private static final int RUNS = 200;

  private StagedBenchmark() {}

  /** Prints the table. */
  public static void main(String[] args) {
    for (int i = 0; i < WARM_UP; i++) {
      once(200);
    }
    System.out.println("elements   ms a stage   µs a stage and element");
    for (int elements : new int[] {50, 100, 200, 400, 800, 1600}) {
      double[] times = new double[RUNS];
      for (int i = 0; i < RUNS; i++) {
        long start = System.nanoTime();
        int stages = once(elements);
        times[i] = (System.nanoTime() - start) / 1e6 / stages;
      }
      Arrays.sort(times);
      double median = times[RUNS / 2];
      System.out.printf(
          Locale.ROOT, "%8d   %10.3f   %10.3f%n", elements, median, 1000 * median / elements);
    }
  }

  private static int once(int elements) {
    List<ElasticSupport> none = List.of();
    ElasticSupport upper = new ElasticSupport("S1", -2, 20_000, 50, ElasticSupport.Action.ONE_WAY);
    ElasticSupport lower = new ElasticSupport("S2", -5, 20_000, 50, ElasticSupport.Action.ONE_WAY);
    List<WallStage> stages = new ArrayList<>();
    stages.add(stage(-2.5, none));
    stages.add(stage(-2.5, List.of(upper)));
    stages.add(stage(-5.5, List.of(upper)));
    stages.add(stage(-5.5, List.of(upper, lower)));
    stages.add(stage(-8, List.of(upper, lower)));
    stages.add(stage(-8, List.of(lower)));
    return StagedAnalysis.of(
            new StagedWall(
                0,
                -16,
                16.0 / elements,
                ToeCondition.FREE,
                GroundMemory.PLASTIC_MOVEMENT,
                1.6,
                stages))
        .stages()
        .size();
  }

  private static WallStage stage(double dig, List<ElasticSupport> supports) {
    return new WallStage("to " + dig, sand(0, 10), sand(dig, 0), dig, 80_000, supports, List.of());
  }

  private static SoilSide sand(double surface, double load) {
    return new SoilSide() {
      @Override
      public SpringLaw at(double level, double seenFrom) {
        if (seenFrom >= surface) {
          return SpringLaw.NOTHING;
        }
        double sigma = load + 18 * (surface - level);
        return new SpringLaw(0.5 * sigma, sigma / 3, 3 * sigma, 15_000, 0);
      }

      @Override
      public List<Double> breaks() {
        return List.of(surface);
      }
    };
  }
}
