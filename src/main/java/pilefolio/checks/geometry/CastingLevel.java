package pilefolio.checks.geometry;

import static pilefolio.units.Units.M;

import java.util.List;
import pilefolio.checks.CheckResult;
import pilefolio.checks.Family;
import pilefolio.checks.From;
import pilefolio.checks.Job;
import pilefolio.checks.RunCheck;
import pilefolio.checks.Subject;
import pilefolio.model.PileKind;
import pilefolio.model.Technique;
import pilefolio.model.WallRun;
import pilefolio.trace.CalcSheet;
import pilefolio.trace.Calculation;
import pilefolio.trace.Choice;
import pilefolio.trace.Reference;

/** How far above cut-off concrete may be expected when it cannot be seen while it is cast. */
public final class CastingLevel extends RunCheck {
  private static final CalcSheet SHEET =
      CalcSheet.named("Casting level above cut-off")
          .given("h_e", M, "depth of cut-off below the platform")
          .given("l_k", M, "length of temporary casing below the platform; zero without casing")
          .given("h_w", M, "groundwater above cut-off; negative if below")
          .choose(
              "h_t",
              M,
              "allowance above cut-off level",
              Reference.PRACTICE,
              Choice.when("h_w > 0", "1.0[m] + h_e/12 + l_k/8")
                  .or("l_k > 0", "0.3[m] + h_e/12 + l_k/8")
                  .otherwise("0.3[m] + h_e/10"))
          .line("h_a = min(h_t, h_e)", M, "as far as the platform allows", Reference.DERIVED)
          .note("Holds for cut-off 0.15 m to 10 m below the platform.");

  /** The check. */
  public CastingLevel() {
    super("casting-level", "Casting level above cut-off", Family.GEOMETRY, SHEET);
  }

  @Override
  public boolean derivation() {
    return true;
  }

  @Override
  protected List<CheckResult> check(Job job, WallRun run) {
    double depth = run.levels().platform().si() - run.levels().cutOff().si();
    Subject subject = Subject.run(run.id()).piles("secondaries");
    if (depth < 0.15 || depth > 10) {
      return List.of();
    }
    boolean cased = run.technique() == Technique.CASED_AUGER;
    double length = run.levels().platform().si() - SetOut.toe(job, run, PileKind.SECONDARY).si();
    double cutOff = run.levels().cutOff().si();
    double water =
        job.submission().profile(run).groundwater().map(w -> w.si() - cutOff).orElse(-length);
    Calculation calculation =
        SHEET
            .bind()
            .set("h_e", From.layout(depth, "platform less cut-off"))
            .set("l_k", From.layout(cased ? length : 0, cased ? "to the toe" : "no casing"))
            .set("h_w", From.layout(water, "groundwater less cut-off"))
            .calculate();
    return List.of(CheckResult.of(this, subject, calculation));
  }
}
