package pilefolio.checks.ground;

import java.util.ArrayList;
import java.util.List;
import pilefolio.analysis.earth.OutsideRange;
import pilefolio.analysis.load.PressurePolyline;
import pilefolio.checks.Check;
import pilefolio.checks.CheckResult;
import pilefolio.checks.Family;
import pilefolio.checks.Job;
import pilefolio.checks.Subject;
import pilefolio.checks.situation.DesignSituation;
import pilefolio.checks.situation.LoadsBehind;
import pilefolio.model.LoadKind;
import pilefolio.model.LocalLoad;
import pilefolio.model.WallRun;
import pilefolio.trace.Binding;
import pilefolio.trace.Binding.Row;
import pilefolio.trace.CalcSheet;
import pilefolio.trace.Source;

/** What the pressures of local loads of each kind have in common: a row at each break. */
abstract class LocalLoadCheck implements Check {
  static final String TABLE = "pressure";
  private static final Source BREAK = new Source.Layout("break of the diagram");
  private static final double LEAST_DEPTH = 1e-9;

  private final LoadKind kind;
  private final List<CalcSheet> sheets;

  LocalLoadCheck(LoadKind kind, CalcSheet... sheets) {
    this.kind = kind;
    this.sheets = List.of(sheets);
  }

  @Override
  public Family family() {
    return Family.GROUND;
  }

  @Override
  public boolean derivation() {
    return true;
  }

  @Override
  public List<CalcSheet> sheets() {
    return sheets;
  }

  /** The sheet of a load with everything but its rows. */
  abstract Binding bind(DesignSituation s, LocalLoad load);

  @Override
  public List<CheckResult> run(Job job) {
    List<CheckResult> results = new ArrayList<>();
    for (WallRun run : job.submission().runs()) {
      for (DesignSituation s : DesignSituation.of(job.submission(), job.basis(), run)) {
        for (LocalLoad load : LoadsBehind.acting(s)) {
          if (load.kind() == kind) {
            results.add(result(s, load));
          }
        }
      }
    }
    return results;
  }

  private CheckResult result(DesignSituation s, LocalLoad load) {
    Subject subject = s.subject().piles("load " + load.id());
    pilefolio.analysis.load.LocalLoad analysed;
    try {
      analysed = LoadsBehind.load(s, load);
    } catch (OutsideRange e) {
      return CheckResult.notChecked(this, subject, e.getMessage());
    }
    double top = Math.min(load.level().si(), s.run().levels().retained().si());
    double bottom = s.givenToe().orElse(s.designExcavation() - s.characteristicHeight());
    PressurePolyline line =
        PressurePolyline.of(
            level -> analysed.pressure(load.level().si() - level), top, Math.min(bottom, top - 1));
    Binding binding = bind(s, load);
    int number = 0;
    for (PressurePolyline.Point p : line.points()) {
      if (load.level().si() - p.level() > LEAST_DEPTH) {
        number++;
        binding.row(TABLE, Row.of(String.valueOf(number)).set("z", p.level(), BREAK));
      }
    }
    return CheckResult.of(this, subject, binding.calculate());
  }
}
