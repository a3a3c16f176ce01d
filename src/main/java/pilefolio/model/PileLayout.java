package pilefolio.model;

import java.util.ArrayList;
import java.util.List;

/**
 * The piles of a run in their places: primary, secondary, primary and so on; the first and the last
 * are primaries. Plain geometry.
 *
 * @param run id of the run
 * @param piles along the run
 */
public record PileLayout(String run, List<Pile> piles) {
  /** Copies the list. */
  public PileLayout {
    piles = List.copyOf(piles);
  }

  /** Sets the piles of a run out. */
  public static PileLayout of(WallRun run) {
    if (run.type().secant()) {
      return secant(run);
    }
    return run.type().bored() ? single(run) : new PileLayout(run.id(), List.of());
  }

  private static PileLayout single(WallRun run) {
    RunLine line = run.line();
    int count = line.memberCount();
    int digits = Math.max(2, String.valueOf(count).length());
    List<Pile> piles = new ArrayList<>();
    for (int place = 0; place < count; place++) {
      double distance = place * line.spacing().si();
      piles.add(
          new Pile(
              run.id() + "-" + padded(place + 1, digits),
              run.id(),
              PileKind.SINGLE,
              place + 1,
              place,
              line.east().si() + distance * Math.sin(line.bearing().si()),
              line.north().si() + distance * Math.cos(line.bearing().si()),
              distance));
    }
    return new PileLayout(run.id(), piles);
  }

  private static PileLayout secant(WallRun run) {
    RunLine line = run.line();
    int secondaries = line.secondaryCount();
    int digits = Math.max(2, String.valueOf(secondaries + 1).length());
    double spacing = line.spacing().si();
    double eastward = Math.sin(line.bearing().si());
    double northward = Math.cos(line.bearing().si());
    List<Pile> piles = new ArrayList<>();
    for (int place = 0; place <= 2 * secondaries; place++) {
      boolean primary = place % 2 == 0;
      int number = place / 2 + 1;
      double distance = place * spacing;
      piles.add(
          new Pile(
              run.id() + (primary ? "-P" : "-S") + padded(number, digits),
              run.id(),
              primary ? PileKind.PRIMARY : PileKind.SECONDARY,
              number,
              place,
              line.east().si() + distance * eastward,
              line.north().si() + distance * northward,
              distance));
    }
    return new PileLayout(run.id(), piles);
  }

  private static String padded(int number, int digits) {
    return "0".repeat(Math.max(0, digits - String.valueOf(number).length())) + number;
  }

  /** The primaries along the run. */
  public List<Pile> primaries() {
    return piles.stream().filter(Pile::primary).toList();
  }

  /** The secondaries along the run. */
  public List<Pile> secondaries() {
    return piles.stream().filter(pile -> pile.kind() == PileKind.SECONDARY).toList();
  }

  /** The pile before a pile and the pile after it, where there are such. */
  public List<Pile> neighbours(Pile pile) {
    List<Pile> found = new ArrayList<>();
    if (pile.place() > 0) {
      found.add(piles.get(pile.place() - 1));
    }
    if (pile.place() + 1 < piles.size()) {
      found.add(piles.get(pile.place() + 1));
    }
    return found;
  }

  /** Count of joints, one between each two neighbours. */
  public int joints() {
    return Math.max(0, piles.size() - 1);
  }
}
