package pilefolio.checks.ground;

import static pilefolio.units.Units.DEG;
import static pilefolio.units.Units.KPA;
import static pilefolio.units.Units.ONE;

import java.util.ArrayList;
import java.util.List;
import pilefolio.checks.Check;
import pilefolio.checks.CheckResult;
import pilefolio.checks.Family;
import pilefolio.checks.From;
import pilefolio.checks.Job;
import pilefolio.model.Drainage;
import pilefolio.model.Layer;
import pilefolio.trace.Binding;
import pilefolio.trace.Binding.Row;
import pilefolio.trace.CalcSheet;
import pilefolio.trace.CalcTable;
import pilefolio.trace.Calculation;
import pilefolio.trace.Reference;

/** Design strength of drained layers, and whether the wall friction taken for them is allowed. */
public final class DrainedDesignStrength implements Check {
  static final String TABLE = "layers";

  static final CalcSheet SHEET =
      CalcSheet.named("Design strength of drained layers")
          .given("γ_φ", ONE, "divisor of tan φ'")
          .given("γ_c", ONE, "divisor of the effective cohesion")
          .given("k_max", ONE, "greatest wall friction over friction angle")
          .table(
              CalcTable.of(TABLE, "Drained layers", "layer")
                  .given("φ'_k", DEG, "friction angle")
                  .given("c'_k", KPA, "effective cohesion")
                  .given("k_a", ONE, "wall friction over friction angle, active")
                  .given("k_p", ONE, "wall friction over friction angle, passive")
                  .line(
                      "φ'_d = atan(tan(φ'_k)/γ_φ)", DEG, "design friction angle", Reference.DERIVED)
                  .line("c'_d = c'_k/γ_c", KPA, "design cohesion", Reference.DERIVED)
                  .line("δ_a = k_a·φ'_d", DEG, "design wall friction, active", Reference.DERIVED)
                  .line("δ_p = k_p·φ'_d", DEG, "design wall friction, passive", Reference.DERIVED)
                  .line("k = max(k_a, k_p)", ONE, "the larger of the two", Reference.DERIVED)
                  .largest("k_l", "k", "greatest wall friction taken"))
          .require(
              "k_l ≤ k_max",
              "wall friction stays within what the surface of the wall allows",
              Reference.memory("EN 1997-1:2004", "9.5.1"));

  @Override
  public String id() {
    return "ground-strength-drained";
  }

  @Override
  public String title() {
    return "Design strength of drained layers";
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
    return List.of(SHEET);
  }

  @Override
  public List<CheckResult> run(Job job) {
    List<CheckResult> results = new ArrayList<>();
    for (ProfileUse use : ProfileUse.of(job)) {
      if (!use.layers(Drainage.DRAINED).isEmpty()) {
        results.add(CheckResult.of(this, use.subject(), calculate(job, use)));
      }
    }
    return results;
  }

  static Calculation calculate(Job job, ProfileUse use) {
    String c = use.combination().id();
    Binding binding =
        SHEET
            .bind()
            .set("γ_φ", From.factor(job, "ground.friction", c))
            .set("γ_c", From.factor(job, "ground.cohesion", c))
            .set("k_max", From.factor(job, "wall.friction.limit", c));
    for (Layer layer : use.layers(Drainage.DRAINED)) {
      binding.row(
          TABLE,
          Row.of(layer.name())
              .set("φ'_k", From.cell(layer.frictionAngle().orElseThrow()))
              .set(
                  "c'_k",
                  layer.cohesion().map(From::cell).orElse(From.layout(0, "no cohesion entered")))
              .set("k_a", From.cell(layer.wallFrictionActive()))
              .set("k_p", From.cell(layer.wallFrictionPassive())));
    }
    return binding.calculate();
  }
}
