package pilefolio.checks.sizing;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import pilefolio.checks.Check;
import pilefolio.checks.Family;
import pilefolio.checks.Job;
import pilefolio.model.Beam;
import pilefolio.standards.Section;
import pilefolio.standards.SectionTable;

/**
 * The lightest section of a family with which every check of structure of the runs that have the
 * beam holds. Questions that fail with every section are not the beam's and are left out.
 *
 * @param id id of the beam
 * @param sections its family, the lightest first; not empty
 * @param runs ids of the runs that have the beam
 */
record BeamSize(String id, List<Section> sections, Set<String> runs) {

  /** Checks whose answers depend on the beam. */
  static boolean asked(Check check) {
    return check.family() == Family.STRUCTURE;
  }

  /** The beams of a job that the engine is to size. */
  static List<BeamSize> of(Job job) {
    List<BeamSize> open = new ArrayList<>();
    for (Beam beam : job.submission().beams()) {
      List<Section> sections =
          beam.family().map(family -> SectionTable.all().family(family)).orElse(List.of());
      if (beam.section().isEmpty() && !sections.isEmpty()) {
        Set<String> runs =
            job.submission().runs().stream()
                .filter(
                    run ->
                        run.piles().stream()
                            .anyMatch(
                                p -> p.beam().filter(b -> b.beam().equals(beam.id())).isPresent()))
                .map(run -> run.id())
                .collect(Collectors.toSet());
        open.add(new BeamSize(beam.id(), sections, runs));
      }
    }
    return open;
  }

  /** The job with a section in place. */
  Job with(Job job, int index) {
    Beam beam = job.submission().beam(id);
    return new Job(job.submission().with(beam.with(sections.get(index).name())), job.basis());
  }

  /** What falls short with a section. */
  Shortfalls shortfalls(Job job, int index) {
    return Shortfalls.of(with(job, index), runs, BeamSize::asked);
  }

  /**
   * Index of the lightest section that suffices, or of the one that comes nearest.
   *
   * @param from index of the lightest that comes into question
   */
  int lightest(Job job, int from) {
    List<Shortfalls> all = new ArrayList<>();
    for (int i = from; i < sections.size(); i++) {
      all.add(shortfalls(job, i));
      if (all.get(i - from).isEmpty()) {
        return i;
      }
    }
    return from + Shortfalls.best(all);
  }
}
