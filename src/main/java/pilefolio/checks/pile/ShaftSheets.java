package pilefolio.checks.pile;

import static pilefolio.units.Units.DEG;
import static pilefolio.units.Units.KN;
import static pilefolio.units.Units.KN_M;
import static pilefolio.units.Units.KN_M3;
import static pilefolio.units.Units.KPA;
import static pilefolio.units.Units.M;
import static pilefolio.units.Units.M2;
import static pilefolio.units.Units.ONE;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import pilefolio.trace.CalcSheet;
import pilefolio.trace.CalcTable;
import pilefolio.trace.Choice;
import pilefolio.trace.Reference;

/** Calculation sheets of the axial resistance of bored piles in layered ground. */
final class ShaftSheets {
  /** Table of slices of the sheet of stresses. */
  static final String SLICES = "slices";

  /** Table of slices in clay. */
  static final String CLAY = "clay";

  /** Table of slices in sand and gravel. */
  static final String SAND = "sand";

  private static final String DOCUMENT = "FHWA-IF-99-025";
  private static final Reference ALPHA = Reference.memory(DOCUMENT, "");
  private static final Reference BETA = Reference.memory(DOCUMENT, "");
  private static final Reference BASE = Reference.memory(DOCUMENT, "");
  private static final Reference RATIONAL = Reference.quoted("FHWA-NHI-10-016", "13.3.5.1");
  private static final Reference GEOMETRY = Reference.DERIVED;

  /** What the base stands on. */
  enum Base {
    /** Clay, undrained. */
    CLAY,
    /** Sand or gravel, from the blow count. */
    SAND
  }

  /** How the shaft in sand is found. */
  enum Beta {
    /** From the depth below the ground surface. */
    DEPTH,
    /** From the stress history behind the blow count. */
    RATIONAL
  }

  /** How safety is written. */
  enum Safety {
    /** One factor of safety. */
    ALLOWABLE,
    /** Partial factors. */
    PARTIAL,
    /** Load and resistance factors. */
    RESISTANCE
  }

  /**
   * What a sheet covers.
   *
   * @param clay some of the shaft stands in clay
   * @param sand some of the shaft stands in sand or gravel
   * @param base what the base stands on
   * @param beta how the shaft in sand is found
   * @param safety how safety is written
   */
  record Kind(boolean clay, boolean sand, Base base, Beta beta, Safety safety) {

    /** Title of the sheet. */
    String title() {
      String shaft = clay && sand ? "clay and sand" : clay ? "clay" : "sand";
      return "Axial capacity, shaft in "
          + shaft
          + (sand && beta == Beta.RATIONAL ? " by stress history" : "")
          + ", base in "
          + (base == Base.CLAY ? "clay" : "sand")
          + switch (safety) {
            case ALLOWABLE -> ", allowable load";
            case PARTIAL -> ", partial factors";
            case RESISTANCE -> ", load and resistance factors";
          };
    }
  }

  /** Every sheet, by what it covers. */
  static final Map<Kind, CalcSheet> ALL = all();

  private ShaftSheets() {}

  private static Map<Kind, CalcSheet> all() {
    Map<Kind, CalcSheet> sheets = new LinkedHashMap<>();
    for (Safety safety : Safety.values()) {
      for (Base base : Base.values()) {
        sheets.put(new Kind(true, false, base, Beta.DEPTH, safety), null);
        for (Beta beta : Beta.values()) {
          sheets.put(new Kind(false, true, base, beta, safety), null);
          sheets.put(new Kind(true, true, base, beta, safety), null);
        }
      }
    }
    sheets.replaceAll((kind, none) -> of(kind));
    return Collections.unmodifiableMap(sheets);
  }

  /** The sheet of a kind of pile. */
  static CalcSheet of(Kind kind) {
    if (!kind.clay() && !kind.sand()) {
      throw new IllegalArgumentException("a pile without shaft");
    }
    CalcSheet sheet =
        CalcSheet.named(kind.title())
            .given("D", M, "diameter of the pile")
            .given("D_p", M, "diameter of the primaries beside it")
            .given("s", M, "distance of the centres of neighbouring piles")
            .given("s_2", M, "spacing of the load-bearing piles")
            .line(
                "θ = acos(min(1, (s² + D²/4 − D_p²/4)/(s·D)))",
                DEG,
                "half the angle of the pile that lies in one primary",
                GEOMETRY)
            .line("A_b = min(π·D²/4, D·s_2)", M2, "base, at most its part of the row", GEOMETRY);
    if (kind.clay()) {
      sheet = sheet.given("α_max", ONE, "greatest adhesion factor").table(clay());
    }
    if (kind.sand()) {
      sheet = sheet.table(kind.beta() == Beta.DEPTH ? byDepth() : byHistory());
    }
    String shaft =
        kind.clay() && kind.sand() ? "R_{s,c} + R_{s,s}" : kind.clay() ? "R_{s,c}" : "R_{s,s}";
    sheet = sheet.line("R_s = " + shaft, KN, "shaft resistance below excavation level", GEOMETRY);
    return safety(base(sheet, kind.base()), kind);
  }

