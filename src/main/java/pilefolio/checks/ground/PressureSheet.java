package pilefolio.checks.ground;

import static pilefolio.units.Units.KN_M3;
import static pilefolio.units.Units.KPA;
import static pilefolio.units.Units.M;
import static pilefolio.units.Units.ONE;

import pilefolio.analysis.earth.Mobilisation;
import pilefolio.analysis.earth.PressureDiagram;
import pilefolio.analysis.earth.PressureFactors;
import pilefolio.analysis.earth.PressureNode;
import pilefolio.analysis.earth.PressureSegment;
import pilefolio.analysis.earth.Side;
import pilefolio.analysis.earth.SoilLayer;
import pilefolio.analysis.earth.WallGround;
import pilefolio.analysis.earth.WaterFlow;
import pilefolio.trace.Binding;
import pilefolio.trace.Binding.Row;
import pilefolio.trace.CalcSheet;
import pilefolio.trace.CalcTable;
import pilefolio.trace.Calculation;
import pilefolio.trace.Choice;
import pilefolio.trace.Given;
import pilefolio.trace.Reference;
import pilefolio.trace.Source;

/**
 * The pressure tables: one row at each break of a diagram, twice where a layer ends, every value
 * redone from the row above and the coefficients of the layer.
 */
final class PressureSheet {
  static final String TABLE = "pressure";
  private static final Source COEFFICIENT = new Source.Layout("coefficient of the layer");
  private static final Source DESIGN = new Source.Layout("design value of the layer");
  private static final Source BREAK = new Source.Layout("break of the diagram");
  private static final Source LOADS = new Source.Layout("local loads of the stage");
  private static final double KILO = 1000;

  private PressureSheet() {}

  /** The values of a sheet with where they come from. */
  record Inputs(
      Given groundLevel,
      Given waterLevel,
      Given permanent,
      Given variable,
      Given onPermanent,
      Given onWater,
      Given onVariable,
      Given onPassive,
      Given passiveDivisor) {}

  /** A sheet of active pressure. */
  static CalcSheet active(String title) {
    return head(title)
        .given("γ_G", ONE, "factor on earth pressure and permanent surcharge")
        .given("q_Q", KPA, "variable surcharge")
        .given("γ_Q", ONE, "factor on variable actions")
        .line("q_d = q_G + q_Q·γ_Q/γ_G", KPA, "surcharge on the surface", Reference.DERIVED)
        .table(
            CalcTable.of(TABLE, "Active pressure from the top down", "layer")
                .given("z", M, "level")
                .given("γ", KN_M3, "unit weight above this level")
                .given("i_w", KN_M3, "growth of pore pressure with depth; 0 where none acts")
                .given("K_a", ONE, "coefficient")
                .given("K_ac", ONE, "coefficient on cohesion")
                .given("c", KPA, "c' or s_u")
                .given("k_m", KN_M3, "least pressure as a fluid; 0 for none")
                .carried("z_0", M, "level of the row above", "z", "z_1")
                .carried("σ_0", KPA, "stress of the row above", "σ_v", "q_d")
                .line("σ_v = σ_0 + γ·(z_0 − z)", KPA, "vertical stress", Reference.DERIVED)
                .choose("u", KPA, "pore pressure", Reference.DERIVED, pore())
                .line(
                    "p_E = max(K_a·(σ_v − u) − K_ac·c, k_m·(z_g − z) − u, 0)",
                    KPA,
                    "earth pressure",
                    Reference.read("UFC 3-220-20 (2025)", "Eq. 4-6"))
                .line("p = γ_G·p_E + γ_{G,w}·u", KPA, "pressure on the wall", Reference.DERIVED));
  }

  /** A sheet of passive pressure. */
  static CalcSheet passive(String title) {
    return head(title)
        .given("γ_P", ONE, "factor on passive pressure")
        .given("F", ONE, "divisor of passive pressure")
        .table(
            CalcTable.of(TABLE, "Passive pressure from the top down", "layer")
                .given("z", M, "level")
                .given("γ", KN_M3, "unit weight above this level")
                .given("i_w", KN_M3, "growth of pore pressure with depth; 0 where none acts")
                .given("K_p", ONE, "coefficient")
                .given("K_pc", ONE, "coefficient on cohesion")
                .given("c", KPA, "c' or s_u")
                .carried("z_0", M, "level of the row above", "z", "z_1")
                .carried("σ_0", KPA, "stress of the row above", "σ_v", "q_G")
                .line("σ_v = σ_0 + γ·(z_0 − z)", KPA, "vertical stress", Reference.DERIVED)
                .choose("u", KPA, "pore pressure", Reference.DERIVED, pore())
                .line(
                    "p_E = max((K_p·(σ_v − u) + K_pc·c)/F, 0)",
                    KPA,
                    "earth pressure",
                    Reference.DERIVED)
                .line("p = γ_P·p_E + γ_{G,w}·u", KPA, "pressure on the wall", Reference.DERIVED));
  }

