package pilefolio.checks.stability;

import static pilefolio.units.Units.KN_M;
import static pilefolio.units.Units.M;

import pilefolio.analysis.wall.Equilibrium;
import pilefolio.analysis.wall.LowestSpan;
import pilefolio.analysis.wall.WallLoading;
import pilefolio.trace.Binding;
import pilefolio.trace.CalcSheet;
import pilefolio.trace.Reference;

/** Embedment of a wall with several supports: the part below the lowest one. */
public final class LowestSpanEmbedment extends EmbedmentCheck {
  private static final String ROOT = "root of ΣM = 0 about the lowest support";

  static final CalcSheet SHEET =
      EmbedmentSheet.provided(
          EmbedmentSheet.momentsBalance(
                  EmbedmentSheet.levels("Embedment below the lowest support")
                      .given("z_s", M, "level of the lowest support")
                      .found("z_c", M, "theoretical toe", ROOT)
                      .note(
                          "Only pressures below the lowest support, active behind, passive in"
                              + " front, with a hinge at that support: the moment of the wall there"
                              + " is not relied on.")
                      .table(EmbedmentSheet.forces("z_s", true)))
              .line(
                  "T = ΣH_b − ΣH_f",
                  KN_M,
                  "force that this part brings to the lowest support",
                  Reference.DERIVED),
          "d_r = f_D·d");

  /** The check. */
  public LowestSpanEmbedment() {
    super(SHEET, LowestSpan.class);
  }

  @Override
  public String id() {
    return "embedment-lowest-span";
  }

  @Override
  public String title() {
    return "Embedment below the lowest of several supports";
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
