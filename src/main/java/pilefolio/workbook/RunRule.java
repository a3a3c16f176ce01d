package pilefolio.workbook;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import pilefolio.findings.Finding;
import pilefolio.model.PileKind;

/** Each run has its length, its two kinds of pile, its ground and levels in their order. */
final class RunRule implements Rule {
  /** Levels are given to the centimetre. */
  private static final double ROUNDING = 0.011;

  @Override
  public void check(Book book, KnownNames names, Consumer<Finding> findings) {
    for (Row run : book.rows(WallSheet.RUNS)) {
      length(run, findings);
      levels(run, findings);
      ground(run, book, findings);
      run.find(WallSheet.RUN_ID).ifPresent(id -> piles(run, id, book, findings));
    }
  }

  private static void length(Row run, Consumer<Finding> findings) {
    boolean count = run.find(WallSheet.SECONDARIES).isPresent();
    boolean length = run.find(WallSheet.LENGTH).isPresent();
    if (count == length) {
      findings.accept(
          FindingKind.RUN_LENGTH_UNCLEAR.at(
              run.place(WallSheet.SECONDARIES),
              count
                  ? "both a count of secondaries and a run length are given"
                  : "neither a count of secondaries nor a run length can be read",
              "give one of the two"));
    }
  }

  private static void levels(Row run, Consumer<Finding> findings) {
    Optional<Double> platform = run.si(WallSheet.PLATFORM);
    Optional<Double> cutOff = run.si(WallSheet.CUT_OFF);
    if (platform.isPresent() && cutOff.isPresent() && cutOff.get() > platform.get()) {
      findings.accept(
          FindingKind.CUT_OFF_ABOVE_PLATFORM.at(
              run.place(WallSheet.CUT_OFF),
              "the cut-off level is above the platform level",
              "give levels, not depths; the piles are bored from the platform"));
    }
  }

  private static void ground(Row run, Book book, Consumer<Finding> findings) {
    Optional<String> profile = run.find(WallSheet.PROFILE);
    if (profile.isEmpty()) {
      return;
    }
    List<Row> layers = book.where(GroundSheet.LAYERS, GroundSheet.PROFILE, profile.get());
    Optional<Double> top = layers.stream().findFirst().flatMap(row -> row.si(GroundSheet.TOP));
    Optional<Double> retained = run.si(WallSheet.RETAINED);
    if (top.isPresent() && retained.isPresent() && retained.get() > top.get() + ROUNDING) {
      findings.accept(
          FindingKind.GROUND_STARTS_TOO_LOW.at(
              run.place(WallSheet.RETAINED),
              "the ground behind the wall is higher than the first layer of " + profile.get(),
              "begin the profile at that level or higher"));
    }
  }

  private static void piles(Row run, String id, Book book, Consumer<Finding> findings) {
    List<Row> rows = book.where(WallSheet.PILES, WallSheet.RUN, id);
    for (PileKind kind : PileKind.values()) {
      List<Row> same =
          rows.stream()
              .filter(row -> row.find(WallSheet.PILE_KIND).filter(k -> k == kind).isPresent())
              .toList();
      if (same.isEmpty()) {
        findings.accept(
            FindingKind.PILES_MISSING.at(
                run.place(WallSheet.RUN_ID),
                "run " + id + " has no row for its " + plural(kind),
                "add it on the sheet Piles"));
      } else if (same.size() > 1) {
        findings.accept(
            FindingKind.PILES_TWICE.at(
                same.get(1).place(WallSheet.PILE_KIND),
                "run " + id + " has two rows for its " + plural(kind),
                "delete one; make another run if the piles differ"));
      }
    }
  }

  static String plural(PileKind kind) {
    return kind == PileKind.PRIMARY ? "primaries" : "secondaries";
  }
}
