package pilefolio.checks.sequence;

import static pilefolio.units.Units.CELSIUS;
import static pilefolio.units.Units.D;
import static pilefolio.units.Units.H;
import static pilefolio.units.Units.MPA;
import static pilefolio.units.Units.ONE;

import pilefolio.checks.From;
import pilefolio.checks.Job;
import pilefolio.checks.RunCheck;
import pilefolio.model.CementClass;
import pilefolio.model.Mix;
import pilefolio.model.StrengthModel;
import pilefolio.model.Value;
import pilefolio.model.WallRun;
import pilefolio.standards.StrengthLaw;
import pilefolio.trace.Binding;
import pilefolio.trace.CalcSheet;
import pilefolio.trace.Given;
import pilefolio.trace.Reference;
import pilefolio.trace.Source;

/** What the checks of strength have in common: the mix, its law of hardening, the temperature. */
final class Hardening {
  static final Reference EN = Reference.quoted("EN 1992-1-1:2004", "3.1.2");
  static final Reference ACI = Reference.memory("ACI 209R-92", "strength with time");
  private static final Reference EN_AGE = Reference.memory("EN 1992-1-1:2004", "Annex B, (B.10)");
  private static final Reference ASTM = Reference.quoted("ASTM C1074", "equivalent age");

  private Hardening() {}

  /** Starts a sheet of the European law. */
  static CalcSheet european(String title) {
    return common(CalcSheet.named(title), "s_c", "coefficient of the cement")
        .line(
            "k_T = exp(13.65 − 4000[K]/(273[K] + θ))",
            ONE,
            "days at 20 °C that one day in this ground is worth",
            EN_AGE);
  }

  /** Starts a sheet of the American law. */
  static CalcSheet american(String title) {
    return common(
            CalcSheet.named(title).given("a_c", D, "constant a of the cement"),
            "b_c",
            "constant b of the cement")
        .line(
            "k_T = exp(−4000[K]·(1/(273.15[K] + θ) − 1/293.15[K]))",
            ONE,
            "days at 20 °C that one day in this ground is worth",
            ASTM);
  }

  private static CalcSheet common(CalcSheet sheet, String constant, String meaning) {
    return sheet
        .given(constant, ONE, meaning)
        .given("f_28", MPA, "mean strength of the primaries at 28 days")
        .given("f_s", MPA, "strength they need to stand beside the drill")
        .given("f_c", MPA, "strength the tool can still cut")
        .given("θ", CELSIUS, "temperature of the ground")
        .given("t_r", H, "retarding time of the mix");
  }

  /** Whether the job uses the American law. */
  static boolean american(Job job) {
    return job.submission().methods().strengthModel() == StrengthModel.ACI;
  }

  /** Hands in the mix of the primaries and the temperature. */
  static Binding mix(Binding binding, Job job, WallRun run) {
    Mix mix = job.submission().mix(run.primary());
    binding
        .set("f_28", From.cell(mix.strength()))
        .set("f_s", RunCheck.need(mix.standingLimit(), "the standing limit of mix " + mix.id()))
        .set("f_c", RunCheck.need(mix.cuttingLimit(), "the cutting limit of mix " + mix.id()))
        .set("θ", From.cell(job.submission().profile(run).temperature()))
        .set("t_r", From.cell(mix.retardation()));
    if (!american(job)) {
      return binding.set("s_c", coefficient(mix.cement()));
    }
    StrengthLaw law = law(mix.cement() == CementClass.R ? "aci-iii-moist" : "aci-i-moist");
    return binding
        .set("a_c", mix.aciA().map(Hardening::days).orElseGet(() -> of(law, D.toSi(law.a()))))
        .set("b_c", mix.aciB().map(From::cell).orElseGet(() -> of(law, law.b())));
  }

  /** A number of days that the workbook gives without a unit. */
  private static Given days(Value number) {
    return new Given(D.toSi(number.si()), From.cell(number).source());
  }

  private static Given coefficient(CementClass cement) {
    StrengthLaw law =
        law(
            switch (cement) {
              case R -> "en-r";
              case N -> "en-n";
              case S -> "en-s";
            });
    return of(law, law.s());
  }

  private static StrengthLaw law(String id) {
    return StrengthLaw.find(id).orElseThrow();
  }

  private static Given of(StrengthLaw law, double value) {
    return new Given(value, new Source.TableRow("strength laws", law.title()));
  }
}
