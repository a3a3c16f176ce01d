package pilefolio.checks.sequence;

import static pilefolio.units.Units.M;
import static pilefolio.units.Units.M3;
import static pilefolio.units.Units.M3_MIN;
import static pilefolio.units.Units.MIN;
import static pilefolio.units.Units.M_MIN;
import static pilefolio.units.Units.ONE;
import static pilefolio.units.Units.PERCENT;

import java.util.ArrayList;
import java.util.List;
import pilefolio.checks.CheckResult;
import pilefolio.checks.Family;
import pilefolio.checks.From;
import pilefolio.checks.Job;
import pilefolio.checks.RunCheck;
import pilefolio.checks.Subject;
import pilefolio.checks.concrete.ConcreteVolume;
import pilefolio.checks.geometry.Levels;
import pilefolio.model.Crew;
import pilefolio.model.PileKind;
import pilefolio.model.WallRun;
import pilefolio.trace.CalcSheet;
import pilefolio.trace.Calculation;
import pilefolio.trace.Reference;

/** Minutes for one pile, and piles in a shift. */
public final class CycleTime extends RunCheck {
  private static final double NO_LIMIT = 99;

  private static final CalcSheet SHEET =
      CalcSheet.named("Time for one pile and piles in a shift")
          .given("t_m", MIN, "moving and setting up")
          .given("l_d", M, "drilled length")
          .given("v_d", M_MIN, "rate of drilling, mean with stops")
          .given("V_a", M3, "concrete for one pile")
          .given("Q", M3_MIN, "effective output of the pump")
          .given("t_b", MIN, "setting the beam")
          .given("t_k", MIN, "cleaning")
          .given("t_S", MIN, "length of the shift")
          .given("t_N", MIN, "start, stop and breaks")
          .given("η", ONE, "share of the rest that is worked")
          .given("n_lim", ONE, "most piles in a shift; 99 if no limit is given")
          .line("t_Q = V_a/Q", MIN, "concreting", Reference.DERIVED)
          .line("T = t_m + l_d/v_d + t_Q + t_b + t_k", MIN, "time for one pile", Reference.DERIVED)
          .line("t_A = (t_S − t_N)·η", MIN, "time available in a shift", Reference.DERIVED)
          .line("n_s = min(floor(t_A/T), n_lim)", ONE, "piles in a shift", Reference.DERIVED)
          .line("T_n = max(T, t_A/n_lim)", MIN, "time counted in the programme", Reference.DERIVED)
          .line("f_Q = t_Q/T", PERCENT, "share of concreting", Reference.DERIVED)
          .require("T ≤ t_A", "a pile that is begun is finished in the shift", Reference.PRACTICE)
          .note("Above 50 % the pump, not the rig, sets the pace.");

  /** The one of its kind; other checks quote its lines. */
  public static final CycleTime CHECK = new CycleTime();

  private CycleTime() {
    super("cycle-time", "Time for one pile and piles in a shift", Family.SEQUENCE, SHEET);
  }

  /** The crew that works on a run. */
  static Crew crew(Job job, WallRun run) {
    return job.submission().crews(run).stream()
        .findFirst()
        .orElseThrow(() -> new MissingInput("No crew works on rig " + run.rig() + "."));
  }

  /** The calculation for one kind of pile of a run. */
  static Calculation of(Job job, WallRun run, PileKind kind) {
    Crew crew = crew(job, run);
    boolean primary = kind == PileKind.PRIMARY;
    return SHEET
        .bind()
        .set("t_m", From.cell(crew.moveAndSetUp()))
        .set("l_d", From.line(Levels.CHECK, Levels.of(job, run, kind), "l_d"))
        .set("v_d", From.cell(primary ? crew.drillingPrimary() : crew.drillingSecondary()))
        .set("V_a", From.line(ConcreteVolume.CHECK, ConcreteVolume.of(job, run, kind), "V_a"))
        .set("Q", From.cell(job.submission().supply().pumpRate()))
        .set(
            "t_b",
            run.piles(kind).beam().isPresent()
                ? From.cell(crew.beamSetting())
                : From.layout(0, "no beam"))
        .set("t_k", From.cell(crew.cleaning()))
        .set("t_S", From.cell(crew.shift()))
        .set("t_N", From.cell(crew.nonProductive()))
        .set("η", From.cell(crew.availability()))
        .set(
            "n_lim",
            crew.pilesPerShift().map(From::cell).orElse(From.layout(NO_LIMIT, "no limit given")))
        .calculate();
  }

  @Override
  protected List<CheckResult> check(Job job, WallRun run) {
    List<CheckResult> results = new ArrayList<>();
    for (PileKind kind : PileKind.secant()) {
      results.add(
          CheckResult.of(
              this, Subject.run(run.id()).piles(Levels.plural(kind)), of(job, run, kind)));
    }
    return results;
  }
}
