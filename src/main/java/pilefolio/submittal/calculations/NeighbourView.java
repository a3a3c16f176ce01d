package pilefolio.submittal.calculations;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import pilefolio.checks.movement.NeighbourMovement;
import pilefolio.checks.movement.NeighbourMovement.AtStage;
import pilefolio.checks.movement.NeighbourMovement.Building;
import pilefolio.model.Monitoring;
import pilefolio.model.Neighbour;
import pilefolio.model.Value;
import pilefolio.submittal.Submittal;
import pilefolio.submittal.ValueText;
import pilefolio.units.Units;

/**
 * What a neighbour may expect, in words for people who do not design walls.
 *
 * @param name its name
 * @param run the wall it stands behind
 * @param distance distance of its near side
 * @param stages settlement by stage, each with the stage's number and description
 * @param settlement greatest settlement
 * @param slope slope of the ground under it, as 1 in n; a dash if not asked for
 * @param strain tensile strain; a dash if not asked for
 * @param damage category in words; a dash if it is no building
 * @param look what an owner would see; empty if it is no building
 * @param limit settlement and damage allowed
 * @param triggers triggers of the measurements on it
 */
public record NeighbourView(
    String name,
    String run,
    String distance,
    List<List<String>> stages,
    String settlement,
    String slope,
    String strain,
    String damage,
    String look,
    String limit,
    String triggers) {

  private static final String NONE = "–";

  /** The neighbours whose movement is known, in the order of the workbook. */
  static List<NeighbourView> of(Submittal submittal) {
    return NeighbourMovement.all(submittal.job()).stream()
        .filter(NeighbourMovement::known)
        .map(m -> view(submittal, m))
        .toList();
  }

  private static NeighbourView view(Submittal submittal, NeighbourMovement m) {
    ValueText text = new ValueText(submittal.system());
    Neighbour n = m.neighbour();
    Optional<Building> building = n.building() ? m.building() : Optional.empty();
    return new NeighbourView(
        n.name(),
        n.run(),
        text.of(n.distance(), Units.M),
        m.stages().stream()
            .sorted(Comparator.comparingInt(at -> at.stage().stage().number()))
            .map(at -> List.of(at.stage().label(), settlement(text, at)))
            .toList(),
        settlement(text, m.worst()),
        building.map(b -> slope(b.slope())).orElse(NONE),
        building.map(b -> strain(text, b)).orElse(NONE),
        n.building()
            ? building
                .map(b -> b.category().number() + ", " + b.category().title())
                .orElse("not known")
            : NONE,
        building.map(b -> b.category().words()).orElse(""),
        limit(text, n),
        triggers(submittal, text, n));
  }

  private static String settlement(ValueText text, AtStage at) {
    return text.of(at.settlement(), Units.MM);
  }

  // A slope is known no better than two digits of its n.
  private static String slope(double slope) {
    double n = 1 / slope;
    if (!(n < 100_000)) {
      return "none";
    }
    double step = Math.pow(10, Math.floor(Math.log10(n)) - 1);
    return String.format(Locale.ROOT, "1 in %.0f", Math.floor(n / step) * step);
  }

  private static String strain(ValueText text, Building b) {
    return b.screened() ? "first look" : text.of(b.strain(), Units.PERCENT);
  }

  private static String limit(ValueText text, Neighbour n) {
    List<String> parts = new ArrayList<>();
    n.settlementLimit().ifPresent(v -> parts.add(text.of(v, Units.MM)));
    n.form().allowed().ifPresent(a -> parts.add("damage " + a.label()));
    return parts.isEmpty() ? "not given" : String.join(", ", parts);
  }

  private static String triggers(Submittal submittal, ValueText text, Neighbour n) {
    List<String> parts = new ArrayList<>();
    for (Monitoring one : submittal.job().submission().monitoring()) {
      if (one.neighbour().filter(n.name()::equals).isPresent()) {
        parts.add(trigger(text, "amber ", one.amber()) + trigger(text, ", red ", one.red()));
      }
    }
    return parts.isEmpty() ? "not given" : String.join("; ", parts);
  }

  private static String trigger(ValueText text, String words, Optional<Value> value) {
    return value.map(v -> words + text.of(v, Units.MM)).orElse("");
  }
}
