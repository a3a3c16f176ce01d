package pilefolio.checks.sequence;

import static pilefolio.units.Units.M3;
import static pilefolio.units.Units.ONE;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import pilefolio.analysis.sequence.Programme;
import pilefolio.checks.Check;
import pilefolio.checks.CheckResult;
import pilefolio.checks.Family;
import pilefolio.checks.From;
import pilefolio.checks.Job;
import pilefolio.checks.RunCheck;
import pilefolio.checks.Subject;
import pilefolio.checks.concrete.ConcreteVolume;
import pilefolio.checks.geometry.Levels;
import pilefolio.model.ConcreteSupply;
import pilefolio.model.PileKind;
import pilefolio.model.WallRun;
import pilefolio.trace.Binding;
import pilefolio.trace.Binding.Row;
import pilefolio.trace.CalcSheet;
import pilefolio.trace.CalcTable;
import pilefolio.trace.Reference;

/** Whether the plant supplies the concrete of the busiest day. */
public final class ConcreteDay implements Check {
  private static final CalcSheet SHEET =
      CalcSheet.named("Concrete of the busiest day")
          .given("V_cap", M3, "concrete the plant supplies in a day")
          .given("V_t", M3, "concrete in one truck")
          .table(
              CalcTable.of("piles", "Piles of the busiest day", "piles")
                  .given("n_d", ONE, "number made that day")
                  .given("V_a", M3, "concrete for one pile")
                  .line("V_k = n_d·V_a", M3, "concrete", Reference.DERIVED)
                  .line("n_t = n_d·ceil(V_a/V_t)", ONE, "trucks", Reference.DERIVED)
                  .sum("V_d", "V_k", "concrete of the day")
                  .sum("N_t", "n_t", "trucks of the day"))
          .line("r_d = N_t·V_t/V_d", ONE, "truck volume over concrete ordered", Reference.DERIVED)
          .require("V_d ≤ V_cap", "the plant supplies the day", Reference.DERIVED);

  @Override
  public String id() {
    return "concrete-day";
  }

  @Override
  public String title() {
    return "Concrete of the busiest day";
  }

  @Override
  public Family family() {
    return Family.CONCRETE;
  }

  @Override
  public List<CalcSheet> sheets() {
    return List.of(SHEET);
  }

  @Override
  public List<CheckResult> run(Job job) {
    try {
      return List.of(check(job));
    } catch (RunCheck.MissingInput e) {
      return List.of(CheckResult.notChecked(this, Subject.JOB, e.getMessage()));
    }
  }

  private CheckResult check(Job job) {
    ConcreteSupply supply = job.submission().supply();
    var cap = RunCheck.need(supply.dailyCap(), "the concrete the plant supplies in a day");
    Programme programme = Programmes.of(job).needed();
    Map<String, Double> each = new HashMap<>();
    Map<Integer, Double> days = new HashMap<>();
    for (WallRun run : job.submission().secantRuns()) {
      for (PileKind kind : PileKind.secant()) {
        each.put(run.id() + kind, ConcreteVolume.of(job, run, kind).value("V_a"));
      }
      run.layout()
          .piles()
          .forEach(
              p ->
                  days.merge(
                      programme.pile(p.mark()).orElseThrow().day(),
                      each.get(run.id() + p.kind()),
                      Double::sum));
    }
    int busiest =
        days.entrySet().stream()
            .max(
                Map.Entry.<Integer, Double>comparingByValue()
                    .thenComparing(Map.Entry.comparingByKey()))
            .orElseThrow()
            .getKey();
    Binding binding = SHEET.bind().set("V_cap", cap).set("V_t", From.cell(supply.truckVolume()));
    for (WallRun run : job.submission().secantRuns()) {
      for (PileKind kind : PileKind.secant()) {
        double count =
            run.layout().piles().stream()
                .filter(
                    p ->
                        p.kind() == kind && programme.pile(p.mark()).orElseThrow().day() == busiest)
                .count();
        if (count > 0) {
          binding.row(
              "piles",
              Row.of("run " + run.id() + ", " + Levels.plural(kind))
                  .set("n_d", From.layout(count, "programme"))
                  .set(
                      "V_a",
                      From.line(ConcreteVolume.CHECK, ConcreteVolume.of(job, run, kind), "V_a")));
        }
      }
    }
    return CheckResult.of(
        this,
        Subject.JOB.stage(job.submission().calendar().start().plusDays(busiest).toString()),
        binding.calculate());
  }
}
