package pilefolio.checks.support;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import pilefolio.checks.Check;
import pilefolio.checks.CheckResult;
import pilefolio.checks.Family;
import pilefolio.checks.Job;
import pilefolio.checks.RunCheck.MissingInput;
import pilefolio.checks.Subject;
import pilefolio.checks.stability.SupportForces;
import pilefolio.model.Support;
import pilefolio.model.SupportMembers;
import pilefolio.model.WallRun;
import pilefolio.standards.Combination;
import pilefolio.trace.CalcSheet;
import pilefolio.trace.Calculation;

/** A check of what a support consists of: support by support, in each combination. */
abstract class SupportCheck implements Check {
  private final String id;
  private final String title;
  private final List<CalcSheet> sheets;

  SupportCheck(String id, String title, CalcSheet... sheets) {
    this.id = id;
    this.title = title;
    this.sheets = List.of(sheets);
  }

  @Override
  public final String id() {
    return id;
  }

  @Override
  public final String title() {
    return title;
  }

  @Override
  public final Family family() {
    return Family.STRUCTURE;
  }

  @Override
  public final List<CalcSheet> sheets() {
    return sheets;
  }

  @Override
  public final boolean shownBySituation() {
    return false;
  }

  @Override
  public final List<CheckResult> run(Job job) {
    List<CheckResult> results = new ArrayList<>();
    for (Support support : job.submission().supports()) {
      if (!job.submission().runs(support).isEmpty()) {
        results.addAll(examine(job, support));
      }
    }
    return results;
  }

  /** The results for one support that some run has; empty if the question does not apply. */
  abstract List<CheckResult> examine(Job job, Support support);

  static SupportMembers members(Job job) {
    return job.submission().members();
  }

  /** The first run that has the support; a subject needs one. */
  static WallRun run(Job job, Support support) {
    return job.submission().runs(support).get(0);
  }

  static Subject subject(Job job, Support support) {
    return Subject.run(run(job, support).id()).piles("support " + support.id());
  }

  /**
   * One result for each combination.
   *
   * @param make the calculations for a force; a {@link MissingInput} tells what is not known, an
   *     {@link ArithmeticException} that a rule does not cover it
   * @param outside the reason then
   */
  final List<CheckResult> eachCombination(
      Job job, Support support, Function<Demand, List<Calculation>> make, String outside) {
    List<CheckResult> results = new ArrayList<>();
    for (Combination combination : job.combinations()) {
      Optional<SupportForces.Found> force = SupportForces.of(job, support, combination.id());
      Subject subject = subject(job, support).combination(combination.id());
      if (force.isEmpty()) {
        results.add(
            CheckResult.notChecked(
                this, subject, "the force in support " + support.id() + " is not known"));
        continue;
      }
      subject =
          Subject.run(force.get().run())
              .piles("support " + support.id())
              .stage("stage " + force.get().stage())
              .combination(combination.id());
      results.add(answered(subject, () -> make.apply(new Demand(force.get())), outside));
    }
    return results;
  }

  /** What makes calculations. */
  interface Making {
    /** Makes them. */
    List<Calculation> make();
  }

  /** A result, or the reason why there is none. */
  final CheckResult answered(Subject subject, Making making, String outside) {
    try {
      return CheckResult.of(this, subject, making.make());
    } catch (MissingInput e) {
      return CheckResult.notChecked(this, subject, e.getMessage());
    } catch (ArithmeticException e) {
      return CheckResult.notChecked(this, subject, outside);
    }
  }
}
