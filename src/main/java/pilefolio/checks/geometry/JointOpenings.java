package pilefolio.checks.geometry;

import static pilefolio.units.Units.M;
import static pilefolio.units.Units.MM;
import static pilefolio.units.Units.MM_M;
import static pilefolio.units.Units.ONE;
import static pilefolio.units.Units.PERCENT;

import java.util.List;
import java.util.Locale;
import pilefolio.analysis.reliability.JointOpening;
import pilefolio.analysis.reliability.PileSpread;
import pilefolio.analysis.reliability.RunOfJoints;
import pilefolio.checks.CheckResult;
import pilefolio.checks.Family;
import pilefolio.checks.From;
import pilefolio.checks.Job;
import pilefolio.checks.RunCheck;
import pilefolio.checks.Subject;
import pilefolio.model.Methods;
import pilefolio.model.WallRun;
import pilefolio.trace.CalcSheet;
import pilefolio.trace.Calculation;
import pilefolio.trace.Given;
import pilefolio.trace.Reference;

/** Probability that a joint is open at the level down to which it must stay closed. */
public final class JointOpenings extends RunCheck {
  private static final Reference TAIL = Reference.memory("Abramowitz and Stegun", "26.2.17");

  /** Overlap in standard deviations beyond which nothing is claimed. */
  private static final double MOST = 5;

  private static final CalcSheet SHEET =
      CalcSheet.named("Probability that a joint opens")
          .given("D_p", MM, "diameter of the primaries")
          .given("D_s", MM, "diameter of the secondaries")
          .given("s", MM, "spacing as set out, centre to centre")
          .given("e_0", MM, "tolerance on position at the guide wall")
          .given("n", ONE, "tolerance on verticality, 1 in n")
          .given("k_σ", ONE, "standard deviations in a tolerance")
          .given("z", M, "depth of the level, below the guide wall")
          .given("N", ONE, "number of joints in the run")
          .given("P_lim", PERCENT, "largest probability accepted for one joint")
          .line("c_0 = (D_p + D_s)/2 − s", MM, "overlap as set out", Reference.DERIVED)
          .line("σ_e = e_0/k_σ", MM, "standard deviation of position", Reference.DERIVED)
          .line("σ_θ = 1/(n·k_σ)", MM_M, "standard deviation of the lean", Reference.DERIVED)
          .line(
              "σ = √(σ_e² + (σ_θ·z)²)",
              MM,
              "standard deviation of one pile on one axis at the level",
              Reference.DERIVED)
          .line("a = c_0/(√(2)·σ)", ONE, "overlap in standard deviations", Reference.DERIVED)
          .line(
              "a_c = min(a, 5)",
              ONE,
              "counted as at most 5: the model says nothing about rarer events",
              Reference.PRACTICE)
          .line(
              "φ_a = exp(−a_c²/2)/√(2·π)",
              ONE,
              "density of the normal distribution there",
              Reference.DERIVED)
          .line(
              "t = 1/(1 + 0.2316419·a_c)", ONE, "argument of the approximation", Reference.DERIVED)
          .line(
              "g_t = t·(0.31938153 + t·(−0.356563782 + t·(1.781477937 + t·(−1.821255978"
                  + " + t·1.330274429))))",
              ONE,
              "tail over density",
              TAIL)
          .line(
              "P_1 = φ_a·g_t",
              PERCENT,
              "movement along the wall only: upper tail of the normal distribution",
              Reference.DERIVED)
          .found(
              "P_2",
              PERCENT,
              "movement on both axes",
              "Rice distribution of the centre distance, summed as a Poisson mixture")
          .line(
              "P_h = P_1·√((D_p + D_s)/(2·s))",
              PERCENT,
              "hand estimate of the same, for large a",
              Reference.DERIVED)
          .line(
              "N_1 = N·P_1",
              ONE,
              "expected number of open joints, along the wall",
              Reference.DERIVED)
          .found(
              "P_N",
              PERCENT,
              "at least one joint of the run open, movement along the wall",
              "recursion from pile to pile, neighbouring joints sharing a pile")
          .line(
              "P_i = 1 − exp(N·ln(1 − P_1))",
              PERCENT,
              "the same if the joints were independent",
              Reference.DERIVED)
          .line(
              "Δ_P = P_N − P_i",
              PERCENT,
              "difference, from the shared piles and the approximation of the tail; small against both",
              Reference.DERIVED)
          .found(
              "z_P",
              M,
              "depth at which a joint reaches the accepted probability, along the wall",
              "inverse of the normal distribution")
          .line(
              "a_P = c_0/(√(2)·√(σ_e² + (σ_θ·z_P)²))",
              ONE,
              "overlap in standard deviations there",
              Reference.DERIVED)
          .line(
              "t_P = 1/(1 + 0.2316419·a_P)",
              ONE,
              "argument of the approximation",
              Reference.DERIVED)
          .line(
              "g_P = t_P·(0.31938153 + t_P·(−0.356563782 + t_P·(1.781477937"
                  + " + t_P·(−1.821255978 + t_P·1.330274429))))",
              ONE,
              "tail over density",
              TAIL)
          .line(
              "P_z = exp(−a_P²/2)/√(2·π)·g_P",
              PERCENT,
              "probability at that depth, to verify it",
              Reference.DERIVED)
          .require("P_2 ≤ P_lim", "the joints open seldom enough", Reference.PRACTICE)
          .note("Does not include obstructions or operator error.");

