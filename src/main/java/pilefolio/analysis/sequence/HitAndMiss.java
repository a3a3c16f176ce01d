package pilefolio.analysis.sequence;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * Orders worth trying. Along a run every m-th primary and every m-th secondary form a class whose
 * piles do not disturb each other; an order runs through the classes, over the whole wall or block
 * after block. The same job always gives the same orders in the same sequence.
 */
final class HitAndMiss {
  private static final int CLASSES_SEARCHED = 12;
  private static final int NODES = 60_000;
  private static final int KEPT = 120;
  private static final double[] SHARES = {1, 0.5, 0.67, 0.34};

  private final DayBoard board;
  private final List<List<Integer>> runs = new ArrayList<>();

  /** How many piles of its kind stand before a pile in its run. */
  private final int[] ordinal;

  HitAndMiss(DayBoard board) {
    this.board = board;
    Map<String, List<Integer>> byRun = new LinkedHashMap<>();
    for (int i = 0; i < board.size; i++) {
      byRun.computeIfAbsent(board.pile[i].run(), r -> new ArrayList<>()).add(i);
    }
    runs.addAll(byRun.values());
    ordinal = new int[board.size];
    for (List<Integer> run : runs) {
      int primaries = 0;
      int secondaries = 0;
      for (int p : run) {
        ordinal[p] = board.pile[p].isPrimary() ? primaries++ : secondaries++;
      }
    }
  }

  /** Orders with every primary before the first secondary. */
  List<int[]> primariesFirst() {
    int m = everyNth();
    List<int[]> orders = new ArrayList<>();
    for (List<Integer> classes : primaryOrders(m)) {
      List<Integer> order = new ArrayList<>();
      for (int c : classes) {
        for (List<Integer> run : runs) {
          addClass(run, 2 * c, m, order);
        }
      }
      for (int i = 0; i < board.size; i++) {
        if (!board.pile[i].isPrimary()) {
          order.add(i);
        }
      }
      orders.add(array(order));
    }
    return orders;
  }

  /**
   * An order together with how it is followed.
   *
   * @param piles the order
   * @param share part of each shift open to primaries, above 0 to 1, so that time is left for the
   *     secondaries that fall due
   * @param urgent working days left from which a pile goes first when days are filled one after the
   *     other; {@link #PILE_BY_PILE} to put pile after pile onto its first possible day
   * @param start working day on which the first run starts, from 0
   * @param next working days by which every further run starts later
   */
  @SuppressWarnings("ArrayRecordComponent")
  record Paced(int[] piles, double share, int urgent, int start, int next) {
    static final int PILE_BY_PILE = -1;

    Paced(int[] piles, double share, int urgent) {
      this(piles, share, urgent, 0, 0);
    }

    Paced with(int[] other) {
      return new Paced(other, share, urgent, start, next);
    }
  }

  /** Orders that mix primaries and secondaries, the more promising first. */
  List<Paced> interleaved() {
    int m = everyNth();
    List<Paced> orders = new ArrayList<>();
    int[] along = new int[board.size];
    Arrays.setAll(along, i -> i);
    for (double share : SHARES) {
      for (int urgent : new int[] {1, 0, 2, 99}) {
        orders.add(new Paced(along, share, urgent));
      }
    }
    for (int start = 0; start < 5; start++) {
      for (int next : laterStarts()) {
        for (double share : SHARES) {
          orders.add(new Paced(along, share, 1, start, next));
          orders.add(new Paced(along, share, 2, start, next));
        }
      }
    }
    for (int[] pattern : patterns(m)) {
      for (double share : SHARES) {
        for (int block : blockLengths(m, share)) {
          int[] forward = order(pattern, m, block, false, false);
          orders.add(new Paced(forward, share, Paced.PILE_BY_PILE));
          orders.add(new Paced(forward, share, 1));
          if (runs.size() > 1) {
            int[] together = order(pattern, m, block, false, true);
            orders.add(new Paced(together, share, Paced.PILE_BY_PILE));
            orders.add(new Paced(together, share, 1));
          }
          orders.add(new Paced(order(pattern, m, block, true, false), share, Paced.PILE_BY_PILE));
        }
      }
    }
    return orders;
  }

