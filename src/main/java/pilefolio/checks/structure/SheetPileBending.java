package pilefolio.checks.structure;

import java.util.List;
import java.util.function.Function;
import pilefolio.checks.From;
import pilefolio.checks.Job;
import pilefolio.checks.RunCheck;
import pilefolio.checks.WallEffects;
import pilefolio.model.SheetForm;
import pilefolio.model.SheetPiling;
import pilefolio.model.SheetShape;
import pilefolio.model.WallRun;
import pilefolio.trace.CalcSheet;
import pilefolio.trace.Calculation;
import pilefolio.trace.Given;

/** Bending of sheet piles. */
final class SheetPileBending extends SheetPileCheck {
  private static final String TABLE = "EN 1993-5:2007, Table 5.1, from memory";

  @Override
  public String id() {
    return "sheet-pile-bending";
  }

  @Override
  public String title() {
    return "Bending of the sheet piles";
  }

  @Override
  public List<CalcSheet> sheets() {
    return List.of(SheetPileSheets.ASD_BENDING, SheetPileSheets.EN_BENDING_SHEET);
  }

  @Override
  Function<Effects, WallEffects> stage() {
    return Effects::worstMoment;
  }

  @Override
  Calculation calculation(Job job, WallRun run, SheetPiling sheets, Effects effects) {
    SheetShape shape = sheets.shape();
    Given flange = RunCheck.need(shape.flange(), "the flange thickness of the sheet piles");
    if (stresses(job)) {
      return SheetPileSheets.ASD_BENDING
          .bind()
          .set("t_f", flange)
          .set("Δ_c", From.cell(shape.corrosion()))
          .set("M", effects.moment())
          .set("W_el", From.cell(sheets.sectionModulus()))
          .set("β_B", From.cell(shape.bendingShare()))
          .set("F_y", From.cell(sheets.yieldStrength()))
          .set("k_b", From.factor(job, "steel.sheet.bending", effects.combination()))
          .calculate();
    }
    Calculation shear = SheetPileShear.calculate(job, sheets, effects);
    boolean z = shape.form() == SheetForm.Z;
    return SheetPileSheets.EN_BENDING_SHEET
        .bind()
        .set("t_f", flange)
        .set("Δ_c", From.cell(shape.corrosion()))
        .set("b", RunCheck.need(shape.flatWidth(), "the flat width of the flange"))
        .set("W_el", From.cell(sheets.sectionModulus()))
        .set("W_pl", RunCheck.need(shape.plasticModulus(), "the plastic modulus"))
        .set("β_B", From.cell(shape.bendingShare()))
        .set("f_y", From.cell(sheets.yieldStrength()))
        .set("γ_M0", From.factor(job, "steel.yield", effects.combination()))
        .set("λ_2", From.table(z ? 45 : 37, TABLE, "class 2, " + shape.form().label()))
        .set("λ_3", From.table(z ? 66 : 49, TABLE, "class 3, " + shape.form().label()))
        .set("M_Ed", effects.moment())
        .set("V_Ed", effects.shear())
        .set("V_Rd", From.line(new SheetPileShear(), shear, "V_Rd"))
        .calculate();
  }
}
