package pilefolio.checks.sensitivity;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import pilefolio.checks.Job;
import pilefolio.checks.situation.WallStiffness;
import pilefolio.model.GroundProfile;
import pilefolio.model.Layer;
import pilefolio.model.LayerState;
import pilefolio.model.LocalLoad;
import pilefolio.model.RunAnalysis;
import pilefolio.model.Stage;
import pilefolio.model.Submission;
import pilefolio.model.Value;
import pilefolio.model.WallRun;
import pilefolio.standards.DesignBasis;
import pilefolio.units.Units;

/**
 * One change of an assumption.
 *
 * @param title what is changed, as a row is called
 * @param job the job of the run alone, changed
 */
record Variant(String title, Job job) {
  static final double WATER = 1.0;
  static final double FRICTION = Math.toRadians(2);
  static final double UNDRAINED = 0.85;
  static final double LOAD = 1.5;
  static final double DEEPER = 0.3;
  static final double SOFTER_WALL = 0.7;

  /** The run alone, as designed: other runs of the job have no part in its analysis. */
  static Job asDesigned(Job job, WallRun run) {
    return job.submission().runs().equals(List.of(run))
        ? job
        : new Job(job.submission().withRuns(List.of(run)), job.basis());
  }

  /**
   * The changes that mean something for a run: those that leave its job as it is are left out.
   *
   * @param base the run alone, as designed
   * @param staged true if springs and stiffness have a part in the analysis
   */
  static List<Variant> of(Job base, WallRun run, boolean staged) {
    Submission s = base.submission();
    List<Variant> all = new ArrayList<>();
    add(all, base, "water behind 1 m higher", stages(s, stage -> water(stage, run)));
    add(all, base, "friction angle 2° less, s_u 15 % less", layers(s, run, Variant::weaker));
    add(
        all,
        base,
        "surcharges 50 % more",
        stages(s, Variant::loaded)
            .withLocalLoads(s.localLoads().stream().map(Variant::loaded).toList()));
    add(all, base, "excavation 0.3 m deeper", stages(s, Variant::deeper));
    allowance(base, run).ifPresent(v -> all.add(new Variant("unplanned excavation doubled", v)));
    if (staged) {
      add(all, base, "subgrade modulus halved", layers(s, run, l -> sprung(l, 0.5)));
      add(all, base, "subgrade modulus doubled", layers(s, run, l -> sprung(l, 2)));
      softer(base, run).ifPresent(v -> all.add(new Variant("stiffness of the wall 30 % less", v)));
    }
    return all;
  }

  private static void add(List<Variant> all, Job base, String title, Submission changed) {
    if (!changed.equals(base.submission())) {
      all.add(new Variant(title, new Job(changed, base.basis())));
    }
  }

  private static Submission stages(Submission s, UnaryOperator<Stage> change) {
    return s.withStages(s.stages().stream().map(change).toList());
  }

  private static Submission layers(Submission s, WallRun run, UnaryOperator<Layer> change) {
    return s.withProfiles(
        s.profiles().stream()
            .map(p -> p.id().equals(run.profile()) ? with(p, change) : p)
            .toList());
  }

  private static GroundProfile with(GroundProfile p, UnaryOperator<Layer> change) {
    return new GroundProfile(
        p.at(),
        p.id(),
        p.investigation(),
        p.base(),
        p.groundwater(),
        p.temperature(),
        p.layers().stream().map(change).toList());
  }

  private static Value changed(Value v, double si) {
    return si == v.si() ? v : Value.entered(v.unit().fromSi(si), v.unit(), v.cell(), v.column());
  }

  private static Stage water(Stage stage, WallRun run) {
    double ground = run.levels().retained().si();
    return stage(
        stage,
        stage.excavation(),
        stage
            .waterBehind()
            .map(v -> changed(v, Math.max(v.si(), Math.min(v.si() + WATER, ground)))),
        1);
  }

  private static Stage loaded(Stage stage) {
    return stage(stage, stage.excavation(), stage.waterBehind(), LOAD);
  }

  private static Stage deeper(Stage stage) {
    return stage(
        stage,
        changed(stage.excavation(), stage.excavation().si() - DEEPER),
        stage.waterBehind(),
        1);
  }

