package pilefolio.checks.sequence;

import static pilefolio.units.Units.D;

import java.util.List;
import pilefolio.analysis.sequence.Programme;
import pilefolio.checks.CheckResult;
import pilefolio.checks.Family;
import pilefolio.checks.From;
import pilefolio.checks.Job;
import pilefolio.checks.RunCheck;
import pilefolio.checks.Subject;
import pilefolio.model.Pile;
import pilefolio.model.PileLayout;
import pilefolio.model.WallRun;
import pilefolio.trace.Binding;
import pilefolio.trace.Binding.Row;
import pilefolio.trace.CalcSheet;
import pilefolio.trace.CalcTable;
import pilefolio.trace.Reference;

/** Difference in age of the two primaries of every secondary. */
public final class FlankAges extends RunCheck {
  private static final CalcSheet SHEET =
      CalcSheet.named("Difference in age of the two primaries")
          .given("Δ_lim", D, "largest difference accepted")
          .table(
              CalcTable.of("secondaries", "Days between primaries and secondary", "pile")
                  .given("t_a", D, "days since the primary before it")
                  .given("t_b", D, "days since the primary after it")
                  .line("Δ_t = abs(t_a − t_b)", D, "difference", Reference.DERIVED)
                  .largest("Δ_max", "Δ_t", "largest difference"))
          .require(
              "Δ_max ≤ Δ_lim", "the drill is not led off by unequal primaries", Reference.PRACTICE);

  /** The check. */
  public FlankAges() {
    super("flank-ages", "Age difference of the primaries", Family.SEQUENCE, SHEET);
  }

  @Override
  protected List<CheckResult> check(Job job, WallRun run) {
    Programme programme = Programmes.of(job).needed();
    PileLayout layout = run.layout();
    Binding binding =
        SHEET.bind().set("Δ_lim", From.cell(job.submission().methods().largestAgeDifference()));
    for (Pile secondary : layout.secondaries()) {
      List<Pile> flanks = layout.neighbours(secondary);
      if (flanks.size() == 2) {
        int day = programme.pile(secondary.mark()).orElseThrow().day();
        binding.row(
            "secondaries",
            Row.of(secondary.mark())
                .set("t_a", days(programme, flanks.get(0), day))
                .set("t_b", days(programme, flanks.get(1), day)));
      }
    }
    return List.of(
        CheckResult.of(this, Subject.run(run.id()).piles("all secondaries"), binding.calculate()));
  }

  private static pilefolio.trace.Given days(Programme programme, Pile primary, int day) {
    int made = programme.pile(primary.mark()).orElseThrow().day();
    return From.layout(D.toSi(day - made), "programme");
  }
}
