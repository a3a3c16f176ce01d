package pilefolio.checks.apparent;

import static pilefolio.units.Units.KNM;
import static pilefolio.units.Units.KNM_M;
import static pilefolio.units.Units.KN_M;
import static pilefolio.units.Units.KPA;
import static pilefolio.units.Units.M;

import pilefolio.trace.CalcSheet;
import pilefolio.trace.CalcTable;
import pilefolio.trace.Reference;

/** Sheets of the beams that stand under apparent pressure. */
final class BeamSheets {
  static final String SPANS = "spans";
  static final String SUPPORTS = "supports";

  private static final Reference TENTH =
      Reference.memory("FHWA-IF-99-015", "section 5.4, moments by tributary areas");

  static final CalcSheet HINGE = beam("Beams between hinges at the supports", false);
  static final CalcSheet CONTINUOUS = beam("Continuous beam over the supports", true);
  static final CalcSheet TRIBUTARY = tributary();

  private BeamSheets() {}

  private static CalcSheet beam(String title, boolean continuous) {
    CalcTable spans =
        CalcTable.of(SPANS, "Spans from the top down", "span")
            .given("z_1", M, "level of the upper end")
            .given("z_2", M, "level of the lower end")
            .given("P", KN_M, "load")
            .given("M_P", KNM_M, "moment of the load about the lower end");
    if (continuous) {
      spans =
          spans
              .given("M_{c,1}", KNM_M, "moment of the clamped span, upper end")
              .given("M_{c,2}", KNM_M, "the same, lower end");
    }
    spans =
        spans
            .given("M_1", KNM_M, "moment at the upper end")
            .given("M_2", KNM_M, "moment at the lower end")
            .given("M_s", KNM_M, "greatest moment inside, where shear is nil")
            .line("R_1 = (M_P + M_1 − M_2)/(z_1 − z_2)", KN_M, "upper reaction", Reference.DERIVED)
            .line("R_2 = P − R_1", KN_M, "lower reaction", Reference.DERIVED);
    if (continuous) {
      spans =
          spans
              .line(
                  "Φ_1 = (2·(M_1 − M_{c,1}) − (M_{c,2} − M_2))·(z_1 − z_2)/6",
                  KNM,
                  "rotation at the upper end times EI",
                  Reference.DERIVED)
              .line(
                  "Φ_2 = (2·(M_{c,2} − M_2) − (M_1 − M_{c,1}))·(z_1 − z_2)/6",
                  KNM,
                  "rotation at the lower end times EI",
                  Reference.DERIVED)
              .line("Φ = max(abs(Φ_1), abs(Φ_2))", KNM, "the greater of the two", Reference.DERIVED)
              .largest("Φ_l", "Φ", "greatest rotation times EI");
    }
    spans =
        spans
            .largest("M_{1,l}", "M_1", "greatest moment at an upper end")
            .largest("M_{2,l}", "M_2", "greatest moment at a lower end")
            .largest("M_{s,l}", "M_s", "greatest moment inside a span")
            .smallest("M_{s,s}", "M_s", "least moment inside a span")
            .largest("R_{1,l}", "R_1", "greatest upper reaction")
            .largest("R_{2,l}", "R_2", "greatest lower reaction");
    CalcTable supports =
        CalcTable.of(SUPPORTS, "Supports from the top down", "support")
            .given("z", M, "level")
            .given("Q", KN_M, "load of an overhang")
            .given("R_a", KN_M, "from the span above")
            .given("R_b", KN_M, "from the span below");
    if (continuous) {
      supports =
          supports
              .given("Φ_a", KNM, "rotation times EI of the span above")
              .given("Φ_b", KNM, "rotation times EI of the span below")
              .line("Δ = abs(Φ_a − Φ_b)", KNM, "kink", Reference.DERIVED)
              .largest("Δ_l", "Δ", "greatest kink");
    }
    supports =
        supports
            .line("T = Q + R_a + R_b", KN_M, "horizontal support force", Reference.DERIVED)
            .line("V = max(abs(Q), abs(R_a), abs(R_b))", KN_M, "shear", Reference.DERIVED)
            .sum("ΣT", "T", "all supports")
            .smallest("T_s", "T", "least support force")
            .largest("V_E", "V", "shear the wall must resist");
    CalcSheet sheet =
        CalcSheet.named(title)
            .given("ΣF", KN_M, "force of the pressure on the wall")
            .note(
                "Moments with tension on the retained side are positive. The row “ground” is the"
                    + " reaction in front of the wall.")
            .table(spans)
            .table(supports)
            .line(
                "M_E = max(M_{1,l}, M_{2,l}, M_{s,l}, −M_{s,s})",
                KNM_M,
                "moment the wall must resist",
                Reference.DERIVED)
            .line("ΔF = ΣT − ΣF", KN_M, "force left over", Reference.DERIVED)
            .condition(
                "abs(ΔF) ≤ 0.001·ΣF", "the supports carry the whole pressure", Reference.DERIVED);
    if (continuous) {
      sheet =
          sheet.condition(
              "Δ_l ≤ 0.001·Φ_l", "the beam has no kink at a support", Reference.DERIVED);
    }
    return sheet.condition("T_s ≥ 0", "no support has to pull the wall in", Reference.DERIVED);
  }

  private static CalcSheet tributary() {
    return CalcSheet.named("Supports by tributary areas")
        .given("ΣF", KN_M, "force of the pressure on the wall")
        .given("M_o", KNM_M, "moment of the pressure above the first support")
        .given("M_u", KNM_M, "moment of an overhang below the last support")
        .note(
            "Areas end halfway between supports. Moments of spans are a tenth of the greatest"
                + " pressure times the length squared, at supports and inside alike.")
        .table(
            CalcTable.of(SUPPORTS, "Supports from the top down", "support")
                .given("z", M, "level")
                .given("z_a", M, "top of its area")
                .given("z_b", M, "bottom of its area")
                .given("p_a", KPA, "mean pressure above it")
                .given("p_b", KPA, "mean pressure below it")
                .line("V_a = p_a·(z_a − z)", KN_M, "from above", Reference.DERIVED)
                .line("V_b = p_b·(z − z_b)", KN_M, "from below", Reference.DERIVED)
                .line("T = V_a + V_b", KN_M, "horizontal support force", Reference.DERIVED)
                .sum("ΣT", "T", "all supports")
                .largest("V_{a,l}", "V_a", "greatest shear above a support")
                .largest("V_{b,l}", "V_b", "greatest shear below a support"))
        .table(
            CalcTable.of(SPANS, "Spans from the top down", "span")
                .given("z_1", M, "level of the upper end")
                .given("z_2", M, "level of the lower end")
                .given("p_x", KPA, "greatest pressure")
                .line("M_s = 0.1·p_x·(z_1 − z_2)²", KNM_M, "moment", TENTH)
                .largest("M_{s,l}", "M_s", "greatest moment of a span"))
        .line("M_E = max(M_o, M_u, M_{s,l})", KNM_M, "moment the wall must resist", TENTH)
        .line("V_E = max(V_{a,l}, V_{b,l})", KN_M, "shear the wall must resist", Reference.DERIVED)
        .line("ΔF = ΣT − ΣF", KN_M, "force left over", Reference.DERIVED)
        .condition(
            "abs(ΔF) ≤ 0.001·ΣF", "the supports carry the whole pressure", Reference.DERIVED);
  }
}
