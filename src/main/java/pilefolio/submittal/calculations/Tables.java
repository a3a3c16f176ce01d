package pilefolio.submittal.calculations;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pilefolio.model.GroundProfile;
import pilefolio.model.Layer;
import pilefolio.model.LayerState;
import pilefolio.model.LocalLoad;
import pilefolio.model.PileSpec;
import pilefolio.model.Stage;
import pilefolio.model.Submission;
import pilefolio.model.Value;
import pilefolio.model.WallRun;
import pilefolio.standards.Combination;
import pilefolio.standards.DesignBasis;
import pilefolio.standards.Factor;
import pilefolio.submittal.ValueText;
import pilefolio.trace.Tex;
import pilefolio.units.NumberText;
import pilefolio.units.Units;

/** The tables of what was described: factors, layers, runs, stages. */
final class Tables {
  private final Submission submission;
  private final DesignBasis basis;
  private final ValueText text;

  Tables(Submission submission, DesignBasis basis, ValueText text) {
    this.submission = submission;
    this.basis = basis;
    this.text = text;
  }

  List<FactorRow> factors() {
    List<FactorRow> rows = new ArrayList<>();
    for (Factor factor : basis.factors()) {
      List<String> values = new ArrayList<>();
      boolean changed = false;
      for (Combination combination : basis.combinations()) {
        String number = NumberText.usual(factor.in(combination.id()));
        values.add(factor.unit().isEmpty() ? number : number + " " + factor.unit());
        changed |= basis.isOverridden(factor.key(), combination.id());
      }
      rows.add(
          new FactorRow(
              Tex.symbol(factor.symbol()),
              factor.symbol(),
              factor.meaning(),
              List.copyOf(values),
              changed ? "value of the user" : factor.reference().text()));
    }
    return rows;
  }

  List<ProfileView> profiles() {
    List<ProfileView> views = new ArrayList<>();
    for (GroundProfile profile : submission.profiles()) {
      List<List<String>> rows = new ArrayList<>();
      for (Layer layer : profile.layers()) {
        rows.add(layer(layer));
      }
      views.add(
          new ProfileView(
              profile.id(),
              profile.investigation(),
              text.level(profile.base().si()) + " " + text.unit(Units.M),
              profile
                  .groundwater()
                  .map(level -> text.level(level.si()) + " " + text.unit(Units.M))
                  .orElse("none met"),
              text.of(profile.temperature(), Units.CELSIUS),
              rows,
              profile.layers().stream()
                  .map(layer -> List.of(layer.name(), layer.description(), layer.source()))
                  .toList(),
              states(profile)));
    }
    return views;
  }

  private List<String> layer(Layer layer) {
    return List.of(
        text.level(layer.top().si()),
        layer.name(),
        layer.drainage().label(),
        text.number(layer.unitWeight().si(), Units.KN_M3),
        text.number(layer.unitWeightBelow().si(), Units.KN_M3),
        text.number(layer.frictionAngle(), Units.DEG),
        text.number(layer.cohesion(), Units.KPA),
        text.number(layer.shearStrength(), Units.KPA),
        text.number(layer.shearStrengthIncrease(), Units.of("kPa/m")),
        text.number(layer.wallFrictionActive().si(), Units.ONE)
            + " / "
            + text.number(layer.wallFrictionPassive().si(), Units.ONE),
        text.number(layer.n60(), Units.ONE));
  }

  private List<List<String>> states(GroundProfile profile) {
    boolean any =
        profile.layers().stream()
            .map(Layer::state)
            .anyMatch(
                s ->
                    s.atRest().isPresent()
                        || s.subgradeModulus().isPresent()
                        || s.permeability().isPresent()
                        || s.piezometricLevel().isPresent()
                        || s.overconsolidation().si() > 1);
    return any ? profile.layers().stream().map(this::state).toList() : List.of();
  }

  private List<String> state(Layer layer) {
    LayerState s = layer.state();
    return List.of(
        layer.name(),
        text.number(s.overconsolidation().si(), Units.ONE),
        s.atRest().map(v -> text.number(v.si(), Units.ONE)).orElse("from strength"),
        text.number(s.subgradeModulus(), Units.KN_M3),
        text.number(s.permeability(), Units.of("m/s")),
        s.piezometricLevel().map(v -> text.level(v.si())).orElse("of the stage"));
  }

  List<String> stateUnits() {
    return List.of(
        "", "", "", text.unit(Units.KN_M3), text.unit(Units.of("m/s")), text.unit(Units.M));
  }

  private List<List<String>> supports(WallRun run) {
    return submission.supports(run).stream()
        .map(
            s ->
                List.of(
                    s.id(),
                    s.kind().label(),
                    text.level(s.level().si()),
                    text.number(s.spacing().si(), Units.M),
                    text.number(s.inclination().si(), Units.DEG),
                    text.number(s.lockOff(), Units.KN),
                    text.number(s.stiffness(), Units.KN_M),
                    text.number(s.resistance(), Units.KN),
                    s.preload()))
        .toList();
  }

  List<String> supportUnits() {
    String force = text.unit(Units.KN);
    return List.of(
        "",
        "",
        text.unit(Units.M),
        text.unit(Units.M),
        "°",
        force,
        text.unit(Units.KN_M),
        force,
        "");
  }

