package pilefolio.analysis.sequence;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Counts again, from the dates alone, whether a programme keeps every rule. Shares nothing with the
 * search, so that a programme is never right only because its maker says so.
 */
public final class ProgrammeAudit {
  private ProgrammeAudit() {}

  /**
   * One broken rule.
   *
   * @param rule the rule
   * @param mark the pile
   * @param other the other pile, day or rig concerned
   */
  public record Broken(SequenceRule rule, String mark, String other) {}

  /**
   * Every rule a programme breaks.
   *
   * @param job piles, rigs, calendar and rules
   * @param programme the programme
   * @return the broken rules; empty if all are kept
   */
  public static List<Broken> broken(SequenceJob job, Programme programme) {
    List<Broken> broken = new ArrayList<>();
    Map<String, Programme.PlannedPile> planned = new HashMap<>();
    programme.piles().forEach(p -> planned.put(p.mark(), p));
    Map<String, WallPile> piles = new HashMap<>();
    job.piles().forEach(p -> piles.put(p.mark(), p));
    Map<String, Double> minutes = new HashMap<>();
    Map<Integer, Double> concrete = new HashMap<>();
    SequenceRules rules = job.rules();
    for (WallPile pile : job.piles()) {
      Programme.PlannedPile entry = planned.get(pile.mark());
      if (entry == null) {
        broken.add(new Broken(SequenceRule.PRIMARY_MISSING, pile.mark(), ""));
        continue;
      }
      if (!job.calendar().worksOn(entry.day())) {
        broken.add(new Broken(SequenceRule.WORKING_DAYS, pile.mark(), entry.date().toString()));
      }
      if (entry.day() > rules.latestDay()) {
        broken.add(new Broken(SequenceRule.LATEST_DAY, pile.mark(), entry.date().toString()));
      }
      minutes.merge(entry.day() + " " + entry.crew(), pile.minutes(), Double::sum);
      concrete.merge(entry.day(), pile.concrete(), Double::sum);
      int youngest = Integer.MAX_VALUE;
      int oldest = Integer.MIN_VALUE;
      for (String flank : pile.flanks()) {
        Programme.PlannedPile primary = planned.get(flank);
        if (primary == null) {
          continue;
        }
        int age = entry.day() - primary.day();
        youngest = Math.min(youngest, age);
        oldest = Math.max(oldest, age);
        if (!piles.get(flank).window().holds(age, rules.shiftHours() / 24 - 1e-9)) {
          broken.add(new Broken(SequenceRule.STRENGTH_WINDOW, pile.mark(), flank));
        }
      }
      if (oldest - (long) youngest > rules.flankAgeDifference()) {
        broken.add(new Broken(SequenceRule.AGE_DIFFERENCE, pile.mark(), ""));
      }
      for (WallPile fresh : job.piles()) {
        Programme.PlannedPile other = planned.get(fresh.mark());
        if (other == null || fresh.equals(pile) || other.day() > entry.day()) {
          continue;
        }
        double apart = Math.hypot(fresh.x() - pile.x(), fresh.y() - pile.y());
        double hours = 24.0 * (entry.day() - other.day());
        if (apart < rules.fresh().distance(fresh.diameter()) - 1e-6
            && rules.fresh().hours() > 0
            && (entry.day() == other.day() || hours < rules.fresh().hours() - 1e-6)) {
          broken.add(new Broken(SequenceRule.FRESH_PILE, pile.mark(), fresh.mark()));
        }
      }
    }
    for (Crew crew : job.crews()) {
      minutes.forEach(
          (key, used) -> {
            if (key.endsWith(" " + crew.name()) && used > crew.minutes() + 1e-6) {
              broken.add(new Broken(SequenceRule.SHIFT, "", key));
            }
          });
    }
    concrete.forEach(
        (day, used) -> {
          if (used > rules.dailyConcrete() + 1e-6) {
            broken.add(new Broken(SequenceRule.CONCRETE, "", String.valueOf(day)));
          }
        });
    return broken;
  }
}
