package pilefolio.submittal.schedule;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import pilefolio.model.Beam;
import pilefolio.model.BeamInPile;
import pilefolio.model.PileKind;
import pilefolio.model.PileSpec;
import pilefolio.model.WallRun;
import pilefolio.submittal.Answer;
import pilefolio.submittal.Submittal;

/**
 * The beams in the primaries, or the secondaries, of a wall run. Lengths and levels in m; a value
 * is absent where the check that gives it was not made.
 *
 * @param run id of the run
 * @param kind kind of pile they stand in
 * @param count how many
 * @param beam the beam: section, grade, orientation, splice
 * @param top level of the top
 * @param toe level of the foot
 * @param length length of one
 * @param mass mass of the section for each length, kg/m
 * @param cover least concrete between the beam and the bore, m
 * @param handling the answer that gives length and mass, if there is one
 */
public record BeamLine(
    String run,
    PileKind kind,
    int count,
    Beam beam,
    double top,
    OptionalDouble toe,
    OptionalDouble length,
    OptionalDouble mass,
    double cover,
    Optional<Answer> handling) {

  /** Every run, primaries first; kinds of pile without a beam have no line. */
  public static List<BeamLine> all(Submittal submittal) {
    List<BeamLine> lines = new ArrayList<>();
    for (WallRun run : submittal.job().submission().secantRuns()) {
      for (PileKind kind : PileKind.secant()) {
        Optional<BeamInPile> in = run.piles(kind).beam();
        in.ifPresent(placed -> lines.add(of(submittal, run, kind, placed)));
      }
    }
    return lines;
  }

  private static BeamLine of(Submittal submittal, WallRun run, PileKind kind, BeamInPile placed) {
    PileSpec spec = run.piles(kind);
    Optional<Answer> handling = handling(submittal, run, kind);
    OptionalDouble toe =
        placed.toe().isPresent()
            ? OptionalDouble.of(placed.toe().get().si())
            : new KindResults(submittal, run.id(), kind).value("levels", "L_T");
    return new BeamLine(
        run.id(),
        kind,
        (int) run.layout().piles().stream().filter(p -> p.kind() == kind).count(),
        submittal.job().submission().beam(spec).orElseThrow(),
        placed.top().si(),
        toe,
        value(handling, "l_b"),
        value(handling, "m_b"),
        placed.minimumCover().si(),
        handling);
  }

  private static Optional<Answer> handling(Submittal submittal, WallRun run, PileKind kind) {
    String piles = "beams of the " + (kind == PileKind.PRIMARY ? "primaries" : "secondaries");
    return submittal.answers("beam-upending").stream()
        .filter(a -> a.result().subject().run().equals(run.id()))
        .filter(a -> a.result().subject().piles().equals(piles))
        .filter(a -> !a.result().calculations().isEmpty())
        .findFirst();
  }

  private static OptionalDouble value(Optional<Answer> answer, String symbol) {
    return answer.isPresent()
        ? OptionalDouble.of(answer.get().result().value(symbol))
        : OptionalDouble.empty();
  }
}
