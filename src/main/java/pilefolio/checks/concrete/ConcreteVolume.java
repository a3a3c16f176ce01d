package pilefolio.checks.concrete;

import static pilefolio.units.Units.M;
import static pilefolio.units.Units.M3;
import static pilefolio.units.Units.MM;
import static pilefolio.units.Units.ONE;

import java.util.ArrayList;
import java.util.List;
import pilefolio.checks.CheckResult;
import pilefolio.checks.Family;
import pilefolio.checks.From;
import pilefolio.checks.Job;
import pilefolio.checks.RunCheck;
import pilefolio.checks.Subject;
import pilefolio.checks.geometry.Levels;
import pilefolio.model.ConcreteSupply;
import pilefolio.model.PileKind;
import pilefolio.model.WallRun;
import pilefolio.trace.CalcSheet;
import pilefolio.trace.Calculation;
import pilefolio.trace.Reference;

/** Concrete for one pile and for the run, with trucks. */
public final class ConcreteVolume extends RunCheck {
  private static final CalcSheet SHEET =
      CalcSheet.named("Concrete of one pile and of the run")
          .given("D", MM, "diameter of the pile")
          .given("l_c", M, "cast length")
          .given("k", ONE, "concrete placed over nominal volume")
          .given("N", ONE, "number of piles")
          .given("V_t", M3, "concrete in one truck")
          .line("V_n = π·D²/4·l_c", M3, "nominal volume of one pile", Reference.DERIVED)
          .line("V_a = k·V_n", M3, "concrete to order for one pile", Reference.DERIVED)
          .line("n_t = ceil(V_a/V_t)", ONE, "trucks for one pile", Reference.DERIVED)
          .line("V_R = N·V_a", M3, "concrete for all of them", Reference.DERIVED)
          .note("A secondary is a full circle; what it cuts from the primaries is spoil.");

  /** The one of its kind; other checks quote its lines. */
  public static final ConcreteVolume CHECK = new ConcreteVolume();

  private ConcreteVolume() {
    super("concrete-volume", "Concrete volumes and trucks", Family.CONCRETE, SHEET);
  }

  @Override
  public boolean derivation() {
    return true;
  }

  /** The calculation for one kind of pile of a run. */
  public static Calculation of(Job job, WallRun run, PileKind kind) {
    ConcreteSupply supply = job.submission().supply();
    boolean primary = kind == PileKind.PRIMARY;
    long count = run.layout().piles().stream().filter(p -> p.primary() == primary).count();
    Calculation levels = Levels.of(job, run, kind);
    if (levels.value("l_c") <= 0) {
      throw new MissingInput("The levels give no length to be cast.");
    }
    return SHEET
        .bind()
        .set("D", From.cell(run.piles(kind).diameter()))
        .set("l_c", From.line(Levels.CHECK, levels, "l_c"))
        .set("k", From.cell(Supply.overbreak(supply, kind)))
        .set("N", From.layout((double) count, "piles of the run"))
        .set("V_t", From.cell(supply.truckVolume()))
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
