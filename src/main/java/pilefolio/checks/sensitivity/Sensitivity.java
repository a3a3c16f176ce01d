package pilefolio.checks.sensitivity;

import static pilefolio.units.Units.KNM_M;
import static pilefolio.units.Units.KN_M;
import static pilefolio.units.Units.M;
import static pilefolio.units.Units.MM;
import static pilefolio.units.Units.ONE;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import pilefolio.checks.Check;
import pilefolio.checks.CheckResult;
import pilefolio.checks.Family;
import pilefolio.checks.From;
import pilefolio.checks.Job;
import pilefolio.checks.Subject;
import pilefolio.checks.sensitivity.WallResponse.Question;
import pilefolio.model.WallRun;
import pilefolio.trace.Binding;
import pilefolio.trace.Binding.Row;
import pilefolio.trace.CalcSheet;
import pilefolio.trace.CalcTable;
import pilefolio.trace.Calculation;
import pilefolio.trace.Given;
import pilefolio.trace.Reference;
import pilefolio.trace.Source;

/** What the wall does when one assumption at a time is changed. */
final class Sensitivity implements Check {
  private static final String CHANGES = "changes";
  private static final String LEVELS = "levels";
  private static final String TURNED = "turned";
  private static final String LOST = "lost";
  private static final Source ANALYSIS = new Source.Method("the analysis of this job, repeated");

  /** Effects by limit equilibrium. */
  static final CalcSheet EFFECTS = effects("Effects of changed assumptions", false);

  /** Effects by staged analysis, with displacements. */
  static final CalcSheet STAGED = effects("Effects of changed assumptions, staged analysis", true);

  /** Forces level by level. */
  static final CalcSheet SUPPORTS =
      CalcSheet.named("Support forces under changed assumptions")
          .table(
              CalcTable.of(LEVELS, "Greatest horizontal force of each support", "change, support")
                  .given("N_d", KN_M, "as designed")
                  .given("N_v", KN_M, "with the change")
                  .line("ΔN = N_v − N_d", KN_M, "difference", Reference.DERIVED)
                  .largest("ΔN_max", "ΔN", "greatest growth"));

  /** Answers that turn. */
  static final CalcSheet ANSWERS =
      CalcSheet.named("Answers that turn under changed assumptions")
          .note("Satisfied as designed, not satisfied with the change.")
          .table(
              CalcTable.of(TURNED, "Worst utilisation", "change: question")
                  .given("u_d", ONE, "as designed")
                  .given("u_v", ONE, "with the change")
                  .line("Δu = u_v − u_d", ONE, "difference", Reference.DERIVED)
                  .largest("u_max", "u_v", "greatest"));

  /** Changes under which a stage has no equilibrium. */
  static final CalcSheet WITHOUT =
      CalcSheet.named("Changes without equilibrium")
          .note("The wall as designed stands; with one of these changes a stage does not.")
          .table(
              CalcTable.of(LOST, "First stage that has no equilibrium", "change")
                  .given("n_s", ONE, "stage")
                  .smallest("n_1", "n_s", "first of them"));

  private static CalcSheet effects(String title, boolean staged) {
    CalcSheet sheet =
        CalcSheet.named(title)
            .given("M_0", KNM_M, "greatest moment as designed")
            .given("V_0", KN_M, "greatest shear force as designed")
            .given("N_0", KN_M, "greatest support force as designed; nil without supports")
            .given("z_t", M, "toe of the wall");
    CalcTable table =
        CalcTable.of(CHANGES, "The worst of all stages and combinations, one change each", "change")
            .given("M", KNM_M, "greatest moment")
            .line("r_M = M/M_0", ONE, "over that as designed", Reference.DERIVED)
            .given("V", KN_M, "greatest shear force")
            .line("r_V = V/V_0", ONE, "over that as designed", Reference.DERIVED)
            .given("N", KN_M, "greatest support force")
            .line("ΔN = N − N_0", KN_M, "growth", Reference.DERIVED);
    if (staged) {
      sheet = sheet.given("w_0", MM, "greatest displacement as designed, in service");
      table =
          table
              .given("w", MM, "greatest displacement, in service")
              .line("Δw = w − w_0", MM, "growth", Reference.DERIVED);
    }
    return sheet
        .note(
            "Each row is the whole analysis on the same wall with one assumption changed. Slip"
                + " circles and flow nets are not repeated.")
        .table(
            table
                .given("z_r", M, "toe required by limit equilibrium")
                .line("Δz = z_t − z_r", M, "toe is above it by", Reference.DERIVED)
                .given("u_p", ONE, "passive reserve used")
                .given("n", ONE, "answers that turn")
                .largest("r_max", "r_M", "greatest growth of the moment")
                .largest("u_max", "u_p", "greatest use of the passive reserve")
                .sum("Σn", "n", "answers that turn"));
  }

  @Override
  public String id() {
    return "sensitivity";
  }

  @Override
  public String title() {
    return "Sensitivity of the wall";
  }

  @Override
  public Family family() {
    return Family.SENSITIVITY;
  }

  @Override
  public List<CalcSheet> sheets() {
    return List.of(EFFECTS, STAGED, SUPPORTS, ANSWERS, WITHOUT);
  }

  @Override
  public boolean derivation() {
    return true;
  }

