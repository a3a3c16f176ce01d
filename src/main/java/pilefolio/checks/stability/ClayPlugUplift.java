package pilefolio.checks.stability;

import static pilefolio.units.Units.KN_M3;
import static pilefolio.units.Units.KPA;
import static pilefolio.units.Units.M;
import static pilefolio.units.Units.ONE;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import pilefolio.checks.CheckResult;
import pilefolio.checks.Family;
import pilefolio.checks.From;
import pilefolio.checks.Job;
import pilefolio.checks.RunCheck;
import pilefolio.checks.situation.DesignSituation;
import pilefolio.model.Drainage;
import pilefolio.model.GroundProfile;
import pilefolio.model.Layer;
import pilefolio.model.Value;
import pilefolio.model.WallRun;
import pilefolio.trace.Binding;
import pilefolio.trace.Binding.Row;
import pilefolio.trace.CalcSheet;
import pilefolio.trace.CalcTable;
import pilefolio.trace.Calculation;
import pilefolio.trace.Given;
import pilefolio.trace.Reference;

/** Water in a layer below lifts the clay between it and the base of the excavation. */
final class ClayPlugUplift extends RunCheck {
  private static final String LAYERS = "plug";
  private static final double WATER = 9810;
  private static final double LEAST_HEAD = 0.01;
  private static final Reference UPL = Reference.memory("EN 1997-1:2004", "2.4.7.4");

  static final CalcSheet FACTOR =
      plug("Uplift of a clay plug, factor of safety")
          .given("F_u", ONE, "least factor")
          .line("F = G/U", ONE, "factor of safety", Reference.DERIVED)
          .require("F ≥ F_u", "water does not lift the plug", Reference.PRACTICE);

  static final CalcSheet PARTIAL =
      plug("Uplift of a clay plug, partial factors")
          .given("γ_dst", ONE, "multiplier of the water pressure")
          .given("γ_stb", ONE, "multiplier of the weight")
          .line("U_d = γ_dst·U", KPA, "design uplift", UPL)
          .line("G_d = γ_stb·G", KPA, "design weight", UPL)
          .require("U_d ≤ G_d", "water does not lift the plug", UPL);

  private static CalcSheet plug(String title) {
    return CalcSheet.named(title)
        .given("z_p", M, "level to which the water in the layer below rises")
        .given("z_b", M, "level of the underside of the plug")
        .given("h_f", M, "depth of free water on the excavation")
        .given("γ_w", KN_M3, "unit weight of water")
        .table(
            CalcTable.of(LAYERS, "From excavation level to the underside", "layer")
                .given("t", M, "thickness")
                .given("γ", KN_M3, "unit weight")
                .line("G_i = γ·t", KPA, "weight per area", Reference.DERIVED)
                .sum("G_s", "G_i", "weight of the ground"))
        .line("G = G_s + γ_w·h_f", KPA, "weight on the underside", Reference.DERIVED)
        .line("U = γ_w·(z_p − z_b)", KPA, "water pressure under the plug", Reference.DERIVED)
        .note("Friction between the plug and the wall is left out.");
  }

  ClayPlugUplift() {
    super("clay-plug-uplift", "Uplift of a clay plug by water", Family.STABILITY, FACTOR, PARTIAL);
  }

  /**
   * A plug over water.
   *
   * @param underside index of the first layer under it
   * @param piezometric level to which the water rises, with its origin
   */
  private record Plug(int underside, Given piezometric) {}

  @Override
  protected List<CheckResult> check(Job job, WallRun run) {
    List<CheckResult> results = new ArrayList<>();
    for (DesignSituation s : LowestStages.of(job, run)) {
      List<Calculation> sheets = new ArrayList<>();
      for (Plug plug : plugs(job, s)) {
        sheets.add(calculate(job, s, plug));
      }
      if (!sheets.isEmpty()) {
        results.add(CheckResult.of(this, s.subject(), sheets));
      }
    }
    return results;
  }

  private static List<Plug> plugs(Job job, DesignSituation s) {
    List<Plug> plugs = new ArrayList<>();
    GroundProfile profile = s.profile();
    double base = s.designExcavation();
    double front = SlipModel.waterFront(s);
    OptionalDouble toe = WallSolutions.toe(job, s.run());
    for (int i = 1; i < profile.layers().size(); i++) {
      Layer above = profile.layers().get(i - 1);
      Layer below = profile.layers().get(i);
      boolean clayOverSand =
          above.drainage() == Drainage.UNDRAINED && below.drainage() == Drainage.DRAINED;
      if (below.top().si() < base && clayOverSand) {
        int underside = i;
        double still = front == Double.NEGATIVE_INFINITY ? below.top().si() : front;
        below
            .state()
            .piezometricLevel()
            .map(From::cell)
            .or(() -> waterBehind(s, toe, below))
            .filter(level -> level.si() > Math.max(still, below.top().si()) + LEAST_HEAD)
            .ifPresent(level -> plugs.add(new Plug(underside, level)));
      }
    }
    return plugs;
  }

  /** Water behind rises from the layer unless the wall closes it off. */
  private static Optional<Given> waterBehind(DesignSituation s, OptionalDouble toe, Layer layer) {
    List<Layer> layers = s.profile().layers();
    int index = layers.indexOf(layer);
    while (index < layers.size() && layers.get(index).drainage() == Drainage.DRAINED) {
      index++;
    }
    boolean sealed =
        index < layers.size()
            && toe.isPresent()
            && s.run().type().closed()
            && toe.getAsDouble() < layers.get(index).top().si();
    return sealed ? Optional.empty() : s.stage().waterBehind().map(From::cell);
  }

  private static Calculation calculate(Job job, DesignSituation s, Plug plug) {
    GroundProfile profile = s.profile();
    double base = s.designExcavation();
    double front = SlipModel.waterFront(s);
    double underside = profile.layers().get(plug.underside()).top().si();
    boolean partial = job.basis().has("uplift.permanent.destabilising");
    Binding binding =
        (partial ? PARTIAL : FACTOR)
            .bind()
            .set("z_p", plug.piezometric())
            .set("z_b", From.cell(profile.layers().get(plug.underside()).top()))
            .set("h_f", From.layout(Math.max(0, front - base), "water level in front"))
            .set("γ_w", From.layout(WATER, "fresh water"));
    for (int i = 0; i < plug.underside(); i++) {
      Layer layer = profile.layers().get(i);
      double top = Math.min(base, layer.top().si());
      double bottom = Math.max(underside, profile.bottom(i));
      if (top > bottom) {
        boolean clay = layer.drainage() == Drainage.UNDRAINED;
        double wet = clay ? bottom : Math.max(bottom, Math.min(top, front));
        // Drained ground above the water in front weighs less; clay stays saturated.
        if (!clay && top > wet) {
          row(binding, layer, top - wet, layer.unitWeight());
        }
        double rest = clay ? top - bottom : wet - bottom;
        if (rest > 0) {
          row(binding, layer, rest, layer.unitWeightBelow());
        }
      }
    }
    String combination = s.combination().id();
    if (partial) {
      binding
          .set("γ_dst", From.factor(job, "uplift.permanent.destabilising", combination))
          .set("γ_stb", From.factor(job, "uplift.permanent.stabilising", combination));
    } else {
      binding.set("F_u", From.factor(job, "uplift.safety", combination));
    }
    return binding.calculate();
  }

  private static void row(Binding binding, Layer layer, double thickness, Value weight) {
    binding.row(
        LAYERS,
        Row.of(layer.name())
            .set("t", From.layout(thickness, "layers"))
            .set("γ", From.cell(weight)));
  }
}
