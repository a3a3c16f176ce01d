package pilefolio.checks.ground;

import java.util.ArrayList;
import java.util.List;
import pilefolio.model.Drainage;
import pilefolio.model.Stage;
import pilefolio.model.Submission;
import pilefolio.model.WallRun;

/**
 * What acts in the pressures of a profile without a sheet that derives it. Each is said as a
 * question that was not checked, because a page that shows level, static ground would otherwise be
 * taken for the ground that was used.
 */
final class Underived {
  private Underived() {}

  /** Sentences, one for each; empty if the sheets derive all that acts. */
  static List<String> of(Submission submission, ProfileUse use) {
    List<String> reasons = new ArrayList<>();
    List<Stage> stages =
        use.runs().stream().flatMap(run -> submission.stages(run).stream()).toList();
    boolean undrained = !use.layers(Drainage.UNDRAINED).isEmpty();
    if (use.runs().stream().anyMatch(Underived::sloping)) {
      reasons.add(
          "the ground behind slopes: the pressures use coefficients with the slope, and no sheet"
              + " derives them");
    }
    if (undrained && stages.stream().anyMatch(stage -> stage.conditions().longTerm())) {
      reasons.add(
          "undrained layers act with their drained strength in a stage: no sheet derives their"
              + " design strength and coefficients");
    }
    if (stages.stream().anyMatch(stage -> stage.conditions().earthquake())) {
      reasons.add(
          "an earthquake acts in a stage: the pressures hold its increment, and no sheet derives"
              + " it");
    }
    if (undrained && submission.methods().ground().softenedDepth().si() > 0) {
      reasons.add(
          "undrained ground has softened in front: the pressures use the lesser strength, and no"
              + " sheet derives it");
    }
    return reasons;
  }

  /** True if the ground behind a run is not level. */
  static boolean sloping(WallRun run) {
    return run.analysis().slopeBehind().si() != 0;
  }
}