  private static Stage stage(Stage s, Value excavation, Optional<Value> waterBehind, double load) {
    return new Stage(
        s.at(),
        s.run(),
        s.number(),
        s.description(),
        excavation,
        waterBehind,
        s.waterFront(),
        changed(s.permanentSurcharge(), load * s.permanentSurcharge().si()),
        changed(s.variableSurcharge(), load * s.variableSurcharge().si()),
        s.supports(),
        s.conditions());
  }

  private static LocalLoad loaded(LocalLoad l) {
    return new LocalLoad(
        l.at(),
        l.id(),
        l.run(),
        l.kind(),
        l.distance(),
        l.width(),
        l.length(),
        l.level(),
        l.pressure().map(v -> changed(v, LOAD * v.si())),
        l.lineLoad().map(v -> changed(v, LOAD * v.si())),
        l.force().map(v -> changed(v, LOAD * v.si())),
        l.offset(),
        l.variable(),
        l.firstStage(),
        l.lastStage());
  }

  private static Layer weaker(Layer l) {
    return layer(
        l,
        l.frictionAngle().map(v -> changed(v, Math.max(0, v.si() - FRICTION))),
        l.shearStrength().map(v -> changed(v, UNDRAINED * v.si())),
        l.shearStrengthIncrease().map(v -> changed(v, UNDRAINED * v.si())),
        l.state());
  }

  private static Layer sprung(Layer l, double factor) {
    LayerState s = l.state();
    return layer(
        l,
        l.frictionAngle(),
        l.shearStrength(),
        l.shearStrengthIncrease(),
        new LayerState(
            s.atRest(),
            s.overconsolidation(),
            s.subgradeModulus().map(v -> changed(v, factor * v.si())),
            s.permeability(),
            s.piezometricLevel()));
  }

  private static Layer layer(
      Layer l,
      Optional<Value> friction,
      Optional<Value> strength,
      Optional<Value> increase,
      LayerState state) {
    return new Layer(
        l.at(),
        l.name(),
        l.description(),
        l.kind(),
        l.top(),
        l.unitWeight(),
        l.unitWeightBelow(),
        l.drainage(),
        friction,
        l.cohesion(),
        strength,
        increase,
        l.wallFrictionActive(),
        l.wallFrictionPassive(),
        l.wallAdhesion(),
        l.n60(),
        l.source(),
        state);
  }

  /** Twice the allowance: the user's, or share and limit of the basis; empty if it is nil. */
  private static Optional<Job> allowance(Job base, WallRun run) {
    if (run.unplannedExcavation().isPresent()) {
      Value v = run.unplannedExcavation().get();
      return v.si() == 0
          ? Optional.empty()
          : Optional.of(
              new Job(
                  base.submission().with(run.withUnplannedExcavation(changed(v, 2 * v.si()))),
                  base.basis()));
    }
    Map<String, Double> twice = new HashMap<>();
    double share = base.basis().factor("overdig.fraction").in(base.combinations().get(0).id());
    if (share == 0) {
      return Optional.empty();
    }
    twice.put("overdig.fraction", 2 * share);
    twice.put(
        "overdig.limit",
        2 * base.basis().factor("overdig.limit").in(base.combinations().get(0).id()));
    DesignBasis.Changed changed = base.basis().with(twice);
    return changed.refused().isEmpty()
        ? Optional.of(new Job(base.submission(), changed.basis()))
        : Optional.empty();
  }

  private static Optional<Job> softer(Job base, WallRun run) {
    return WallStiffness.of(base, run)
        .map(
            c -> {
              RunAnalysis a = run.analysis();
              Value stiffness =
                  Value.entered(
                      SOFTER_WALL * c.value("EI") / 1000,
                      Units.of("kN·m²/m"),
                      run.at(),
                      "Wall stiffness");
              return new Job(
                  base.submission()
                      .with(
                          run.with(
                              new RunAnalysis(
                                  Optional.of(stiffness),
                                  a.slopeBehind(),
                                  a.excavationWidth(),
                                  a.excavationLength(),
                                  a.displacementLimit(),
                                  a.settlement()))),
                  base.basis());
            });
  }
}
