package pilefolio.analysis.sequence;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * The board on which piles are put onto days, one after the other, each on the first day that keeps
 * every rule. Used again and again by the search; holds no engineering of its own beyond the rules.
 */
final class DayBoard {
  private static final double MINUTE_SLACK = 1e-9;

  final SequenceJob job;
  final int size;
  final WallPile[] pile;
  final int[][] flanks;
  final int[][] flanked;

  /** Working days, as days after the start. */
  final int[] working;

  final int lastDay;
  final int waiting;
  private final int[] firstAge;
  private final int[] lastAge;
  private final int[][] near;
  private final boolean[][] nearIsFresh;
  private final boolean[][] selfIsFresh;
  private final int[] workingIndexFrom;
  private final boolean[][] crewFits;

  private final double[][] minutesLeft;
  private final double[] concreteLeft;

  private final double[][] primariesLeft;

  /** Day of each pile, or −1. */
  final int[] day;

  final int[] crew;
  private final int[] pending;
  private final int[] runOf;
  private final int[] release;
  private boolean lookAhead;

  DayBoard(SequenceJob job) {
    this.job = job;
    size = job.piles().size();
    pile = job.piles().toArray(new WallPile[0]);
    Map<String, Integer> index = new HashMap<>();
    for (int i = 0; i < size; i++) {
      index.put(pile[i].mark(), i);
    }
    flanks = new int[size][];
    List<List<Integer>> back = new ArrayList<>();
    for (int i = 0; i < size; i++) {
      back.add(new ArrayList<>());
    }
    for (int i = 0; i < size; i++) {
      flanks[i] = pile[i].flanks().stream().mapToInt(index::get).toArray();
      for (int flank : flanks[i]) {
        back.get(flank).add(i);
      }
    }
    flanked = back.stream().map(DayBoard::array).toArray(int[][]::new);
    double spread = job.rules().shiftHours() / 24;
    firstAge = new int[size];
    lastAge = new int[size];
    for (int i = 0; i < size; i++) {
      StrengthWindow window = pile[i].window();
      if (window != null) {
        firstAge[i] = (int) Math.ceil(window.from() + spread - 1e-9);
        lastAge[i] = (int) Math.floor(Math.min(window.to() - spread, 10_000) + 1e-9);
      }
    }
    waiting = job.rules().fresh().waitingDays();
    near = new int[size][];
    nearIsFresh = new boolean[size][];
    selfIsFresh = new boolean[size][];
    findNear();
    int horizon = horizon();
    lastDay = horizon - 1;
    working = IntStream.range(0, horizon).filter(job.calendar()::worksOn).toArray();
    workingIndexFrom = new int[horizon + 1];
    int next = working.length;
    workingIndexFrom[horizon] = next;
    for (int d = horizon - 1; d >= 0; d--) {
      if (next > 0 && working[next - 1] == d) {
        next--;
      }
      workingIndexFrom[d] = next;
    }
    crewFits = new boolean[size][job.crews().size()];
    for (int i = 0; i < size; i++) {
      for (int c = 0; c < job.crews().size(); c++) {
        crewFits[i][c] = job.crews().get(c).worksOn(pile[i].run());
      }
    }
    minutesLeft = new double[working.length][job.crews().size()];
    concreteLeft = new double[working.length];
    primariesLeft = new double[working.length][job.crews().size()];
    day = new int[size];
    crew = new int[size];
    pending = new int[size];
    release = new int[size];
    runOf = new int[size];
    List<String> runs = job.piles().stream().map(WallPile::run).distinct().toList();
    for (int i = 0; i < size; i++) {
      runOf[i] = runs.indexOf(pile[i].run());
    }
    clear(1, false);
  }

  private static int[] array(List<Integer> list) {
    return list.stream().mapToInt(Integer::intValue).toArray();
  }

  /** Piles whose distance matters while one of the pair is fresh. */
  private void findNear() {
    FreshPileRule fresh = job.rules().fresh();
    for (int i = 0; i < size; i++) {
      List<Integer> found = new ArrayList<>();
      for (int j = 0; j < size; j++) {
        if (j != i && waiting > 0 && (blocks(fresh, i, j) || blocks(fresh, j, i))) {
          found.add(j);
        }
      }
      near[i] = array(found);
      nearIsFresh[i] = new boolean[near[i].length];
      selfIsFresh[i] = new boolean[near[i].length];
      for (int k = 0; k < near[i].length; k++) {
        nearIsFresh[i][k] = blocks(fresh, near[i][k], i);
        selfIsFresh[i][k] = blocks(fresh, i, near[i][k]);
      }
    }
  }

