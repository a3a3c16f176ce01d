package pilefolio.checks.apparent;

import static pilefolio.units.Units.DEG;
import static pilefolio.units.Units.KN_M;
import static pilefolio.units.Units.KN_M3;
import static pilefolio.units.Units.KPA;
import static pilefolio.units.Units.M;
import static pilefolio.units.Units.ONE;

import java.util.ArrayList;
import java.util.List;
import pilefolio.analysis.apparent.GroundBeside;
import pilefolio.model.ApparentDiagram;
import pilefolio.trace.CalcSheet;
import pilefolio.trace.CalcTable;
import pilefolio.trace.Reference;

/** The sheets of apparent pressure, one for each kind of ground and envelope. */
final class EnvelopeSheets {
  static final String GROUND = "ground";
  static final String SAND = "sand";
  static final String CLAY = "clay";
  static final String STRETCHES = "stretches";

  private static final Reference STRUTS =
      Reference.memory("Terzaghi and Peck (1967) and Peck (1969)", "");
  private static final Reference LEVELS =
      Reference.memory("FHWA-IF-99-015", "section 5.2, Figures 24 and 29");
  private static final Reference LRFD =
      Reference.memory("AASHTO LRFD Bridge Design Specifications", "Figure 3.11.5.7.1-1");
  private static final Reference HENKEL =
      Reference.memory("FHWA-IF-99-015", "section 5.2.7, after Henkel (1971)");
  private static final Reference MIXED = Reference.memory("Peck (1943)", "");

  /**
   * What a sheet is for.
   *
   * @param kind ground
   * @param diagram envelope
   * @param lrfd whether the ordinate in sand is that of AASHTO LRFD
   */
  private record Use(GroundBeside.Kind kind, ApparentDiagram diagram, boolean lrfd) {}

  private record Made(Use use, CalcSheet sheet) {}

  private static final List<Made> MADE = make();

  static final List<CalcSheet> ALL = MADE.stream().map(Made::sheet).toList();

  private EnvelopeSheets() {}

  /** The sheet for some ground and envelope. */
  static CalcSheet of(GroundBeside.Kind kind, ApparentDiagram diagram, boolean lrfd) {
    Use wanted = new Use(kind, diagram, lrfd && diagram == ApparentDiagram.LEVELS_SAND);
    return MADE.stream().filter(m -> m.use().equals(wanted)).findFirst().orElseThrow().sheet();
  }

  private static List<Made> make() {
    List<Made> made = new ArrayList<>();
    add(made, GroundBeside.Kind.SAND, ApparentDiagram.SAND, false);
    add(made, GroundBeside.Kind.SAND, ApparentDiagram.LEVELS_SAND, false);
    add(made, GroundBeside.Kind.SAND, ApparentDiagram.LEVELS_SAND, true);
    for (GroundBeside.Kind kind :
        List.of(GroundBeside.Kind.CLAY, GroundBeside.Kind.SAND_OVER_CLAY)) {
      for (ApparentDiagram diagram :
          List.of(
              ApparentDiagram.STIFF_CLAY,
              ApparentDiagram.LEVELS_CLAY,
              ApparentDiagram.SOFT_CLAY,
              ApparentDiagram.SOFT_CLAY_DEEP)) {
        add(made, kind, diagram, false);
      }
    }
    return List.copyOf(made);
  }

  private static void add(
      List<Made> made, GroundBeside.Kind kind, ApparentDiagram diagram, boolean lrfd) {
    CalcSheet sheet =
        CalcSheet.named(title(kind, diagram, lrfd))
            .given("z_r", M, "ground level behind")
            .given("z_e", M, "design excavation level");
    sheet =
        switch (kind) {
          case SAND -> sand(sheet);
          case CLAY -> clay(sheet);
          case SAND_OVER_CLAY -> mixed(sheet);
        };
    sheet = ordinate(sheet, diagram, lrfd);
    made.add(new Made(new Use(kind, diagram, lrfd), design(sheet, diagram)));
  }

  private static String title(GroundBeside.Kind kind, ApparentDiagram diagram, boolean lrfd) {
    String envelope =
        switch (diagram) {
          case SAND -> "struts in sand";
          case STIFF_CLAY -> "struts in stiff clay";
          case SOFT_CLAY -> "soft to medium clay";
          case SOFT_CLAY_DEEP -> "soft clay with movement below the base";
          case LEVELS_SAND -> lrfd ? "sand by support levels, LRFD" : "sand by support levels";
          case LEVELS_CLAY -> "stiff clay by support levels";
          case BY_GROUND, NONE -> throw new IllegalArgumentException(diagram.name());
        };
    return "Apparent pressure, "
        + envelope
        + (kind == GroundBeside.Kind.SAND_OVER_CLAY ? ", sand above" : "");
  }

