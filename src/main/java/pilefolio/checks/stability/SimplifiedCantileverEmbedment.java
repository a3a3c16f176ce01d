package pilefolio.checks.stability;

import static pilefolio.units.Units.KN_M;
import static pilefolio.units.Units.M;
import static pilefolio.units.Units.ONE;

import pilefolio.analysis.wall.Equilibrium;
import pilefolio.analysis.wall.SimplifiedCantilever;
import pilefolio.analysis.wall.WallLoading;
import pilefolio.checks.From;
import pilefolio.trace.Binding;
import pilefolio.trace.CalcSheet;
import pilefolio.trace.Reference;

/** Embedment of a cantilever with the pressures below the pivot lumped into a force at the toe. */
public final class SimplifiedCantileverEmbedment extends EmbedmentCheck {
  private static final String ROOT = "root of ΣM = 0 about the toe";

  static final CalcSheet SHEET =
      EmbedmentSheet.provided(
          EmbedmentSheet.momentsBalance(
                  EmbedmentSheet.levels("Embedment of a cantilever, simplified")
                      .given("f_s", ONE, "increase for the force lumped at the toe")
                      .found("z_c", M, "theoretical toe", ROOT)
                      .note("Active behind, passive in front. Moments about the theoretical toe.")
                      .table(EmbedmentSheet.forces("z_c", false)))
              .line("R = ΣH_f − ΣH_b", KN_M, "force at the toe", Reference.DERIVED),
          "d_r = f_s·f_D·d");

  /** The check. */
  public SimplifiedCantileverEmbedment() {
    super(SHEET, SimplifiedCantilever.class);
  }

  @Override
  public String id() {
    return "embedment-cantilever-simplified";
  }

  @Override
  public String title() {
    return "Embedment of a cantilever, simplified";
  }

  @Override
  String rootName() {
    return ROOT;
  }

  @Override
  void complete(Binding binding, WallLoading loading, Equilibrium e, EmbedmentInputs in) {
    binding.set(
        "f_s", From.layout(e.embedmentIncrease(), "contractor’s practice, 1.2 for this method"));
  }
}