  /** Whether a fresh pile lies too close to another; a distance equal to the limit is enough. */
  private boolean blocks(FreshPileRule rule, int fresh, int other) {
    double apart = Math.hypot(pile[fresh].x() - pile[other].x(), pile[fresh].y() - pile[other].y());
    return apart < rule.distance(pile[fresh].diameter()) - 1e-6;
  }

  private int horizon() {
    int latest = job.rules().latestDay();
    if (latest != SequenceRules.OPEN_END) {
      return latest + 1;
    }
    double perShift = job.crews().stream().mapToDouble(Crew::minutes).sum();
    double all = job.piles().stream().mapToDouble(WallPile::minutes).sum();
    double poured = job.piles().stream().mapToDouble(WallPile::concrete).sum();
    double shifts = Math.max(all / perShift, poured / job.rules().dailyConcrete());
    // Room for weekends, waiting and holidays; no order worth having is slower than this.
    return (int) Math.min(1500, 150 + 4 * shifts);
  }

  /** Empties the board, opens a share of every shift to primaries and says how far to look. */
  void clear(double share, boolean looking) {
    clear(share, looking, 0, 0);
  }

  /** As above, and holds the first run back to a working day, every later run by some more. */
  void clear(double share, boolean looking, int start, int next) {
    lookAhead = looking;
    for (int p = 0; p < size; p++) {
      int w = start + next * runOf[p];
      release[p] = w < working.length ? working[w] : lastDay + 1;
    }
    for (double[] left : primariesLeft) {
      for (int c = 0; c < left.length; c++) {
        left[c] = share * job.crews().get(c).minutes();
      }
    }
    Arrays.fill(day, -1);
    Arrays.fill(crew, -1);
    for (double[] left : minutesLeft) {
      for (int c = 0; c < left.length; c++) {
        left[c] = job.crews().get(c).minutes();
      }
    }
    Arrays.fill(concreteLeft, job.rules().dailyConcrete());
  }

  int firstAgeOf(int p) {
    return firstAge[p];
  }

  int lastAgeOf(int p) {
    return lastAge[p];
  }

  /** Puts a finished plan back on the board. */
  void restore(int[] days, int[] crews) {
    clear(1, false);
    Map<Integer, Integer> index = new HashMap<>();
    for (int w = 0; w < working.length; w++) {
      index.put(working[w], w);
    }
    for (int p = 0; p < size; p++) {
      day[p] = days[p];
      crew[p] = crews[p];
      if (days[p] >= 0) {
        minutesLeft[index.get(days[p])][crews[p]] -= pile[p].minutes();
        concreteLeft[index.get(days[p])] -= pile[p].concrete();
      }
    }
  }

  /** Days between which a pile may lie as far as its primaries or fellow primaries tell. */
  int[] span(int p) {
    int from = release[p];
    int to = lastDay;
    if (pile[p].isPrimary()) {
      for (int s : flanked[p]) {
        for (int other : flanks[s]) {
          if (other != p && day[other] >= 0) {
            int apart = job.rules().flankAgeDifference();
            from = Math.max(from, day[other] - apart);
            to = Math.min(to, Math.min(day[other], lastDay) + Math.min(apart, lastDay));
            if (lookAhead) {
              from = Math.max(from, day[other] + firstAge[other] - lastAge[p]);
              to = Math.min(to, day[other] + lastAge[other] - firstAge[p]);
            }
          }
        }
      }
    } else {
      for (int flank : flanks[p]) {
        if (day[flank] < 0) {
          return new int[] {1, 0};
        }
        from = Math.max(from, day[flank] + firstAge[flank]);
        to = Math.min(to, day[flank] + lastAge[flank]);
      }
    }
    return new int[] {from, to};
  }

  /** Puts a pile onto the first day that keeps every rule; false if there is none. */
  boolean place(int p) {
    int[] span = span(p);
    if (span[0] > span[1]) {
      return false;
    }
    for (int w = workingIndexFrom[span[0]]; w < working.length && working[w] <= span[1]; w++) {
      if (placeOn(p, w)) {
        return true;
      }
    }
    return false;
  }

