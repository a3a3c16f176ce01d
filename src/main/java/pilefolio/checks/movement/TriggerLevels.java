package pilefolio.checks.movement;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pilefolio.checks.Check;
import pilefolio.checks.CheckResult;
import pilefolio.checks.Family;
import pilefolio.checks.From;
import pilefolio.checks.Job;
import pilefolio.checks.Subject;
import pilefolio.model.Monitoring;
import pilefolio.model.Neighbour;
import pilefolio.model.Value;
import pilefolio.model.WallRun;
import pilefolio.trace.CalcSheet;
import pilefolio.trace.Given;
import pilefolio.trace.Source;

/** Amber and red triggers of the monitoring against the movements calculated and allowed. */
public final class TriggerLevels implements Check {

  /** Id of the check. */
  public static final String ID = "trigger-levels";

  @Override
  public String id() {
    return ID;
  }

  @Override
  public String title() {
    return "Trigger levels of the monitoring";
  }

  @Override
  public Family family() {
    return Family.MOVEMENT;
  }

  @Override
  public List<CalcSheet> sheets() {
    return List.of(MovementSheets.TRIGGERS);
  }

  /**
   * What a measurement is compared with.
   *
   * @param run id of the run, or empty
   * @param expected the movement calculated; empty if it is not known
   * @param limit the movement allowed
   * @param missing why the movement is not known
   * @param limitCell where the limit is entered, in words
   */
  public record Expected(
      String run,
      Optional<Given> expected,
      Optional<Value> limit,
      String missing,
      String limitCell) {}

  @Override
  public List<CheckResult> run(Job job) {
    List<CheckResult> results = new ArrayList<>();
    for (Monitoring m : job.submission().monitoring()) {
      if (m.amber().isPresent() || m.red().isPresent()) {
        results.add(result(job, m));
      }
    }
    return results;
  }

  private CheckResult result(Job job, Monitoring m) {
    Optional<Expected> found = expected(job, m);
    String name = name(m);
    if (found.isEmpty()) {
      return CheckResult.notChecked(
          this,
          Subject.JOB.piles(name),
          "The workbook does not say which run or neighbour the triggers belong to (Monitoring, Of"
              + " run or Of neighbour).");
    }
    Expected e = found.get();
    Subject subject = Subject.run(e.run()).piles(name);
    if (e.expected().isEmpty()) {
      return CheckResult.notChecked(this, subject, e.missing());
    }
    if (m.amber().isEmpty() || m.red().isEmpty()) {
      return CheckResult.notChecked(
          this, subject, "The workbook gives only one of the triggers amber and red (Monitoring).");
    }
    if (e.limit().isEmpty()) {
      return CheckResult.notChecked(
          this,
          subject,
          "The workbook does not give the movement allowed (" + e.limitCell() + ").");
    }
    return CheckResult.of(
        this,
        subject,
        MovementSheets.TRIGGERS
            .bind()
            .set("δ_E", e.expected().get())
            .set("δ_lim", From.cell(e.limit().get()))
            .set("δ_A", From.cell(m.amber().get()))
            .set("δ_R", From.cell(m.red().get()))
            .calculate());
  }

  /** How results name a measurement. */
  public static String name(Monitoring m) {
    return m.instrument() + ", " + m.location();
  }

  /** The movement that a measurement is compared with; empty if the workbook does not say which. */
  public static Optional<Expected> expected(Job job, Monitoring m) {
    if (m.neighbour().isPresent()) {
      return job.submission().neighbours().stream()
          .filter(n -> n.name().equals(m.neighbour().get()))
          .findFirst()
          .map(n -> neighbour(job, n));
    }
    return m.run()
        .flatMap(id -> job.submission().runs().stream().filter(r -> r.id().equals(id)).findFirst())
        .map(run -> wall(job, run));
  }

  private static Expected neighbour(Job job, Neighbour n) {
    WallRun run =
        job.submission().runs().stream()
            .filter(r -> r.id().equals(n.run()))
            .findFirst()
            .orElseThrow();
    NeighbourMovement movement = NeighbourMovement.of(job, n, run);
    return new Expected(
        run.id(),
        movement.known()
            ? Optional.of(
                new Given(
                    movement.worst().settlement(),
                    new Source.Line("neighbour-settlement", "Settlement of " + n.name(), "δ_max")))
            : Optional.empty(),
        n.settlementLimit(),
        movement.missing(),
        "Neighbours, Settlement limit");
  }

  private static Expected wall(Job job, WallRun run) {
    WallMovements wall = WallMovements.of(job, run);
    return new Expected(
        run.id(),
        wall.complete()
            ? Optional.of(
                new Given(
                    wall.worst().soFar(),
                    new Source.Line("wall-displacement", "Displacement of the wall", "δ_max")))
            : Optional.empty(),
        run.analysis().displacementLimit(),
        wall.missing(),
        "Wall runs, Displacement limit");
  }
}
