package pilefolio.checks.geometry;

import static pilefolio.units.Units.DEG;
import static pilefolio.units.Units.MM;

import java.util.List;
import pilefolio.checks.CheckResult;
import pilefolio.checks.Family;
import pilefolio.checks.From;
import pilefolio.checks.Job;
import pilefolio.checks.RunCheck;
import pilefolio.checks.Subject;
import pilefolio.model.WallRun;
import pilefolio.trace.CalcSheet;
import pilefolio.trace.Calculation;
import pilefolio.trace.Choice;
import pilefolio.trace.Reference;

/** Thickness of the joint of two piles that have moved against each other in plan. */
public final class JointThickness extends RunCheck {
  /** The sheet; other families read the chord from it. */
  public static final CalcSheet SHEET =
      CalcSheet.named("Joint of two piles moved against each other")
          .given("D_p", MM, "diameter of the primaries")
          .given("D_s", MM, "diameter of the secondaries")
          .given("s", MM, "spacing as set out, centre to centre")
          .given("Δ_x", MM, "relative movement along the wall, positive apart")
          .given("Δ_y", MM, "relative movement across the wall")
          .line("R = max(D_p, D_s)/2", MM, "larger radius", Reference.DERIVED)
          .line("r = min(D_p, D_s)/2", MM, "smaller radius", Reference.DERIVED)
          .line("d = √((s + Δ_x)² + Δ_y²)", MM, "true distance of the centres", Reference.DERIVED)
          .line("c_d = R + r − d", MM, "overlap; a negative value is a gap", Reference.DERIVED)
          .line(
              "x = (d² − r² + R²)/(2·d)",
              MM,
              "distance of the chord from the centre of the larger pile",
              Reference.DERIVED)
          .choose(
              "t_j",
              MM,
              "length of the common chord, the thickness of the joint",
              Reference.DERIVED,
              Choice.when("d ≥ R + r", "0").otherwise("2·√(R² − x²)"))
          .line(
              "α = atan(Δ_y/(s + Δ_x))",
              DEG,
              "turn of the chord from the normal of the wall",
              Reference.DERIVED)
          .line("t_n = t_j·cos(α)", MM, "thickness across the wall", Reference.DERIVED);

  /** The check. */
  public JointThickness() {
    super("joint-thickness", "Thickness of the joints", Family.GEOMETRY, SHEET);
  }

  @Override
  public boolean derivation() {
    return true;
  }

  @Override
  protected List<CheckResult> check(Job job, WallRun run) {
    double z = SetOut.closedDepth(job, run);
    double e = SetOut.position(job, run).si();
    double lean = z / SetOut.verticality(job).si();
    double apart = 2 * (e + lean);
    double likely = Math.sqrt(2) * Math.hypot(e, lean);
    return List.of(
        CheckResult.of(
            this,
            Subject.run(run.id()).piles("joints as far down as they must be closed"),
            moved(run, apart, 0, "both piles lean apart, twice the deviation of one"),
            moved(run, likely, 0, "root-sum-square of the two piles"),
            moved(run, 0, apart, "both piles lean across the wall, opposite ways")));
  }

  private static Calculation moved(WallRun run, double along, double across, String how) {
    return SetOut.piles(SHEET.bind(), run)
        .set("Δ_x", From.layout(along, how))
        .set("Δ_y", From.layout(across, how))
        .calculate();
  }
}
