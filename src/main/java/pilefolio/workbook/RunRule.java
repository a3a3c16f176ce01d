package pilefolio.workbook;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import pilefolio.findings.Finding;
import pilefolio.model.PileKind;
import pilefolio.model.WallType;
import pilefolio.units.Units;

/** Each run has its length, its two kinds of pile, its ground and levels in their order. */
final class RunRule implements Rule {
  /** Levels are given to the centimetre. */
  private static final double ROUNDING = 0.011;

  @Override
  public void check(Book book, KnownNames names, Consumer<Finding> findings) {
    for (Row run : book.rows(WallSheet.RUNS)) {
      length(run, findings);
      levels(run, findings);
      tool(run, findings);
      spacing(run, findings);
      ground(run, book, findings);
      run.find(WallSheet.RUN_ID).ifPresent(id -> piles(run, id, book, findings));
    }
  }

  private static void length(Row run, Consumer<Finding> findings) {
    boolean secant = run.find(WallSheet.TYPE).map(WallType::secant).orElse(true);
    NumberColumn counted = secant ? WallSheet.SECONDARIES : WallSheet.MEMBERS;
    String what = secant ? "secondaries" : "members";
    boolean count = run.find(counted).isPresent();
    boolean length = run.find(WallSheet.LENGTH).isPresent();
    if (count == length) {
      findings.accept(
          FindingKind.RUN_LENGTH_UNCLEAR.at(
              run.place(counted),
              count
                  ? "both a count of " + what + " and a run length are given"
                  : "neither a count of " + what + " nor a run length can be read",
              "give one of the two"));
    }
  }

  private static void tool(Row run, Consumer<Finding> findings) {
    if (run.find(WallSheet.TYPE).map(WallType::bored).orElse(false)
        && run.find(WallSheet.TOOL).isEmpty()) {
      findings.accept(
          FindingKind.MISSING.at(
              run.place(WallSheet.TOOL),
              WallSheet.TOOL.name() + " is empty",
              "a wall on bored piles or beams needs one; " + WallSheet.TOOL.expected(Units.ONE)));
    }
  }

  private static void spacing(Row run, Consumer<Finding> findings) {
    if (run.find(WallSheet.SPACING).isEmpty()
        && !run.find(WallSheet.TYPE).map(WallType::soldierBeams).orElse(true)) {
      findings.accept(
          FindingKind.MISSING.at(
              run.place(WallSheet.SPACING),
              WallSheet.SPACING.name() + " is empty",
              "the engine sizes the spacing of soldier beams only; "
                  + WallSheet.SPACING.expected(Units.MM)));
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
    for (PileKind kind : kinds(run)) {
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

  private static List<PileKind> kinds(Row run) {
    Optional<WallType> type = run.find(WallSheet.TYPE);
    if (type.map(WallType::secant).orElse(true)) {
      return PileKind.secant();
    }
    return type.map(WallType::bored).orElse(false) ? List.of(PileKind.SINGLE) : List.of();
  }

  static String plural(PileKind kind) {
    return switch (kind) {
      case PRIMARY -> "primaries";
      case SECONDARY -> "secondaries";
      case SINGLE -> "single piles";
    };
  }
}
