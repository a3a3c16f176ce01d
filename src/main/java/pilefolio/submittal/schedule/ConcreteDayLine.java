package pilefolio.submittal.schedule;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;

/**
 * Concrete of one mix on one day.
 *
 * @param date the day
 * @param mix id of the mix
 * @param piles number of piles
 * @param volume concrete to order, m³; absent if the volume of one of the piles is not known
 */
public record ConcreteDayLine(LocalDate date, String mix, int piles, OptionalDouble volume) {

  /** Day by day, mixes in the order of their names; empty without a programme. */
  public static List<ConcreteDayLine> all(PileSchedule schedule) {
    Map<LocalDate, Map<String, List<PileLine>>> days = new TreeMap<>();
    for (PileLine pile : schedule.piles()) {
      pile.planned()
          .ifPresent(
              planned ->
                  days.computeIfAbsent(planned.date(), d -> new TreeMap<>())
                      .computeIfAbsent(pile.mix(), m -> new ArrayList<>())
                      .add(pile));
    }
    List<ConcreteDayLine> lines = new ArrayList<>();
    days.forEach(
        (date, mixes) ->
            mixes.forEach(
                (mix, piles) ->
                    lines.add(new ConcreteDayLine(date, mix, piles.size(), volume(piles)))));
    return lines;
  }

  private static OptionalDouble volume(List<PileLine> piles) {
    return piles.stream().allMatch(p -> p.volume().isPresent())
        ? OptionalDouble.of(piles.stream().mapToDouble(p -> p.volume().getAsDouble()).sum())
        : OptionalDouble.empty();
  }
}
