package pilefolio.checks.stability;

import static pilefolio.units.Units.M;
import static pilefolio.units.Units.ONE;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pilefolio.checks.Check;
import pilefolio.checks.CheckResult;
import pilefolio.checks.Family;
import pilefolio.checks.From;
import pilefolio.checks.Job;
import pilefolio.checks.situation.DesignSituation;
import pilefolio.model.Support;
import pilefolio.model.Value;
import pilefolio.model.WallRun;
import pilefolio.trace.Binding;
import pilefolio.trace.CalcSheet;
import pilefolio.trace.Reference;

/** Design excavation level with the allowance for unplanned excavation. */
public final class DesignExcavation implements Check {
  private static final Reference UNPLANNED = Reference.memory("EN 1997-1:2004", "9.3.2.2");

  static final CalcSheet OF_BASIS =
      head("Design excavation level")
          .line("Δ_a = Δ_b", M, "allowance taken", Reference.DERIVED)
          .line("z_d = z_x − Δ_a", M, "design excavation level", Reference.DERIVED);

  static final CalcSheet OF_USER =
      head("Design excavation level, allowance of the user")
          .given("Δ_u", M, "allowance set by the user")
          .line("Δ_a = Δ_u", M, "allowance taken", Reference.DERIVED)
          .line("z_d = z_x − Δ_a", M, "design excavation level", Reference.DERIVED)
          .require("Δ_a ≥ Δ_b", "the allowance is no less than the basis asks for", UNPLANNED);

  private static CalcSheet head(String title) {
    return CalcSheet.named(title)
        .given("z_r", M, "ground behind, or the support if it is in place")
        .given("z_x", M, "planned excavation level")
        .given("f_a", ONE, "allowance as a share of the height")
        .given("Δ_max", M, "most that the allowance need be")
        .line("h = z_r − z_x", M, "height", Reference.DERIVED)
        .line("Δ_b = min(f_a·h, Δ_max)", M, "allowance of the basis", UNPLANNED);
  }

  @Override
  public String id() {
    return "design-excavation";
  }

  @Override
  public String title() {
    return "Design excavation level";
  }

  @Override
  public Family family() {
    return Family.STABILITY;
  }

  @Override
  public boolean shownBySituation() {
    return true;
  }

  @Override
  public List<CalcSheet> sheets() {
    return List.of(OF_BASIS, OF_USER);
  }

  @Override
  public List<CheckResult> run(Job job) {
    List<CheckResult> results = new ArrayList<>();
    for (WallRun run : job.submission().runs()) {
      for (DesignSituation s : DesignSituation.of(job.submission(), job.basis(), run)) {
        results.add(result(job, s));
      }
    }
    return results;
  }

  private CheckResult result(Job job, DesignSituation s) {
    if (s.raisedByBerm() > 0) {
      return CheckResult.notChecked(
          this,
          s.subject(),
          "a berm stands in front: the excavation is taken higher for it, and no sheet derives by"
              + " how much");
    }
    Optional<Value> own = s.run().unplannedExcavation();
    String c = s.combination().id();
    Binding binding =
        (own.isPresent() ? OF_USER : OF_BASIS)
            .bind()
            .set(
                "z_r",
                s.lowestSupport()
                    .map(Support::level)
                    .map(From::cell)
                    .orElseGet(() -> From.cell(s.run().levels().retained())))
            .set("z_x", From.cell(s.stage().excavation()))
            .set("f_a", From.factor(job, "overdig.fraction", c))
            .set("Δ_max", From.factor(job, "overdig.limit", c));
    own.ifPresent(value -> binding.set("Δ_u", From.cell(value)));
    return CheckResult.of(this, s.subject(), binding.calculate());
  }
}
