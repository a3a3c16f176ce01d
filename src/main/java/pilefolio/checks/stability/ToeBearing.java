package pilefolio.checks.stability;

import static pilefolio.units.Units.KN_M;
import static pilefolio.units.Units.KPA;
import static pilefolio.units.Units.ONE;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import pilefolio.checks.CheckResult;
import pilefolio.checks.Family;
import pilefolio.checks.From;
import pilefolio.checks.Job;
import pilefolio.checks.RunCheck;
import pilefolio.checks.situation.DesignSituation;
import pilefolio.model.Drainage;
import pilefolio.model.GroundProfile;
import pilefolio.model.Layer;
import pilefolio.model.PileSpec;
import pilefolio.model.SoilKind;
import pilefolio.model.Technique;
import pilefolio.model.Value;
import pilefolio.model.WallRun;
import pilefolio.trace.Binding;
import pilefolio.trace.CalcSheet;
import pilefolio.trace.Calculation;
import pilefolio.trace.Choice;
import pilefolio.trace.Given;
import pilefolio.trace.Reference;
import pilefolio.trace.Source;
import pilefolio.units.Unit;
import pilefolio.units.Units;

/** The toe carries what friction on the wall leaves of the vertical forces. */
final class ToeBearing extends RunCheck {
  private static final Reference BASE = Reference.memory("FHWA-IF-99-025", "");
  private static final Unit AREA = Units.of("m²/m");

  static final CalcSheet CLAY =
      carried(
          CalcSheet.named("Toe in clay")
              .given("s_u", KPA, "undrained strength at the toe, least within two widths")
              .choose(
                  "N_c",
                  ONE,
                  "bearing factor; softer clay is not covered",
                  BASE,
                  Choice.when("s_u ≥ 96[kPa]", "9")
                      .or("s_u ≥ 48[kPa]", "8 + (s_u − 48[kPa])/48[kPa]")
                      .or("s_u ≥ 24[kPa]", "6.5 + 1.5·(s_u − 24[kPa])/24[kPa]"))
              .line("q_b = N_c·s_u", KPA, "unit resistance", BASE));

  static final CalcSheet SAND =
      carried(
          CalcSheet.named("Toe in sand or gravel")
              .given("N_60", ONE, "blow count below the toe")
              .line("q_b = min(57.5[kPa]·N_60, 2900[kPa])", KPA, "unit resistance", BASE));

  private static CalcSheet carried(CalcSheet sheet) {
    return sheet
        .given("P_t", KN_M, "force left for the toe")
        .given("A_t", AREA, "area of toes per length of wall")
        .given("γ_t", ONE, "divisor of the resistance")
        .line("R_t = q_b·A_t/γ_t", KN_M, "resistance of the toe", Reference.DERIVED)
        .require("P_t ≤ R_t", "the toe carries the wall", Reference.DERIVED);
  }

  ToeBearing() {
    super("toe-bearing", "Bearing of the toe of the wall", Family.STABILITY, CLAY, SAND);
  }

  /** Secondaries of a secant wall are checked as piles, with their shaft. */
  @Override
  protected boolean concerns(WallRun run) {
    return !run.type().secant();
  }

  @Override
  protected List<CheckResult> check(Job job, WallRun run) {
    List<CheckResult> results = new ArrayList<>();
    if (!VerticalEquilibrium.concernsRun(job, run)) {
      return results;
    }
    for (DesignSituation s : LowestStages.of(job, run)) {
      Optional<Calculation> forces = VerticalEquilibrium.calculation(job, s);
      results.add(
          forces.isEmpty()
              ? CheckResult.notChecked(this, s.subject(), VerticalEquilibrium.reason(s))
              : result(job, s, forces.get()));
    }
    return results;
  }

  private CheckResult result(Job job, DesignSituation s, Calculation forces) {
    double toe = WallSolutions.toe(job, s.run()).orElseThrow();
    Layer layer = below(s.profile(), toe);
    if (layer.kind() == SoilKind.ROCK || layer.kind() == SoilKind.FILL) {
      return CheckResult.notChecked(
          this,
          s.subject(),
          "a toe in " + layer.kind().label().toLowerCase(Locale.ROOT) + " is not covered");
    }
    boolean clay = layer.drainage() == Drainage.UNDRAINED;
    if (!clay && layer.n60().isEmpty()) {
      return CheckResult.notChecked(
          this, s.subject(), "the blow count of the layer " + layer.name() + " is needed");
    }
    Binding binding =
        (clay ? CLAY : SAND)
            .bind()
            .set(
                "P_t",
                forces.value("P_t"),
                new Source.Line("vertical-equilibrium", "Vertical equilibrium of the wall", "P_t"))
            .set("A_t", area(s.run()))
            .set("γ_t", divisor(job, s, clay));
    if (clay) {
      double increase = layer.shearStrengthIncrease().map(Value::si).orElse(0.0);
      double depth = Math.max(0, layer.top().si() - toe);
      double strength = layer.shearStrength().orElseThrow().si() + increase * depth;
      binding.set("s_u", From.layout(strength, "layer " + layer.name() + ", at the toe"));
    } else {
      binding.set("N_60", From.cell(layer.n60().orElseThrow()));
    }
    return CheckResult.of(this, s.subject(), binding.calculate());
  }

  private static Layer below(GroundProfile profile, double toe) {
    Layer found = profile.layers().get(0);
    for (Layer layer : profile.layers()) {
      if (layer.top().si() > toe - 1e-6) {
        found = layer;
      }
    }
    return found;
  }

  private static Given area(WallRun run) {
    if (run.sheets().isPresent()) {
      return From.cell(run.sheets().get().area());
    }
    PileSpec piles = run.bearing().orElseThrow();
    double area = Math.PI * Math.pow(piles.diameter().si(), 2) / 4;
    return From.layout(
        area / VerticalEquilibrium.spacing(run), "bored toe over the distance of piles");
  }

  private static Given divisor(Job job, DesignSituation s, boolean clay) {
    String combination = s.combination().id();
    return switch (job.basis().format()) {
      case ALLOWABLE_STRESS -> From.factor(job, "pile.safety", combination);
      case PARTIAL_FACTORS -> {
        String kind = s.run().technique() == Technique.UNCASED_AUGER ? "pile.cfa." : "pile.bored.";
        double strength = clay ? job.basis().value("pile.strength", combination) : 1;
        yield From.layout(
            job.basis().value("pile.model", combination)
                * job.basis().value(kind + "base", combination)
                * strength,
            "model factor and factor of the base, design basis");
      }
      case LOAD_AND_RESISTANCE ->
          From.layout(
              1
                  / job.basis()
                      .value(
                          clay ? "pile.resistance.base.clay" : "pile.resistance.base.sand",
                          combination),
              "one over the resistance factor of the base");
    };
  }
}
