package pilefolio.checks.rig;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pilefolio.checks.From;
import pilefolio.checks.Job;
import pilefolio.checks.RunCheck;
import pilefolio.checks.geometry.SetOut;
import pilefolio.model.Beam;
import pilefolio.model.BeamInPile;
import pilefolio.model.PileKind;
import pilefolio.model.WallRun;
import pilefolio.standards.Section;
import pilefolio.standards.SectionTable;
import pilefolio.trace.Given;

/**
 * A beam to be set into a pile, with its section and length.
 *
 * @param kind kind of pile it goes into
 * @param beam the beam
 * @param section its section
 * @param length its length, with its origin
 */
record HungBeam(PileKind kind, Beam beam, Section section, Given length) {

  /** The beams of a run. */
  static List<HungBeam> of(Job job, WallRun run) {
    List<HungBeam> found = new ArrayList<>();
    for (PileKind kind : PileKind.secant()) {
      Optional<BeamInPile> in = run.piles(kind).beam();
      if (in.isPresent()) {
        Beam beam = job.submission().beam(run.piles(kind)).orElseThrow();
        Section section =
            SectionTable.all()
                .find(beam.section())
                .orElseThrow(
                    () ->
                        new RunCheck.MissingInput(
                            "The section " + beam.section() + " is not in the tables."));
        double foot =
            in.get().toe().map(v -> v.si()).orElseGet(() -> SetOut.toe(job, run, kind).si());
        double length = in.get().top().si() - foot;
        if (length <= 0) {
          throw new RunCheck.MissingInput("The foot of the beam does not lie below its top.");
        }
        found.add(
            new HungBeam(kind, beam, section, From.layout(length, "top less foot of the beam")));
      }
    }
    return found;
  }

  /** Length of the beam, m. */
  double metres() {
    return length.si();
  }

  /** A property of the section. */
  Given property(double si) {
    return From.table(si, "section tables", section.name());
  }
}
