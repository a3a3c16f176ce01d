package pilefolio.checks.stability;

import static pilefolio.units.Units.DEG;
import static pilefolio.units.Units.KN;
import static pilefolio.units.Units.KN_M;
import static pilefolio.units.Units.M;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import pilefolio.checks.Check;
import pilefolio.checks.CheckResult;
import pilefolio.checks.Family;
import pilefolio.checks.From;
import pilefolio.checks.Job;
import pilefolio.checks.Subject;
import pilefolio.checks.situation.RunDesign;
import pilefolio.checks.situation.StagedDesign;
import pilefolio.checks.situation.StagedSolution;
import pilefolio.checks.situation.WallSolution;
import pilefolio.model.Support;
import pilefolio.model.WallRun;
import pilefolio.trace.CalcSheet;
import pilefolio.trace.Reference;
import pilefolio.trace.Source;

/** Force in one prop or anchor against its resistance. */
public final class SupportForceCheck implements Check {
  private static final double KILO = 1000;

  static final CalcSheet SHEET =
      CalcSheet.named("Force in a prop or anchor")
          .given("T", KN_M, "horizontal support force")
          .given("s", M, "spacing along the wall")
          .given("α", DEG, "inclination below the horizontal")
          .given("N_R", KN, "resistance along the axis")
          .line("N = T·s/cos(α)", KN, "force along the axis", Reference.DERIVED)
          .note(
              "The resistance is the allowable one on an allowable-stress basis and the design value"
                  + " otherwise; preload and tests must not exceed what wall and support can take.")
          .require("N ≤ N_R", "the prop or anchor holds", Reference.DERIVED);

  @Override
  public String id() {
    return "support-force";
  }

  @Override
  public String title() {
    return "Force in a prop or anchor";
  }

  @Override
  public Family family() {
    return Family.STABILITY;
  }

  @Override
  public List<CalcSheet> sheets() {
    return List.of(SHEET);
  }

  @Override
  public List<CheckResult> run(Job job) {
    List<CheckResult> results = new ArrayList<>();
    for (WallRun run : job.submission().runs()) {
      for (WallSolution solution : RunDesign.of(job, run).solutions()) {
        solution
            .situation()
            .support()
            .filter(s -> s.resistance().isPresent() || !job.submission().members().carries(s))
            .ifPresent(s -> results.add(result(solution, s)));
      }
      results.addAll(staged(job, run));
    }
    return results;
  }

  // Each support in the stage where the staged analysis loads it most.
  private List<CheckResult> staged(Job job, WallRun run) {
    List<CheckResult> results = new ArrayList<>();
    for (StagedSolution solution : StagedDesign.of(job, run).solutions()) {
      for (Support support : job.submission().supports(run)) {
        SupportForces.all(job, support).stream()
            .filter(
                f ->
                    f.run().equals(run.id())
                        && f.route() == SupportForces.Route.STAGED
                        && f.combination().equals(solution.combination().id()))
            .max(Comparator.comparingDouble(SupportForces.Found::perMetre))
            .ifPresent(f -> results.add(staged(f, support)));
      }
    }
    return results;
  }

  private CheckResult staged(SupportForces.Found found, Support support) {
    Subject subject =
        Subject.run(found.run())
            .piles(support.id() + " by the staged analysis")
            .stage("stage " + found.stage())
            .combination(found.combination());
    if (support.resistance().isEmpty()) {
      return CheckResult.notChecked(this, subject, designedFor(support, found.perMetre()));
    }
    return CheckResult.of(
        this,
        subject,
        SHEET
            .bind()
            .set("T", found.perMetre(), found.source())
            .set("s", From.cell(support.spacing()))
            .set("α", From.cell(support.inclination()))
            .set("N_R", From.cell(support.resistance().get()))
            .calculate());
  }

  private static String designedFor(Support support, double perMetre) {
    double axial = perMetre * support.spacing().si() / Math.cos(support.inclination().si());
    return String.format(
        Locale.ROOT,
        "no resistance is entered for support %s; it is to be designed for %.0f kN along its axis",
        support.id(),
        axial / KILO);
  }

  private CheckResult result(WallSolution solution, Support support) {
    var subject = solution.situation().subject();
    if (solution.equilibrium().isEmpty()) {
      return CheckResult.notChecked(this, subject, "no equilibrium: " + solution.reason());
    }
    double force = KILO * solution.equilibrium().get().supportForce().orElseThrow();
    if (support.resistance().isEmpty()) {
      return CheckResult.notChecked(this, subject, designedFor(support, force));
    }
    return CheckResult.of(
        this,
        subject,
        SHEET
            .bind()
            .set("T", force, new Source.Line("embedment", SupportForces.embedment(solution), "T"))
            .set("s", From.cell(support.spacing()))
            .set("α", From.cell(support.inclination()))
            .set("N_R", From.cell(support.resistance().get()))
            .calculate());
  }
}
