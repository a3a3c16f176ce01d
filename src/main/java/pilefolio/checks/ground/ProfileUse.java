package pilefolio.checks.ground;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import pilefolio.checks.Job;
import pilefolio.checks.Subject;
import pilefolio.checks.situation.DesignSituation;
import pilefolio.model.Drainage;
import pilefolio.model.GroundProfile;
import pilefolio.model.Layer;
import pilefolio.model.WallRun;
import pilefolio.standards.Combination;

/**
 * A ground profile in one combination, with the runs that stand in it: they share every input, so
 * they share the calculation.
 *
 * @param profile the profile
 * @param runs the runs in it
 * @param combination the combination
 * @param situation any situation of the first run, for its factors and methods
 */
record ProfileUse(
    GroundProfile profile, List<WallRun> runs, Combination combination, DesignSituation situation) {

  /** Every profile that a run with a stage uses, in every combination. */
  static List<ProfileUse> of(Job job) {
    List<ProfileUse> uses = new ArrayList<>();
    for (GroundProfile profile : job.submission().profiles()) {
      List<WallRun> runs =
          job.submission().runs().stream()
              .filter(run -> run.profile().equals(profile.id()))
              .filter(run -> !job.submission().stages(run).isEmpty())
              .toList();
      if (runs.isEmpty()) {
        continue;
      }
      for (Combination combination : job.combinations()) {
        uses.add(
            new ProfileUse(
                profile,
                runs,
                combination,
                new DesignSituation(
                    job.submission(),
                    job.basis(),
                    runs.get(0),
                    job.submission().stages(runs.get(0)).get(0),
                    combination)));
      }
    }
    return uses;
  }

  List<Layer> layers(Drainage drainage) {
    return profile.layers().stream().filter(layer -> layer.drainage() == drainage).toList();
  }

  Subject subject() {
    return Subject.run(runs.stream().map(WallRun::id).collect(Collectors.joining(", ")))
        .combination(combination.id());
  }
}
