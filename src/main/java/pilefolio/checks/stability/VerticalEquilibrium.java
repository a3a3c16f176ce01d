package pilefolio.checks.stability;

import static pilefolio.units.Units.DEG;
import static pilefolio.units.Units.KN_M;
import static pilefolio.units.Units.ONE;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import pilefolio.analysis.earth.DrainedStrength;
import pilefolio.analysis.earth.Mobilisation;
import pilefolio.analysis.earth.OutsideRange;
import pilefolio.analysis.earth.PressureDiagram;
import pilefolio.analysis.earth.PressureNode;
import pilefolio.analysis.earth.PressureSegment;
import pilefolio.analysis.earth.SoilLayer;
import pilefolio.analysis.earth.UndrainedStrength;
import pilefolio.analysis.wall.WallLoading;
import pilefolio.checks.CheckResult;
import pilefolio.checks.Family;
import pilefolio.checks.From;
import pilefolio.checks.Job;
import pilefolio.checks.RunCheck;
import pilefolio.checks.situation.DesignSituation;
import pilefolio.model.AxialLoad;
import pilefolio.model.PileSpec;
import pilefolio.model.Support;
import pilefolio.model.Value;
import pilefolio.model.WallRun;
import pilefolio.trace.Binding;
import pilefolio.trace.Binding.Row;
import pilefolio.trace.CalcSheet;
import pilefolio.trace.CalcTable;
import pilefolio.trace.Calculation;
import pilefolio.trace.Given;
import pilefolio.trace.Reference;
import pilefolio.trace.Source;

/** Vertical forces on a wall with inclined supports or loads on its head. */
public final class VerticalEquilibrium extends RunCheck {
  static final String SUPPORTS = "supports";
  static final String BEHIND = "behind";
  static final String FRONT = "front";

  private static final double KILO = 1000;
  private static final Reference PRACTICE = Reference.PRACTICE;

  static final CalcSheet SHEET =
      CalcSheet.named("Vertical forces on the wall")
          .table(
              CalcTable.of(SUPPORTS, "Supports", "support")
                  .given("T", KN_M, "horizontal force")
                  .given("i", DEG, "below the horizontal")
                  .line("V = T·tan(i)", KN_M, "vertical part", Reference.DERIVED)
                  .sum("ΣV", "V", "vertical part of the supports")
                  .sum("ΣT", "T", "horizontal forces"))
          .table(
              CalcTable.of(BEHIND, "Behind the wall, active", "layer")
                  .given("E_a", KN_M, "horizontal earth force")
                  .given("δ_a", DEG, "wall friction")
                  .given("A_a", KN_M, "adhesion along the layer")
                  .line("R_a = max(E_a, 0)·tan(δ_a) + A_a", KN_M, "downward", Reference.DERIVED)
                  .sum("ΣE_a", "E_a", "earth force")
                  .sum("ΣR_a", "R_a", "friction behind, downward"))
          .table(
              CalcTable.of(FRONT, "In front of the wall, passive", "layer")
                  .given("E_p", KN_M, "horizontal earth force")
                  .given("δ_p", DEG, "wall friction")
                  .given("A_p", KN_M, "adhesion along the layer")
                  .line("R_p = E_p·tan(δ_p) + A_p", KN_M, "upward", Reference.DERIVED)
                  .sum("ΣE_p", "E_p", "earth force")
                  .sum("ΣR_p", "R_p", "friction in front, upward"))
          .given("ΔU", KN_M, "water behind less water in front")
          .line(
              "μ = max(0, min(1, (ΣE_a + ΔU − ΣT)/ΣE_p))",
              ONE,
              "share of passive pressure that horizontal forces use",
              Reference.DERIVED)
          .given("W", KN_M, "weight of the wall")
          .given("G", KN_M, "permanent load on its head")
          .given("Q", KN_M, "variable load on its head")
          .given("γ_G", ONE, "multiplier of permanent loads")
          .given("γ_Q", ONE, "multiplier of variable loads")
          .line("V_l = ΣV + W + G + ΣR_a", KN_M, "least downward force", PRACTICE)
          .line("R_f = μ·ΣR_p", KN_M, "friction in front that passive pressure relies on", PRACTICE)
          .require("R_f ≤ V_l", "the wall is not lifted by the friction taken", PRACTICE)
          .line("V_g = ΣV + γ_G·(W + G) + γ_Q·Q + ΣR_a", KN_M, "greatest downward force", PRACTICE)
          .line("P_t = max(V_g − R_f, 0)", KN_M, "force left for the toe", Reference.DERIVED);

