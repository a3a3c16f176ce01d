package pilefolio.analysis.sequence;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Finds a day for every pile of a secant wall. Many orders are tried, those with all primaries
 * first and those that mix both kinds; in each order a pile goes onto the first day that keeps
 * every rule. The same job always gives the same programme. Distances to fresh piles, windows of
 * real days, shifts, days off, concrete per day and the latest day are kept by construction and can
 * be counted again by {@link ProgrammeAudit}.
 */
public final class Scheduler {
  private static final long EFFORT = 200_000;
  private static final int RELAXED_SHARE = 8;
  private static final int REPAIRS = 40;

  private Scheduler() {}

  /**
   * Searches for the programme that ends first.
   *
   * @param job piles, rigs, calendar and rules
   * @return a programme, or what stands in its way and what single change was found to help
   */
  public static SequenceOutcome programme(SequenceJob job) {
    Search search = new Search(job, EFFORT);
    search.run();
    if (search.best.missing() == 0) {
      return search.best.programme(search.board, search.tried);
    }
    return new Infeasible(
        search.plainest().blocked(search.board),
        new Relaxing(job, EFFORT / RELAXED_SHARE).all(),
        search.tried);
  }

  /**
   * Follows one order with all primaries first; each pile goes onto its first possible day, then
   * the secondaries with the fewest days left go first.
   *
   * @param job piles, rigs, calendar and rules
   * @param primaries marks of all primaries in the order they are made
   * @return a programme, or the piles for which this order leaves no day
   */
  public static SequenceOutcome primariesInOrder(SequenceJob job, List<String> primaries) {
    DayBoard board = new DayBoard(job);
    Map<String, Integer> index = new HashMap<>();
    for (int i = 0; i < board.size; i++) {
      index.put(board.pile[i].mark(), i);
    }
    List<Integer> order = new ArrayList<>();
    primaries.forEach(mark -> order.add(index.get(mark)));
    for (int i = 0; i < board.size; i++) {
      if (!board.pile[i].isPrimary()) {
        order.add(i);
      }
    }
    Attempt attempt = Attempt.primariesFirst(board, HitAndMiss.array(order), false);
    return attempt.missing() == 0
        ? attempt.programme(board, 1)
        : new Infeasible(attempt.blocked(board), List.of(), 1);
  }

  /** Whether a programme is found with limited effort, and when it ends; −1 if none. */
  static int lastDay(SequenceJob job, long effort) {
    Search search = new Search(job, effort);
    search.stopAtFirst = true;
    search.run();
    return search.best.missing() == 0 ? search.best.finish() : -1;
  }

  /** One pass over the orders. */
  private static final class Search {
    final DayBoard board;
    final long limit;
    boolean stopAtFirst;
    Attempt best;
    int tried;

    Search(SequenceJob job, long effort) {
      board = new DayBoard(job);
      limit = Math.max(20, effort / board.size);
    }

    void run() {
      HitAndMiss orders = new HitAndMiss(board);
      for (int[] order : orders.primariesFirst()) {
        keep(Attempt.primariesFirst(board, order, true));
        keep(Attempt.primariesFirst(board, order, false));
      }
      int earliest = earliestFinish();
      HitAndMiss.Paced pace = null;
      for (HitAndMiss.Paced order : orders.interleaved()) {
        if (tried >= limit || done(earliest)) {
          break;
        }
        if (keep(Attempt.inOrder(board, order)) || pace == null) {
          pace = order;
        }
      }
      for (int repair = 0; repair < REPAIRS && best.missing() > 0; repair++) {
        keep(Attempt.inOrder(board, pace.with(best.withMissingEarlier(board, repair))));
      }
    }

    /**
     * The plan that shows best what stands in the way. Looking ahead keeps a primary off the board
     * for the sake of a secondary; without it the secondary itself is left and named.
     */
    Attempt plainest() {
      Attempt plain = null;
      for (int[] order : new HitAndMiss(board).primariesFirst()) {
        Attempt attempt = Attempt.primariesFirst(board, order, false);
        plain = plain == null || attempt.betterThan(plain) ? attempt : plain;
      }
      Attempt same = Attempt.withoutLooking(board, best.order());
      return same.betterThan(plain) ? same : plain;
    }

    private boolean done(int earliest) {
      return best.missing() == 0 && (stopAtFirst || best.finish() <= earliest);
    }

    private boolean keep(Attempt attempt) {
      tried++;
      if (best == null || attempt.betterThan(best)) {
        best = attempt;
        return true;
      }
      return false;
    }

    /** No programme can end before the rigs have had the time for all piles. */
    private int earliestFinish() {
      double minutes = 0;
      for (WallPile pile : board.pile) {
        minutes += pile.minutes();
      }
      double perDay = board.job.crews().stream().mapToDouble(Crew::minutes).sum();
      int days = (int) Math.ceil(minutes / perDay - 1e-9);
      return days > board.working.length ? Integer.MAX_VALUE : board.working[days - 1];
    }
  }

