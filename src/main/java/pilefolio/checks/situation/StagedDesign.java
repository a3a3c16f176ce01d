package pilefolio.checks.situation;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import pilefolio.analysis.earth.OutsideRange;
import pilefolio.analysis.earth.PressureFactors;
import pilefolio.analysis.earth.Side;
import pilefolio.analysis.earth.SoilLayer;
import pilefolio.analysis.earth.WallGround;
import pilefolio.analysis.earth.WallPressures;
import pilefolio.analysis.staged.DiagramSide;
import pilefolio.analysis.staged.ElasticSupport;
import pilefolio.analysis.staged.GroundMemory;
import pilefolio.analysis.staged.LayerSprings;
import pilefolio.analysis.staged.StagedAnalysis;
import pilefolio.analysis.staged.StagedOutcome;
import pilefolio.analysis.staged.StagedWall;
import pilefolio.analysis.staged.WallStage;
import pilefolio.checks.Job;
import pilefolio.model.GroundProfile;
import pilefolio.model.Layer;
import pilefolio.model.Stage;
import pilefolio.model.Submission;
import pilefolio.model.Support;
import pilefolio.model.Value;
import pilefolio.model.WallRun;
import pilefolio.standards.Combination;
import pilefolio.standards.DesignBasis;
import pilefolio.units.Units;

/**
 * The staged analysis of a wall run: in every combination of the basis, and once with
 * characteristic values and without unplanned excavation for displacements.
 *
 * <p>Where a combination factors actions, the ground is analysed without factors on pressure and
 * the effects are multiplied by the factor on permanent actions; variable loads and water carry
 * their factor over that one beforehand. Passive pressure is not divided: its margin is kept by the
 * checks of embedment. Every stage is dug to its design excavation level.
 *
 * @param run the run
 * @param asked whether the job asks for a staged analysis: a layer has a subgrade modulus, or a
 *     stage has more than one support
 * @param missing what the workbook does not give, as sentences; nothing is analysed then
 * @param solutions one for each combination
 * @param service with characteristic values; empty if something is missing or it cannot be had
 */
