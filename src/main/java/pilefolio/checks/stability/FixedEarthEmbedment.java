package pilefolio.checks.stability;

import static pilefolio.units.Units.KN_M;
import static pilefolio.units.Units.KPA;
import static pilefolio.units.Units.M;
import static pilefolio.units.Units.ONE;

import pilefolio.analysis.wall.Equilibrium;
import pilefolio.analysis.wall.FixedEarthSupport;
import pilefolio.analysis.wall.WallLoading;
import pilefolio.checks.From;
import pilefolio.trace.Binding;
import pilefolio.trace.Binding.Row;
import pilefolio.trace.CalcSheet;
import pilefolio.trace.CalcTable;
import pilefolio.trace.Reference;
import pilefolio.trace.Source;

/**
 * Embedment of a supported wall whose toe is held in direction. The wall above its toe is a beam
 * clamped at the toe and held at the support: moments give one value of the support force, zero
 * deflection at the support gives another, and at the right toe they agree.
 */
public final class FixedEarthEmbedment extends EmbedmentCheck {
  private static final String ROOT = "root of zero deflection at the support";
  private static final String BENDING = "deflection";
  private static final double KILO = 1000;

  static final CalcSheet SHEET =
      EmbedmentSheet.provided(
          EmbedmentSheet.levels("Embedment of a supported wall, fixed earth")
              .given("z_s", M, "level of the support")
              .given("f_s", ONE, "increase for the force lumped at the toe")
              .found("z_c", M, "theoretical toe", ROOT)
              .note(
                  "Active behind, passive in front. At the theoretical toe moment, rotation and"
                      + " deflection are zero; the support does not yield.")
              .table(EmbedmentSheet.forces("z_c", false))
              .line("b = z_s − z_c", M, "height of the support above the toe", Reference.DERIVED)
              .line(
                  "T = (ΣM_b − ΣM_f)/b",
                  KN_M,
                  "horizontal support force, from moments about the toe",
                  Reference.DERIVED)
              .table(
                  CalcTable.of(
                          BENDING,
                          "Share of each stretch in the support force, from zero deflection",
                          "layer behind")
                      .given("z_3", M, "level of the top")
                      .given("z_4", M, "level of the bottom")
                      .given("p_3", KPA, "net pressure, top")
                      .given("p_4", KPA, "net pressure, bottom")
                      .line("a_0 = z_3 − z_c", M, "top above the toe", Reference.DERIVED)
                      .line("a_4 = z_4 − z_c", M, "bottom above the toe", Reference.DERIVED)
                      .line(influence("g_0", "a_0"), ONE, "influence, top", Reference.DERIVED)
                      .line(
                          influence("g_1", "(3·a_0 + a_4)/4"),
                          ONE,
                          "influence, first quarter",
                          Reference.DERIVED)
                      .line(
                          influence("g_2", "(a_0 + a_4)/2"),
                          ONE,
                          "influence, middle",
                          Reference.DERIVED)
                      .line(
                          influence("g_3", "(a_0 + 3·a_4)/4"),
                          ONE,
                          "influence, third quarter",
                          Reference.DERIVED)
                      .line(influence("g_4", "a_4"), ONE, "influence, bottom", Reference.DERIVED)
                      .line(
                          "T_i = (a_0 − a_4)/90·(7·p_3·g_0 + 8·(3·p_3 + p_4)·g_1"
                              + " + 6·(p_3 + p_4)·g_2 + 8·(p_3 + 3·p_4)·g_3 + 7·p_4·g_4)",
                          KN_M,
                          "share in the support force",
                          Reference.DERIVED)
                      .sum("T_w", "T_i", "support force from zero deflection"))
              .line("ΔT = T − T_w", KN_M, "difference of both routes", Reference.DERIVED)
              .condition("abs(ΔT) ≤ 0.001·T", "both routes agree", Reference.DERIVED)
              .line("R = T + ΣH_f − ΣH_b", KN_M, "force at the toe", Reference.DERIVED),
          "d_r = f_s·f_D·d");

  // Reaction of a beam clamped at the toe and held at b to a unit force at a height. Pressure times
  // influence is of the fourth degree, so the five-point rule in T_i is exact.
  private static String influence(String name, String height) {
    return name
        + " = min("
        + height
        + ", b)²·(3·max("
        + height
        + ", b) − min("
        + height
        + ", b))/(2·b³)";
  }

  /** The check. */
  public FixedEarthEmbedment() {
    super(SHEET, FixedEarthSupport.class);
  }

  @Override
  public String id() {
    return "embedment-fixed-earth";
  }

  @Override
  public String title() {
    return "Embedment of a supported wall, fixed earth";
  }

  @Override
  String rootName() {
    return ROOT;
  }

  @Override
  void complete(Binding binding, WallLoading loading, Equilibrium e, EmbedmentInputs in) {
    double support = in.support().orElseThrow().si();
    binding
        .set("z_s", in.support().orElseThrow())
        .set(
            "f_s",
            From.layout(e.embedmentIncrease(), "contractor’s practice, 1.2 for this method"));
    Source level = new Source.Layout("break of the diagrams");
    Source net = new Source.Layout("behind less in front, table above");
    for (PressureRow row : PressureRow.of(loading, e, support)) {
      binding.row(
          BENDING,
          Row.of(row.label())
              .set("z_3", row.z1(), level)
              .set("z_4", row.z2(), level)
              .set("p_3", KILO * row.net1(), net)
              .set("p_4", KILO * row.net2(), net));
    }
  }
}
