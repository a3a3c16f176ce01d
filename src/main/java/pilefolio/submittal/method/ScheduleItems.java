package pilefolio.submittal.method;

import java.util.List;
import java.util.OptionalDouble;
import pilefolio.model.PileKind;
import pilefolio.submittal.schedule.PileLine;
import pilefolio.submittal.schedule.PileSchedule;
import pilefolio.submittal.schedule.QuantityLine;
import pilefolio.units.Unit;
import pilefolio.units.Units;

/** The pile schedule and the quantities as final texts. */
final class ScheduleItems {
  private ScheduleItems() {}

  /**
   * One row a pile: order, mark, east, north, diameter, toe, drilled length, concrete, mix, beam,
   * date, crew and place in the shift. What is not known is a dash.
   */
  static List<List<String>> piles(PileSchedule schedule, FactWriter writer) {
    return schedule.inOrder().stream().map(line -> pile(line, writer)).toList();
  }

  private static List<String> pile(PileLine line, FactWriter writer) {
    return List.of(
        line.planned().map(p -> String.valueOf(p.order())).orElse("–"),
        line.pile().mark(),
        writer.levelNumber(line.pile().east()),
        writer.levelNumber(line.pile().north()),
        writer.number(line.diameter(), Units.MM),
        line.toe().isPresent() ? writer.levelNumber(line.toe().getAsDouble()) : "–",
        number(line.drilled(), Units.M, writer),
        number(line.volume(), Units.M3, writer),
        line.mix(),
        line.beam().orElse("–"),
        line.planned().map(p -> ProgrammeSummary.date(p.date())).orElse("–"),
        line.planned().map(p -> p.crew() + ", " + p.place()).orElse("–"));
  }

  /** Units of the columns of {@link #piles}. */
  static List<String> units(FactWriter writer) {
    return List.of(
        "",
        "",
        writer.unit(Units.M),
        writer.unit(Units.M),
        writer.unit(Units.MM),
        writer.unit(Units.M),
        writer.unit(Units.M),
        writer.unit(Units.M3),
        "",
        "",
        "",
        "");
  }

  /**
   * Quantities by wall run and kind of pile: facts {@code count}, {@code diameter}, {@code
   * drilled}, {@code volume}, {@code total}; words {@code kind}, {@code mix}, {@code beam}.
   */
  static List<Item> quantities(List<QuantityLine> lines, FactWriter writer) {
    return lines.stream().map(line -> quantity(line, writer)).toList();
  }

  private static Item quantity(QuantityLine line, FactWriter writer) {
    ItemBuilder item =
        new ItemBuilder(writer, line.run(), "")
            .words("kind", line.kind() == PileKind.PRIMARY ? "primaries" : "secondaries")
            .words("mix", line.mix())
            .words("beam", line.beam().orElse(""))
            .words("count", String.valueOf(line.count()))
            .words("diameter", writer.text(line.diameter(), Units.MM));
    line.levels()
        .ifPresent(
            a ->
                item.fact(
                    "drilled",
                    new Fact(
                        writer.text(line.drilled().orElseThrow(), Units.M), FactWriter.source(a))));
    line.concrete()
        .ifPresent(
            a -> {
              String source = FactWriter.source(a);
              item.fact(
                  "volume", new Fact(writer.text(line.volume().orElseThrow(), Units.M3), source));
              item.fact(
                  "total", new Fact(writer.text(line.total().orElseThrow(), Units.M3), source));
            });
    return item.build();
  }

  private static String number(OptionalDouble value, Unit unit, FactWriter writer) {
    return value.isPresent() ? writer.number(value.getAsDouble(), unit) : "–";
  }
}
