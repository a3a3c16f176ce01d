package pilefolio.checks.geometry;

import static pilefolio.units.Units.M;
import static pilefolio.units.Units.MM;
import static pilefolio.units.Units.ONE;

import java.util.List;
import java.util.Locale;
import pilefolio.checks.CheckResult;
import pilefolio.checks.Family;
import pilefolio.checks.From;
import pilefolio.checks.Job;
import pilefolio.checks.RunCheck;
import pilefolio.checks.Subject;
import pilefolio.model.PileKind;
import pilefolio.model.Stage;
import pilefolio.model.WallRun;
import pilefolio.trace.Binding;
import pilefolio.trace.Binding.Row;
import pilefolio.trace.CalcSheet;
import pilefolio.trace.CalcTable;
import pilefolio.trace.Choice;
import pilefolio.trace.Given;
import pilefolio.trace.Reference;

/** Whether neighbouring piles still overlap where water or soil must be held back. */
public final class JointOverlap extends RunCheck {
  private static final CalcSheet SHEET =
      CalcSheet.named("Overlap of neighbouring piles with depth")
          .given("D_p", MM, "diameter of the primaries")
          .given("D_s", MM, "diameter of the secondaries")
          .given("s", MM, "spacing of a primary and the next secondary, centre to centre")
          .given("e_0", MM, "tolerance on position at the guide wall")
          .given("n", ONE, "tolerance on verticality, 1 in n")
          .given("L_P", M, "level of platform and guide wall")
          .given("L_e", M, "lowest excavation level")
          .given("a_w", M, "depth below it down to which the joints must stay closed")
          .given("L_{T,p}", M, "toe level of the primaries")
          .given("c_min", MM, "least overlap that must remain")
          .line("c_0 = (D_p + D_s)/2 − s", MM, "overlap as set out", Reference.DERIVED)
          .table(
              CalcTable.of("levels", "Overlap left at the levels of the wall", "level")
                  .given("L", M, "level")
                  .line("z = L_P − L", M, "depth below the guide wall", Reference.DERIVED)
                  .line("e_z = e_0 + z/n", MM, "deviation of one pile", Reference.DERIVED)
                  .line("c_w = c_0 − 2·e_z", MM, "both piles lean apart", Reference.DERIVED)
                  .line(
                      "c_q = c_0 − √(2)·√(e_0² + (z/n)²)",
                      MM,
                      "root-sum-square of independent piles",
                      Reference.DERIVED)
                  .line("c_1 = c_0 − e_z", MM, "one pile perfect", Reference.DERIVED))
          .choose(
              "z_w",
              M,
              "depth at which contact is lost, both piles leaning apart",
              Reference.DERIVED,
              Choice.when("c_0/2 ≤ e_0", "0").otherwise("n·(c_0/2 − e_0)"))
          .choose(
              "z_q",
              M,
              "depth at which contact is lost, root-sum-square",
              Reference.DERIVED,
              Choice.when("c_0/√(2) ≤ e_0", "0").otherwise("n·√(c_0²/2 − e_0²)"))
          .choose(
              "z_c",
              M,
              "depth down to which the least overlap remains, both piles leaning apart",
              Reference.DERIVED,
              Choice.when("(c_0 − c_min)/2 ≤ e_0", "0").otherwise("n·((c_0 − c_min)/2 − e_0)"))
          .line(
              "z_r = L_P − (L_e − a_w)",
              M,
              "depth down to which the joints must stay closed",
              Reference.DERIVED)
          .line("z_T = L_P − L_{T,p}", M, "depth of the toe of the primaries", Reference.DERIVED)
          .require("z_r ≤ z_c", "every joint keeps its overlap", Reference.PRACTICE)
          .require("z_r ≤ z_T", "the primaries reach that level", Reference.DERIVED)
          .note(
              "Below that level the piles may part; the wall is then counted as a row of single"
                  + " secondaries.");

  /** The check. */
  public JointOverlap() {
    super("joint-overlap", "Overlap of neighbouring piles", Family.GEOMETRY, SHEET);
  }

  @Override
  protected List<CheckResult> check(Job job, WallRun run) {
    Stage lowest = SetOut.lowestStage(job, run);
    Given toe = SetOut.toe(job, run, PileKind.PRIMARY);
    Given platform = From.cell(run.levels().platform());
    double closed = lowest.excavation().si() - job.submission().methods().cutOffMargin().si();
    Binding binding =
        SetOut.piles(SHEET.bind(), run)
            .set("e_0", SetOut.position(job, run))
            .set("n", SetOut.verticality(job))
            .set("L_P", platform)
            .set("L_e", From.cell(lowest.excavation()))
            .set("a_w", From.cell(job.submission().methods().cutOffMargin()))
            .set("L_{T,p}", toe)
            .set("c_min", From.cell(job.submission().methods().overlapRequired()))
            .row("levels", Row.of("guide wall").set("L", platform))
            .row("levels", Row.of("cut-off").set("L", From.cell(run.levels().cutOff())))
            .row(
                "levels",
                Row.of("excavation, stage " + lowest.number())
                    .set("L", From.cell(lowest.excavation())))
            .row(
                "levels",
                Row.of("joints closed").set("L", From.layout(closed, "excavation less margin")));
    if (toe.si() < closed - 1e-9) {
      binding.row("levels", Row.of("toe of primaries").set("L", toe));
    }
    return List.of(
        CheckResult.of(
            this,
            Subject.run(run.id())
                .piles(String.format(Locale.ROOT, "%d joints", run.layout().joints())),
            binding.calculate()));
  }
}