  /** A sheet of active pressure with pore pressures, local loads and earthquake handed in. */
  static CalcSheet activeBeside(String title) {
    return headBeside(title)
        .given("γ_G", ONE, "factor on earth pressure and permanent loads")
        .given("q_Q", KPA, "variable surcharge")
        .given("γ_Q", ONE, "factor on variable actions")
        .line("q_d = q_G + q_Q·γ_Q/γ_G", KPA, "surcharge on the surface", Reference.DERIVED)
        .table(
            CalcTable.of(TABLE, "Active pressure from the top down", "layer")
                .given("z", M, "level")
                .given("γ", KN_M3, "unit weight above this level")
                .given("u", KPA, "pore pressure")
                .given("K_a", ONE, "coefficient")
                .given("K_ac", ONE, "coefficient on cohesion")
                .given("c", KPA, "c' or s_u")
                .given("k_m", KN_M3, "least pressure as a fluid; 0 for none")
                .given("p_{L,G}", KPA, "permanent local loads")
                .given("p_{L,Q}", KPA, "variable local loads")
                .given("p_e", KPA, "earthquake")
                .carried("z_0", M, "level of the row above", "z", "z_1")
                .carried("σ_0", KPA, "stress of the row above", "σ_v", "q_d")
                .line("σ_v = σ_0 + γ·(z_0 − z)", KPA, "vertical stress", Reference.DERIVED)
                .line(
                    "p_E = max(K_a·(σ_v − u) − K_ac·c, k_m·(z_g − z) − u, 0)",
                    KPA,
                    "earth pressure",
                    Reference.read("UFC 3-220-20 (2025)", "Eq. 4-6"))
                .line(
                    "p = γ_G·(p_E + p_{L,G}) + γ_{G,w}·u + γ_Q·p_{L,Q} + p_e",
                    KPA,
                    "pressure on the wall",
                    Reference.DERIVED));
  }

  /** A sheet of passive pressure with pore pressures handed in. */
  static CalcSheet passiveBeside(String title) {
    return headBeside(title)
        .given("γ_P", ONE, "factor on passive pressure")
        .given("F", ONE, "divisor of passive pressure")
        .table(
            CalcTable.of(TABLE, "Passive pressure from the top down", "layer")
                .given("z", M, "level")
                .given("γ", KN_M3, "unit weight above this level")
                .given("u", KPA, "pore pressure")
                .given("K_p", ONE, "coefficient")
                .given("K_pc", ONE, "coefficient on cohesion")
                .given("c", KPA, "c' or s_u")
                .carried("z_0", M, "level of the row above", "z", "z_1")
                .carried("σ_0", KPA, "stress of the row above", "σ_v", "q_G")
                .line("σ_v = σ_0 + γ·(z_0 − z)", KPA, "vertical stress", Reference.DERIVED)
                .line(
                    "p_E = max((K_p·(σ_v − u) + K_pc·c)/F, 0)",
                    KPA,
                    "earth pressure",
                    Reference.DERIVED)
                .line("p = γ_P·p_E + γ_{G,w}·u", KPA, "pressure on the wall", Reference.DERIVED));
  }

  private static CalcSheet headBeside(String title) {
    return CalcSheet.named(title)
        .given("z_g", M, "ground level")
        .given("z_w", M, "water level")
        .given("q_G", KPA, "permanent surcharge")
        .given("γ_{G,w}", ONE, "factor on water pressure")
        .line("z_1 = max(z_g, z_w)", M, "top of the diagram", Reference.DERIVED);
  }

  private static CalcSheet head(String title) {
    return CalcSheet.named(title)
        .given("z_g", M, "ground level")
        .given("z_w", M, "water level")
        .given("γ_w", KN_M3, "unit weight of water")
        .given("q_G", KPA, "permanent surcharge")
        .given("γ_{G,w}", ONE, "factor on water pressure")
        .line("z_1 = max(z_g, z_w)", M, "top of the diagram", Reference.DERIVED)
        .line("z_s = min(z_w, z_g)", M, "level from which pore pressure grows", Reference.DERIVED)
        .line("u_s = γ_w·(z_w − z_s)", KPA, "pore pressure there", Reference.DERIVED);
  }

  private static Choice pore() {
    return Choice.when("i_w > 0 and z ≤ z_w", "u_s + i_w·(z_s − z)").otherwise("0");
  }

  /** Fills a sheet from a diagram. */
  static Calculation calculate(
      CalcSheet sheet, WallGround ground, Side side, PressureDiagram diagram, Inputs in) {
    return bind(sheet, ground, side, diagram, in).calculate();
  }

