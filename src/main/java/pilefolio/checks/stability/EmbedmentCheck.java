package pilefolio.checks.stability;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import pilefolio.analysis.wall.Equilibrium;
import pilefolio.analysis.wall.NoEquilibrium;
import pilefolio.analysis.wall.WallLoading;
import pilefolio.analysis.wall.WallMethod;
import pilefolio.checks.Check;
import pilefolio.checks.CheckResult;
import pilefolio.checks.Family;
import pilefolio.checks.From;
import pilefolio.checks.Job;
import pilefolio.checks.situation.DesignSituation;
import pilefolio.checks.situation.RunDesign;
import pilefolio.checks.situation.WallSolution;
import pilefolio.model.Support;
import pilefolio.model.WallRun;
import pilefolio.trace.Binding;
import pilefolio.trace.CalcSheet;
import pilefolio.trace.Calculation;
import pilefolio.trace.Given;
import pilefolio.trace.Source;

/** Embedment of a wall by one method; each method is a check of its own. */
public abstract class EmbedmentCheck implements Check {
  private final CalcSheet sheet;
  private final Class<? extends WallMethod> method;

  EmbedmentCheck(CalcSheet sheet, Class<? extends WallMethod> method) {
    this.sheet = sheet;
    this.method = method;
  }

  @Override
  public Family family() {
    return Family.STABILITY;
  }

  @Override
  public List<CalcSheet> sheets() {
    return List.of(sheet, WeakGround.SHEET);
  }

  /** Whether a solution was found by the method of this check. */
  boolean answers(WallSolution solution) {
    return method.isInstance(solution.method());
  }

  @Override
  public List<CheckResult> run(Job job) {
    List<CheckResult> results = new ArrayList<>();
    for (WallRun run : job.submission().runs()) {
      RunDesign design = RunDesign.of(job, run);
      for (WallSolution solution : design.solutions()) {
        if (answers(solution)) {
          results.add(result(job, design, solution));
        }
      }
    }
    return results;
  }

  private CheckResult result(Job job, RunDesign design, WallSolution solution) {
    DesignSituation s = solution.situation();
    if (solution.equilibrium().isEmpty()) {
      Optional<Calculation> weak =
          solution
              .cause()
              .filter(c -> c == NoEquilibrium.Cause.UNDRAINED_GROUND_TOO_WEAK)
              .map(c -> WeakGround.calculate(solution.loading().orElseThrow()))
              .filter(c -> !c.verdict().satisfied());
      return weak.map(c -> CheckResult.of(this, s.subject(), c))
          .orElseGet(
              () ->
                  CheckResult.notChecked(
                      this, s.subject(), "no equilibrium: " + solution.reason()));
    }
    OptionalDouble toe = design.toe();
    if (toe.isEmpty()) {
      return CheckResult.notChecked(
          this,
          s.subject(),
          "the toe is left to the program, but another stage of this run has no equilibrium");
    }
    return CheckResult.of(this, s.subject(), calculate(job, solution, toe.getAsDouble()));
  }

  Calculation calculate(Job job, WallSolution solution, double toe) {
    return calculate(
        solution.loading().orElseThrow(),
        solution.equilibrium().orElseThrow(),
        inputs(job, solution, toe));
  }

  static EmbedmentInputs inputs(Job job, WallSolution solution, double toe) {
    DesignSituation s = solution.situation();
    double increase = s.embedmentIncrease();
    return new EmbedmentInputs(
        new Given(
            s.designExcavation(),
            new Source.Line("design-excavation", "Design excavation level", "z_d")),
        s.run()
            .toe()
            .map(From::cell)
            .orElse(From.method(toe, "least deep toe that every stage and combination allows")),
        increase == s.factor("embedment.increase")
            ? From.factor(job, "embedment.increase", s.combination().id())
            : From.layout(increase, "margin stands on passive pressure"),
        s.lowestSupport().map(Support::level).map(From::cell));
  }

  /**
   * Fills the sheet for a wall in equilibrium.
   *
   * @param loading its pressures, kPa
   * @param e the equilibrium
   * @param in everything else, coherent SI
   */
  public Calculation calculate(WallLoading loading, Equilibrium e, EmbedmentInputs in) {
    Binding binding =
        sheet
            .bind()
            .set("z_e", in.excavation())
            .set("z_t", in.toe())
            .set("f_D", in.increase())
            .set("z_c", From.method(e.toeLevel(), rootName()));
    double[] cuts = in.support().stream().mapToDouble(Given::si).toArray();
    for (PressureRow row : PressureRow.of(loading, e, cuts)) {
      binding.row(EmbedmentSheet.TABLE, row.bound());
    }
    complete(binding, loading, e, in);
    return binding.calculate();
  }

  /** What the toe level is found from. */
  abstract String rootName();

  /** Hands in what only this method needs. */
  abstract void complete(Binding binding, WallLoading loading, Equilibrium e, EmbedmentInputs in);
}