  /** Vertical stress along the shaft below excavation level. */
  static final CalcSheet STRESS =
      CalcSheet.named("Effective vertical stress along the pile after excavation")
          .given("γ_w", KN_M3, "unit weight of water")
          .given("σ_e", KPA, "vertical stress at excavation level")
          .given("z_w", M, "level of the water")
          .table(
              CalcTable.of(SLICES, "Vertical stress in the middle of each slice", "slice")
                  .given("z_1", M, "level of its top")
                  .given("z_2", M, "level of its bottom")
                  .given("γ", KN_M3, "unit weight")
                  .carried("σ_1", KPA, "vertical stress at the top", "σ_2", "σ_e")
                  .line("σ_2 = σ_1 + γ·(z_1 − z_2)", KPA, "vertical stress at the bottom", GEOMETRY)
                  .line(
                      "u = γ_w·max(0, z_w − (z_1 + z_2)/2)",
                      KPA,
                      "pore pressure in the middle",
                      GEOMETRY)
                  .line(
                      "σ'_v = max(0, (σ_1 + σ_2)/2 − u)",
                      KPA,
                      "effective vertical stress in the middle",
                      GEOMETRY));

  private static CalcTable clay() {
    return perimeter(
            CalcTable.of(CLAY, "Shaft in clay, undrained", "layer")
                .given("s_u", KPA, "undrained shear strength, mean of the slice"))
        .choose(
            "α",
            ONE,
            "adhesion factor; stronger clay is treated as rock and not covered",
            ALPHA,
            Choice.when("s_u ≤ 150[kPa]", "min(α_max, 0.55)")
                .or("s_u ≤ 250[kPa]", "min(α_max, 0.55 − 0.1·(s_u/100[kPa] − 1.5))"))
        .line("f_s = α·s_u", KPA, "unit shaft resistance", ALPHA)
        .line("ΔR = f_s·p·ΔL", KN, "resistance of the slice", GEOMETRY)
        .sum("R_{s,c}", "ΔR", "shaft resistance in clay");
  }

  private static CalcTable byDepth() {
    return perimeter(
            CalcTable.of(SAND, "Shaft in sand and gravel, factor by depth", "layer")
                .given("z", M, "depth of the middle of the slice below the ground surface")
                .given("σ'_v", KPA, "effective vertical stress there after excavation")
                .given("N_60", ONE, "blow count")
                .given("b_0", ONE, "factor at the surface: 1.5 in sand, 2.0 in gravel")
                .given("b_1", ONE, "decrease: 0.2445 in sand, 0.15 in gravel")
                .given("n", ONE, "exponent: 0.5 in sand, 0.75 in gravel")
                .given("β_max", ONE, "upper limit: 1.2 in sand, 1.8 in gravel"))
        .line(
            "β_0 = max(0.25, min(β_max, b_0 − b_1·(z/1[m])^n))",
            ONE,
            "factor of medium dense ground or better",
            BETA)
        .choose(
            "β",
            ONE,
            "shaft factor, less in loose ground",
            BETA,
            Choice.when("N_60 ≥ 15", "β_0").otherwise("β_0·N_60/15"))
        .line("f_t = min(β·σ'_v, 200[kPa])", KPA, "unit shaft resistance", BETA)
        .line("ΔR_t = f_t·p_t·ΔL_t", KN, "resistance of the slice", GEOMETRY)
        .sum("R_{s,s}", "ΔR_t", "shaft resistance in sand and gravel");
  }

  private static CalcTable byHistory() {
    return perimeter(
            CalcTable.of(SAND, "Shaft in sand and gravel, factor from stress history", "layer")
                .given("σ'_v", KPA, "effective vertical stress after excavation")
                .given("N_60", ONE, "blow count")
                .given("m", ONE, "exponent: 0.6 in clean sand, 0.8 in silty sand"))
        .line("N_1 = N_60·√(100[kPa]/σ'_v)", ONE, "blow count at 100 kPa", RATIONAL)
        .line("φ' = 27.5[°] + 9.2[°]·ln(N_1)/ln(10)", DEG, "friction angle", RATIONAL)
        .line("σ'_p = 0.47·100[kPa]·N_60^m", KPA, "greatest past vertical stress", RATIONAL)
        .line(
            "K_p = (1 + sin(φ'))/(1 − sin(φ'))",
            ONE,
            "passive limit of the lateral stress",
            Reference.memory("FHWA-NHI-10-016", ""))
        .line(
            "β = min(K_p, (1 − sin(φ'))·(σ'_p/σ'_v)^(sin(φ')))·tan(φ')",
            ONE,
            "shaft factor",
            RATIONAL)
        .line("f_t = β·σ'_v", KPA, "unit shaft resistance", RATIONAL)
        .line("ΔR_t = f_t·p_t·ΔL_t", KN, "resistance of the slice", GEOMETRY)
        .sum("R_{s,s}", "ΔR_t", "shaft resistance in sand and gravel");
  }

