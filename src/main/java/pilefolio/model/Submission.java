package pilefolio.model;

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
    List<Assumption> assumptions) {

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
  }

  /** The ground along a run. */
  public GroundProfile profile(WallRun run) {
    return named(profiles, GroundProfile::id, run.profile());
  }

  /** The stages of a run in their order. */
  public List<Stage> stages(WallRun run) {
    return stages.stream().filter(stage -> stage.run().equals(run.id())).toList();
  }

  /** The support of a run, if it has one. */
  public Optional<Support> support(WallRun run) {
    return run.support().map(id -> named(supports, Support::id, id));
  }

  /** The mix of some piles. */
  public Mix mix(PileSpec piles) {
    return named(mixes, Mix::id, piles.mix());
  }

  /** The beam in some piles, if there is one. */
  public Optional<Beam> beam(PileSpec piles) {
    return piles.beam().map(in -> named(beams, Beam::id, in.beam()));
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

  private static <T> T named(
      List<T> rows, java.util.function.Function<T, String> id, String wanted) {
    return rows.stream()
        .filter(row -> id.apply(row).equals(wanted))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("nothing is called " + wanted));
  }
}
