package pilefolio.submittal.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import pilefolio.checks.Job;
import pilefolio.checks.situation.DesignSituation;
import pilefolio.checks.situation.PileToes;
import pilefolio.checks.situation.WallSolution;
import pilefolio.model.BeamInPile;
import pilefolio.model.GroundProfile;
import pilefolio.model.PileKind;
import pilefolio.model.PileSpec;
import pilefolio.model.SoilKind;
import pilefolio.model.Stage;
import pilefolio.model.Value;
import pilefolio.model.WallRun;
import pilefolio.submittal.Submittal;
import pilefolio.submittal.figure.SectionData.Ground;
import pilefolio.submittal.figure.SectionData.Layer;
import pilefolio.submittal.figure.SectionData.Support;
import pilefolio.trace.Given;
import pilefolio.units.Units;

/** Section through a run in the situation that governs its embedment. */
final class WallSections {
  private static final double ROOM_BELOW = 0.08;

  private final Job job;
  private final DrawingUnits units;
  private final WallRun run;
  private final WallSolution solution;
  private final DesignSituation situation;

  private WallSections(Submittal submittal, WallRun run, WallSolution solution) {
    this.job = submittal.job();
    this.units = new DrawingUnits(submittal.system());
    this.run = run;
    this.solution = solution;
    this.situation = solution.situation();
  }

  /** The section; empty if the wall never retains ground or a toe level is not known. */
  static Optional<SectionData> of(Submittal submittal, WallRun run) {
    return Results.governing(submittal, run)
        .flatMap(solution -> new WallSections(submittal, run, solution).section());
  }

  private Optional<SectionData> section() {
    Optional<Double> primary = toe(PileKind.PRIMARY);
    Optional<Double> secondary = toe(PileKind.SECONDARY);
    if (primary.isEmpty() || secondary.isEmpty()) {
      return Optional.empty();
    }
    Stage stage = situation.stage();
    double retained = run.levels().retained().si();
    double toe = secondary.get();
    return Optional.of(
        new SectionData(
            "section-" + run.id(),
            caption(),
            units.scale("Level", Units.M),
            layers(Math.min(toe, primary.get()), retained),
            units.metres(retained),
            units.metres(stage.excavation().si()),
            units.metres(situation.designExcavation()),
            water(stage.waterBehind()),
            water(stage.waterFront()),
            units.metres(run.levels().cutOff().si()),
            units.metres(primary.get()),
            units.metres(toe),
            units.metres(run.secondary().diameter().si()),
            beam(toe),
            supports(),
            surcharge(stage),
            levels(stage, primary.get(), toe),
            new PressureCurves(units).panels(solution, toe)));
  }

  private Optional<Double> toe(PileKind kind) {
    return PileToes.of(job, run, kind).map(Given::si);
  }

  private String caption() {
    String where =
        "Section through run "
            + run.id()
            + " in stage "
            + situation.stage().number()
            + ", "
            + situation.combination().id()
            + ", which governs the embedment";
    return solution.equilibrium().isPresent()
        ? where + "; pressures as factored, down to the toe in equilibrium."
        : where + "; there is no equilibrium.";
  }

  private List<Layer> layers(double toe, double retained) {
    GroundProfile profile = situation.profile();
    double lowest = Math.max(profile.base().si(), toe - ROOM_BELOW * (retained - toe));
    List<Layer> layers = new ArrayList<>();
    for (int i = 0; i < profile.layers().size(); i++) {
      var layer = profile.layers().get(i);
      double top = Math.min(retained, layer.top().si());
      double bottom = Math.max(lowest, profile.bottom(i));
      if (top > bottom) {
        layers.add(
            new Layer(
                DrawingUnits.words(layer.name()),
                ground(layer.kind()),
                units.metres(top),
                units.metres(bottom)));
      }
    }
    return layers;
  }

  static Ground ground(SoilKind kind) {
    return switch (kind) {
      case FILL -> Ground.FILL;
      case CLAY -> Ground.CLAY;
      case SILT -> Ground.SILT;
      case SAND -> Ground.SAND;
      case GRAVEL -> Ground.GRAVEL;
      case ROCK -> Ground.ROCK;
    };
  }

  private OptionalDouble water(Optional<Value> level) {
    return level.isPresent()
        ? OptionalDouble.of(units.metres(level.get().si()))
        : OptionalDouble.empty();
  }

  private List<Double> beam(double toe) {
    return run.bearing()
        .flatMap(PileSpec::beam)
        .map(
            (BeamInPile in) ->
                List.of(
                    units.metres(in.top().si()), units.metres(in.toe().map(Value::si).orElse(toe))))
        .orElse(List.of());
  }

  private List<Support> supports() {
    return situation.supports().stream()
        .map(
            s ->
                new Support(
                    units.metres(s.level().si()),
                    s.kind().pulls(),
                    Math.toDegrees(s.inclination().si()),
                    s.kind().label() + " " + DrawingUnits.words(s.id())))
        .toList();
  }

  private String surcharge(Stage stage) {
    List<String> parts = new ArrayList<>();
    if (stage.permanentSurcharge().si() > 0) {
      parts.add(units.text(stage.permanentSurcharge().si(), Units.KPA) + " permanent");
    }
    if (stage.variableSurcharge().si() > 0) {
      parts.add(units.text(stage.variableSurcharge().si(), Units.KPA) + " variable");
    }
    return String.join(" + ", parts);
  }

  private List<Mark> levels(Stage stage, double primaryToe, double secondaryToe) {
    List<Mark> marks = new ArrayList<>();
    marks.add(units.level("ground", run.levels().retained().si()));
    marks.add(units.level("cut-off", run.levels().cutOff().si()));
    for (pilefolio.model.Support s : situation.supports()) {
      marks.add(units.level(s.kind().label().toLowerCase(Locale.ROOT), s.level().si()));
    }
    stage.waterBehind().ifPresent(v -> marks.add(units.level("water behind", v.si())));
    stage.waterFront().ifPresent(v -> marks.add(units.level("water in front", v.si())));
    marks.add(units.level("excavation", stage.excavation().si()));
    if (situation.unplannedExcavation() > 0) {
      marks.add(units.level("design excavation", situation.designExcavation()));
    }
    solution
        .equilibrium()
        .ifPresent(e -> marks.add(units.level("toe in equilibrium", e.toeLevel())));
    marks.add(units.level("toe of primaries", primaryToe));
    marks.add(units.level("toe of secondaries", secondaryToe));
    return marks;
  }
}