  private List<List<String>> loads(WallRun run) {
    return submission.localLoads().stream()
        .filter(load -> load.run().equals(run.id()))
        .map(
            load ->
                List.of(
                    load.id(),
                    load.kind().label() + (load.variable() ? ", variable" : ", permanent"),
                    text.level(load.level().si()),
                    text.number(load.distance().si(), Units.M),
                    text.number(load.width(), Units.M),
                    text.number(load.length(), Units.M),
                    intensity(load),
                    load.firstStage().map(v -> String.valueOf(Math.round(v.si()))).orElse("first")
                        + " to "
                        + load.lastStage()
                            .map(v -> String.valueOf(Math.round(v.si())))
                            .orElse("last")))
        .toList();
  }

  private String intensity(LocalLoad load) {
    return load.pressure()
        .map(v -> text.of(v, Units.KPA))
        .or(() -> load.lineLoad().map(v -> text.of(v, Units.KN_M)))
        .or(() -> load.force().map(v -> text.of(v, Units.KN)))
        .orElse("–");
  }

  List<String> loadUnits() {
    String length = text.unit(Units.M);
    return List.of("", "", length, length, length, length, "", "");
  }

  List<String> layerUnits() {
    String weight = text.unit(Units.KN_M3);
    String pressure = text.unit(Units.KPA);
    return List.of(
        text.unit(Units.M),
        "",
        "",
        weight,
        weight,
        "°",
        pressure,
        pressure,
        text.unit(Units.of("kPa/m")),
        "",
        "");
  }

  List<RunView> runs() {
    List<RunView> views = new ArrayList<>();
    for (WallRun run : submission.runs()) {
      List<List<String>> facts = new ArrayList<>();
      facts.add(List.of("Wall", run.type().label() + ", " + run.technique().label()));
      facts.add(List.of("Service", run.permanent() ? "permanent" : "temporary"));
      facts.add(List.of("Ground profile", run.profile()));
      facts.add(
          List.of(
              "Levels",
              "platform "
                  + level(run.levels().platform())
                  + ", retained ground "
                  + level(run.levels().retained())
                  + ", cut-off "
                  + level(run.levels().cutOff())));
      String spacing = text.of(run.line().spacing(), Units.MM);
      if (run.type().secant()) {
        facts.add(List.of("Spacing, primary to secondary", spacing));
        facts.add(
            List.of(
                "Piles",
                run.layout().primaries().size()
                    + " primaries, "
                    + run.layout().secondaries().size()
                    + " secondaries"));
        facts.add(List.of("Primaries", piles(run.primary())));
        facts.add(List.of("Secondaries", piles(run.secondary())));
      } else {
        facts.add(List.of("Spacing", spacing));
        run.bearing()
            .ifPresent(
                piles ->
                    facts.add(List.of("Piles", run.layout().piles().size() + "; " + piles(piles))));
      }
      facts.add(List.of("Guide wall", run.guideWall() ? "yes" : "no"));
      facts.add(List.of("Support", support(run)));
      facts.add(
          List.of("Rig and tool", run.rig() + (run.tool().isEmpty() ? "" : ", " + run.tool())));
      views.add(
          new RunView(run.id(), run.description(), facts, stages(run), supports(run), loads(run)));
    }
    return views;
  }

  private String piles(PileSpec piles) {
    List<String> parts = new ArrayList<>();
    parts.add("diameter " + text.of(piles.diameter(), Units.MM));
    parts.add("toe " + piles.toe().map(this::level).orElse("sized by the engine"));
    parts.add("mix " + piles.mix());
    piles
        .beam()
        .ifPresent(
            in ->
                parts.add(
                    "beam "
                        + submission.beam(piles).map(beam -> beam.section()).orElse(in.beam())
                        + " from "
                        + level(in.top())
                        + in.toe().map(toe -> " to " + level(toe)).orElse("")));
    piles
        .load()
        .filter(load -> load.isPresent())
        .ifPresent(
            load ->
                parts.add(
                    "load "
                        + text.of(load.permanent(), Units.KN)
                        + " permanent, "
                        + text.of(load.variable(), Units.KN)
                        + " variable"));
    return String.join("; ", parts);
  }

  private String support(WallRun run) {
    List<String> all =
        submission.supports(run).stream()
            .map(
                s ->
                    s.kind().label()
                        + " "
                        + s.id()
                        + " at "
                        + level(s.level())
                        + ", every "
                        + text.of(s.spacing(), Units.M)
                        + (s.inclination().si() == 0
                            ? ""
                            : ", " + text.of(s.inclination(), Units.DEG) + " below the horizontal"))
            .toList();
    return all.isEmpty() ? "none, cantilever" : String.join("; ", all);
  }

  private String level(Value value) {
    return text.level(value.si()) + " " + text.unit(Units.M);
  }

  private List<List<String>> stages(WallRun run) {
    List<List<String>> rows = new ArrayList<>();
    for (Stage stage : submission.stages(run)) {
      rows.add(
          List.of(
              String.valueOf(stage.number()),
              stage.description(),
              text.level(stage.excavation().si()),
              water(stage.waterBehind()),
              water(stage.waterFront()),
              text.number(stage.permanentSurcharge().si(), Units.KPA),
              text.number(stage.variableSurcharge().si(), Units.KPA),
              stage.supports().isEmpty() ? "none" : String.join(", ", stage.supports())));
    }
    return rows;
  }

  private String water(Optional<Value> level) {
    return text.level(level);
  }

  List<String> stageUnits() {
    String level = text.unit(Units.M);
    String pressure = text.unit(Units.KPA);
    return List.of("", "", level, level, level, pressure, pressure, "");
  }
}