  private static CalcSheet sand(CalcSheet sheet) {
    return sheet
        .table(
            CalcTable.of(GROUND, "Ground beside the excavation", "layer")
                .given("h", M, "thickness")
                .given("γ", KN_M3, "unit weight, effective below water")
                .given("φ", DEG, "design friction angle")
                .line("w = γ·h", KPA, "weight", Reference.DERIVED)
                .line("f = h·tan(φ)", M, "thickness times tan φ", Reference.DERIVED)
                .sum("H", "h", "height")
                .sum("Σw", "w", "weight")
                .sum("Σf", "f", "thickness times tan φ"))
        .line("γ_m = Σw/H", KN_M3, "average unit weight", Reference.DERIVED)
        .line("φ_m = atan(Σf/H)", DEG, "average friction angle", Reference.PRACTICE)
        .line(
            "K_a = (1 − sin(φ_m))/(1 + sin(φ_m))", ONE, "Rankine’s coefficient", Reference.DERIVED);
  }

  private static CalcSheet clay(CalcSheet sheet) {
    return sheet
        .table(
            CalcTable.of(GROUND, "Ground beside the excavation", "layer")
                .given("h", M, "thickness")
                .given("γ", KN_M3, "unit weight")
                .given("s_u", KPA, "design undrained strength at mid-height")
                .line("w = γ·h", KPA, "weight", Reference.DERIVED)
                .line("c = s_u·h", KN_M, "strength times thickness", Reference.DERIVED)
                .sum("H", "h", "height")
                .sum("Σw", "w", "weight")
                .sum("Σc", "c", "strength times thickness"))
        .line("γ_m = Σw/H", KN_M3, "average unit weight", Reference.DERIVED)
        .line("c_m = Σc/H", KPA, "average undrained strength", MIXED)
        .line("N = γ_m·H/c_m", ONE, "stability number", STRUTS);
  }

  private static CalcSheet mixed(CalcSheet sheet) {
    return sheet
        .given("n", ONE, "share of the strength of the clay")
        .table(
            CalcTable.of(SAND, "Drained layers beside the excavation", "layer")
                .given("h", M, "thickness")
                .given("γ", KN_M3, "unit weight, effective below water")
                .given("φ", DEG, "design friction angle")
                .line("w = γ·h", KPA, "weight", Reference.DERIVED)
                .line("f = h·tan(φ)", M, "thickness times tan φ", Reference.DERIVED)
                .sum("H_s", "h", "height of the drained layers")
                .sum("Σw_s", "w", "weight")
                .sum("Σf", "f", "thickness times tan φ"))
        .table(
            CalcTable.of(CLAY, "Undrained layers beside the excavation", "layer")
                .given("h_i", M, "thickness")
                .given("γ_i", KN_M3, "unit weight")
                .given("s_u", KPA, "design undrained strength at mid-height")
                .line("w_i = γ_i·h_i", KPA, "weight", Reference.DERIVED)
                .line("c = s_u·h_i", KN_M, "strength times thickness", Reference.DERIVED)
                .sum("H_c", "h_i", "height of the undrained layers")
                .sum("Σw_c", "w_i", "weight")
                .sum("Σc", "c", "strength times thickness"))
        .line("H = H_s + H_c", M, "height", Reference.DERIVED)
        .line("γ_m = (Σw_s + Σw_c)/H", KN_M3, "average unit weight", MIXED)
        .line("c_m = (Σw_s·Σf + 2·n·Σc)/(2·H)", KPA, "strength of the equivalent clay", MIXED)
        .line("N = γ_m·H/c_m", ONE, "stability number", STRUTS);
  }

  private static CalcSheet ordinate(CalcSheet sheet, ApparentDiagram diagram, boolean lrfd) {
    return switch (diagram) {
      case SAND ->
          sheet
              .line("p = 0.65·K_a·γ_m·H", KPA, "ordinate", STRUTS)
              .line("K_q = K_a", ONE, "share of a uniform load behind", LEVELS);
      case STIFF_CLAY ->
          stiff(sheet)
              .line("p = f_s·γ_m·H", KPA, "ordinate", STRUTS)
              .line("a_1 = H/4", M, "ramp at the top", STRUTS)
              .line("a_2 = H/4", M, "ramp at the bottom", STRUTS)
              .line("K_q = f_s", ONE, "share of a uniform load behind", Reference.PRACTICE);
      case SOFT_CLAY ->
          soft(
              sheet
                  .given("m", ONE, "factor on strength; 1 where no soft clay lies below")
                  .line("K = 1 − 4·m/N", ONE, "ordinate over γ·H", STRUTS));
      case SOFT_CLAY_DEEP ->
          soft(
              sheet
                  .given("d", M, "soft clay below the base")
                  .given("s_b", KPA, "its design undrained strength")
                  .condition("N > 6", "the ground moves from below the base", HENKEL)
                  .line(
                      "K_d = 2·√(2)·d/H·max(0, 1 − 5.14·s_b/(γ_m·H))",
                      ONE,
                      "movement below the base",
                      HENKEL)
                  .line("K = max(0.22, 1 − 4/N + K_d)", ONE, "ordinate over γ·H", HENKEL));
      case LEVELS_SAND -> {
        CalcSheet heights = heights(sheet);
        yield ramps(
                lrfd
                    ? heights.line(
                        "p = K_a·γ_m·H²/(1.5·H − 0.5·H_1 − 0.5·H_n)", KPA, "ordinate", LRFD)
                    : heights
                        .line("P = 0.65·K_a·γ_m·H²", KN_M, "total load", LEVELS)
                        .line("p = P/(H − H_1/3 − H_n/3)", KPA, "ordinate", LEVELS))
            .line("K_q = K_a", ONE, "share of a uniform load behind", LEVELS);
      }
      case LEVELS_CLAY ->
          ramps(
                  heights(stiff(sheet))
                      .line("P = f_s·γ_m·H²", KN_M, "total load", LEVELS)
                      .line("p = P/(H − H_1/3 − H_n/3)", KPA, "ordinate", LEVELS))
              .line("K_q = p/(γ_m·H)", ONE, "share of a uniform load behind", Reference.PRACTICE);
      case BY_GROUND, NONE -> throw new IllegalArgumentException(diagram.name());
    };
  }

