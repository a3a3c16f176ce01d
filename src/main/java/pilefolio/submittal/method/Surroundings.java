package pilefolio.submittal.method;

import java.util.List;
import java.util.Optional;
import pilefolio.checks.movement.TriggerLevels;
import pilefolio.model.Monitoring;
import pilefolio.model.Neighbour;
import pilefolio.model.Submission;
import pilefolio.model.Value;
import pilefolio.units.Units;

/** What stands beside the works, what is measured there, and who is named for what. */
final class Surroundings {
  private Surroundings() {}

  /**
   * Neighbours: facts {@code distance}, {@code foundation}, {@code settlement}, {@code vibration};
   * words {@code kind}, {@code run}, {@code note}.
   */
  static List<Item> neighbours(Submission submission, FactWriter writer) {
    return submission.neighbours().stream().map(n -> neighbour(n, writer)).toList();
  }

  private static Item neighbour(Neighbour n, FactWriter writer) {
    return new ItemBuilder(writer, n.name(), "")
        .words("kind", n.kind().label())
        .words("code", n.kind().name())
        .words("run", n.run())
        .words("note", n.note())
        .value("distance", n.distance(), Units.M)
        .level("foundation", n.foundation())
        .value("settlement", n.settlementLimit(), Units.MM)
        .fact("vibration", n.vibrationLimit().map(v -> writer.entered(v, Units.of("mm/s"))))
        .build();
  }

  /**
   * Measurements: facts {@code amber}, {@code red} in the unit of the cell, {@code expected} as the
   * calculations have it; words {@code location}, {@code quantity}, {@code frequency}, {@code
   * responsible}.
   */
  static List<Item> monitoring(Submission submission, FactWriter writer) {
    return submission.monitoring().stream().map(m -> measurement(submission, m, writer)).toList();
  }

  private static Item measurement(Submission submission, Monitoring m, FactWriter writer) {
    return new ItemBuilder(writer, m.instrument(), "")
        .words("location", m.location())
        .words("quantity", m.quantity())
        .words("frequency", m.frequency())
        .words("responsible", m.responsible())
        .fact("amber", m.amber().map(v -> trigger(v, writer)))
        .fact("red", m.red().map(v -> trigger(v, writer)))
        .fact("expected", expected(submission, m, writer))
        .build();
  }

  /** The movement that the calculations compare the triggers with, if they could. */
  private static Optional<Fact> expected(Submission submission, Monitoring m, FactWriter writer) {
    String run =
        submission.neighbours().stream()
            .filter(n -> m.neighbour().filter(n.name()::equals).isPresent())
            .map(Neighbour::run)
            .findFirst()
            .or(m::run)
            .orElse("");
    return writer.result(TriggerLevels.ID, run, TriggerLevels.name(m), "δ_E");
  }

  private static Fact trigger(Value value, FactWriter writer) {
    return writer.value(value, value.unit());
  }

  /** People: words {@code name}, {@code organisation}, {@code contact}. */
  static List<Item> people(Submission submission, FactWriter writer) {
    return submission.people().stream()
        .map(
            p ->
                new ItemBuilder(writer, p.role(), "")
                    .words("name", p.name())
                    .words("organisation", p.organisation())
                    .words("contact", p.contact())
                    .words("at", p.at().address())
                    .build())
        .toList();
  }
}
