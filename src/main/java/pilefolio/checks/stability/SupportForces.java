package pilefolio.checks.stability;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import pilefolio.analysis.staged.SupportForce;
import pilefolio.checks.Check;
import pilefolio.checks.Job;
import pilefolio.checks.situation.ApparentDesign;
import pilefolio.checks.situation.DesignSituation;
import pilefolio.checks.situation.RunDesign;
import pilefolio.checks.situation.StagedDesign;
import pilefolio.checks.situation.StagedSolution;
import pilefolio.checks.situation.StagedStep;
import pilefolio.checks.situation.WallSolution;
import pilefolio.model.Support;
import pilefolio.model.WallRun;
import pilefolio.standards.Combination;
import pilefolio.trace.Source;

/**
 * The force in a support by every route that finds one: equilibrium, staged analysis, apparent
 * pressure. What holds the wall is designed for the greatest.
 */
public final class SupportForces {
  private static final double KILO = 1000;

  /** How a force was found. */
  public enum Route {
    /** Equilibrium of the wall with one support. */
    EQUILIBRIUM("equilibrium"),
    /** Analysis of the wall stage by stage. */
    STAGED("staged analysis"),
    /** Envelope of apparent pressure. */
    APPARENT("apparent pressure");

    private final String words;

    Route(String words) {
      this.words = words;
    }

    /** The words that documents print. */
    public String words() {
      return words;
    }
  }

  /**
   * A force in a support.
   *
   * @param run id of the wall run
   * @param support id of the support
   * @param stage number of the stage
   * @param combination id of the combination
   * @param perMetre horizontal force, N/m, positive if the support pushes the wall back
   * @param route how it was found
   * @param source what prints it
   */
  public record Found(
      String run,
      String support,
      int stage,
      String combination,
      double perMetre,
      Route route,
      Source source) {}

  /** The routes; each gives what it knows of a support of a run, and nothing where it fails. */
  private static final List<BiFunction<Job, WallRun, List<Found>>> ROUTES =
      List.of(SupportForces::equilibrium, SupportForces::staged, SupportForces::apparent);

  private record Key(String run) {}

  private record All(List<Found> list) {}

  private SupportForces() {}

  /**
   * The greatest force in a support in each combination, over routes, stages and runs; a
   * combination without a force is left out.
   */
  public static List<Found> of(Job job, Support support) {
    List<Found> greatest = new ArrayList<>();
    for (Combination combination : job.combinations()) {
      of(job, support, combination.id()).ifPresent(greatest::add);
    }
    return List.copyOf(greatest);
  }

  /** The greatest force in a support in a combination. */
  public static Optional<Found> of(Job job, Support support, String combination) {
    return all(job, support).stream()
        .filter(f -> f.combination().equals(combination))
        .max(Comparator.comparingDouble(Found::perMetre));
  }

  /** Every force in a support: by route, run, stage and combination. */
  public static List<Found> all(Job job, Support support) {
    List<Found> all = new ArrayList<>();
    for (WallRun run : job.submission().runs()) {
      for (Found found : of(job, run)) {
        if (found.support().equals(support.id())) {
          all.add(found);
        }
      }
    }
    return List.copyOf(all);
  }

  private static List<Found> of(Job job, WallRun run) {
    return job.shared(
            new Key(run.id()),
            All.class,
            j -> new All(ROUTES.stream().flatMap(r -> r.apply(j, run).stream()).toList()))
        .list();
  }

  private static List<Found> apparent(Job job, WallRun run) {
    List<Found> all = new ArrayList<>();
    for (ApparentDesign design : ApparentDesign.of(job, run)) {
      if (design.solved().isEmpty()) {
        continue;
      }
      DesignSituation s = design.situation();
      int stage = s.stage().number();
      for (int i = 0; i < s.supports().size(); i++) {
        all.add(
            new Found(
                run.id(),
                s.supports().get(i).id(),
                stage,
                s.combination().id(),
                KILO * design.force(i),
                Route.APPARENT,
                new Source.Line("apparent-governs", "apparent pressure, stage " + stage, "T_a")));
      }
    }
    return all;
  }

  /** Title of the check that prints the equilibrium of a situation. */
  static String embedment(WallSolution solution) {
    return StabilityChecks.EMBEDMENT.stream()
        .filter(c -> c.answers(solution))
        .map(Check::title)
        .findFirst()
        .orElseThrow();
  }

  private static List<Found> equilibrium(Job job, WallRun run) {
    List<Found> all = new ArrayList<>();
    for (WallSolution s : RunDesign.of(job, run).solutions()) {
      if (s.situation().support().isEmpty() || s.equilibrium().isEmpty()) {
        continue;
      }
      int stage = s.situation().stage().number();
      all.add(
          new Found(
              run.id(),
              s.situation().support().get().id(),
              stage,
              s.situation().combination().id(),
              KILO * s.equilibrium().get().supportForce().orElseThrow(),
              Route.EQUILIBRIUM,
              new Source.Line("embedment", embedment(s), "T")));
    }
    return all;
  }

  private static List<Found> staged(Job job, WallRun run) {
    List<Found> all = new ArrayList<>();
    for (StagedSolution solution : StagedDesign.of(job, run).solutions()) {
      for (StagedStep step : solution.steps()) {
        int stage = step.stage().number();
        for (SupportForce f : step.state().supports()) {
          all.add(
              new Found(
                  run.id(),
                  f.support().id(),
                  stage,
                  solution.combination().id(),
                  KILO * solution.effectFactor() * f.force(),
                  Route.STAGED,
                  new Source.Line("staged-effects", "staged analysis, stage " + stage, "T")));
        }
      }
    }
    return all;
  }
}
