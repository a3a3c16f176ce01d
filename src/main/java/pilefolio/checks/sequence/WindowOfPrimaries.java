package pilefolio.checks.sequence;

import static pilefolio.units.Units.D;
import static pilefolio.units.Units.ONE;

import java.util.List;
import pilefolio.analysis.sequence.StrengthWindow;
import pilefolio.checks.CheckResult;
import pilefolio.checks.Family;
import pilefolio.checks.Job;
import pilefolio.checks.RunCheck;
import pilefolio.checks.Subject;
import pilefolio.model.WallRun;
import pilefolio.trace.CalcSheet;
import pilefolio.trace.Calculation;
import pilefolio.trace.Choice;
import pilefolio.trace.Reference;

/** Ages between which a primary stands beside the drill and can still be cut. */
public final class WindowOfPrimaries extends RunCheck {
  /** Stands for an age that is never reached, days. */
  private static final double NEVER = 36500;

  private static final CalcSheet EUROPEAN =
      finish(
          ratios(Hardening.european("Strength window of the primaries, EN 1992-1-1"))
              .line(
                  "t_{1,e} = 28[d]/(1 − ln(β_s)/s_c)²",
                  D,
                  "age at 20 °C at which they stand",
                  Hardening.EN)
              .choose(
                  "t_{2,e}",
                  D,
                  "age at 20 °C at which they can no longer be cut; 36 500 d if never",
                  Hardening.EN,
                  Choice.when("ln(β_c) < s_c", "28[d]/(1 − ln(β_c)/s_c)²").otherwise("36500[d]")));

  private static final CalcSheet AMERICAN =
      finish(
          ratios(Hardening.american("Strength window of the primaries, ACI 209"))
              .line(
                  "t_{1,e} = a_c·β_s/(1 − b_c·β_s)",
                  D,
                  "age at 20 °C at which they stand",
                  Hardening.ACI)
              .choose(
                  "t_{2,e}",
                  D,
                  "age at 20 °C at which they can no longer be cut; 36 500 d if never",
                  Hardening.ACI,
                  Choice.when("b_c·β_c < 1", "a_c·β_c/(1 − b_c·β_c)").otherwise("36500[d]")));

  /** The one of its kind; other checks quote its lines. */
  public static final WindowOfPrimaries CHECK = new WindowOfPrimaries();

  private WindowOfPrimaries() {
    super(
        "strength-window", "Strength window of the primaries", Family.SEQUENCE, EUROPEAN, AMERICAN);
  }

  private static CalcSheet ratios(CalcSheet sheet) {
    return sheet
        .line("β_s = f_s/f_28", ONE, "share of the strength to stand", Reference.DERIVED)
        .line("β_c = f_c/f_28", ONE, "share of the strength that can be cut", Reference.DERIVED);
  }

  private static CalcSheet finish(CalcSheet sheet) {
    return sheet
        .line("t_1 = t_r + t_{1,e}/k_T", D, "first age to cut in this ground", Reference.DERIVED)
        .line("t_2 = t_r + t_{2,e}/k_T", D, "last age to cut in this ground", Reference.DERIVED)
        .line("t_w = t_2 − t_1", D, "length of the window", Reference.DERIVED)
        .require("t_w ≥ 1[d]", "a whole day lies in the window", Reference.PRACTICE)
        .note(
            "The curve is confirmed by tests on the mix at 1, 2 and 3 days before the first"
                + " secondary.");
  }

  /** The calculation for a run. */
  static Calculation of(Job job, WallRun run) {
    CalcSheet sheet = Hardening.american(job) ? AMERICAN : EUROPEAN;
    return Hardening.mix(sheet.bind(), job, run).calculate();
  }

  /** The window of a run's primaries in days. */
  static StrengthWindow window(Job job, WallRun run) {
    Calculation calculation = of(job, run);
    double to = D.fromSi(calculation.value("t_2"));
    double from = D.fromSi(calculation.value("t_1"));
    boolean never = D.fromSi(calculation.value("t_{2,e}")) >= NEVER;
    return new StrengthWindow(Math.max(0, from), never ? Double.POSITIVE_INFINITY : to);
  }

  @Override
  protected List<CheckResult> check(Job job, WallRun run) {
    return List.of(CheckResult.of(this, Subject.run(run.id()).piles("primaries"), of(job, run)));
  }
}
