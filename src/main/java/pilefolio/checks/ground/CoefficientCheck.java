package pilefolio.checks.ground;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pilefolio.checks.Check;
import pilefolio.checks.CheckResult;
import pilefolio.checks.Family;
import pilefolio.checks.From;
import pilefolio.checks.Job;
import pilefolio.model.Drainage;
import pilefolio.model.EarthPressureMethod;
import pilefolio.trace.Binding;
import pilefolio.trace.Binding.Row;
import pilefolio.trace.CalcSheet;
import pilefolio.trace.Calculation;
import pilefolio.trace.Calculation.RowValues;
import pilefolio.trace.Source;

/** What the sheets of coefficients of drained layers have in common: one row a layer. */
abstract class CoefficientCheck implements Check {
  private final EarthPressureMethod method;
  private final CalcSheet sheet;
  private final boolean hasSlope;
  private final List<List<String>> tables;

  /**
   * @param method the method chosen in the workbook that this sheet belongs to
   * @param sheet the sheet
   * @param hasSlope whether the sheet has the slope of the ground, β
   * @param tables for each table its id and the design values it is given, {@code symbol} or {@code
   *     symbol=name in the table of strengths}
   */
  CoefficientCheck(
      EarthPressureMethod method, CalcSheet sheet, boolean hasSlope, List<List<String>> tables) {
    this.method = method;
    this.sheet = sheet;
    this.hasSlope = hasSlope;
    this.tables = tables;
  }

  @Override
  public boolean shownBySituation() {
    return true;
  }

  @Override
  public Family family() {
    return Family.GROUND;
  }

  @Override
  public List<CalcSheet> sheets() {
    return List.of(sheet);
  }

  /** Why the method does not hold for the design strengths, if it does not. */
  Optional<String> refused(Calculation strength) {
    return Optional.empty();
  }

  /** A row with what the sheet is given beside design strengths, such as entries of a table. */
  Row completed(String table, Row row, Map<String, Double> strength) {
    return row;
  }

  @Override
  public List<CheckResult> run(Job job) {
    List<CheckResult> results = new ArrayList<>();
    if (job.submission().methods().earthPressure() != method) {
      return results;
    }
    for (ProfileUse use : ProfileUse.of(job)) {
      for (String reason : Underived.of(job.submission(), use)) {
        results.add(CheckResult.notChecked(this, use.subject(), reason));
      }
      if (use.runs().stream().anyMatch(Underived::sloping)) {
        // The sheet is that of level ground and would show coefficients that nobody used.
        continue;
      }
      if (use.layers(Drainage.DRAINED).isEmpty()) {
        continue;
      }
      Calculation strength = DrainedDesignStrength.calculate(job, use);
      Binding binding = sheet.bind();
      if (hasSlope) {
        binding.set("β", From.layout(0, "level ground"));
      }
      Optional<String> refused = refused(strength);
      if (refused.isPresent()) {
        results.add(CheckResult.notChecked(this, use.subject(), refused.get()));
        continue;
      }
      for (List<String> table : tables) {
        for (RowValues row : strength.table(DrainedDesignStrength.TABLE).rows()) {
          Row bound = Row.of(row.label());
          for (String pair : table.subList(1, table.size())) {
            String symbol = pair.split("=", 2)[0];
            String from = pair.substring(pair.indexOf('=') + 1);
            bound =
                bound.set(
                    symbol,
                    row.values().get(from),
                    new Source.Line(
                        "ground-strength-drained", "Design strength of drained layers", from));
          }
          binding.row(table.get(0), completed(table.get(0), bound, row.values()));
        }
      }
      try {
        results.add(CheckResult.of(this, use.subject(), binding.calculate()));
      } catch (ArithmeticException e) {
        results.add(
            CheckResult.notChecked(
                this,
                use.subject(),
                "a coefficient has no finite value; wall friction must not exceed the friction"
                    + " angle, and plane surfaces need friction small enough for a critical one: "
                    + e.getMessage()));
      }
    }
    return results;
  }
}
