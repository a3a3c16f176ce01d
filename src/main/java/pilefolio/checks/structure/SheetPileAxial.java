package pilefolio.checks.structure;

import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import pilefolio.checks.From;
import pilefolio.checks.Job;
import pilefolio.checks.RunCheck;
import pilefolio.checks.WallEffects;
import pilefolio.model.SheetPiling;
import pilefolio.model.SheetShape;
import pilefolio.model.Stage;
import pilefolio.model.Support;
import pilefolio.model.WallRun;
import pilefolio.trace.Binding;
import pilefolio.trace.CalcSheet;
import pilefolio.trace.Calculation;

/** Vertical part of inclined supports with bending of sheet piles. */
final class SheetPileAxial extends SheetPileCheck {

  @Override
  public String id() {
    return "sheet-pile-axial";
  }

  @Override
  public String title() {
    return "Axial force with bending of the sheet piles";
  }

  @Override
  public List<CalcSheet> sheets() {
    return List.of(SheetPileSheets.ASD_AXIAL, SheetPileSheets.EN_AXIAL_SHEET);
  }

  @Override
  boolean asked(Job job, WallRun run) {
    return job.submission().supports(run).stream().anyMatch(s -> s.inclination().si() > 0);
  }

  @Override
  Function<Effects, WallEffects> stage() {
    return Effects::worstMoment;
  }

  @Override
  Calculation calculation(Job job, WallRun run, SheetPiling sheets, Effects effects) {
    SheetShape shape = sheets.shape();
    boolean stresses = stresses(job);
    Support steepest =
        job.submission().supports(run).stream()
            .max(Comparator.comparingDouble(s -> s.inclination().si()))
            .orElseThrow();
    Binding binding =
        (stresses ? SheetPileSheets.ASD_AXIAL : SheetPileSheets.EN_AXIAL_SHEET)
            .bind()
            .set("t_f", RunCheck.need(shape.flange(), "the flange thickness of the sheet piles"))
            .set("Δ_c", From.cell(shape.corrosion()))
            .set("F_h", effects.supportForce())
            .set("i", From.cell(steepest.inclination()))
            .set("A", From.cell(sheets.area()))
            .set("I", From.cell(sheets.secondMoment()))
            .set("β_D", From.cell(shape.stiffnessShare()))
            .set("E", elasticModulus(job))
            .set(
                "L_c",
                From.layout(
                    free(job, run), "from the highest support to the toe, the ground not counted"));
    if (stresses) {
      return binding
          .set("M", effects.moment())
          .set("W_el", From.cell(sheets.sectionModulus()))
          .set("β_B", From.cell(shape.bendingShare()))
          .set("F_y", From.cell(sheets.yieldStrength()))
          .set("k_b", From.factor(job, "steel.sheet.bending", effects.combination()))
          .calculate();
    }
    Calculation bending = new SheetPileBending().calculation(job, run, sheets, effects);
    return binding
        .set("M_Ed", effects.moment())
        .set("M_{V,Rd}", From.line(new SheetPileBending(), bending, "M_{V,Rd}"))
        .set("f_y", From.cell(sheets.yieldStrength()))
        .set("γ_M0", From.factor(job, "steel.yield", effects.combination()))
        .calculate();
  }

  /** The whole length below the highest support buckles at most; the ground is not counted. */
  private static double free(Job job, WallRun run) {
    double top =
        job.submission().supports(run).stream()
            .mapToDouble(s -> s.level().si())
            .max()
            .orElseThrow();
    double bottom =
        run.toe()
            .map(v -> v.si())
            .orElseGet(
                () ->
                    job.submission().stages(run).stream()
                        .mapToDouble((Stage s) -> s.excavation().si())
                        .min()
                        .orElseThrow());
    return top - bottom;
  }
}