  private static CalcSheet stiff(CalcSheet sheet) {
    return sheet
        .given("f_s", ONE, "share of γ·H in stiff clay, 0.2 to 0.4")
        .condition("N ≤ 4", "the clay is stiff for this height", STRUTS);
  }

  private static CalcSheet soft(CalcSheet sheet) {
    return sheet
        .line("p = max(K, 0.3)·γ_m·H", KPA, "ordinate", STRUTS)
        .line("a_1 = H/4", M, "ramp at the top", STRUTS)
        .line("K_q = 1", ONE, "share of a uniform load behind", Reference.PRACTICE);
  }

  private static CalcSheet heights(CalcSheet sheet) {
    return sheet
        .given("z_1", M, "level of the first support")
        .given("z_n", M, "level of the last support")
        .line("H_1 = z_r − z_1", M, "height above the first support", Reference.DERIVED)
        .line("H_n = z_n − z_e", M, "height below the last support", Reference.DERIVED);
  }

  private static CalcSheet ramps(CalcSheet sheet) {
    return sheet
        .line("a_1 = 2/3·H_1", M, "ramp at the top", LEVELS)
        .line("a_2 = 2/3·H_n", M, "ramp at the bottom", LEVELS);
  }

  private static CalcSheet design(CalcSheet sheet, ApparentDiagram diagram) {
    CalcTable table =
        CalcTable.of(STRETCHES, "Pressure on the wall with factors", "stretch")
            .given("z_t", M, "level of the top")
            .given("z_b", M, "level of the bottom")
            .given("p_{w,t}", KPA, "water and local loads, top")
            .given("p_{w,b}", KPA, "water and local loads, bottom")
            .line("e_t" + share(diagram, "z_t"), ONE, "share, top", Reference.DERIVED)
            .line("e_b" + share(diagram, "z_b"), ONE, "share, bottom", Reference.DERIVED)
            .line("p_t = e_t·p_d + q_d + p_{w,t}", KPA, "pressure, top", Reference.DERIVED)
            .line("p_b = e_b·p_d + q_d + p_{w,b}", KPA, "pressure, bottom", Reference.DERIVED)
            .line("F = (p_t + p_b)/2·(z_t − z_b)", KN_M, "force", Reference.DERIVED)
            .sum("ΣF", "F", "force of the whole")
            .largest("p_{t,l}", "p_t", "greatest at a top")
            .largest("p_{b,l}", "p_b", "greatest at a bottom");
    return sheet
        .condition("abs(H − (z_r − z_e)) ≤ 0.001·H", "layers fill the height", Reference.DERIVED)
        .given("γ_a", ONE, "factor on apparent pressure")
        .given("γ_G", ONE, "factor on permanent load")
        .given("γ_Q", ONE, "factor on variable load")
        .given("q_G", KPA, "permanent load behind")
        .given("q_Q", KPA, "variable load behind")
        .line("p_d = γ_a·p", KPA, "ordinate with its factor", Reference.DERIVED)
        .line("q_d = K_q·(γ_G·q_G + γ_Q·q_Q)", KPA, "from the load behind", Reference.DERIVED)
        .note(
            "An envelope of support loads that were measured, not a pressure that acts at one time."
                + " Water and local loads are those of the pressures behind the wall.")
        .table(table)
        .line("p_l = max(p_{t,l}, p_{b,l})", KPA, "greatest pressure", Reference.DERIVED);
  }

  /** Share of the ordinate at a level, with its sign of equality. */
  private static String share(ApparentDiagram diagram, String z) {
    return switch (diagram) {
      case SAND -> " = 1";
      case SOFT_CLAY, SOFT_CLAY_DEEP -> " = min(1, (z_r − " + z + ")/a_1)";
      default -> " = min(1, (z_r − " + z + ")/a_1, (" + z + " − z_e)/a_2)";
    };
  }
}