  @Override
  public boolean shownBySituation() {
    return false;
  }

  @Override
  public List<CheckResult> run(Job job) {
    List<CheckResult> results = new ArrayList<>();
    for (WallRun run : job.submission().runs()) {
      if (!job.submission().stages(run).isEmpty()) {
        results.add(result(job, run));
      }
    }
    return results;
  }

  private CheckResult result(Job job, WallRun run) {
    Subject subject = Subject.run(run.id());
    if (run.toe().isEmpty()) {
      return CheckResult.notChecked(this, subject, "the toe of the wall is not known");
    }
    Job base = Variant.asDesigned(job, run);
    Optional<WallResponse> designed = WallResponse.of(base, run).response();
    if (designed.isEmpty()) {
      return CheckResult.notChecked(
          this, subject, "the wall as designed has a stage without equilibrium");
    }
    WallResponse asDesigned = designed.get();
    if (!(asDesigned.moment() > 0 && asDesigned.shear() > 0)) {
      return CheckResult.notChecked(this, subject, "the wall as designed carries nothing");
    }
    List<Row> changes = new ArrayList<>();
    List<Row> levels = new ArrayList<>();
    List<Row> turned = new ArrayList<>();
    List<Row> lost = new ArrayList<>();
    boolean staged = asDesigned.displacement().isPresent();
    List<Variant> variants = Variant.of(base, run, staged);
    // Each change is a job of its own, so they do not touch each other.
    List<WallResponse.Outcome> outcomes =
        variants.parallelStream()
            .map(v -> WallResponse.of(v.job(), v.job().submission().runs().get(0)))
            .toList();
    for (int i = 0; i < variants.size(); i++) {
      Variant variant = variants.get(i);
      WallResponse.Outcome outcome = outcomes.get(i);
      if (outcome.response().isEmpty()
          || (staged && outcome.response().get().displacement().isEmpty())) {
        lost.add(Row.of(variant.title()).set("n_s", outcome.failedStage(), ANALYSIS));
        continue;
      }
      WallResponse response = outcome.response().get();
      Map<Question, CheckResult> turns = response.turned(asDesigned);
      changes.add(change(variant.title(), response, turns.size(), staged));
      response
          .supports()
          .forEach(
              (id, force) ->
                  levels.add(
                      Row.of(variant.title() + ", " + id)
                          .set("N_d", asDesigned.supports().getOrDefault(id, 0.0), ANALYSIS)
                          .set("N_v", force, ANALYSIS)));
      turns.forEach(
          (question, result) ->
              utilisations(asDesigned.answers().get(question), result)
                  .ifPresent(
                      u ->
                          turned.add(
                              Row.of(
                                      variant.title()
                                          + ": "
                                          + question.title()
                                          + (question.combination().isEmpty()
                                              ? ""
                                              : ", " + question.combination()))
                                  .set("u_d", u[0], ANALYSIS)
                                  .set("u_v", u[1], ANALYSIS))));
    }
    List<Calculation> sheets = new ArrayList<>();
    if (!changes.isEmpty()) {
      Binding binding =
          (staged ? STAGED : EFFECTS)
              .bind()
              .set("M_0", asDesigned.moment(), ANALYSIS)
              .set("V_0", asDesigned.shear(), ANALYSIS)
              .set("N_0", asDesigned.greatestSupport(), ANALYSIS)
              .set("z_t", toe(run));
      if (staged) {
        binding.set("w_0", asDesigned.displacement().getAsDouble(), ANALYSIS);
      }
      sheets.add(filled(binding, CHANGES, changes));
    }
    add(sheets, SUPPORTS, LEVELS, levels);
    add(sheets, ANSWERS, TURNED, turned);
    add(sheets, WITHOUT, LOST, lost);
    return CheckResult.of(this, subject, sheets);
  }

  private static Given toe(WallRun run) {
    return From.cell(run.toe().orElseThrow());
  }

  private static Optional<double[]> utilisations(CheckResult before, CheckResult after) {
    OptionalDouble a = before.verdict().utilisation();
    OptionalDouble b = after.verdict().utilisation();
    return a.isPresent() && b.isPresent() && Double.isFinite(b.getAsDouble())
        ? Optional.of(new double[] {a.getAsDouble(), b.getAsDouble()})
        : Optional.empty();
  }

  private static Row change(String title, WallResponse r, int turns, boolean staged) {
    Row row =
        Row.of(title)
            .set("M", r.moment(), ANALYSIS)
            .set("V", r.shear(), ANALYSIS)
            .set("N", r.greatestSupport(), ANALYSIS)
            .set("z_r", r.requiredToe(), ANALYSIS)
            .set("u_p", r.passive(), ANALYSIS)
            .set("n", turns, ANALYSIS);
    return staged ? row.set("w", r.displacement().getAsDouble(), ANALYSIS) : row;
  }

  private static void add(List<Calculation> sheets, CalcSheet sheet, String table, List<Row> rows) {
    if (!rows.isEmpty()) {
      sheets.add(filled(sheet.bind(), table, rows));
    }
  }

  private static Calculation filled(Binding binding, String table, List<Row> rows) {
    rows.forEach(row -> binding.row(table, row));
    return binding.calculate();
  }
}
