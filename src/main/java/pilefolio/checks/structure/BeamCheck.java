package pilefolio.checks.structure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import pilefolio.checks.Check;
import pilefolio.checks.CheckResult;
import pilefolio.checks.Family;
import pilefolio.checks.Job;
import pilefolio.checks.Subject;
import pilefolio.checks.WallEffects;
import pilefolio.model.Beam;
import pilefolio.model.WallRun;
import pilefolio.standards.Combination;
import pilefolio.standards.DesignBasis;
import pilefolio.standards.Section;
import pilefolio.standards.SectionTable;
import pilefolio.trace.Calculation;

/** A check of the beam in the secondaries: run by run, and what is missing on the way. */
abstract class BeamCheck implements Check {

  @Override
  public final Family family() {
    return Family.STRUCTURE;
  }

  @Override
  public final List<CheckResult> run(Job job) {
    List<CheckResult> results = new ArrayList<>();
    for (WallRun run : job.submission().runs()) {
      if (run.bearing().isEmpty() || !asked(run)) {
        continue;
      }
      Optional<Beam> beam = job.submission().beam(run.bearing().get());
      if (beam.isEmpty()) {
        results.addAll(withoutBeam(run));
        continue;
      }
      Optional<Section> section = SectionTable.all().find(beam.get().section());
      if (section.isEmpty()) {
        results.add(
            CheckResult.notChecked(
                this,
                Subject.run(run.id()),
                "the section " + beam.get().section() + " is not in the section tables"));
        continue;
      }
      WallBeam placed =
          new WallBeam(
              run, run.bearing().orElseThrow().beam().orElseThrow(), beam.get(), section.get());
      results.addAll(examine(job, placed));
    }
    return results;
  }

  /** True if the question is asked of a run on piles or beams at all. */
  boolean asked(WallRun run) {
    return true;
  }

  /** Results for a run whose secondaries have no beam; usually none. */
  List<CheckResult> withoutBeam(WallRun run) {
    return List.of();
  }

  /** The check for one run. */
  abstract List<CheckResult> examine(Job job, WallBeam beam);

  /** True if the basis checks steel to AISC 360. */
  static boolean aisc(Job job) {
    return job.basis().steel() != DesignBasis.SteelCode.EN_1993;
  }

  /**
   * One result a combination.
   *
   * @param stage which stage decides
   * @param make the calculation; an {@link ArithmeticException} means that a rule does not cover it
   * @param outside the reason then
   */
  List<CheckResult> eachCombination(
      Job job,
      WallRun run,
      Function<Effects, WallEffects> stage,
      Function<Effects, Calculation> make,
      String outside) {
    List<CheckResult> results = new ArrayList<>();
    for (Combination combination : job.combinations()) {
      Optional<Effects> effects = Effects.of(job, run, combination.id());
      if (effects.isEmpty()) {
        results.add(
            CheckResult.notChecked(
                this,
                Subject.run(run.id()).combination(combination.id()),
                "a stage of the wall has no equilibrium, so moments and forces are not known"));
        continue;
      }
      Subject subject = effects.get().subject(stage.apply(effects.get()));
      try {
        results.add(CheckResult.of(this, subject, make.apply(effects.get())));
      } catch (ArithmeticException e) {
        results.add(CheckResult.notChecked(this, subject, outside));
      }
    }
    return results;
  }
}
