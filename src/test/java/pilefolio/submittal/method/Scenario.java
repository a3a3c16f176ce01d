package pilefolio.submittal.method;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import pilefolio.checks.Job;
import pilefolio.model.GroundProfile;
import pilefolio.model.Monitoring;
import pilefolio.model.Neighbour;
import pilefolio.model.Person;
import pilefolio.model.Project;
import pilefolio.model.Rig;
import pilefolio.model.RunLevels;
import pilefolio.model.Stage;
import pilefolio.model.Submission;
import pilefolio.model.Support;
import pilefolio.model.Technique;
import pilefolio.model.WallRun;
import pilefolio.standards.DesignBases;
import pilefolio.submittal.Engine;
import pilefolio.submittal.Submittal;
import pilefolio.units.DisplaySystem;
import pilefolio.workbook.WorkbookReader;

/** The small sample with one thing or another changed. */
final class Scenario {
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
  }

  /** The small sample as it is. */
  static Scenario small() {
    try {
      return new Scenario(
          WorkbookReader.read(Path.of("sample-input", "ten-piles.xlsx"))
              .submission()
              .orElseThrow());
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
    runs = runs.stream().map(run -> bored(run, technique)).toList();
    rigs = rigs.stream().map(rig -> bored(rig, technique)).toList();
    return this;
  }

  /** Every run with this support from its second stage on. */
  Scenario supported(Support support) {
    supports = List.of(support);
    runs = runs.stream().map(run -> changed(run, Optional.of(support.id()))).toList();
    return this;
  }

  Scenario unsupported() {
    supports = List.of();
    runs = runs.stream().map(run -> changed(run, Optional.empty())).toList();
    stages = stages.stream().map(Scenario::unsupported).toList();
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
        base.methods(),
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
        base.assumptions());
  }

  Submittal submittal() {
    Submission s = submission();
    return Submittal.of(
        new Job(s, DesignBases.find(s.basis().basis()).orElseThrow()),
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

  private static WallRun bored(WallRun run, Technique technique) {
    return run(run, technique, run.levels(), run.support());
  }

  private static WallRun changed(WallRun run, Optional<String> support) {
    return run(run, run.technique(), run.levels(), support);
  }

  Scenario levels(UnaryOperator<RunLevels> change) {
    runs =
        runs.stream()
            .map(r -> run(r, r.technique(), change.apply(r.levels()), r.support()))
            .toList();
    return this;
  }

  private static WallRun run(
      WallRun r, Technique technique, RunLevels levels, Optional<String> support) {
    return new WallRun(
        r.at(),
        r.id(),
        r.description(),
        r.interlock(),
        technique,
        r.permanent(),
        r.line(),
        levels,
        r.profile(),
        r.guideWall(),
        r.batter(),
        r.primary(),
        r.secondary(),
        support,
        r.unplannedExcavation(),
        r.rig(),
        r.tool());
  }

  private static Rig bored(Rig r, Technique technique) {
    return new Rig(
        r.at(),
        r.id(),
        r.description(),
        technique,
        r.mass(),
        r.augerTorque(),
        r.casingTorque(),
        r.crowd(),
        r.pull(),
        r.stroke(),
        r.extension(),
        r.headOffset(),
        r.winchLinePull(),
        r.winchParts(),
        r.hookHeight(),
        r.reach(),
        r.batterForward(),
        r.batterBackward(),
        r.rotation(),
        r.penetration());
  }

  private static Stage unsupported(Stage s) {
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
        false);
  }
}