  /** Working days by which a further run may start later: about when the first one is done. */
  private List<Integer> laterStarts() {
    List<Integer> later = new ArrayList<>(List.of(0));
    if (runs.size() > 1) {
      int firstRun = (int) Math.ceil(runs.get(0).size() / (double) perDay(1));
      for (int more = -2; more <= 5; more++) {
        later.add(Math.max(1, firstRun + more));
      }
    }
    return later;
  }

  /** Primaries from one to the next of the same class, so that none disturbs another. */
  private int everyNth() {
    int m = 1;
    for (List<Integer> run : runs) {
      List<Integer> primaries = run.stream().filter(i -> board.pile[i].isPrimary()).toList();
      for (int i = 0; i + m < primaries.size(); i++) {
        while (i + m < primaries.size() && tooClose(primaries.get(i), primaries.get(i + m))) {
          m++;
        }
      }
    }
    return m;
  }

  private boolean tooClose(int a, int b) {
    WallPile p = board.pile[a];
    WallPile q = board.pile[b];
    return board.waiting > 0
        && Math.hypot(p.x() - q.x(), p.y() - q.y())
            < board.job.rules().fresh().distance(Math.max(p.diameter(), q.diameter())) - 1e-6;
  }

  private static List<List<Integer>> primaryOrders(int m) {
    List<Integer> straight = new ArrayList<>();
    List<Integer> halving = new ArrayList<>();
    for (int c = 0; c < m; c++) {
      straight.add(c);
      halving.add(c);
    }
    halving.sort(Comparator.comparingInt(c -> Integer.reverse(c) >>> 1));
    return m > 2 ? List.of(halving, straight) : List.of(straight);
  }

  /**
   * Sequences of the 2m classes, one a day, in which every secondary class meets its two primary
   * classes inside their window. Even numbers are primaries, odd ones the secondaries after them.
   */
  private List<int[]> patterns(int m) {
    List<int[]> found = new ArrayList<>();
    List<Integer> scores = new ArrayList<>();
    if (2 * m <= CLASSES_SEARCHED) {
      int first = 0;
      int last = Integer.MAX_VALUE;
      for (int i = 0; i < board.size; i++) {
        if (board.pile[i].isPrimary()) {
          first = Math.max(first, board.firstAgeOf(i));
          last = Math.min(last, board.lastAgeOf(i));
        }
      }
      int[] day = new int[2 * m];
      Arrays.fill(day, -1);
      new PatternSearch(m, first, last, board.job.rules().flankAgeDifference(), found, scores)
          .extend(new int[2 * m], 0, day, -1);
    }
    List<Integer> rank = new ArrayList<>();
    for (int i = 0; i < found.size(); i++) {
      rank.add(i);
    }
    rank.sort(Comparator.comparing(scores::get));
    List<int[]> best = new ArrayList<>();
    for (int i : rank.subList(0, Math.min(KEPT, rank.size()))) {
      best.add(found.get(i));
    }
    for (List<Integer> classes : primaryOrders(m)) {
      int[] pattern = new int[2 * m];
      for (int i = 0; i < m; i++) {
        pattern[i] = 2 * classes.get(i);
        pattern[m + i] = 2 * classes.get(i) + 1;
      }
      best.add(pattern);
      best.add(asSoonAsFlanked(classes, m));
    }
    return best;
  }

  /** Primary classes in a given order, each secondary class right after its second primary. */
  private static int[] asSoonAsFlanked(List<Integer> classes, int m) {
    List<Integer> pattern = new ArrayList<>();
    for (int c : classes) {
      pattern.add(2 * c);
      for (int s = 0; s < m; s++) {
        boolean flanked = pattern.contains(2 * s) && pattern.contains(2 * ((s + 1) % m));
        if (flanked && !pattern.contains(2 * s + 1)) {
          pattern.add(2 * s + 1);
        }
      }
    }
    return array(pattern);
  }

  /** Depth-first search over class sequences, cut where a window is missed. */
  private static final class PatternSearch {
    private final int m;
    private final int first;
    private final int last;
    private final int apart;
    private final List<int[]> found;
    private final List<Integer> scores;
    private int nodes;

    PatternSearch(int m, int first, int last, int apart, List<int[]> found, List<Integer> scores) {
      this.m = m;
      this.first = first;
      this.last = last;
      this.apart = apart;
      this.found = found;
      this.scores = scores;
    }

