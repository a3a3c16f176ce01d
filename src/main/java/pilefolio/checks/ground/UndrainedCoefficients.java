package pilefolio.checks.ground;

import static pilefolio.units.Units.DEG;
import static pilefolio.units.Units.ONE;

import java.util.ArrayList;
import java.util.List;
import pilefolio.checks.Check;
import pilefolio.checks.CheckResult;
import pilefolio.checks.Family;
import pilefolio.checks.From;
import pilefolio.checks.Job;
import pilefolio.model.Drainage;
import pilefolio.model.EarthPressureMethod;
import pilefolio.model.Layer;
import pilefolio.trace.Binding;
import pilefolio.trace.Binding.Row;
import pilefolio.trace.CalcSheet;
import pilefolio.trace.CalcTable;
import pilefolio.trace.Reference;

/** Coefficients on undrained strength, by the method chosen. */
public final class UndrainedCoefficients implements Check {
  private static final Reference C2 = Reference.memory("EN 1997-1:2004", "Annex C.2");

  static final CalcSheet CURVED =
      CalcSheet.named("Coefficients on undrained strength by EN 1997-1 Annex C.2")
          .note("Level ground, vertical wall, φ = 0; K_a = K_p = 1 on the total vertical stress.")
          .table(
              CalcTable.of("layers", "Undrained layers", "layer")
                  .given("α_w", ONE, "wall adhesion over undrained strength")
                  .line("m_w = acos(α_w)/2", DEG, "angle at the wall", C2)
                  .line("v = 45[°] − m_w", DEG, "angle of the fan, in radians below", C2)
                  .line("K_c = 2·v + sin(90[°]) + sin(2·m_w)", ONE, "both sides, K_ac = K_pc", C2)
                  .smallest("v_s", "v", "smallest angle"))
          .require("v_s ≥ 0", "the procedure holds", C2);

  static final CalcSheet PLANE =
      CalcSheet.named("Coefficients on undrained strength with adhesion")
          .note("K_a = K_p = 1 on the total vertical stress.")
          .given("α_max", ONE, "greatest adhesion that has a meaning")
          .table(
              CalcTable.of("layers", "Undrained layers", "layer")
                  .given("α_w", ONE, "wall adhesion over undrained strength")
                  .line(
                      "K_c = 2·√(1 + α_w)",
                      ONE,
                      "both sides, K_ac = K_pc",
                      Reference.memory("BS 8002:1994", ""))
                  .largest("α_l", "α_w", "greatest adhesion taken"))
          .require("α_l ≤ α_max", "adhesion does not exceed the strength", Reference.DERIVED);

  static final CalcSheet SMOOTH =
      CalcSheet.named("Coefficients on undrained strength, smooth wall")
          .note("K_a = K_p = 1 on the total vertical stress; adhesion is left out.")
          .given("K_1", ONE, "coefficient on total vertical stress")
          .line(
              "K_c = 2·√(K_1)",
              ONE,
              "both sides, K_ac = K_pc",
              Reference.read("UFC 3-220-20 (2025)", "Eq. 4-6"));

  @Override
  public String id() {
    return "coefficients-undrained";
  }

  @Override
  public String title() {
    return "Earth-pressure coefficients of undrained layers";
  }

  @Override
  public Family family() {
    return Family.GROUND;
  }

  @Override
  public List<CalcSheet> sheets() {
    return List.of(CURVED, PLANE, SMOOTH);
  }

  @Override
  public List<CheckResult> run(Job job) {
    List<CheckResult> results = new ArrayList<>();
    EarthPressureMethod method = job.submission().methods().earthPressure();
    for (ProfileUse use : ProfileUse.of(job)) {
      List<Layer> layers = use.layers(Drainage.UNDRAINED);
      if (layers.isEmpty()) {
        continue;
      }
      Binding binding =
          switch (method) {
            case EN1997_C2 -> CURVED.bind();
            case COULOMB, CAQUOT_KERISEL ->
                PLANE.bind().set("α_max", From.layout(1, "adhesion equal to strength"));
            case RANKINE -> SMOOTH.bind().set("K_1", From.layout(1, "no friction"));
          };
      if (method != EarthPressureMethod.RANKINE) {
        for (Layer layer : layers) {
          binding.row("layers", Row.of(layer.name()).set("α_w", From.cell(layer.wallAdhesion())));
        }
      }
      results.add(CheckResult.of(this, use.subject(), binding.calculate()));
    }
    return results;
  }
}
