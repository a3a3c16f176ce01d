package pilefolio.submittal.schedule;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import pilefolio.analysis.sequence.Programme;
import pilefolio.checks.sequence.Programmes;
import pilefolio.model.BeamInPile;
import pilefolio.model.Pile;
import pilefolio.model.PileSpec;
import pilefolio.model.WallRun;
import pilefolio.submittal.Submittal;

/**
 * Every pile of the job.
 *
 * @param piles run by run, along the wall
 */
public record PileSchedule(List<PileLine> piles) {
  /** Copies the list. */
  public PileSchedule {
    piles = List.copyOf(piles);
  }

  /** The schedule, with the day of each pile if a programme was found. */
  public static PileSchedule of(Submittal submittal) {
    Optional<Programme> programme = Programmes.of(submittal.job()).programme();
    List<PileLine> lines = new ArrayList<>();
    for (WallRun run : submittal.job().submission().secantRuns()) {
      for (Pile pile : run.layout().piles()) {
        lines.add(line(submittal, run, pile, programme));
      }
    }
    return new PileSchedule(lines);
  }

  private static PileLine line(
      Submittal submittal, WallRun run, Pile pile, Optional<Programme> programme) {
    PileSpec spec = run.piles(pile.kind());
    KindResults results = new KindResults(submittal, run.id(), pile.kind());
    OptionalDouble toe = results.value("levels", "L_T");
    if (toe.isEmpty() && spec.toe().isPresent()) {
      toe = OptionalDouble.of(spec.toe().get().si());
    }
    return new PileLine(
        pile,
        spec.diameter().si(),
        run.levels().platform().si(),
        run.levels().cutOff().si(),
        toe,
        results.value("levels", "l_d"),
        results.value("levels", "l_c"),
        results.value("concrete-volume", "V_a"),
        spec.mix(),
        spec.beam().map(BeamInPile::beam),
        programme.flatMap(p -> p.pile(pile.mark())));
  }

  /** The piles in the order in which they are made; as along the wall if there is no programme. */
  public List<PileLine> inOrder() {
    return piles.stream()
        .sorted(
            Comparator.comparingInt(
                line -> line.planned().map(p -> p.order()).orElse(Integer.MAX_VALUE)))
        .toList();
  }
}
