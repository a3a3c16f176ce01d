package pilefolio.checks.stability;

import java.util.List;
import pilefolio.checks.Job;
import pilefolio.checks.situation.DesignSituation;
import pilefolio.model.WallRun;

/** The situations in which the stability of the ground round an excavation is asked about. */
final class LowestStages {
  private static final double SAME_LEVEL = 1e-6;

  private LowestStages() {}

  /** Every situation of a run in a stage that excavates as low as any does. */
  static List<DesignSituation> of(Job job, WallRun run) {
    List<DesignSituation> all = DesignSituation.of(job.submission(), job.basis(), run);
    double lowest =
        all.stream().mapToDouble(s -> s.stage().excavation().si()).min().orElse(Double.NaN);
    return all.stream().filter(s -> s.stage().excavation().si() <= lowest + SAME_LEVEL).toList();
  }
}
