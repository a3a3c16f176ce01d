package pilefolio.checks.structure;

import java.util.List;
import java.util.function.Function;
import pilefolio.checks.From;
import pilefolio.checks.Job;
import pilefolio.checks.RunCheck;
import pilefolio.checks.WallEffects;
import pilefolio.model.SheetPiling;
import pilefolio.model.SheetShape;
import pilefolio.model.WallRun;
import pilefolio.trace.Binding;
import pilefolio.trace.CalcSheet;
import pilefolio.trace.Calculation;

/** Shear of sheet piles. */
final class SheetPileShear extends SheetPileCheck {

  @Override
  public String id() {
    return "sheet-pile-shear";
  }

  @Override
  public String title() {
    return "Shear of the sheet piles";
  }

  @Override
  public List<CalcSheet> sheets() {
    return List.of(SheetPileSheets.ASD_SHEAR, SheetPileSheets.EN_SHEAR);
  }

  @Override
  Function<Effects, WallEffects> stage() {
    return Effects::worstShear;
  }

  @Override
  Calculation calculation(Job job, WallRun run, SheetPiling sheets, Effects effects) {
    return calculate(job, sheets, effects);
  }

  /** The calculation that bending builds on. */
  static Calculation calculate(Job job, SheetPiling sheets, Effects effects) {
    SheetShape shape = sheets.shape();
    boolean stresses = stresses(job);
    Binding binding =
        (stresses ? SheetPileSheets.ASD_SHEAR : SheetPileSheets.EN_SHEAR)
            .bind()
            .set("V", effects.shear())
            .set("t_f", RunCheck.need(shape.flange(), "the flange thickness of the sheet piles"))
            .set("t_w", RunCheck.need(shape.web(), "the web thickness of the sheet piles"))
            .set("Δ_c", From.cell(shape.corrosion()))
            .set("h", RunCheck.need(shape.depth(), "the depth of the section of sheet piles"))
            .set(
                "b_w",
                From.layout(
                    sheets.width().si() / shape.webs(),
                    shape.webs() == 1 ? "width of a sheet" : "half of the width of a sheet"));
    if (stresses) {
      return binding
          .set("F_y", From.cell(sheets.yieldStrength()))
          .set("k_v", From.factor(job, "steel.sheet.shear", effects.combination()))
          .calculate();
    }
    return binding
        .set("α_w", RunCheck.need(shape.webSlope(), "the slope of the webs of the sheet piles"))
        .set("f_y", From.cell(sheets.yieldStrength()))
        .set("γ_M0", From.factor(job, "steel.yield", effects.combination()))
        .calculate();
  }
}