  private static CalcTable perimeter(CalcTable table) {
    boolean clay = table.id().equals(CLAY);
    return table
        .given(clay ? "ΔL" : "ΔL_t", M, "length of the slice that counts")
        .given(clay ? "j" : "j_t", ONE, "primaries beside the slice")
        .line(
            clay ? "p = min(π·D − j·θ·D, 2·s_2)" : "p_t = min(π·D − j_t·θ·D, 2·s_2)",
            M,
            "perimeter in the ground, at most both faces of the row",
            GEOMETRY);
  }

  private static CalcSheet base(CalcSheet sheet, Base base) {
    if (base == Base.CLAY) {
      return sheet
          .given("s_{u,b}", KPA, "undrained shear strength below the base")
          .choose(
              "N_c",
              ONE,
              "bearing factor; softer clay is not covered",
              BASE,
              Choice.when("s_{u,b} ≥ 96[kPa]", "9")
                  .or("s_{u,b} ≥ 48[kPa]", "8 + (s_{u,b} − 48[kPa])/48[kPa]")
                  .or("s_{u,b} ≥ 24[kPa]", "6.5 + 1.5·(s_{u,b} − 24[kPa])/24[kPa]"))
          .line("q_b = N_c·s_{u,b}", KPA, "unit base resistance", BASE)
          .line("R_b = q_b·A_b", KN, "base resistance", GEOMETRY);
    }
    return sheet
        .given("N_{60,b}", ONE, "blow count below the base")
        .given("q_{b,max}", KPA, "upper limit of the unit base resistance")
        .line("q_b = min(57.5[kPa]·N_{60,b}, q_{b,max})", KPA, "unit base resistance", BASE)
        .line("R_b = q_b·A_b", KN, "base resistance", GEOMETRY);
  }

  private static CalcSheet safety(CalcSheet sheet, Kind kind) {
    CalcSheet loads =
        sheet
            .given("G_k", KN, "permanent vertical load on one pile")
            .given("Q_k", KN, "variable vertical load on one pile")
            .given("F_h", KN_M, "horizontal support force of the wall")
            .given("i", DEG, "inclination of the support below the horizontal")
            .line("F_v = F_h·sin(i)/cos(i)", KN_M, "its vertical part", GEOMETRY)
            .given("h_x", M, "height of the pile above the lowest excavation")
            .given("γ_p", KN_M3, "unit weight of the pile")
            .line("W_x = γ_p·π·D²/4·h_x", KN, "weight of the pile above the excavation", GEOMETRY)
            .note(
                "Below the excavation the weight of the pile is taken as that of the ground it"
                    + " replaces. Primaries carry their own weight on their own toes.");
    if (kind.safety() == Safety.ALLOWABLE) {
      Reference practice = Reference.PRACTICE;
      return loads
          .given("F_S", ONE, "factor of safety")
          .line("N = G_k + W_x + Q_k + F_v·s_2", KN, "axial load on one pile", GEOMETRY)
          .line("R_all = (R_s + R_b)/F_S", KN, "allowable axial load", practice)
          .require("N ≤ R_all", "the ground carries the pile", practice);
    }
    loads =
        loads
            .given("γ_G", ONE, "multiplier of permanent actions")
            .given("γ_Q", ONE, "multiplier of variable actions");
    if (kind.safety() == Safety.RESISTANCE) {
      return resistance(loads, kind);
    }
    Reference clause = Reference.memory("EN 1997-1:2004", "7.6.2.3");
    return loads
        .given("γ_Rd", ONE, "model factor")
        .given("γ_s", ONE, "divisor of the shaft resistance")
        .given("γ_b", ONE, "divisor of the base resistance")
        .line(
            "F_{c,d} = γ_G·(G_k + W_x) + γ_Q·Q_k + F_v·s_2",
            KN,
            "design axial load on one pile",
            GEOMETRY)
        .line("R_{c,d} = (R_s/γ_s + R_b/γ_b)/γ_Rd", KN, "design compressive resistance", clause)
        .require("F_{c,d} ≤ R_{c,d}", "the ground carries the pile", clause);
  }

  private static CalcSheet resistance(CalcSheet loads, Kind kind) {
    Reference clause = Reference.memory("AASHTO LRFD Bridge Design Specifications", "10.8.3.5");
    List<String> parts = new ArrayList<>();
    CalcSheet sheet = loads;
    if (kind.clay()) {
      sheet = sheet.given("φ_{s,c}", ONE, "resistance factor of the shaft in clay");
      parts.add("φ_{s,c}·R_{s,c}");
    }
    if (kind.sand()) {
      sheet = sheet.given("φ_{s,s}", ONE, "resistance factor of the shaft in sand");
      parts.add("φ_{s,s}·R_{s,s}");
    }
    parts.add("φ_b·R_b");
    return sheet
        .given("φ_b", ONE, "resistance factor of the base")
        .line(
            "P_u = γ_G·(G_k + W_x) + γ_Q·Q_k + F_v·s_2",
            KN,
            "factored axial load on one pile",
            GEOMETRY)
        .line("P_r = " + String.join(" + ", parts), KN, "factored resistance", clause)
        .require("P_u ≤ P_r", "the ground carries the pile", clause);
  }
}
