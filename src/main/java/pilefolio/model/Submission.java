package pilefolio.model;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Everything a workbook describes. The reader has checked that ids are unique and that every id a
 * row names exists; lists keep the order of the workbook.
 *
 * @param project document control
 * @param basis design basis
 * @param methods method choices
 * @param profiles ground profiles
 * @param runs wall runs; at least one
 * @param stages construction stages, by run and number
 * @param supports supports
 * @param beams beams
 * @param mixes mixes
 * @param rigs rigs
 * @param tools tools
 * @param supply concrete supply
 * @param crews crews
 * @param calendar working days
 * @param neighbours what stands beside the works
 * @param monitoring measurements
 * @param people roles and contacts
 * @param revisions revisions
 * @param assumptions defaults taken for empty cells
 * @param localLoads local loads behind walls
 * @param members what supports consist of
 */
public record Submission(
    Project project,
    BasisChoice basis,
    Methods methods,
    List<GroundProfile> profiles,
    List<WallRun> runs,
    List<Stage> stages,
    List<Support> supports,
    List<Beam> beams,
    List<Mix> mixes,
    List<Rig> rigs,
    List<Tool> tools,
    ConcreteSupply supply,
    List<Crew> crews,
    WorkCalendar calendar,
    List<Neighbour> neighbours,
    List<Monitoring> monitoring,
    List<Person> people,
    List<Revision> revisions,
    List<Assumption> assumptions,
    List<LocalLoad> localLoads,
    SupportMembers members) {

  /** Copies the lists. */
  public Submission {
    profiles = List.copyOf(profiles);
    runs = List.copyOf(runs);
    stages = List.copyOf(stages);
    supports = List.copyOf(supports);
    beams = List.copyOf(beams);
    mixes = List.copyOf(mixes);
    rigs = List.copyOf(rigs);
    tools = List.copyOf(tools);
    crews = List.copyOf(crews);
    neighbours = List.copyOf(neighbours);
    monitoring = List.copyOf(monitoring);
    people = List.copyOf(people);
    revisions = List.copyOf(revisions);
    assumptions = List.copyOf(assumptions);
    localLoads = List.copyOf(localLoads);
  }

  /** A job whose supports are designed by others. */
  public Submission(
      Project project,
      BasisChoice basis,
      Methods methods,
      List<GroundProfile> profiles,
      List<WallRun> runs,
      List<Stage> stages,
      List<Support> supports,
      List<Beam> beams,
      List<Mix> mixes,
      List<Rig> rigs,
      List<Tool> tools,
      ConcreteSupply supply,
      List<Crew> crews,
      WorkCalendar calendar,
      List<Neighbour> neighbours,
      List<Monitoring> monitoring,
      List<Person> people,
      List<Revision> revisions,
      List<Assumption> assumptions,
      List<LocalLoad> localLoads) {
    this(
        project,
        basis,
        methods,
        profiles,
        runs,
        stages,
        supports,
        beams,
        mixes,
        rigs,
        tools,
        supply,
        crews,
        calendar,
        neighbours,
        monitoring,
        people,
        revisions,
        assumptions,
        localLoads,
        SupportMembers.NONE);
  }

  /** The ground along a run. */
  public GroundProfile profile(WallRun run) {
    return named(profiles, GroundProfile::id, run.profile());
  }

  /** The stages of a run in their order. */
  public List<Stage> stages(WallRun run) {
    return stages.stream().filter(stage -> stage.run().equals(run.id())).toList();
  }

  /** The supports of a run, those that act in any of its stages, from the top down. */
  public List<Support> supports(WallRun run) {
    return stages(run).stream()
        .flatMap(stage -> stage.supports().stream())
        .distinct()
        .map(id -> named(supports, Support::id, id))
        .sorted(Comparator.comparingDouble((Support support) -> -support.level().si()))
        .toList();
  }

  /** The runs in any of whose stages a support is in place. */
  public List<WallRun> runs(Support support) {
    return runs.stream().filter(run -> supports(run).contains(support)).toList();
  }

  /** The supports in place in a stage, from the top down. */
  public List<Support> supports(Stage stage) {
    return stage.supports().stream()
        .map(id -> named(supports, Support::id, id))
        .sorted(Comparator.comparingDouble((Support support) -> -support.level().si()))
        .toList();
  }

  /** The local loads behind a run in a stage. */
  public List<LocalLoad> localLoads(Stage stage) {
    return localLoads.stream()
        .filter(load -> load.run().equals(stage.run()) && load.actsIn(stage))
        .toList();
  }

  /** The runs of secant wall. */
  public List<WallRun> secantRuns() {
    return runs.stream().filter(run -> run.type().secant()).toList();
  }

  /** The mix of some piles. */
  public Mix mix(PileSpec piles) {
    return named(mixes, Mix::id, piles.mix());
  }

  /** The beam in some piles, if there is one. */
  public Optional<Beam> beam(PileSpec piles) {
    return piles.beam().map(in -> named(beams, Beam::id, in.beam()));
  }

  /** The beam of an id. */
  public Beam beam(String id) {
    return named(beams, Beam::id, id);
  }

  /** The rig of a run. */
  public Rig rig(WallRun run) {
    return named(rigs, Rig::id, run.rig());
  }

  /** The tool of a run. */
  public Tool tool(WallRun run) {
    return named(tools, Tool::id, run.tool());
  }

  /** The crews on the rig of a run. */
  public List<Crew> crews(WallRun run) {
    return crews.stream().filter(crew -> crew.rig().equals(run.rig())).toList();
  }

  /** The same with other runs. */
  public Submission withRuns(List<WallRun> others) {
    return new Submission(
        project,
        basis,
        methods,
        profiles,
        others,
        stages,
        supports,
        beams,
        mixes,
        rigs,
        tools,
        supply,
        crews,
        calendar,
        neighbours,
        monitoring,
        people,
        revisions,
        assumptions,
        localLoads,
        members);
  }

  /** The same with another run in place of the one of the same id. */
  public Submission with(WallRun other) {
    return withRuns(runs.stream().map(r -> r.id().equals(other.id()) ? other : r).toList());
  }

  /** The same with other ground profiles. */
  public Submission withProfiles(List<GroundProfile> others) {
    return new Submission(
        project,
        basis,
        methods,
        others,
        runs,
        stages,
        supports,
        beams,
        mixes,
        rigs,
        tools,
        supply,
        crews,
        calendar,
        neighbours,
        monitoring,
        people,
        revisions,
        assumptions,
        localLoads,
        members);
  }

  /** The same with other stages. */
  public Submission withStages(List<Stage> others) {
    return new Submission(
        project,
        basis,
        methods,
        profiles,
        runs,
        others,
        supports,
        beams,
        mixes,
        rigs,
        tools,
        supply,
        crews,
        calendar,
        neighbours,
        monitoring,
        people,
        revisions,
        assumptions,
        localLoads,
        members);
  }

  /** The same with another beam in place of the one of the same id. */
  public Submission with(Beam other) {
    List<Beam> others = beams.stream().map(b -> b.id().equals(other.id()) ? other : b).toList();
    return new Submission(
        project,
        basis,
        methods,
        profiles,
        runs,
        stages,
        supports,
        others,
        mixes,
        rigs,
        tools,
        supply,
        crews,
        calendar,
        neighbours,
        monitoring,
        people,
        revisions,
        assumptions,
        localLoads,
        members);
  }

  /** The same with other local loads. */
  public Submission withLocalLoads(List<LocalLoad> others) {
    return new Submission(
        project,
        basis,
        methods,
        profiles,
        runs,
        stages,
        supports,
        beams,
        mixes,
        rigs,
        tools,
        supply,
        crews,
        calendar,
        neighbours,
        monitoring,
        people,
        revisions,
        assumptions,
        others,
        members);
  }

  /** The same with other assumptions. */
  public Submission withAssumptions(List<Assumption> others) {
    return new Submission(
        project,
        basis,
        methods,
        profiles,
        runs,
        stages,
        supports,
        beams,
        mixes,
        rigs,
        tools,
        supply,
        crews,
        calendar,
        neighbours,
        monitoring,
        people,
        revisions,
        others,
        localLoads,
        members);
  }

  /** The same with other members of supports. */
  public Submission with(SupportMembers others) {
    return new Submission(
        project,
        basis,
        methods,
        profiles,
        runs,
        stages,
        supports,
        beams,
        mixes,
        rigs,
        tools,
        supply,
        crews,
        calendar,
        neighbours,
        monitoring,
        people,
        revisions,
        assumptions,
        localLoads,
        others);
  }

  private static <T> T named(
      List<T> rows, java.util.function.Function<T, String> id, String wanted) {
    return rows.stream()
        .filter(row -> id.apply(row).equals(wanted))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("nothing is called " + wanted));
  }
}