  /** Hands the values of a diagram to a sheet. */
  static Binding bind(
      CalcSheet sheet, WallGround ground, Side side, PressureDiagram diagram, Inputs in) {
    boolean active = diagram.mobilisation() == Mobilisation.ACTIVE;
    boolean beside = ground.surroundings().needsOwnColumns();
    Binding binding =
        sheet
            .bind()
            .set("z_g", in.groundLevel())
            .set("z_w", in.waterLevel())
            .set("q_G", in.permanent())
            .set("γ_{G,w}", in.onWater());
    if (active) {
      binding.set("γ_G", in.onPermanent()).set("q_Q", in.variable()).set("γ_Q", in.onVariable());
    } else {
      binding.set("γ_P", in.onPassive()).set("F", in.passiveDivisor());
    }
    if (!beside) {
      binding.set("γ_w", ground.gammaWater() * KILO, new Source.Layout("unit weight of water"));
    }
    for (PressureSegment s : diagram.segments()) {
      for (PressureNode n : new PressureNode[] {s.top(), s.bottom()}) {
        binding.row(
            TABLE, beside ? besideRow(ground, s, n, active) : row(ground, side, s, n, active));
      }
    }
    return binding;
  }

  private static Row row(
      WallGround ground, Side side, PressureSegment s, PressureNode n, boolean active) {
    double height = s.top().level() - s.bottom().level();
    boolean free = n.layer().equals("water");
    double gamma;
    if (free) {
      gamma = ground.gammaWater();
    } else {
      var layer = ground.profile().below((s.top().level() + s.bottom().level()) / 2);
      gamma =
          (s.top().level() + s.bottom().level()) / 2 < side.waterLevel()
              ? layer.gammaBelow()
              : layer.gammaAbove();
    }
    double gradient = Math.max(0, (s.bottom().u() - s.top().u()) / height);
    Row row =
        Row.of(n.layer())
            .set("z", n.level(), BREAK)
            .set("γ", gamma * KILO, DESIGN)
            .set(
                "i_w",
                gradient * KILO,
                ground.flow() == WaterFlow.LINEAR_SEEPAGE
                    ? new Source.Method("head lost evenly round the toe")
                    : new Source.Layout("hydrostatic, or total stress"))
            .set(active ? "K_a" : "K_p", n.k(), COEFFICIENT)
            .set(active ? "K_ac" : "K_pc", n.kc(), COEFFICIENT)
            .set("c", n.cohesion() * KILO, DESIGN);
    return active
        ? row.set("k_m", leastFluid(ground, n) * KILO, new Source.Layout("rule for cohesion"))
        : row;
  }

  private static Row besideRow(
      WallGround ground, PressureSegment s, PressureNode n, boolean active) {
    double mid = (s.top().level() + s.bottom().level()) / 2;
    double gamma =
        (s.bottom().sigmaV() - s.top().sigmaV()) / (s.top().level() - s.bottom().level());
    if (!n.layer().equals("water")) {
      // The unit weight itself, not one found again from rounded stresses.
      SoilLayer layer = ground.layers(active).below(mid);
      gamma =
          Math.abs(gamma - layer.gammaBelow()) <= Math.abs(gamma - layer.gammaAbove())
              ? layer.gammaBelow()
              : layer.gammaAbove();
    } else {
      gamma = ground.gammaWater();
    }
    Row row =
        Row.of(n.layer())
            .set("z", n.level(), BREAK)
            .set("γ", gamma * KILO, DESIGN)
            .set("u", n.u() * KILO, water(ground))
            .set(active ? "K_a" : "K_p", n.k(), COEFFICIENT)
            .set(active ? "K_ac" : "K_pc", n.kc(), COEFFICIENT)
            .set("c", n.cohesion() * KILO, DESIGN);
    return active
        ? row.set("k_m", leastFluid(ground, n) * KILO, new Source.Layout("rule for cohesion"))
            .set("p_{L,G}", n.added().permanent() * KILO, LOADS)
            .set("p_{L,Q}", n.added().variable() * KILO, LOADS)
            .set(
                "p_e",
                n.added().earthquake() * KILO,
                new Source.Method("Mononobe and Okabe; no sheet derives it"))
        : row;
  }

  private static Source water(WallGround ground) {
    boolean net =
        ground.surroundings().water().map(w -> !w.behind().points().isEmpty()).orElse(false);
    return net
        ? new Source.Method("flow net")
        : new Source.Layout("water level of the stage, or of the layer");
  }

  /** The fluid weight that limits active pressure from below at a node. */
  private static double leastFluid(WallGround ground, PressureNode n) {
    return switch (n.limit()) {
      case CRACK_WATER -> ground.gammaWater();
      case MINIMUM -> ground.ruleBehind().minimumFluidWeight();
      case NONE, ZERO -> n.cohesion() > 0 ? ground.ruleBehind().minimumFluidWeight() : 0;
    };
  }

  /** Factors as inputs that name no cell. */
  static Inputs plain(Side side, PressureFactors f) {
    Source source = new Source.Layout("given");
    return new Inputs(
        new Given(side.groundLevel(), source),
        new Given(side.waterLevel(), source),
        new Given(side.permanentSurcharge() * KILO, source),
        new Given(side.variableSurcharge() * KILO, source),
        new Given(f.onPermanent(), source),
        new Given(f.onWater(), source),
        new Given(f.onVariable(), source),
        new Given(f.onPassive(), source),
        new Given(f.passiveDivisor(), source));
  }
}
