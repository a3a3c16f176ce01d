package pilefolio.checks;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pilefolio.model.Value;
import pilefolio.model.WallRun;
import pilefolio.trace.CalcSheet;
import pilefolio.trace.Given;

/**
 * A check that asks its question of every wall run for itself. An input that is missing, or a value
 * that leaves a line without a result, makes the run not checked and is named.
 */
public abstract class RunCheck implements Check {
  private final String id;
  private final String title;
  private final Family family;
  private final List<CalcSheet> sheets;

  /**
   * A check.
   *
   * @param id stable id
   * @param title title as printed
   * @param family family it belongs to
   * @param sheets every sheet it may print
   */
  protected RunCheck(String id, String title, Family family, CalcSheet... sheets) {
    this.id = id;
    this.title = title;
    this.family = family;
    this.sheets = List.of(sheets);
  }

  /** Says that something needed is not in the workbook. */
  public static final class MissingInput extends RuntimeException {
    /**
     * Something is missing.
     *
     * @param reason what, as a sentence
     */
    public MissingInput(String reason) {
      super(reason);
    }
  }

  /**
   * True if the question can be asked of a run at all. By default ground, stability and movement
   * are asked of every wall, structure and capacity of walls on piles or beams, the rest of secant
   * walls.
   */
  protected boolean concerns(WallRun run) {
    return switch (family) {
      case GROUND, STABILITY, MOVEMENT, SENSITIVITY -> true;
      case STRUCTURE, PILE -> run.type().bored();
      case GEOMETRY, SEQUENCE, CONCRETE, RIG -> run.type().secant();
    };
  }

  /**
   * Why a run that the check does not concern still leaves something open; empty if it does not.
   * One check of a family speaks for all of it.
   */
  protected Optional<String> leftOut(WallRun run) {
    return Optional.empty();
  }

  /**
   * Asks the question of one run.
   *
   * @return the results; empty if the question does not apply
   * @throws MissingInput if something needed is missing
   */
  protected abstract List<CheckResult> check(Job job, WallRun run);

  @Override
  public final List<CheckResult> run(Job job) {
    List<CheckResult> results = new ArrayList<>();
    for (WallRun run : job.submission().runs()) {
      if (concerns(run)) {
        results.addAll(answered(job, run));
      } else {
        leftOut(run)
            .ifPresent(
                reason -> results.add(CheckResult.notChecked(this, Subject.run(run.id()), reason)));
      }
    }
    return results;
  }

  private List<CheckResult> answered(Job job, WallRun run) {
    try {
      return check(job, run);
    } catch (MissingInput e) {
      return List.of(CheckResult.notChecked(this, Subject.run(run.id()), e.getMessage()));
    } catch (ArithmeticException e) {
      return List.of(
          CheckResult.notChecked(
              this,
              Subject.run(run.id()),
              "The values given leave a line without a result: " + e.getMessage() + "."));
    }
  }

  /** A value of the workbook, or the run is not checked for want of it. */
  public static Given need(Optional<Value> value, String what) {
    return From.cell(needed(value, what));
  }

  /** A value of the workbook, or the run is not checked for want of it. */
  public static Value needed(Optional<Value> value, String what) {
    return value.orElseThrow(() -> new MissingInput("The workbook does not give " + what + "."));
  }

  @Override
  public final String id() {
    return id;
  }

  @Override
  public final String title() {
    return title;
  }

  @Override
  public final Family family() {
    return family;
  }

  @Override
  public final List<CalcSheet> sheets() {
    return sheets;
  }
}