    void extend(int[] pattern, int length, int[] day, int today) {
      if (nodes++ > NODES) {
        return;
      }
      if (length == 2 * m) {
        found.add(pattern.clone());
        scores.add(today);
        return;
      }
      for (int c = 0; c < 2 * m; c++) {
        if (day[c] >= 0 || (length == 0 && c > 0)) {
          continue;
        }
        int when = earliest(c, day, today + 1);
        if (when >= 0) {
          pattern[length] = c;
          day[c] = when;
          extend(pattern, length + 1, day, when);
          day[c] = -1;
        }
      }
    }

    private int earliest(int c, int[] day, int from) {
      if (c % 2 == 1) {
        int one = day[c - 1];
        int two = day[(c + 1) % (2 * m)];
        if (one < 0 || two < 0) {
          return -1;
        }
        int when = Math.max(from, Math.max(one, two) + first);
        return when <= Math.min(one, two) + last ? when : -1;
      }
      for (int step : new int[] {-2, 2}) {
        int other = day[Math.floorMod(c + step, 2 * m)];
        if (other >= 0 && from - other > Math.min(apart, last - first)) {
          return -1;
        }
      }
      return from;
    }
  }

  /** Block lengths in piles: the whole run, what a day's work fills, and shorter. */
  private List<Integer> blockLengths(int m, double share) {
    int perDay = perDay(share);
    return Stream.of(board.size, 2 * m * perDay, 2 * perDay, m * perDay, 2 * m)
        .map(length -> Math.max(2, Math.min(length, board.size)))
        .distinct()
        .toList();
  }

  /** Piles in one day when a share of all shifts is used. */
  private int perDay(double share) {
    double shift = board.job.crews().stream().mapToDouble(Crew::minutes).sum();
    double all = board.job.piles().stream().mapToDouble(WallPile::minutes).sum();
    return Math.max(1, (int) (share * shift * board.size / all + 1e-9));
  }

  private int[] order(int[] pattern, int m, int block, boolean backwards, boolean sideBySide) {
    List<List<List<Integer>>> blocks = new ArrayList<>();
    int most = 0;
    for (List<Integer> run : runs) {
      List<Integer> piles = new ArrayList<>(run);
      if (backwards) {
        Collections.reverse(piles);
      }
      List<List<Integer>> parts = new ArrayList<>();
      for (int i = 0; i < piles.size(); i += block) {
        parts.add(piles.subList(i, Math.min(piles.size(), i + block)));
      }
      blocks.add(parts);
      most = Math.max(most, parts.size());
    }
    List<Integer> order = new ArrayList<>();
    boolean[] taken = new boolean[board.size];
    if (sideBySide) {
      for (int b = 0; b < most; b++) {
        List<Integer> both = new ArrayList<>();
        for (List<List<Integer>> parts : blocks) {
          if (b < parts.size()) {
            both.addAll(parts.get(b));
          }
        }
        addBlock(both, pattern, m, order, taken);
      }
    } else {
      for (List<List<Integer>> parts : blocks) {
        for (List<Integer> part : parts) {
          addBlock(part, pattern, m, order, taken);
        }
      }
    }
    return array(order);
  }

  /** One block class by class; a secondary at its edge brings the primary it still needs. */
  private void addBlock(
      List<Integer> part, int[] pattern, int m, List<Integer> order, boolean[] taken) {
    for (int c : pattern) {
      List<Integer> members = new ArrayList<>();
      addClass(part, c, m, members);
      for (int p : members) {
        for (int flank : board.flanks[p]) {
          add(flank, order, taken);
        }
        add(p, order, taken);
      }
    }
  }

  private static void add(int p, List<Integer> order, boolean[] taken) {
    if (!taken[p]) {
      taken[p] = true;
      order.add(p);
    }
  }

  private void addClass(List<Integer> piles, int c, int m, List<Integer> order) {
    for (int p : piles) {
      boolean primary = board.pile[p].isPrimary();
      if (primary == (c % 2 == 0) && ordinal[p] % m == c / 2) {
        order.add(p);
      }
    }
  }

  static int[] array(List<Integer> list) {
    return list.stream().mapToInt(Integer::intValue).toArray();
  }
}
