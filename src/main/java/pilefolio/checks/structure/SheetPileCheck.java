package pilefolio.checks.structure;

import static pilefolio.units.Units.N_MM2;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import pilefolio.checks.Check;
import pilefolio.checks.CheckResult;
import pilefolio.checks.Family;
import pilefolio.checks.From;
import pilefolio.checks.Job;
import pilefolio.checks.RunCheck;
import pilefolio.checks.Subject;
import pilefolio.checks.WallEffects;
import pilefolio.model.SheetPiling;
import pilefolio.model.WallRun;
import pilefolio.standards.Combination;
import pilefolio.standards.DesignBasis;
import pilefolio.trace.Calculation;
import pilefolio.trace.Given;

/** A check of the sheet piles of a run that consists of them. */
abstract class SheetPileCheck implements Check {
  /** Why a section may not be covered. */
  static final String SLENDER = "the flange or the web of the section is too slender for the rules";

  @Override
  public final Family family() {
    return Family.STRUCTURE;
  }

  @Override
  public final List<CheckResult> run(Job job) {
    List<CheckResult> results = new ArrayList<>();
    for (WallRun run : job.submission().runs()) {
      if (run.type().sheetPiles() && run.sheets().isPresent() && asked(job, run)) {
        for (Combination combination : job.combinations()) {
          results.add(result(job, run, combination.id()));
        }
      }
    }
    return results;
  }

  /** True if the question is asked of a run of sheet piles. */
  boolean asked(Job job, WallRun run) {
    return true;
  }

  /** Which stage decides. */
  abstract Function<Effects, WallEffects> stage();

  /** The calculation of one combination. */
  abstract Calculation calculation(Job job, WallRun run, SheetPiling sheets, Effects effects);

  private CheckResult result(Job job, WallRun run, String combination) {
    Subject subject = Subject.run(run.id()).combination(combination);
    Optional<Effects> effects = Effects.of(job, run, combination);
    if (effects.isEmpty()) {
      return CheckResult.notChecked(
          this, subject, "a stage of the wall has no equilibrium, so its effects are not known");
    }
    subject = effects.get().subject(stage().apply(effects.get()));
    try {
      return CheckResult.of(
          this, subject, calculation(job, run, run.sheets().orElseThrow(), effects.get()));
    } catch (ArithmeticException e) {
      return CheckResult.notChecked(this, subject, SLENDER);
    } catch (RunCheck.MissingInput e) {
      return CheckResult.notChecked(this, subject, e.getMessage());
    }
  }

  /** True if the basis compares stresses with a share of the yield strength. */
  static boolean stresses(Job job) {
    return job.basis().steel() != DesignBasis.SteelCode.EN_1993;
  }

  /** Modulus of elasticity of the steel. */
  static Given elasticModulus(Job job) {
    return stresses(job)
        ? From.table(29000 * 6.894757293168361 * N_MM2.toSi(1), "AISC 360", "steel")
        : From.table(210000 * N_MM2.toSi(1), "EN 1993-1-1", "steel");
  }
}
