package pilefolio.checks.situation;

import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import pilefolio.checks.Job;
import pilefolio.checks.Subject;
import pilefolio.model.WallRun;

/**
 * The situations that decide a wall run: the deepest toe and the greatest moment, the greatest
 * apparent pressure, and those without equilibrium. What they rest on is printed in full.
 *
 * @param subjects run, stage and combination of each
 */
public record KeySituations(Set<Subject> subjects) {

  /** Copies the set. */
  public KeySituations {
    subjects = Set.copyOf(subjects);
  }

  private record Key() {}

  /** The situations of all runs. */
  public static KeySituations of(Job job) {
    return job.shared(new Key(), KeySituations.class, KeySituations::find);
  }

  private static KeySituations find(Job job) {
    Set<Subject> subjects = new HashSet<>();
    for (WallRun run : job.submission().runs()) {
      RunDesign design = RunDesign.of(job, run);
      List<WallSolution> solved =
          design.solutions().stream().filter(s -> s.equilibrium().isPresent()).toList();
      add(subjects, design.deepest());
      add(subjects, solved.stream().max(Comparator.comparingDouble(KeySituations::moment)));
      ApparentDesign.of(job, run).stream()
          .filter(a -> a.solved().isPresent())
          .max(Comparator.comparingDouble(a -> a.solved().orElseThrow().design().force()))
          .ifPresent(a -> subjects.add(a.situation().subject()));
      design.solutions().stream()
          .filter(s -> s.equilibrium().isEmpty())
          .forEach(s -> add(subjects, Optional.of(s)));
    }
    return new KeySituations(subjects);
  }

  private static double moment(WallSolution s) {
    return Math.abs(s.equilibrium().orElseThrow().statics().governing().moment());
  }

  private static void add(Set<Subject> subjects, Optional<WallSolution> solution) {
    solution.ifPresent(s -> subjects.add(s.situation().subject()));
  }

  /** True if a result about the subject belongs to a deciding situation, or to no stage at all. */
  public boolean hold(Subject subject) {
    return subject.stage().isEmpty()
        || subjects.contains(
            new Subject(subject.run(), "", subject.stage(), subject.combination()));
  }
}