  /** Puts a pile onto one working day inside its span, if every other rule is kept there. */
  private boolean placeOn(int p, int w) {
    int c = crewWithTime(p, w);
    if (c < 0
        || concreteLeft[w] < pile[p].concrete() - MINUTE_SLACK
        || freshNeighbour(p, working[w]) >= 0
        || (lookAhead && pile[p].isPrimary() && !leavesRoom(p, working[w]))) {
      return false;
    }
    day[p] = working[w];
    crew[p] = c;
    minutesLeft[w][c] -= pile[p].minutes();
    concreteLeft[w] -= pile[p].concrete();
    if (pile[p].isPrimary()) {
      primariesLeft[w][c] -= pile[p].minutes();
    }
    return true;
  }

  /**
   * Fills the days one after the other: first the piles that have few working days left, then the
   * others as the order says.
   */
  void fillDayByDay(int[] order, int urgent) {
    int left = size;
    long[] keys = new long[size];
    for (int w = 0; w < working.length && left > 0; w++) {
      int count = 0;
      for (int rank = 0; rank < size; rank++) {
        int p = order[rank];
        if (day[p] < 0) {
          int[] span = span(p);
          if (span[0] <= working[w] && working[w] <= span[1]) {
            int slack = workingIndexFrom[span[1] + 1] - 1 - w;
            keys[count++] = ((long) Math.min(slack, urgent + 1) * size + rank) * size + p;
          }
        }
      }
      Arrays.sort(keys, 0, count);
      for (int k = 0; k < count; k++) {
        int p = (int) (keys[k] % size);
        int[] span = span(p);
        if (span[0] <= working[w] && working[w] <= span[1] && placeOn(p, w)) {
          left--;
        }
      }
    }
  }

  /** Number of working days on which a secondary could still be made. */
  int openDays(int p) {
    int[] span = span(p);
    int open = 0;
    for (int d = span[0]; d <= span[1]; d++) {
      int w = workingIndexFrom[d];
      if (w < working.length && working[w] == d && freshNeighbour(p, d) < 0) {
        open++;
      }
    }
    return open;
  }

  /** Rig with the most time left on a working day that still fits the pile, or −1. */
  private int crewWithTime(int p, int w) {
    int best = -1;
    for (int c = 0; c < crewFits[p].length; c++) {
      if (crewFits[p][c]
          && minutesLeft[w][c] >= pile[p].minutes() - MINUTE_SLACK
          && (!pile[p].isPrimary() || primariesLeft[w][c] > MINUTE_SLACK)
          && (best < 0 || minutesLeft[w][c] > minutesLeft[w][best])) {
        best = c;
      }
    }
    return best;
  }

  /** A pile that forbids the day because one of the two is then fresh, or −1. */
  private int freshNeighbour(int p, int d) {
    for (int k = 0; k < near[p].length; k++) {
      int other = near[p][k];
      int when = day[other];
      if (when >= 0
          && ((when <= d && nearIsFresh[p][k] && d - when < waiting)
              || (when >= d && selfIsFresh[p][k] && when - d < waiting))) {
        return other;
      }
    }
    return -1;
  }

  /**
   * Whether the secondaries around a primary made on this day, and the primaries next to it that
   * have no day yet, would all still find one.
   */
  private boolean leavesRoom(int p, int d) {
    day[p] = d;
    boolean room = secondariesFit(p, true) && nextPrimariesFit(p);
    day[p] = -1;
    return room;
  }

  private boolean nextPrimariesFit(int p) {
    for (int s : flanked[p]) {
      for (int other : flanks[s]) {
        if (day[other] < 0 && !fitsSomewhere(other)) {
          return false;
        }
      }
    }
    return true;
  }

  private boolean fitsSomewhere(int primary) {
    int[] span = span(primary);
    if (span[0] > span[1]) {
      return false;
    }
    boolean fits = false;
    for (int w = workingIndexFrom[span[0]];
        !fits && w < working.length && working[w] <= span[1];
        w++) {
      if (crewWithTime(primary, w) >= 0 && freshNeighbour(primary, working[w]) < 0) {
        day[primary] = working[w];
        fits = secondariesFit(primary, false);
        day[primary] = -1;
      }
    }
    return fits;
  }

