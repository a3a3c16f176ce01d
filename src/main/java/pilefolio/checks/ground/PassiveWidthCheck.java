package pilefolio.checks.ground;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import pilefolio.analysis.earth.ActingWidth;
import pilefolio.analysis.earth.DrainedStrength;
import pilefolio.analysis.earth.PassiveWidth;
import pilefolio.analysis.earth.SoilLayer;
import pilefolio.analysis.earth.WallGround;
import pilefolio.analysis.wall.Equilibrium;
import pilefolio.analysis.wall.WallLoading;
import pilefolio.checks.CheckResult;
import pilefolio.checks.Family;
import pilefolio.checks.From;
import pilefolio.checks.Job;
import pilefolio.checks.RunCheck;
import pilefolio.checks.situation.BeamWidths;
import pilefolio.checks.situation.RunDesign;
import pilefolio.checks.situation.WallSolution;
import pilefolio.model.WallRun;
import pilefolio.standards.Combination;
import pilefolio.trace.Binding;
import pilefolio.trace.Binding.Row;
import pilefolio.trace.CalcSheet;
import pilefolio.trace.Calculation;
import pilefolio.trace.Source;

/** On what widths pressure acts on soldier beams and king piles below the excavation. */
public final class PassiveWidthCheck extends RunCheck {
  /** Pressure at rest of the second opinion, as its authors have it. */
  private static final double AT_REST = 0.4;

  private static final double KILO = 1000;

  /** The check. */
  public PassiveWidthCheck() {
    super(
        "passive-width",
        "Width of the ground before single piles",
        Family.GROUND,
        PassiveWidthSheets.THREE,
        PassiveWidthSheets.ARCHING,
        PassiveWidthSheets.OWN,
        PassiveWidthSheets.SECOND);
  }

  @Override
  public boolean derivation() {
    return true;
  }

  @Override
  protected List<CheckResult> check(Job job, WallRun run) {
    if (!BeamWidths.single(run)) {
      return List.of();
    }
    if (BeamWidths.width(job.submission(), run).isEmpty()) {
      throw new MissingInput("The flange of the beam is not known; its section is in no table.");
    }
    List<CheckResult> results = new ArrayList<>();
    for (Combination combination : job.combinations()) {
      // The lowest excavation meets the ground that resists most of the time.
      RunDesign.of(job, run).solutions().stream()
          .filter(s -> s.situation().combination().id().equals(combination.id()))
          .filter(s -> s.loading().isPresent())
          .min(Comparator.comparingDouble(s -> s.situation().designExcavation()))
          .ifPresent(s -> results.add(result(job, run, s)));
    }
    return results;
  }

  private CheckResult result(Job job, WallRun run, WallSolution solution) {
    WallLoading loading = solution.loading().orElseThrow();
    WallGround ground = loading.ground();
    List<Calculation> sheets = new ArrayList<>();
    sheets.add(widths(job, run, ground));
    solution.equilibrium().flatMap(e -> second(job, run, loading, e)).ifPresent(sheets::add);
    return CheckResult.of(this, solution.situation().subject(), sheets);
  }

  private static CalcSheet sheet(PassiveWidth rule) {
    return switch (rule) {
      case THREE_WIDTHS -> PassiveWidthSheets.THREE;
      case ARCHING -> PassiveWidthSheets.ARCHING;
      case OWN_WIDTH -> PassiveWidthSheets.OWN;
    };
  }

  private static Calculation widths(Job job, WallRun run, WallGround ground) {
    PassiveWidth rule = BeamWidths.rule(run);
    Binding binding =
        sheet(rule)
            .bind()
            .set("s_b", From.cell(run.line().spacing()))
            .set("b", BeamWidths.width(job.submission(), run).orElseThrow());
    if (rule == PassiveWidth.ARCHING) {
      for (SoilLayer layer : ground.layers(false).layers()) {
        if (layer.bottomLevel() < ground.front().groundLevel()) {
          double phi = layer.strength() instanceof DrainedStrength d ? d.phiRad() : 0;
          binding.row(
              PassiveWidthSheets.TABLE,
              Row.of(layer.name()).set("φ_d", phi, new Source.Layout("design value of the layer")));
        }
      }
    }
    return binding.calculate();
  }

  /** In sand without cohesion below the excavation, at half of the embedment. */
  private static Optional<Calculation> second(
      Job job, WallRun run, WallLoading loading, Equilibrium e) {
    WallGround ground = loading.ground();
    double excavation = ground.front().groundLevel();
    SoilLayer layer = ground.layers(false).below(excavation - 1e-9);
    double depth = e.theoreticalEmbedment() / 2;
    boolean holds = excavation - depth > layer.bottomLevel();
    if (!holds
        || !(layer.strength() instanceof DrainedStrength sand)
        || sand.cohesion() > 0
        || !(depth > 0)) {
      return Optional.empty();
    }
    boolean wet = ground.front().waterLevel() >= excavation - 1e-9;
    double gamma = wet ? layer.gammaBelow() - ground.gammaWater() : layer.gammaAbove();
    ActingWidth width = ground.factors().width();
    return Optional.of(
        PassiveWidthSheets.SECOND
            .bind()
            .set("φ_d", sand.phiRad(), new Source.Layout("design value of the layer"))
            .set("γ", gamma * KILO, new Source.Layout("layer below the excavation"))
            .set("b", BeamWidths.width(job.submission(), run).orElseThrow())
            .set("w_p", width.passiveWidth(sand), new Source.Layout("sheet of widths"))
            .set(
                "K_p",
                loading.pressures().coefficients(layer).kP(),
                new Source.Layout("coefficient of the layer"))
            .set("z", depth, new Source.Layout("half of the embedment"))
            .set("K_0", AT_REST, new Source.Layout("as the method has it"))
            .calculate());
  }
}