  /** The check. */
  public VerticalEquilibrium() {
    super("vertical-equilibrium", "Vertical equilibrium of the wall", Family.STABILITY, SHEET);
  }

  /** True if the support of a run is inclined or its piles carry load. */
  static boolean concernsRun(Job job, WallRun run) {
    boolean inclined =
        job.submission().supports(run).stream().anyMatch(s -> s.inclination().si() > 0);
    return inclined || load(run).map(AxialLoad::isPresent).orElse(false);
  }

  private static Optional<AxialLoad> load(WallRun run) {
    return run.bearing().flatMap(PileSpec::load);
  }

  @Override
  protected List<CheckResult> check(Job job, WallRun run) {
    List<CheckResult> results = new ArrayList<>();
    if (!concernsRun(job, run)) {
      return results;
    }
    for (DesignSituation s : LowestStages.of(job, run)) {
      Optional<Calculation> calculation = calculation(job, s);
      results.add(
          calculation
              .map(c -> CheckResult.of(this, s.subject(), c))
              .orElseGet(() -> CheckResult.notChecked(this, s.subject(), reason(s))));
    }
    return results;
  }

  static String reason(DesignSituation s) {
    return s.supports().size() > 1
        ? "the toe of the wall or the forces of its supports are not known"
        : "no equilibrium, so no toe or no support force is known";
  }

  private record Key(String run, int stage, String combination) {}

  private record Found(Optional<Calculation> calculation) {}

  /** The sheet of a situation; empty if the toe or the force of a support is not known. */
  static Optional<Calculation> calculation(Job job, DesignSituation s) {
    return job.shared(
            new Key(s.run().id(), s.stage().number(), s.combination().id()),
            Found.class,
            j -> new Found(make(j, s)))
        .calculation();
  }

  private static Optional<Calculation> make(Job job, DesignSituation s) {
    OptionalDouble toe = WallSolutions.toe(job, s.run());
    List<OptionalDouble> forces =
        s.supports().stream().map(p -> SlipModel.horizontalForce(job, s, p)).toList();
    if (toe.isEmpty() || forces.stream().anyMatch(OptionalDouble::isEmpty)) {
      return Optional.empty();
    }
    WallLoading loading;
    try {
      loading = new WallLoading(s.ground());
    } catch (OutsideRange e) {
      return Optional.empty();
    }
    double level = toe.getAsDouble();
    if (level >= loading.excavationLevel() || level < loading.searchBottom()) {
      return Optional.empty();
    }
    Binding binding = SHEET.bind();
    supports(binding, s, forces);
    PressureDiagram behind = loading.pressures().behind(Mobilisation.ACTIVE, level);
    PressureDiagram front = loading.pressures().front(Mobilisation.PASSIVE, level);
    layers(binding, BEHIND, "_a", loading, behind);
    layers(binding, FRONT, "_p", loading, front);
    binding.set("ΔU", From.layout(KILO * (water(behind) - water(front)), "water pressures"));
    String combination = s.combination().id();
    binding
        .set("W", From.layout(weight(job, s.run(), level), "piles or sheets, cut-off to toe"))
        .set("G", head(s.run(), true))
        .set("Q", head(s.run(), false))
        .set("γ_G", multiplier(job, "action.structural.permanent", combination))
        .set("γ_Q", multiplier(job, "action.structural.variable", combination));
    return Optional.of(binding.calculate());
  }