public record StagedDesign(
    WallRun run,
    boolean asked,
    List<String> missing,
    List<StagedSolution> solutions,
    Optional<StagedSolution> service) {
  /** Ground with a memory of plastic movement: anchors pull walls back. */
  public static final GroundMemory MEMORY = GroundMemory.PLASTIC_MOVEMENT;

  private static final double KILO = 1000;
  private static final double UNTOUCHED = 0.001;

  /** Copies the lists. */
  public StagedDesign {
    missing = List.copyOf(missing);
    solutions = List.copyOf(solutions);
  }

  private record Key(String run) {}

  /** The staged analysis of a run, made once for the whole job. */
  public static StagedDesign of(Job job, WallRun run) {
    return job.shared(new Key(run.id()), StagedDesign.class, j -> make(j, run));
  }

  private static StagedDesign make(Job job, WallRun run) {
    Submission submission = job.submission();
    if (submission.stages(run).isEmpty() || !asks(submission, run)) {
      return new StagedDesign(run, false, List.of(), List.of(), Optional.empty());
    }
    List<String> missing = new ArrayList<>();
    OptionalDouble toe = RunDesign.of(job, run).toe();
    if (toe.isEmpty()) {
      missing.add(
          "The toe level of the wall is not entered and cannot be sized by equilibrium alone.");
    }
    OptionalDouble stiffness =
        WallStiffness.of(job, run)
            .map(c -> OptionalDouble.of(c.value("EI") / KILO))
            .orElse(OptionalDouble.empty());
    if (stiffness.isEmpty()) {
      missing.add(
          "Wall runs, row "
              + run.at().row()
              + ", column “Wall stiffness” is empty, and no steel section gives the stiffness.");
    }
    for (Support s : submission.supports(run)) {
      if (SupportStiffness.of(job, s).isEmpty()) {
        missing.add(
            "Supports, row "
                + s.at().row()
                + ", column “Stiffness” is empty for support "
                + s.id()
                + ", and its members do not give it.");
      }
    }
    Map<String, LayerSprings> springs = new HashMap<>();
    if (toe.isPresent()) {
      DesignSituation any =
          new DesignSituation(
              submission,
              job.basis(),
              run,
              submission.stages(run).get(0),
              job.combinations().get(0));
      layers(any, run, toe.getAsDouble(), springs, missing);
    }
    if (!missing.isEmpty()) {
      return new StagedDesign(run, true, missing, List.of(), Optional.empty());
    }
    Given given = new Given(job, toe.getAsDouble(), stiffness.getAsDouble(), springs);
    List<StagedSolution> solutions = new ArrayList<>();
    Optional<StagedSolution> service;
    try {
      for (Combination combination : job.combinations()) {
        solutions.add(solve(given, job.basis(), run, combination));
      }
      service =
          Optional.of(
              solve(
                  given,
                  characteristic(job.basis()),
                  run.withoutUnplannedExcavation(),
                  job.combinations().get(0)));
    } catch (IllegalArgumentException e) {
      return new StagedDesign(
          run, true, List.of(sentence(e.getMessage())), List.of(), Optional.empty());
    }
    return new StagedDesign(run, true, List.of(), solutions, service);
  }

  private static String sentence(String words) {
    return Character.toUpperCase(words.charAt(0)) + words.substring(1) + ".";
  }

  private static boolean asks(Submission submission, WallRun run) {
    return submission.profile(run).layers().stream()
            .anyMatch(l -> l.state().subgradeModulus().isPresent())
        || submission.stages(run).stream().anyMatch(s -> s.supports().size() > 1);
  }

  private static void layers(
      DesignSituation situation,
      WallRun run,
      double toe,
      Map<String, LayerSprings> springs,
      List<String> missing) {
    GroundProfile profile = situation.profile();
    for (int i = 0; i < profile.layers().size(); i++) {
      Layer layer = profile.layers().get(i);
      boolean beside = profile.bottom(i) < run.levels().retained().si() && layer.top().si() > toe;
      if (!beside) {
        continue;
      }
      Optional<Value> modulus = layer.state().subgradeModulus();
      if (modulus.isEmpty()) {
        missing.add(
            "Ground, row "
                + layer.at().row()
                + ", column “Subgrade modulus” is empty for layer "
                + layer.name()
                + ".");
      }
      modulus.ifPresent(
          k -> springs.put(layer.name(), new LayerSprings(situation.atRest(layer), k.si() / KILO)));
    }
  }

  private record Given(Job job, double toe, double stiffness, Map<String, LayerSprings> springs) {}

  private static StagedSolution solve(
      Given given, DesignBasis basis, WallRun run, Combination combination) {
    Submission submission = given.job().submission();
    List<WallStage> stages = new ArrayList<>();
    List<Stage> rows = new ArrayList<>();
    List<List<Support>> placed = new ArrayList<>();
    Set<String> before = new HashSet<>();
    WallPressures ground = null;
    double top = run.levels().retained().si();
    double factor = 1;
    for (Stage stage : submission.stages(run)) {
      DesignSituation s = new DesignSituation(submission, basis, run, stage, combination);
      factor = s.pressureFactors().onPermanent();
      if (s.characteristicHeight() <= DesignSituation.LEAST_HEIGHT) {
        continue;
      }
      WallPressures now = pressures(s);
      if (ground == null) {
        ground = new WallPressures(untouched(now.ground()));
      }
      List<Support> all = submission.supports(stage);
      List<Support> added = all.stream().filter(x -> !before.contains(x.id())).toList();
      if (!added.isEmpty()) {
        // Supports are placed before the stage is dug, and others leave after that.
        List<Support> both = new ArrayList<>(added);
        submission.supports(run).stream().filter(x -> before.contains(x.id())).forEach(both::add);
        stages.add(wallStage(given, "stage " + stage.number() + ", placing", ground, both));
        rows.add(stage);
        placed.add(added);
      }
      stages.add(wallStage(given, "stage " + stage.number(), now, all));
      rows.add(stage);
      placed.add(List.of());
      before.clear();
      all.forEach(x -> before.add(x.id()));
      for (Support x : all) {
        top = Math.max(top, x.level().si());
      }
      ground = now;
    }
    StagedWall wall = StagedWall.of(top, given.toe(), MEMORY, stages);
    StagedOutcome outcome = StagedAnalysis.of(wall);
    List<StagedStep> steps = new ArrayList<>();
    for (int i = 0; i < outcome.stages().size(); i++) {
      steps.add(new StagedStep(rows.get(i), placed.get(i), outcome.stages().get(i)));
    }
    Optional<Stage> failed =
        outcome instanceof StagedOutcome.Collapsed c
            ? Optional.of(rows.get(c.index()))
            : Optional.empty();
    return new StagedSolution(combination, factor, wall, steps, outcome, failed);
  }

  private static WallStage wallStage(
      Given given, String name, WallPressures pressures, List<Support> supports) {
    return new WallStage(
        name,
        DiagramSide.behind(pressures, given.toe(), l -> springs(given, l)),
        DiagramSide.front(pressures, given.toe(), l -> springs(given, l)),
        pressures.ground().front().groundLevel(),
        given.stiffness(),
        supports.stream().map(s -> elastic(given.job(), s)).toList(),
        List.of());
  }

  private static LayerSprings springs(Given given, SoilLayer layer) {
    LayerSprings springs = given.springs().get(layer.name());
    if (springs == null) {
      throw new OutsideRange("layer " + layer.name() + " has no subgrade modulus");
    }
    return springs;
  }

  private static ElasticSupport elastic(Job job, Support s) {
    return ElasticSupport.inclined(
        s.id(),
        s.level().si(),
        SupportStiffness.of(job, s).orElseThrow().si() / KILO,
        s.inclination().si(),
        s.spacing().si(),
        s.lockOff().map(v -> v.in(Units.KN)).orElse(0.0),
        ElasticSupport.Action.ONE_WAY);
  }

  /** Pressures of a situation over the factor on permanent actions, passive pressure undivided. */
  private static WallPressures pressures(DesignSituation s) {
    WallGround g = s.ground();
    PressureFactors f = g.factors();
    return new WallPressures(
        g.withFactors(
            new PressureFactors(
                1,
                f.onWater() / f.onPermanent(),
                f.onVariable() / f.onPermanent(),
                1,
                1,
                f.divisorOn(),
                f.width())));
  }

  /** The ground before anything is dug. */
  private static WallGround untouched(WallGround g) {
    return new WallGround(
        g.profile(),
        g.method(),
        g.behind(),
        new Side(
            g.behind().groundLevel() - UNTOUCHED,
            Math.min(g.behind().waterLevel(), g.behind().groundLevel() - UNTOUCHED),
            g.behind().permanentSurcharge(),
            g.behind().variableSurcharge()),
        g.flow(),
        g.gammaWater(),
        g.ruleBehind(),
        g.ruleFront(),
        g.factors());
  }

  /** The basis with factors of one and no unplanned excavation. */
  private static DesignBasis characteristic(DesignBasis basis) {
    Map<String, Double> ones = new HashMap<>();
    basis
        .factors()
        .forEach(
            f -> {
              if (f.key().startsWith("ground.")
                  || f.key().startsWith("action.")
                  || f.key().equals("passive.action")) {
                ones.put(f.key(), 1.0);
              } else if (f.key().equals("overdig.fraction")) {
                ones.put(f.key(), 0.0);
              }
            });
    return basis.with(ones).basis();
  }
}
