package pilefolio.checks.apparent;

import java.util.ArrayList;
import java.util.List;
import pilefolio.checks.Check;
import pilefolio.checks.CheckResult;
import pilefolio.checks.Family;
import pilefolio.checks.Job;
import pilefolio.checks.situation.ApparentDesign;
import pilefolio.model.WallRun;
import pilefolio.trace.CalcSheet;
import pilefolio.trace.Calculation;

/** A check of walls with several supports under apparent pressure. */
public abstract class ApparentCheck implements Check {
  static final double KILO = 1000;

  private final String id;
  private final String title;
  private final List<CalcSheet> sheets;

  ApparentCheck(String id, String title, List<CalcSheet> sheets) {
    this.id = id;
    this.title = title;
    this.sheets = List.copyOf(sheets);
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
    return Family.STABILITY;
  }

  @Override
  public final List<CalcSheet> sheets() {
    return sheets;
  }

  /** Fills the sheet for a wall with an envelope. */
  abstract Calculation calculate(Job job, ApparentDesign design);

  @Override
  public final List<CheckResult> run(Job job) {
    List<CheckResult> results = new ArrayList<>();
    for (WallRun run : job.submission().runs()) {
      for (ApparentDesign design : ApparentDesign.of(job, run)) {
        results.add(result(job, design));
      }
    }
    return results;
  }

  private CheckResult result(Job job, ApparentDesign design) {
    var subject = design.situation().subject();
    if (design.solved().isEmpty()) {
      return CheckResult.notChecked(this, subject, design.reason());
    }
    try {
      return CheckResult.of(this, subject, calculate(job, design));
    } catch (ArithmeticException e) {
      return CheckResult.notChecked(
          this, subject, "a line has no result for these values: " + e.getMessage());
    }
  }
}