  private static Given multiplier(Job job, String key, String combination) {
    return job.basis().has(key)
        ? From.factor(job, key, combination)
        : From.layout(1, "service loads");
  }

  private static void supports(Binding binding, DesignSituation s, List<OptionalDouble> forces) {
    if (s.supports().isEmpty()) {
      binding.row(
          SUPPORTS,
          Row.of("none")
              .set("T", From.layout(0, "no support"))
              .set("i", From.layout(0, "no support")));
    }
    for (int i = 0; i < forces.size(); i++) {
      Support support = s.supports().get(i);
      binding.row(
          SUPPORTS,
          Row.of(support.id())
              .set("T", From.layout(KILO * forces.get(i).getAsDouble(), "force on the wall"))
              .set("i", From.cell(support.inclination())));
    }
  }

  private static void layers(
      Binding binding, String table, String side, WallLoading loading, PressureDiagram diagram) {
    Source pressures = new Source.Layout("pressures down to the toe");
    for (SoilLayer layer : loading.ground().profile().layers()) {
      double force = 0;
      double adhesion = 0;
      boolean any = false;
      for (PressureSegment segment : diagram.segments()) {
        if (segment.top().layer().equals(layer.name())) {
          double h = segment.top().level() - segment.bottom().level();
          force += h * (earth(segment.top()) + earth(segment.bottom())) / 2;
          adhesion +=
              h
                  * (segment.top().earthFactor() * adhesion(layer, segment.top().level())
                      + segment.bottom().earthFactor() * adhesion(layer, segment.bottom().level()))
                  / 2;
          any = true;
        }
      }
      if (any) {
        double delta =
            layer.strength() instanceof DrainedStrength d
                ? (side.equals("_a") ? d.deltaActiveRad() : d.deltaPassiveRad())
                : 0;
        binding.row(
            table,
            Row.of(layer.name())
                .set("E" + side, KILO * force, pressures)
                .set("δ" + side, delta, new Source.Layout("design value of the layer"))
                .set("A" + side, KILO * adhesion, pressures));
      }
    }
  }

  private static double earth(PressureNode node) {
    return node.earthFactor() * node.earth();
  }

  private static double adhesion(SoilLayer layer, double level) {
    return layer.strength() instanceof UndrainedStrength u
        ? u.adhesionRatio() * layer.cohesionAt(level)
        : 0;
  }

  private static double water(PressureDiagram diagram) {
    double force = 0;
    for (PressureSegment segment : diagram.segments()) {
      double h = segment.top().level() - segment.bottom().level();
      force +=
          h
              * (segment.top().waterFactor() * segment.top().u()
                  + segment.bottom().waterFactor() * segment.bottom().u())
              / 2;
    }
    return force;
  }

  /** Distance of the piles of a kind along the wall, m. */
  static double spacing(WallRun run) {
    return (run.type().secant() ? 2 : 1) * run.line().spacing().si();
  }

  /** Weight of the wall per length, N/m. */
  private static double weight(Job job, WallRun run, double toe) {
    double top = run.levels().cutOff().si();
    double sum = 0;
    for (PileSpec piles : run.piles()) {
      double bottom = Math.max(toe, piles.toe().map(Value::si).orElse(toe));
      double area = Math.PI * Math.pow(piles.diameter().si(), 2) / 4;
      sum += area * (top - bottom) * job.submission().mix(piles).unitWeight().si() / spacing(run);
    }
    double steel = 78500;
    sum += run.sheets().map(p -> p.area().si() * steel * (top - toe)).orElse(0.0);
    return sum;
  }

  private static Given head(WallRun run, boolean permanent) {
    double load = load(run).map(l -> (permanent ? l.permanent() : l.variable()).si()).orElse(0.0);
    return From.layout(
        load == 0 ? 0 : load / spacing(run),
        load == 0 ? "no load entered" : "load on a pile over the distance of piles");
  }
}
