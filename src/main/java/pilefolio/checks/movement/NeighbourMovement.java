package pilefolio.checks.movement;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import pilefolio.analysis.movement.BuildingOnTrough;
import pilefolio.analysis.movement.BuildingPart;
import pilefolio.analysis.movement.DamageCategory;
import pilefolio.analysis.movement.DeepBeam;
import pilefolio.analysis.movement.GroundStrain;
import pilefolio.analysis.movement.Screening;
import pilefolio.analysis.movement.SettlementTrough;
import pilefolio.analysis.movement.TroughShape;
import pilefolio.checks.Job;
import pilefolio.checks.movement.WallMovements.StageMovement;
import pilefolio.model.Neighbour;
import pilefolio.model.NeighbourKind;
import pilefolio.model.Value;
import pilefolio.model.WallRun;

/**
 * What the ground does under a neighbour.
 *
 * @param neighbour the neighbour
 * @param run the run it stands behind
 * @param stages settlement by stage, in order of time; empty if it is not known
 * @param missing why it is not known, as a sentence; empty if it is
 */
public record NeighbourMovement(
    Neighbour neighbour, WallRun run, List<AtStage> stages, String missing) {

  /**
   * A neighbour in one stage.
   *
   * @param stage the stage
   * @param trough settlement of the ground
   * @param settlement greatest settlement between near and far side, m
   */
  public record AtStage(StageMovement stage, SettlementTrough trough, double settlement) {}

  /**
   * A building in its worst stage.
   *
   * @param at the stage
   * @param screened true if slope and settlement are so small that nothing further is asked
   * @param slope greatest slope of the ground, the average between near and far side unless
   *     screened
   * @param strain greatest tensile strain; 0 if screened
   * @param parts parts that bend one way; empty if screened
   */
  public record Building(
      AtStage at, boolean screened, double slope, double strain, List<BuildingPart> parts) {

    /** Copies the list. */
    public Building {
      parts = List.copyOf(parts);
    }

    /** Category of damage. */
    public DamageCategory category() {
      return DamageCategory.of(strain);
    }
  }

  /** Copies the list. */
  public NeighbourMovement {
    stages = List.copyOf(stages);
  }

  private record Key(String neighbour, String run) {}

  /** The neighbours of a job that stand on ground behind a wall, in the order of the workbook. */
  public static List<NeighbourMovement> all(Job job) {
    List<NeighbourMovement> all = new ArrayList<>();
    for (WallRun run : job.submission().runs()) {
      for (Neighbour n : job.submission().neighbours()) {
        if (n.run().equals(run.id()) && settles(n)) {
          all.add(of(job, n, run));
        }
      }
    }
    return all;
  }

  /** True if settlement of the ground matters to a neighbour. */
  private static boolean settles(Neighbour n) {
    boolean onGround =
        n.kind() != NeighbourKind.OVERHEAD_LINE && n.kind() != NeighbourKind.WATERCOURSE;
    return onGround || n.settlementLimit().isPresent();
  }

  /** A neighbour, worked out once for the whole job. */
  public static NeighbourMovement of(Job job, Neighbour neighbour, WallRun run) {
    return job.shared(
        new Key(neighbour.at().address(), run.id()),
        NeighbourMovement.class,
        j -> find(j, neighbour, run));
  }

  private static NeighbourMovement find(Job job, Neighbour neighbour, WallRun run) {
    WallMovements wall = WallMovements.of(job, run);
    Optional<TroughShape> shape = wall.shape();
    if (!wall.complete()) {
      return new NeighbourMovement(neighbour, run, List.of(), wall.missing());
    }
    if (shape.isEmpty()) {
      return new NeighbourMovement(
          neighbour,
          run,
          List.of(),
          "The workbook does not give the settlement shape of run "
              + run.id()
              + " (Wall runs, Settlement shape).");
    }
    List<AtStage> stages = new ArrayList<>();
    for (StageMovement stage : wall.stages()) {
      SettlementTrough trough = stage.trough(shape.get(), wall.ratio());
      double near = neighbour.distance().si();
      double far = neighbour.farSide();
      stages.add(
          new AtStage(
              stage,
              trough,
              far > near
                  ? new BuildingOnTrough(trough, near, far).greatestSettlement()
                  : trough.settlementAt(near)));
    }
    return new NeighbourMovement(neighbour, run, stages, "");
  }

  /** True if the movement is known. */
  public boolean known() {
    return !stages.isEmpty();
  }

  /** The stage with the greatest settlement. */
  public AtStage worst() {
    return stages.stream().max(Comparator.comparingDouble(AtStage::settlement)).orElseThrow();
  }

  /** True if the building passes the first look in a stage. */
  boolean passesFirstLook(AtStage at) {
    double near = neighbour.distance().si();
    SettlementTrough t = at.trough();
    return Screening.negligible(steepest(t, near), deepestBeyond(t, near));
  }

  /**
   * The building in its worst stage; empty if it needs a closer look and its form is not given.
   *
   * @throws java.util.NoSuchElementException if the movement is not known
   */
  public Optional<Building> building() {
    if (stages.stream().allMatch(this::passesFirstLook)) {
      AtStage worst = worstFirstLook();
      return Optional.of(
          new Building(
              worst, true, steepest(worst.trough(), neighbour.distance().si()), 0, List.of()));
    }
    Optional<Value> extent = neighbour.form().extent();
    Optional<Value> height = neighbour.form().height();
    if (extent.isEmpty() || height.isEmpty()) {
      return Optional.empty();
    }
    return stages.stream()
        .map(at -> closer(at, height.get().si()))
        .max(Comparator.comparingDouble(Building::strain));
  }

  /** The stage that comes nearest to a limit of the first look. */
  AtStage worstFirstLook() {
    double near = neighbour.distance().si();
    return stages.stream()
        .max(
            Comparator.comparingDouble(
                at ->
                    Math.max(
                        steepest(at.trough(), near) / Screening.SLOPE,
                        deepestBeyond(at.trough(), near) / Screening.SETTLEMENT)))
        .orElseThrow();
  }

  private Building closer(AtStage at, double height) {
    double near = neighbour.distance().si();
    BuildingOnTrough building = new BuildingOnTrough(at.trough(), near, neighbour.farSide());
    double slope = building.differentialSettlement() / (building.far() - building.near());
    double strain = GroundStrain.principal(building.horizontalStrain(), slope);
    for (BuildingPart part : building.parts()) {
      DeepBeam beam =
          new DeepBeam(
              part.length(), height, neighbour.form().stiffnessRatio().si(), part.bending());
      strain =
          Math.max(strain, beam.greatestStrain(part.deflectionRatio(), part.horizontalStrain()));
    }
    return new Building(at, false, slope, strain, building.parts());
  }

  /** Greatest settlement at a distance or farther, m. */
  private static double deepestBeyond(SettlementTrough t, double near) {
    return t.settlementAt(Math.max(near, t.shape().peak() * t.height()));
  }

  /** Steepest slope at a distance or farther. */
  private static double steepest(SettlementTrough t, double near) {
    return t.shape().steepestBeyond(near / t.height()) * t.settlement() / t.height();
  }
}
