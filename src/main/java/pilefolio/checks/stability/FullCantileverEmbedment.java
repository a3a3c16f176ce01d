package pilefolio.checks.stability;

import static pilefolio.units.Units.KN_M;
import static pilefolio.units.Units.M;

import pilefolio.analysis.wall.Equilibrium;
import pilefolio.analysis.wall.FourForceCantilever;
import pilefolio.analysis.wall.WallLoading;
import pilefolio.checks.From;
import pilefolio.trace.Binding;
import pilefolio.trace.CalcSheet;
import pilefolio.trace.Reference;

/** Embedment of a cantilever with pressures that reverse at a pivot. */
public final class FullCantileverEmbedment extends EmbedmentCheck {
  private static final String ROOT = "root of ΣH = 0 and ΣM = 0";

  static final CalcSheet SHEET =
      EmbedmentSheet.provided(
          EmbedmentSheet.momentsBalance(
              EmbedmentSheet.levels("Embedment of a cantilever, four forces")
                  .found("z_p", M, "pivot", ROOT)
                  .found("z_c", M, "toe in equilibrium", ROOT)
                  .note(
                      "Active behind and passive in front down to the pivot, passive behind and"
                          + " active in front below it. Moments about the toe in equilibrium.")
                  .table(EmbedmentSheet.forces("z_c", false))
                  .line("d_0 = z_e − z_p", M, "pivot below the excavation", Reference.DERIVED)
                  .line("ΔH = ΣH_b − ΣH_f", KN_M, "force left over", Reference.DERIVED)
                  .condition(
                      "abs(ΔH) ≤ 0.001·ΣH_f", "forces are in equilibrium", Reference.DERIVED)),
          "d_r = f_D·d");

  /** The check. */
  public FullCantileverEmbedment() {
    super(SHEET, FourForceCantilever.class);
  }

  @Override
  public String id() {
    return "embedment-cantilever";
  }

  @Override
  public String title() {
    return "Embedment of a cantilever, four forces";
  }

  @Override
  String rootName() {
    return ROOT;
  }

  @Override
  void complete(Binding binding, WallLoading loading, Equilibrium e, EmbedmentInputs in) {
    binding.set("z_p", From.method(e.pivotLevel().orElseThrow(), ROOT));
  }
}