  /** Puts the secondaries around a primary on days for a moment, the most pressing first. */
  private boolean secondariesFit(int p, boolean andThoseNear) {
    int count = 0;
    for (int s : flanked[p]) {
      if (!flanksPlaced(s)) {
        if (!dayFromOneFlank(p)) {
          return false;
        }
      } else if (day[s] < 0) {
        pending[count++] = s;
      }
    }
    if (andThoseNear) {
      for (int other : near[p]) {
        if (day[other] < 0 && !pile[other].isPrimary() && flanksPlaced(other)) {
          boolean known = false;
          for (int k = 0; k < count; k++) {
            known |= pending[k] == other;
          }
          if (!known) {
            pending[count++] = other;
          }
        }
      }
    }
    int put = 0;
    boolean fits = true;
    while (fits && put < count) {
      int pick = put;
      for (int k = put; k < count; k++) {
        if (span(pending[k])[1] < span(pending[pick])[1]) {
          pick = k;
        }
      }
      int s = pending[pick];
      pending[pick] = pending[put];
      pending[put] = s;
      int[] span = span(s);
      fits = false;
      if (span[0] <= span[1]) {
        for (int w = workingIndexFrom[span[0]];
            !fits && w < working.length && working[w] <= span[1];
            w++) {
          if (crewWithTime(s, w) >= 0 && freshNeighbour(s, working[w]) < 0) {
            day[s] = working[w];
            fits = true;
          }
        }
      }
      put += fits ? 1 : 0;
    }
    for (int k = 0; k < put; k++) {
      day[pending[k]] = -1;
    }
    return fits;
  }

  private boolean flanksPlaced(int s) {
    for (int flank : flanks[s]) {
      if (day[flank] < 0) {
        return false;
      }
    }
    return true;
  }

  /** Whether any working day lies inside the window of a primary on the board. */
  private boolean dayFromOneFlank(int p) {
    int from = day[p] + firstAge[p];
    int to = Math.min(lastDay, day[p] + lastAge[p]);
    return from <= to
        && workingIndexFrom[from] < working.length
        && working[workingIndexFrom[from]] <= to;
  }

  /** Why a pile has no day on this board as it stands. */
  Infeasible.BlockedPile explain(int p) {
    List<Infeasible.BlockedDay> days = new ArrayList<>();
    for (int flank : flanks[p]) {
      if (day[flank] < 0) {
        return new Infeasible.BlockedPile(pile[p].mark(), SequenceRule.PRIMARY_MISSING, days);
      }
    }
    int[] span = span(p);
    if (span[0] > span[1]) {
      SequenceRule rule =
          span[0] > lastDay
              ? SequenceRule.LATEST_DAY
              : pile[p].isPrimary() ? SequenceRule.AGE_DIFFERENCE : SequenceRule.STRENGTH_WINDOW;
      return new Infeasible.BlockedPile(pile[p].mark(), rule, days);
    }
    Map<SequenceRule, Integer> counts = new EnumMap<>(SequenceRule.class);
    for (int d = span[0]; d <= span[1]; d++) {
      int w = workingIndexFrom[d];
      boolean works = w < working.length && working[w] == d;
      int fresh = freshNeighbour(p, d);
      SequenceRule rule;
      if (!works) {
        rule = SequenceRule.WORKING_DAYS;
      } else if (fresh >= 0) {
        rule = SequenceRule.FRESH_PILE;
      } else if (crewWithTime(p, w) < 0) {
        rule = SequenceRule.SHIFT;
      } else if (concreteLeft[w] < pile[p].concrete() - MINUTE_SLACK) {
        rule = SequenceRule.CONCRETE;
      } else {
        rule = SequenceRule.STRENGTH_WINDOW;
      }
      counts.merge(rule, 1, Integer::sum);
      if (days.size() < 12) {
        days.add(
            new Infeasible.BlockedDay(
                job.calendar().date(d),
                rule,
                rule == SequenceRule.FRESH_PILE
                    ? Optional.of(pile[fresh].mark())
                    : Optional.empty()));
      }
    }
    return new Infeasible.BlockedPile(pile[p].mark(), commonest(counts), days);
  }

  /** The commonest reason; working days only when nothing else stands in the way. */
  private static SequenceRule commonest(Map<SequenceRule, Integer> counts) {
    SequenceRule best = SequenceRule.WORKING_DAYS;
    int most = 0;
    for (Map.Entry<SequenceRule, Integer> entry : counts.entrySet()) {
      if (entry.getKey() != SequenceRule.WORKING_DAYS && entry.getValue() > most) {
        most = entry.getValue();
        best = entry.getKey();
      }
    }
    return best;
  }
}
