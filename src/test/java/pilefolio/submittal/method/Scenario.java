package pilefolio.submittal.method;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import pilefolio.checks.Job;
import pilefolio.checks.sizing.Sizing;
import pilefolio.findings.CellRef;
import pilefolio.model.GroundProfile;
import pilefolio.model.Methods;
import pilefolio.model.Monitoring;
import pilefolio.model.Neighbour;
import pilefolio.model.Person;
import pilefolio.model.Project;
import pilefolio.model.Rig;
import pilefolio.model.Stage;
import pilefolio.model.Submission;
import pilefolio.model.Support;
import pilefolio.model.Technique;
import pilefolio.model.Value;
import pilefolio.model.WallRun;
import pilefolio.standards.DesignBases;
import pilefolio.submittal.Engine;
import pilefolio.submittal.Submittal;
import pilefolio.units.DisplaySystem;
import pilefolio.units.Units;
import pilefolio.workbook.WorkbookReader;

/** The small sample with one thing or another changed. */
final class Scenario {
  private static final Value ONE_NEWTON =
      Value.entered(1, Units.of("N"), new CellRef("Rigs", 4, 9), "Pull");

  private final Submission base;
  private DisplaySystem system;
  private List<WallRun> runs;
  private List<Support> supports;
  private List<Stage> stages;
  private List<Rig> rigs;
  private List<Neighbour> neighbours;
  private List<Monitoring> monitoring;
  private List<Person> people;
  private List<GroundProfile> profiles;

  private Methods methods;

  private Scenario(Submission base) {
    this.base = base;
    this.system = base.project().documentUnits();
    this.runs = base.runs();
    this.supports = base.supports();
    this.stages = base.stages();
    this.rigs = base.rigs();
    this.neighbours = base.neighbours();
    this.monitoring = base.monitoring();
    this.people = base.people();
    this.profiles = base.profiles();
    this.methods = base.methods();
  }

  /** The small sample as it is. */
  static Scenario small() {
    return sample("ten-piles");
  }

  /** A sample as it is. */
  static Scenario sample(String name) {
    try {
      return new Scenario(
          WorkbookReader.read(Path.of("sample-input", name + ".xlsx")).submission().orElseThrow());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  Submission base() {
    return base;
  }

  Scenario in(DisplaySystem system) {
    this.system = system;
    return this;
  }

  /** Every run bored by one technique. */
  Scenario bored(Technique technique) {
    runs = runs.stream().map(run -> run(run, technique)).toList();
    rigs = rigs.stream().map(rig -> rig(rig, technique, rig.pull())).toList();
    return this;
  }

  /** Every run with this support. */
  Scenario supported(Support support) {
    supports = List.of(support);
    stages =
        stages.stream()
            .map(s -> supported(s, s.supports().isEmpty() ? List.of() : List.of(support.id())))
            .toList();
    return this;
  }

  Scenario unsupported() {
    supports = List.of();
    stages = stages.stream().map(s -> supported(s, List.of())).toList();
    return this;
  }

  /** Rigs rated for a pull of one newton. */
  Scenario weakRigs() {
    rigs = rigs.stream().map(rig -> rig(rig, rig.technique(), Optional.of(ONE_NEWTON))).toList();
    return this;
  }

  /** A pile is fresh for ten days within twenty diameters, so that no order is possible. */
  Scenario slowConcrete() {
    Methods m = methods;
    methods =
        new Methods(
            m.at(),
            m.earthPressure(),
            m.cantilever(),
            m.propped(),
            m.allowableMargin(),
            m.tensionCrack(),
            m.minimumFluidWeight(),
            m.waterRegime(),
            m.toleranceSet(),
            m.positionTolerance(),
            m.verticalityTolerance(),
            m.sigmaConvention(),
            m.openJointLimit(),
            m.overlapRequired(),
            m.cutOffMargin(),
            Value.entered(20, Units.ONE, new CellRef("Methods", 18, 2), "Fresh pile distance"),
            Value.entered(240, Units.H, new CellRef("Methods", 19, 2), "Fresh pile time"),
            m.strengthModel(),
            m.largestAgeDifference(),
            m.capacityReserve(),
            m.ground(),
            m.apparent());
    return this;
  }

  Scenario neighbours(List<Neighbour> some) {
    neighbours = some;
    return this;
  }

  Scenario monitoring(List<Monitoring> some) {
    monitoring = some;
    return this;
  }

  Scenario people(List<Person> some) {
    people = some;
    return this;
  }

  Submission submission() {
    return new Submission(
        project(base.project()),
        base.basis(),
        methods,
        profiles,
        runs,
        stages,
        supports,
        base.beams(),
        base.mixes(),
        rigs,
        base.tools(),
        base.supply(),
        base.crews(),
        base.calendar(),
        neighbours,
        monitoring,
        people,
        base.revisions(),
        base.assumptions(),
        base.localLoads());
  }

  Submittal submittal() {
    Submission s = submission();
    return Submittal.of(
        Sizing.sized(new Job(s, DesignBases.find(s.basis().basis()).orElseThrow())),
        List.of(),
        new Engine("test", "ten-piles.xlsx", "0".repeat(64)));
  }

  private Project project(Project p) {
    return new Project(
        p.at(),
        p.title(),
        p.projectNumber(),
        p.documentNumber(),
        p.client(),
        p.site(),
        p.contractor(),
        p.revision(),
        p.status(),
        p.date(),
        p.preparedBy(),
        p.checkedBy(),
        p.approvedBy(),
        system,
        p.paper(),
        p.datum(),
        p.emergencyContact(),
        p.hospital(),
        p.localRules());
  }

  private static WallRun run(WallRun r, Technique technique) {
    return new WallRun(
        r.at(),
        r.id(),
        r.description(),
        r.type(),
        technique,
        r.permanent(),
        r.line(),
        r.levels(),
        r.profile(),
        r.guideWall(),
        r.batter(),
        r.piles(),
        r.sheets(),
        r.unplannedExcavation(),
        r.rig(),
        r.tool(),
        r.analysis());
  }

  private static Rig rig(Rig r, Technique technique, Optional<Value> pull) {
    return new Rig(
        r.at(),
        r.id(),
        r.description(),
        technique,
        r.mass(),
        r.augerTorque(),
        r.casingTorque(),
        r.crowd(),
        pull,
        r.stroke(),
        r.extension(),
        r.headOffset(),
        r.winchLinePull(),
        r.winchParts(),
        r.hookHeight(),
        r.reach(),
        r.setUpDistance(),
        r.batterForward(),
        r.batterBackward(),
        r.rotation(),
        r.penetration());
  }

  private static Stage supported(Stage s, List<String> supports) {
    return new Stage(
        s.at(),
        s.run(),
        s.number(),
        s.description(),
        s.excavation(),
        s.waterBehind(),
        s.waterFront(),
        s.permanentSurcharge(),
        s.variableSurcharge(),
        supports,
        s.conditions());
  }
}
