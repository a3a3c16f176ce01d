package pilefolio.checks.ground;

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
import pilefolio.trace.Reference;
import pilefolio.units.Unit;
import pilefolio.units.Units;

/** Design strength of undrained layers. */
public final class UndrainedDesignStrength implements Check {
  static final String TABLE = "layers";
  private static final Unit KPA_PER_M = Units.of("kPa/m");

  static final CalcSheet SHEET =
      CalcSheet.named("Design strength of undrained layers")
          .given("γ_cu", ONE, "divisor of the undrained shear strength")
          .table(
              CalcTable.of(TABLE, "Undrained layers", "layer")
                  .given("s_{u,k}", KPA, "undrained strength at the top")
                  .given("s'_k", KPA_PER_M, "increase with depth")
                  .line(
                      "s_{u,d} = s_{u,k}/γ_cu",
                      KPA,
                      "design strength at the top",
                      Reference.DERIVED)
                  .line("s'_d = s'_k/γ_cu", KPA_PER_M, "design increase", Reference.DERIVED));

  @Override
  public String id() {
    return "ground-strength-undrained";
  }

  @Override
  public String title() {
    return "Design strength of undrained layers";
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
  public boolean derivation() {
    return true;
  }

  @Override
  public List<CheckResult> run(Job job) {
    List<CheckResult> results = new ArrayList<>();
    for (ProfileUse use : ProfileUse.of(job)) {
      List<Layer> layers = use.layers(Drainage.UNDRAINED);
      if (layers.isEmpty()) {
        continue;
      }
      Binding binding =
          SHEET.bind().set("γ_cu", From.factor(job, "ground.undrained", use.combination().id()));
      for (Layer layer : layers) {
        binding.row(
            TABLE,
            Row.of(layer.name())
                .set("s_{u,k}", From.cell(layer.shearStrength().orElseThrow()))
                .set(
                    "s'_k",
                    layer
                        .shearStrengthIncrease()
                        .map(From::cell)
                        .orElse(From.layout(0, "no increase entered"))));
      }
      results.add(CheckResult.of(this, use.subject(), binding.calculate()));
    }
    return results;
  }
}