  /** The check. */
  public JointOpenings() {
    super("joint-opening", "Probability that a joint opens", Family.GEOMETRY, SHEET);
  }

  /**
   * What the sheet is worked out from.
   *
   * @param primary diameter of the primaries
   * @param secondary diameter of the secondaries
   * @param spacing spacing as set out
   * @param position tolerance on position
   * @param verticality n of 1 in n
   * @param sigmas standard deviations in a tolerance
   * @param depth depth of the level
   * @param joints number of joints
   * @param limit largest probability accepted
   */
  public record Problem(
      Given primary,
      Given secondary,
      Given spacing,
      Given position,
      Given verticality,
      Given sigmas,
      Given depth,
      Given joints,
      Given limit) {}

  /** Finds the probabilities and works the sheet out. */
  public static Calculation solve(Problem p) {
    double reach = (p.primary().si() + p.secondary().si()) / 2;
    double overlap = reach - p.spacing().si();
    PileSpread spread =
        new PileSpread(
            1000 * p.position().si() / p.sigmas().si(),
            1000 / p.verticality().si() / p.sigmas().si());
    // No less than the spread at which the overlap is MOST standard deviations; see a_c.
    double sigma = Math.max(spread.at(p.depth().si()), 1000 * overlap / (Math.sqrt(2) * MOST));
    RunOfJoints all = RunOfJoints.of((int) Math.round(p.joints().si()), 1000 * overlap, sigma);
    return SHEET
        .bind()
        .set("D_p", p.primary())
        .set("D_s", p.secondary())
        .set("s", p.spacing())
        .set("e_0", p.position())
        .set("n", p.verticality())
        .set("k_σ", p.sigmas())
        .set("z", p.depth())
        .set("N", p.joints())
        .set("P_lim", p.limit())
        .set(
            "P_2",
            From.method(
                JointOpening.bothAxes(1000 * p.spacing().si(), 1000 * reach, sigma),
                "Rice distribution"))
        .set("P_N", From.method(all.anyOpen(), "recursion from pile to pile"))
        .set(
            "z_P",
            From.method(
                JointOpening.depthAlongWall(1000 * overlap, spread, p.limit().si()),
                "inverse normal distribution"))
        .calculate();
  }

  @Override
  protected List<CheckResult> check(Job job, WallRun run) {
    Methods methods = job.submission().methods();
    int joints = run.layout().joints();
    Subject subject = Subject.run(run.id()).piles(String.format(Locale.ROOT, "%d joints", joints));
    double reach = (run.primary().diameter().si() + run.secondary().diameter().si()) / 2;
    if (run.line().spacing().si() >= reach) {
      return List.of(CheckResult.notChecked(this, subject, "The piles do not overlap as set out."));
    }
    if (!(methods.openJointLimit().si() > 0 && methods.openJointLimit().si() < 0.5)) {
      return List.of(
          CheckResult.notChecked(
              this, subject, "The accepted probability must lie between 0 and 50 %."));
    }
    return List.of(
        CheckResult.of(
            this,
            subject,
            solve(
                new Problem(
                    From.cell(run.primary().diameter()),
                    From.cell(run.secondary().diameter()),
                    From.cell(run.line().spacing()),
                    SetOut.position(job, run),
                    SetOut.verticality(job),
                    SetOut.sigmas(methods),
                    From.layout(
                        SetOut.closedDepth(job, run), "platform to excavation, and the margin"),
                    From.layout(joints, "one between each two piles"),
                    From.cell(methods.openJointLimit())))));
  }
}
