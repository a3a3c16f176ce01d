package pilefolio.checks.sequence;

import static pilefolio.units.Units.H;
import static pilefolio.units.Units.M;
import static pilefolio.units.Units.MM;
import static pilefolio.units.Units.ONE;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import pilefolio.analysis.sequence.Programme;
import pilefolio.checks.CheckResult;
import pilefolio.checks.Family;
import pilefolio.checks.From;
import pilefolio.checks.Job;
import pilefolio.checks.RunCheck;
import pilefolio.checks.Subject;
import pilefolio.model.Methods;
import pilefolio.model.Pile;
import pilefolio.model.WallRun;
import pilefolio.trace.Binding;
import pilefolio.trace.Binding.Row;
import pilefolio.trace.CalcSheet;
import pilefolio.trace.CalcTable;
import pilefolio.trace.Reference;

/** Whether any pile is made too close to one that is still fresh. */
public final class FreshPiles extends RunCheck {
  private static final int SHOWN = 6;

  private static final CalcSheet SHEET =
      CalcSheet.named("Distance to fresh piles")
          .given("k_f", ONE, "distance kept, in diameters")
          .given("D_f", MM, "diameter of the larger pile")
          .given("s", MM, "spacing of a primary and the next secondary")
          .given("t_f", H, "time for which a pile is fresh")
          .line("a_f = k_f·D_f", M, "distance kept", Reference.PRACTICE)
          .line(
              "m_p = max(1, ceil(a_f/(2·s)))",
              ONE,
              "in one day every m-th primary may be made",
              Reference.DERIVED)
          .given("t_s", H, "longest shift")
          .line(
              "w_f = ceil((t_f + t_s)/24[h])",
              ONE,
              "days apart at which the last pile of one is no longer fresh for the first of the other",
              Reference.DERIVED)
          .table(
              CalcTable.of(
                      "pairs", "Closest pairs of the programme made within these days", "piles")
                  .given("x", M, "difference in easting")
                  .given("y", M, "difference in northing")
                  .line("a = √(x² + y²)", M, "distance of the centres", Reference.DERIVED)
                  .smallest("a_min", "a", "closest pair"))
          .line(
              "a_n = a_f − 1[mm]",
              M,
              "distance needed, rounding of setting out off",
              Reference.DERIVED)
          .require("a_min ≥ a_n", "no pile disturbs a fresh one", Reference.PRACTICE)
          .note("Pairs made fewer than that many days apart keep the distance.");

  /** The check. */
  public FreshPiles() {
    super("fresh-piles", "Distance to fresh piles", Family.SEQUENCE, SHEET);
  }

  private record Pair(Pile one, Pile other, double apart) {}

  /** Speaks for its family: what is not asked of walls without primaries is not passed over. */
  @Override
  protected Optional<String> leftOut(WallRun run) {
    return Optional.of("order, age and programme are found for secant walls only in this version");
  }

  @Override
  protected List<CheckResult> check(Job job, WallRun run) {
    Programme programme = Programmes.of(job).needed();
    Methods methods = job.submission().methods();
    double shift = Programmes.longestShift(job.submission());
    double fresh = Math.ceil(H.fromSi(methods.freshPileTime().si() + shift) / 24 - 1e-9);
    List<Pile> all =
        job.submission().secantRuns().stream().flatMap(r -> r.layout().piles().stream()).toList();
    List<Pair> pairs = new ArrayList<>();
    for (Pile one : run.layout().piles()) {
      int day = programme.pile(one.mark()).orElseThrow().day();
      for (Pile other : all) {
        int made = programme.pile(other.mark()).orElseThrow().day();
        boolean counted = !other.run().equals(run.id()) || other.place() > one.place();
        if (counted && Math.abs(day - made) < fresh) {
          pairs.add(new Pair(one, other, one.distanceTo(other)));
        }
      }
    }
    if (pairs.isEmpty()) {
      return List.of();
    }
    pairs.sort(
        Comparator.comparingDouble((Pair p) -> Math.rint(p.apart() * 1e6))
            .thenComparing(p -> p.one().mark()));
    double diameter = Math.max(run.primary().diameter().si(), run.secondary().diameter().si());
    Binding binding =
        SHEET
            .bind()
            .set("k_f", From.cell(methods.freshPileFactor()))
            .set(
                "D_f",
                From.cell(
                    run.primary().diameter().si() == diameter
                        ? run.primary().diameter()
                        : run.secondary().diameter()))
            .set("s", From.cell(run.line().spacing()))
            .set("t_f", From.cell(methods.freshPileTime()))
            .set("t_s", From.layout(shift, "longest shift of any crew"));
    for (Pair pair : pairs.subList(0, Math.min(SHOWN, pairs.size()))) {
      binding.row(
          "pairs",
          Row.of(pair.one().mark() + " and " + pair.other().mark())
              .set("x", From.layout(pair.other().east() - pair.one().east(), "setting out"))
              .set("y", From.layout(pair.other().north() - pair.one().north(), "setting out")));
    }
    return List.of(
        CheckResult.of(this, Subject.run(run.id()).piles("all piles"), binding.calculate()));
  }
}