  /**
   * One filled board.
   *
   * @param order order in which piles were put on the board
   * @param day day of each pile or −1
   * @param crew rig of each pile or −1
   * @param missing number of piles without a day
   * @param finish last day
   * @param total sum of all days, to prefer the tighter of two plans
   */
  @SuppressWarnings("ArrayRecordComponent")
  private record Attempt(int[] order, int[] day, int[] crew, int missing, int finish, long total) {

    static Attempt inOrder(DayBoard board, HitAndMiss.Paced order) {
      board.clear(order.share(), true, order.start(), order.next());
      if (order.urgent() == HitAndMiss.Paced.PILE_BY_PILE) {
        for (int p : order.piles()) {
          board.place(p);
        }
      } else {
        board.fillDayByDay(order.piles(), order.urgent());
      }
      return of(board, order.piles());
    }

    static Attempt withoutLooking(DayBoard board, int[] order) {
      board.clear(1, false);
      for (int p : order) {
        board.place(p);
      }
      return of(board, order);
    }

    static Attempt primariesFirst(DayBoard board, int[] order, boolean looking) {
      board.clear(1, looking);
      for (int p : order) {
        if (board.pile[p].isPrimary()) {
          board.place(p);
        }
      }
      List<Integer> rest = new ArrayList<>();
      int[] open = new int[board.size];
      int[] from = new int[board.size];
      for (int p : order) {
        if (!board.pile[p].isPrimary()) {
          rest.add(p);
          open[p] = board.openDays(p);
          from[p] = board.span(p)[1];
        }
      }
      rest.sort(Comparator.<Integer>comparingInt(p -> open[p]).thenComparingInt(p -> from[p]));
      rest.forEach(board::place);
      return of(board, order);
    }

    private static Attempt of(DayBoard board, int[] order) {
      int missing = 0;
      int finish = 0;
      long total = 0;
      for (int d : board.day) {
        missing += d < 0 ? 1 : 0;
        finish = Math.max(finish, d);
        total += d;
      }
      return new Attempt(order, board.day.clone(), board.crew.clone(), missing, finish, total);
    }

    boolean betterThan(Attempt other) {
      if (missing != other.missing) {
        return missing < other.missing;
      }
      return finish != other.finish ? finish < other.finish : total < other.total;
    }

    /** The same order with the piles that found no day, and their primaries, moved forward. */
    int[] withMissingEarlier(DayBoard board, int repair) {
      List<Integer> front = new ArrayList<>();
      for (int p : order) {
        if (day[p] < 0) {
          for (int flank : board.flanks[p]) {
            if (!front.contains(flank)) {
              front.add(flank);
            }
          }
          if (!front.contains(p)) {
            front.add(p);
          }
          // Alternate between one pile at a time and all of them, to leave a dead end.
          if (repair % 2 == 0) {
            break;
          }
        }
      }
      List<Integer> changed = new ArrayList<>(front);
      for (int p : order) {
        if (!front.contains(p)) {
          changed.add(p);
        }
      }
      return HitAndMiss.array(changed);
    }

    List<Infeasible.BlockedPile> blocked(DayBoard board) {
      board.restore(day, crew);
      List<Infeasible.BlockedPile> blocked = new ArrayList<>();
      for (int i = 0; i < day.length; i++) {
        if (day[i] < 0) {
          blocked.add(board.explain(i));
        }
      }
      return blocked;
    }

    Programme programme(DayBoard board, int tried) {
      Integer[] sorted = new Integer[board.size];
      Arrays.setAll(sorted, i -> i);
      Arrays.sort(
          sorted,
          Comparator.<Integer>comparingInt(p -> day[p])
              .thenComparingInt(p -> crew[p])
              .thenComparingInt(p -> p));
      List<Programme.PlannedPile> planned = new ArrayList<>();
      int place = 0;
      double gone = 0;
      int before = -1;
      int lastPrimary = -1;
      int firstSecondary = Integer.MAX_VALUE;
      for (int p : sorted) {
        if (before < 0 || day[before] != day[p] || crew[before] != crew[p]) {
          place = 0;
          gone = 0;
        }
        place++;
        planned.add(
            new Programme.PlannedPile(
                planned.size() + 1,
                board.pile[p].mark(),
                day[p],
                board.job.calendar().date(day[p]),
                board.job.crews().get(crew[p]).name(),
                place,
                gone));
        gone += board.pile[p].minutes();
        before = p;
        if (board.pile[p].isPrimary()) {
          lastPrimary = Math.max(lastPrimary, day[p]);
        } else {
          firstSecondary = Math.min(firstSecondary, day[p]);
        }
      }
      return new Programme(planned, lastPrimary < firstSecondary, tried);
    }
  }
}
