package pilefolio.checks.ground;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import pilefolio.analysis.earth.Mobilisation;
import pilefolio.analysis.earth.PressureDiagram;
import pilefolio.analysis.earth.Side;
import pilefolio.analysis.earth.WallGround;
import pilefolio.analysis.earth.WallPressures;
import pilefolio.checks.Check;
import pilefolio.checks.CheckResult;
import pilefolio.checks.Family;
import pilefolio.checks.From;
import pilefolio.checks.Job;
import pilefolio.checks.situation.DesignSituation;
import pilefolio.checks.situation.RunDesign;
import pilefolio.checks.situation.WallSolution;
import pilefolio.model.Stage;
import pilefolio.model.Value;
import pilefolio.model.WallRun;
import pilefolio.trace.Binding;
import pilefolio.trace.CalcSheet;
import pilefolio.trace.Calculation;
import pilefolio.trace.Given;

/** What the tables of active and of passive pressure have in common. */
abstract class PressureCheck implements Check {
  private final Mobilisation state;
  private final CalcSheet behind;
  private final CalcSheet front;
  private final CalcSheet besideBehind;
  private final CalcSheet besideFront;
  private final List<CalcSheet> whole;
  private final List<CalcSheet> means;

  PressureCheck(Mobilisation state, CalcSheet behind, CalcSheet front) {
    this.state = state;
    this.behind = behind;
    this.front = front;
    boolean active = state == Mobilisation.ACTIVE;
    String with = active ? ", with loads and water given" : ", with water given";
    besideBehind =
        active
            ? PressureSheet.activeBeside(behind.title() + with)
            : PressureSheet.passiveBeside(behind.title() + with);
    besideFront =
        active
            ? PressureSheet.activeBeside(front.title() + with)
            : PressureSheet.passiveBeside(front.title() + with);
    whole = List.of(behind, front, besideBehind, besideFront);
    means = whole.stream().map(MeanPressure::after).toList();
  }

  /** The sheet for ground with or without loads, water and earthquake of its own. */
  final CalcSheet sheet(WallGround ground, boolean isBehind) {
    if (ground.surroundings().needsOwnColumns()) {
      return isBehind ? besideBehind : besideFront;
    }
    return isBehind ? behind : front;
  }

  @Override
  public Family family() {
    return Family.GROUND;
  }

  @Override
  public boolean derivation() {
    return true;
  }

  @Override
  public List<CalcSheet> sheets() {
    return Stream.concat(whole.stream(), means.stream()).toList();
  }

  @Override
  public List<CheckResult> run(Job job) {
    List<CheckResult> results = new ArrayList<>();
    for (WallRun run : job.submission().runs()) {
      for (WallSolution solution : RunDesign.of(job, run).solutions()) {
        results.add(result(job, solution));
      }
    }
    return results;
  }

  private CheckResult result(Job job, WallSolution solution) {
    DesignSituation s = solution.situation();
    if (solution.loading().isEmpty() || solution.equilibrium().isEmpty()) {
      return CheckResult.notChecked(this, s.subject(), solution.reason());
    }
    double toe = solution.equilibrium().get().toeLevel();
    boolean reverses = solution.equilibrium().get().pivotLevel().isPresent();
    boolean mainSideIsBehind = state == Mobilisation.ACTIVE;
    WallPressures p = solution.loading().get().pressures();
    List<Calculation> sheets = new ArrayList<>();
    if (mainSideIsBehind || reverses) {
      sheets.add(calculate(job, s, p, true, toe));
    }
    if (!mainSideIsBehind || reverses) {
      sheets.add(calculate(job, s, p, false, toe));
    }
    return CheckResult.of(this, s.subject(), sheets);
  }

  private Calculation calculate(
      Job job, DesignSituation s, WallPressures pressures, boolean isBehind, double toe) {
    WallGround ground = pressures.ground();
    Stage stage = s.stage();
    String c = s.combination().id();
    Given none = From.layout(0, "no load in front");
    PressureSheet.Inputs in =
        new PressureSheet.Inputs(
            isBehind
                ? From.cell(s.run().levels().retained())
                : From.layout(ground.front().groundLevel(), "design excavation level"),
            isBehind
                ? water(stage.waterBehind().orElse(null), ground.behind().waterLevel())
                : water(stage.waterFront().orElse(null), ground.front().waterLevel()),
            isBehind ? From.cell(stage.permanentSurcharge()) : none,
            isBehind ? From.cell(stage.variableSurcharge()) : none,
            From.factor(job, "action.permanent.unfavourable", c),
            From.factor(job, "action.water", c),
            From.factor(job, "action.variable.unfavourable", c),
            From.factor(job, "passive.action", c),
            s.passiveDivisor() == s.factor("passive.safety")
                ? From.factor(job, "passive.safety", c)
                : From.layout(s.passiveDivisor(), "margin stands on the embedment"));
    Side side = isBehind ? ground.behind() : ground.front();
    PressureDiagram where = pressures.where(isBehind, state, toe);
    CalcSheet sheet = sheet(ground, isBehind);
    if (ground.factors().width().whole()) {
      return PressureSheet.calculate(sheet, ground, side, where, in);
    }
    Binding binding = PressureSheet.bind(means.get(whole.indexOf(sheet)), ground, side, where, in);
    MeanPressure.rows(binding, ground, isBehind, state, where);
    return binding.calculate();
  }

  private static Given water(Value level, double used) {
    if (level == null) {
      return From.layout(used, "no water above the known ground");
    }
    return level.si() == used ? From.cell(level) : From.layout(used, "lowered with the excavation");
  }
}
