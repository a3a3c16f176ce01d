package pilefolio.submittal.schedule;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import pilefolio.model.BeamInPile;
import pilefolio.model.PileKind;
import pilefolio.model.PileSpec;
import pilefolio.model.WallRun;
import pilefolio.submittal.Answer;
import pilefolio.submittal.Submittal;

/**
 * Quantities of the primaries, or the secondaries, of a wall run.
 *
 * @param run id of the run
 * @param kind primaries or secondaries
 * @param count how many
 * @param diameter over the cutting edge, m
 * @param drilled drilled length of one, m
 * @param volume concrete to order for one, m³
 * @param total concrete to order for all, m³
 * @param mix id of the mix
 * @param beam id of the beam, if there is one
 * @param levels the answer that gives the lengths, if there is one
 * @param concrete the answer that gives the volumes, if there is one
 */
public record QuantityLine(
    String run,
    PileKind kind,
    int count,
    double diameter,
    OptionalDouble drilled,
    OptionalDouble volume,
    OptionalDouble total,
    String mix,
    Optional<String> beam,
    Optional<Answer> levels,
    Optional<Answer> concrete) {

  /** Drilled length of all, m. */
  public OptionalDouble drilledAll() {
    return drilled.isPresent()
        ? OptionalDouble.of(count * drilled.getAsDouble())
        : OptionalDouble.empty();
  }

  /** Every run, primaries first. */
  public static List<QuantityLine> all(Submittal submittal) {
    List<QuantityLine> lines = new ArrayList<>();
    for (WallRun run : submittal.job().submission().secantRuns()) {
      for (PileKind kind : PileKind.secant()) {
        lines.add(of(submittal, run, kind));
      }
    }
    return lines;
  }

  private static QuantityLine of(Submittal submittal, WallRun run, PileKind kind) {
    PileSpec spec = run.piles(kind);
    KindResults results = new KindResults(submittal, run.id(), kind);
    return new QuantityLine(
        run.id(),
        kind,
        (int) run.layout().piles().stream().filter(p -> p.kind() == kind).count(),
        spec.diameter().si(),
        results.value("levels", "l_d"),
        results.value("concrete-volume", "V_a"),
        results.value("concrete-volume", "V_R"),
        spec.mix(),
        spec.beam().map(BeamInPile::beam),
        results.answer("levels"),
        results.answer("concrete-volume"));
  }
}
