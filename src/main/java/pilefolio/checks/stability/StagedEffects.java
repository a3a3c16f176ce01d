package pilefolio.checks.stability;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import pilefolio.analysis.staged.SidePoint;
import pilefolio.analysis.staged.StageState;
import pilefolio.analysis.staged.SupportForce;
import pilefolio.analysis.staged.WallNode;
import pilefolio.analysis.staged.WallSlice;
import pilefolio.checks.CheckResult;
import pilefolio.checks.Family;
import pilefolio.checks.From;
import pilefolio.checks.Job;
import pilefolio.checks.RunCheck;
import pilefolio.checks.Subject;
import pilefolio.checks.WallEffects;
import pilefolio.checks.situation.StagedDesign;
import pilefolio.checks.situation.StagedSolution;
import pilefolio.checks.situation.StagedStep;
import pilefolio.model.Support;
import pilefolio.model.WallRun;
import pilefolio.trace.Binding;
import pilefolio.trace.Binding.Row;
import pilefolio.trace.Calculation;
import pilefolio.trace.Given;
import pilefolio.trace.Source;

/** Moment, shear, displacement and support forces of the staged analysis, and their envelope. */
public final class StagedEffects extends RunCheck {
  private static final double KILO = 1000;
  private static final Source FOUND = new Source.Method("staged analysis");

  private record Key(String run) {}

  private record All(List<WallEffects> list) {}

  /** The check. */
  public StagedEffects() {
    super(
        "staged-effects",
        "Effects on the wall in stages",
        Family.STABILITY,
        StagedSheets.EFFECTS,
        StagedSheets.ENVELOPE,
        StagedSheets.SUPPORTS);
  }

  @Override
  public boolean derivation() {
    return true;
  }

  @Override
  protected List<CheckResult> check(Job job, WallRun run) {
    StagedDesign design = StagedDesign.of(job, run);
    if (!design.asked()) {
      return List.of();
    }
    if (!design.missing().isEmpty()) {
      throw new MissingInput(String.join(" ", design.missing()));
    }
    List<CheckResult> results = new ArrayList<>();
    for (StagedSolution solution : design.solutions()) {
      Given factor = factor(job, solution);
      String combination = solution.combination().id();
      for (StagedStep step : solution.complete()) {
        results.add(
            CheckResult.of(
                this,
                Subject.run(run.id())
                    .stage("stage " + step.stage().number())
                    .combination(combination),
                calculate(step.state(), factor)));
      }
      if (!solution.steps().isEmpty()) {
        results.add(
            CheckResult.of(
                this, Subject.run(run.id()).combination(combination), envelope(solution, factor)));
      }
    }
    return results;
  }

  private static Given factor(Job job, StagedSolution solution) {
    return From.factor(job, "action.permanent.unfavourable", solution.combination().id());
  }

  /** Fills the sheet of a stage. */
  public static Calculation calculate(StageState state, Given factor) {
    return new StagedRows(state).effects(factor);
  }

  private static List<Calculation> envelope(StagedSolution solution, Given factor) {
    Binding stages = StagedSheets.ENVELOPE.bind().set("γ_E", factor);
    Binding supports = StagedSheets.SUPPORTS.bind().set("γ_E", factor);
    boolean any = false;
    for (StagedStep step : solution.steps()) {
      StageState s = step.state();
      String name = name(step);
      stages.row(
          "stages",
          Row.of(name)
              .set("M_r", KILO * moment(s, 1).moment(), FOUND)
              .set("M_e", KILO * moment(s, -1).moment(), FOUND)
              .set("V", KILO * Math.abs(s.greatestShear().value()), FOUND)
              .set("y", Math.abs(s.greatestDisplacement().value()), FOUND));
      for (SupportForce f : s.supports()) {
        any = true;
        supports.row(
            "supports",
            Row.of(name + ", " + f.support().id())
                .set("T_k", KILO * f.force(), FOUND)
                .set("y_T", f.displacement(), FOUND));
      }
    }
    return any ? List.of(stages.calculate(), supports.calculate()) : List.of(stages.calculate());
  }

  // The node that the sheet of the stage shows, so that no two pages differ.
  private static WallNode moment(StageState s, int sign) {
    return s.nodes().stream().max(Comparator.comparingDouble(n -> sign * n.moment())).orElseThrow();
  }

  private static String name(StagedStep step) {
    String stage = "stage " + step.stage().number();
    return step.complete()
        ? stage
        : stage
            + ", placing "
            + String.join(", ", step.placed().stream().map(Support::id).toList());
  }

  /**
   * What the wall must resist by the staged analysis, stage by stage; empty without one. Effects
   * while supports are placed count with their stage where they are greater.
   */
  public static List<WallEffects> of(Job job, WallRun run) {
    return job.shared(new Key(run.id()), All.class, j -> make(j, run)).list();
  }

  private static All make(Job job, WallRun run) {
    StagedEffects check = new StagedEffects();
    List<WallEffects> all = new ArrayList<>();
    for (StagedSolution solution : StagedDesign.of(job, run).solutions()) {
      double factor = KILO * solution.effectFactor();
      for (StagedStep step : solution.steps()) {
        StageState s = step.state();
        WallNode most = moment(s, 1);
        WallNode least = moment(s, -1);
        WallNode moment = most.moment() >= -least.moment() ? most : least;
        all.add(
            new WallEffects(
                run.id(),
                step.stage().number(),
                solution.combination().id(),
                factor * moment.moment(),
                moment.level(),
                factor * s.greatestShear().value(),
                s.supports().stream().mapToDouble(f -> factor * f.force()).max(),
                factor * spanPressure(s),
                check));
      }
    }
    return new All(List.copyOf(all));
  }

  private static double spanPressure(StageState s) {
    double greatest = 0;
    for (WallSlice slice : s.slices()) {
      if (slice.lower() >= s.stage().excavationLevel() - 1e-9) {
        greatest = Math.max(greatest, net(slice.behind().top(), slice.front().top()));
        greatest = Math.max(greatest, net(slice.behind().bottom(), slice.front().bottom()));
      }
    }
    return greatest;
  }

  private static double net(SidePoint behind, SidePoint front) {
    return behind.pressure() - front.pressure();
  }
}
