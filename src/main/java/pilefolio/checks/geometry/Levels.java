package pilefolio.checks.geometry;

import static pilefolio.units.Units.M;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pilefolio.checks.CheckResult;
import pilefolio.checks.Family;
import pilefolio.checks.From;
import pilefolio.checks.Job;
import pilefolio.checks.RunCheck;
import pilefolio.checks.Subject;
import pilefolio.model.PileKind;
import pilefolio.model.Value;
import pilefolio.model.WallRun;
import pilefolio.trace.CalcSheet;
import pilefolio.trace.Calculation;
import pilefolio.trace.Given;
import pilefolio.trace.Reference;

/** Whether platform, cut-off, cast and toe levels are in order; lengths and empty bore. */
public final class Levels extends RunCheck {
  /** The sheet; other families read lengths from it. */
  public static final CalcSheet SHEET =
      CalcSheet.named("Levels and lengths of the piles")
          .given("L_P", M, "level of the platform")
          .given("L_C", M, "cut-off level")
          .given("L_T", M, "toe level")
          .given("h_o", M, "concrete cast above cut-off level")
          .line("h_e = L_P − L_C", M, "empty bore above cut-off", Reference.DERIVED)
          .line("l_d = L_P − L_T", M, "drilled length", Reference.DERIVED)
          .line("l_s = L_C − L_T", M, "structural length", Reference.DERIVED)
          .line("l_c = l_s + h_o", M, "cast length", Reference.DERIVED)
          .line("h_x = h_o − h_e", M, "concrete above the platform", Reference.DERIVED)
          .condition("l_s > 0", "the toe lies below cut-off", Reference.DERIVED)
          .condition("h_e ≥ 0", "the cut-off does not lie above the platform", Reference.DERIVED)
          .condition("h_x ≤ 0.3[m]", "concrete is not cast above the platform", Reference.PRACTICE);

  private static final CalcSheet WATER =
      CalcSheet.named("Empty bore and groundwater")
          .given("L_W", M, "groundwater level while piles are bored")
          .given("L_C", M, "cut-off level")
          .line("h_w = L_W − L_C", M, "groundwater above cut-off", Reference.DERIVED)
          .note(
              "If this is above zero, the empty bore is backfilled before a casing is pulled or the"
                  + " bore left.");

  /** The one of its kind; other checks quote its lines. */
  public static final Levels CHECK = new Levels();

  private Levels() {
    super("levels", "Levels and empty bore", Family.GEOMETRY, SHEET, WATER);
  }

  /** Levels and lengths of one kind of pile in a run. */
  public static Calculation of(Job job, WallRun run, PileKind kind) {
    Optional<Value> overcast = job.submission().supply().overcast();
    Given cast =
        overcast
            .map(From::cell)
            .orElseGet(
                () ->
                    From.layout(
                        run.levels().platform().si() - run.levels().cutOff().si(),
                        "cast to the platform"));
    return SHEET
        .bind()
        .set("L_P", From.cell(run.levels().platform()))
        .set("L_C", From.cell(run.levels().cutOff()))
        .set("L_T", SetOut.toe(job, run, kind))
        .set("h_o", cast)
        .calculate();
  }

  @Override
  protected List<CheckResult> check(Job job, WallRun run) {
    List<CheckResult> results = new ArrayList<>();
    Optional<Value> water = job.submission().profile(run).groundwater();
    for (PileKind kind : PileKind.secant()) {
      List<Calculation> sheets = new ArrayList<>(List.of(of(job, run, kind)));
      if (water.isPresent()) {
        sheets.add(
            WATER
                .bind()
                .set("L_W", From.cell(water.get()))
                .set("L_C", From.cell(run.levels().cutOff()))
                .calculate());
      }
      results.add(CheckResult.of(this, Subject.run(run.id()).piles(plural(kind)), sheets));
    }
    return results;
  }

  /** Primaries or secondaries, in words. */
  public static String plural(PileKind kind) {
    return kind == PileKind.PRIMARY ? "primaries" : "secondaries";
  }
}
