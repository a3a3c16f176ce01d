package pilefolio.checks.structure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pilefolio.checks.Check;
import pilefolio.checks.CheckResult;
import pilefolio.checks.Family;
import pilefolio.checks.Job;
import pilefolio.checks.RunCheck;
import pilefolio.checks.Subject;
import pilefolio.model.WallRun;
import pilefolio.standards.Combination;
import pilefolio.trace.Calculation;

/**
 * A check of the primaries between their secondaries, run by run and combination by combination.
 */
abstract class PrimaryCheck implements Check {

  @Override
  public final Family family() {
    return Family.STRUCTURE;
  }

  /** True if the question is asked for a run. */
  abstract boolean applies(Job job, WallRun run);

  /** The calculation for the effects of one combination. */
  abstract Calculation calculation(Job job, WallRun run, Effects effects);

  @Override
  public final List<CheckResult> run(Job job) {
    List<CheckResult> results = new ArrayList<>();
    for (WallRun run : job.submission().runs()) {
      if (run.type().secant() && applies(job, run)) {
        for (Combination combination : job.combinations()) {
          results.add(result(job, run, combination.id()));
        }
      }
    }
    return results;
  }

  private CheckResult result(Job job, WallRun run, String combination) {
    Subject subject = Subject.run(run.id()).combination(combination);
    Optional<Effects> effects = Effects.of(job, run, combination);
    if (effects.isEmpty()) {
      return CheckResult.notChecked(
          this, subject, "a stage of the wall has no equilibrium, so pressures are not known");
    }
    subject = effects.get().subject(effects.get().worstPressure());
    try {
      return CheckResult.of(this, subject, calculation(job, run, effects.get()));
    } catch (ArithmeticException e) {
      return CheckResult.notChecked(this, subject, PrimarySpan.OPEN);
    } catch (RunCheck.MissingInput e) {
      return CheckResult.notChecked(this, subject, e.getMessage());
    }
  }
}
