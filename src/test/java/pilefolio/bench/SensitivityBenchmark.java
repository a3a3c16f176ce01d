package pilefolio.bench;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import pilefolio.checks.Check;
import pilefolio.checks.CheckResult;
import pilefolio.checks.Checks;
import pilefolio.checks.Job;
import pilefolio.checks.situation.StagedDesign;
import pilefolio.findings.CellRef;
import pilefolio.model.Stage;
import pilefolio.model.Submission;
import pilefolio.model.Value;
import pilefolio.model.WallRun;
import pilefolio.standards.DesignBases;
import pilefolio.units.Units;
import pilefolio.workbook.KnownNames;
import pilefolio.workbook.Retyped;
import pilefolio.workbook.WorkbookReader;

/**
 * Times the staged analysis of the secant wall of a sample, dug in twelve stages, and its full
 * table of sensitivity, warm. It is no test. See "Benchmark" in DEVELOPERS.md.
 */
public final class SensitivityBenchmark {
  private static final int WARM_UP = 15;
  private static final int RUNS = 15;
  private static final int STAGES = 12;

  private SensitivityBenchmark() {}

  /** Prints the medians. */
  public static void main(String[] args) throws IOException {
    Submission sample =
        WorkbookReader.read(Retyped.asItStands("archive-tanners-row"), KnownNames.none())
            .submission()
            .orElseThrow();
    Submission twelve = twelve(sample);
    Check check =
        Checks.ALL.stream().filter(c -> c.id().equals("sensitivity")).findFirst().orElseThrow();
    double[] analysis = new double[RUNS];
    double[] table = new double[RUNS];
    int rows = 0;
    for (int i = -WARM_UP; i < RUNS; i++) {
      Job job = new Job(twelve, DesignBases.find("ec7-da1").orElseThrow());
      long start = System.nanoTime();
      int steps = StagedDesign.of(job, twelve.runs().get(0)).solutions().get(0).steps().size();
      long middle = System.nanoTime();
      List<CheckResult> results = check.run(job);
      long end = System.nanoTime();
      rows = steps + 1000 * results.get(0).calculations().get(0).table("changes").rows().size();
      if (i >= 0) {
        analysis[i] = (middle - start) / 1e6;
        table[i] = (end - middle) / 1e6;
      }
    }
    Arrays.sort(analysis);
    Arrays.sort(table);
    System.out.printf(
        Locale.ROOT,
        "%d steps a combination, %d changes%nanalysis of the wall %8.1f ms%ntable of sensitivity"
            + " %8.1f ms%n",
        rows % 1000,
        rows / 1000,
        analysis[RUNS / 2],
        table[RUNS / 2]);
  }

  /** The first run alone, its excavation cut into twelve stages with the supports in turn. */
  private static Submission twelve(Submission s) {
    WallRun run = s.runs().get(0);
    List<Stage> own = s.stages(run);
    List<Stage> stages = new ArrayList<>();
    double from = run.levels().retained().si();
    double to = own.get(own.size() - 1).excavation().si();
    for (int i = 1; i <= STAGES; i++) {
      double level = from + (to - from) * i / STAGES;
      Stage like =
          own.stream()
              .filter(x -> x.excavation().si() <= level + 1e-9)
              .findFirst()
              .orElse(own.get(own.size() - 1));
      stages.add(
          new Stage(
              like.at(),
              run.id(),
              i,
              like.description(),
              Value.entered(level, Units.M, new CellRef("Stages", 4, 1), "Excavation level"),
              like.waterBehind(),
              like.waterFront(),
              like.permanentSurcharge(),
              like.variableSurcharge(),
              like.supports(),
              like.conditions()));
    }
    return s.withRuns(List.of(run)).withStages(stages);
  }
}
