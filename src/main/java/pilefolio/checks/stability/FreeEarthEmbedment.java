package pilefolio.checks.stability;

import static pilefolio.units.Units.KN_M;
import static pilefolio.units.Units.M;

import pilefolio.analysis.wall.Equilibrium;
import pilefolio.analysis.wall.FreeEarthSupport;
import pilefolio.analysis.wall.WallLoading;
import pilefolio.trace.Binding;
import pilefolio.trace.CalcSheet;
import pilefolio.trace.Reference;

/** Embedment of a supported wall whose toe is free to turn. */
public final class FreeEarthEmbedment extends EmbedmentCheck {
  private static final String ROOT = "root of ΣM = 0 about the support";

  static final CalcSheet SHEET =
      EmbedmentSheet.provided(
          EmbedmentSheet.momentsBalance(
                  EmbedmentSheet.levels("Embedment of a supported wall, free earth")
                      .given("z_s", M, "level of the support")
                      .found("z_c", M, "theoretical toe", ROOT)
                      .note(
                          "Active behind, passive in front. Moments about the support; below it"
                              + " they count as positive.")
                      .table(EmbedmentSheet.forces("z_s", true)))
              .line("T = ΣH_b − ΣH_f", KN_M, "horizontal support force", Reference.DERIVED),
          "d_r = f_D·d");

  /** The check. */
  public FreeEarthEmbedment() {
    super(SHEET, FreeEarthSupport.class);
  }

  @Override
  public String id() {
    return "embedment-free-earth";
  }

  @Override
  public String title() {
    return "Embedment of a supported wall, free earth";
  }

  @Override
  String rootName() {
    return ROOT;
  }

  @Override
  void complete(Binding binding, WallLoading loading, Equilibrium e, EmbedmentInputs in) {
    binding.set("z_s", in.support().orElseThrow());
  }
}
