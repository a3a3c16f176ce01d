package pilefolio.checks.stability;

import static pilefolio.units.Units.KNM_M;
import static pilefolio.units.Units.KN_M;
import static pilefolio.units.Units.KPA;
import static pilefolio.units.Units.M;
import static pilefolio.units.Units.MM;
import static pilefolio.units.Units.ONE;

import pilefolio.trace.CalcSheet;
import pilefolio.trace.CalcTable;
import pilefolio.trace.Reference;
import pilefolio.units.Unit;
import pilefolio.units.Units;

/** Sheets of the staged analysis of a wall. */
final class StagedSheets {
  private static final Unit KN_M3 = Units.of("kN/m³");

  /** A stage in equilibrium without supports. */
  static final CalcSheet FREE = equilibrium(false);

  /** A stage in equilibrium with supports. */
  static final CalcSheet SUPPORTED = equilibrium(true);

  /** A wall that turns without finding equilibrium. */
  static final CalcSheet TURNS =
      CalcSheet.named("Collapse of the wall in a stage by turning")
          .found("M_d", KNM_M, "moment that drives the turn", "limit pressures on both sides")
          .found("M_r", KNM_M, "greatest moment that resists it", "limit pressures on both sides")
          .line("r = M_r/M_d", ONE, "resistance over drive", Reference.DERIVED)
          .require("M_d ≤ M_r", "the stage has an equilibrium", Reference.DERIVED);

  /** A wall that slides without finding equilibrium. */
  static final CalcSheet SLIDES =
      CalcSheet.named("Collapse of the wall in a stage by sliding")
          .found("H_d", KN_M, "force that drives the slide", "limit pressures on both sides")
          .found("H_r", KN_M, "greatest force that resists it", "limit pressures on both sides")
          .line("r = H_r/H_d", ONE, "resistance over drive", Reference.DERIVED)
          .require("H_d ≤ H_r", "the stage has an equilibrium", Reference.DERIVED);

  /** A wall that moves too far before it finds equilibrium. */
  static final CalcSheet TOO_FAR =
      CalcSheet.named("Equilibrium only after too much movement")
          .given("L", M, "length of the wall")
          .given("f_l", ONE, "share of the length beyond which small displacements end")
          .found("y", MM, "displacement at equilibrium", "staged analysis")
          .line("y_l = f_l·L", MM, "limit of displacement", Reference.PRACTICE)
          .require("y ≤ y_l", "the stage has an equilibrium nearby", Reference.PRACTICE);

  /** Shear, moment and displacement of a stage. */
  static final CalcSheet EFFECTS =
      CalcSheet.named("Shear, moment and displacement in a stage")
          .given("γ_E", ONE, "factor that turns effects into design effects")
          .given("V_t", KN_M, "shear at the top of the wall")
          .given("M_t", KNM_M, "moment at the top of the wall")
          .given("y_t", MM, "displacement at the top of the wall")
          .note(
              "Forces and displacement toward the excavation are positive, and so is a moment with"
                  + " tension on the retained side. The last row ends at zero: the wall is in"
                  + " equilibrium.")
          .table(
              CalcTable.of("wall", "From the top of the wall to its toe", "stretch")
                  .given("z_1", M, "level of the top")
                  .given("z_2", M, "level of the bottom")
                  .given("y_2", MM, "displacement at the bottom")
                  .given("F", KN_M, "support at the top of the stretch")
                  .given("N", KN_M, "resultant of pressures, behind less in front")
                  .given("m", KNM_M, "their moment about the bottom")
                  .carried("V_0", KN_M, "shear from above", "V_2", "V_t")
                  .carried("M_1", KNM_M, "moment at the top", "M_2", "M_t")
                  .line("V_1 = V_0 + F", KN_M, "shear at the top", Reference.DERIVED)
                  .line("V_2 = V_1 + N", KN_M, "shear at the bottom", Reference.DERIVED)
                  .line(
                      "M_2 = M_1 + V_1·(z_1 − z_2) + m",
                      KNM_M,
                      "moment at the bottom",
                      Reference.DERIVED)
                  .largest("M_l", "M_2", "greatest moment")
                  .smallest("M_s", "M_2", "least moment")
                  .largest("V_{l,1}", "V_1", "greatest shear at a top")
                  .smallest("V_{s,1}", "V_1", "least shear at a top")
                  .largest("V_{l,2}", "V_2", "greatest shear at a bottom")
                  .smallest("V_{s,2}", "V_2", "least shear at a bottom")
                  .largest("y_l", "y_2", "greatest displacement below the top"))
          .line("M_k = max(M_l, −M_s)", KNM_M, "greatest moment of the stage", Reference.DERIVED)
          .line(
              "V_k = max(V_{l,1}, −V_{s,1}, V_{l,2}, −V_{s,2})",
              KN_M,
              "greatest shear of the stage",
              Reference.DERIVED)
          .line("M_E = γ_E·M_k", KNM_M, "moment the wall must resist", Reference.DERIVED)
          .line("V_E = γ_E·V_k", KN_M, "shear the wall must resist", Reference.DERIVED)
          .line("y_k = max(y_t, y_l)", MM, "greatest displacement", Reference.DERIVED);

  /** Envelope over the stages. */
  static final CalcSheet ENVELOPE =
      CalcSheet.named("Envelope over the stages")
          .given("γ_E", ONE, "factor that turns effects into design effects")
          .table(
              CalcTable.of("stages", "Each stage", "stage")
                  .given("M_r", KNM_M, "greatest moment, tension on the retained side")
                  .given("M_e", KNM_M, "least moment, tension on the excavated side")
                  .given("V", KN_M, "greatest shear without its sign")
                  .given("y", MM, "greatest displacement")
                  .line(
                      "M_m = max(M_r, −M_e)", KNM_M, "greatest without its sign", Reference.DERIVED)
                  .largest("M_k", "M_m", "greatest moment")
                  .largest("V_k", "V", "greatest shear")
                  .largest("y_k", "y", "greatest displacement"))
          .line("M_E = γ_E·M_k", KNM_M, "moment the wall must resist", Reference.DERIVED)
          .line("V_E = γ_E·V_k", KN_M, "shear the wall must resist", Reference.DERIVED);

  /** Support forces by stage. */
  static final CalcSheet SUPPORTS =
      CalcSheet.named("Forces of supports by stage")
          .given("γ_E", ONE, "factor that turns effects into design effects")
          .table(
              CalcTable.of("supports", "Each support in each stage", "stage, support")
                  .given("T_k", KN_M, "horizontal force of the analysis")
                  .given("y_T", MM, "displacement of the wall there")
                  .line("T = γ_E·T_k", KN_M, "horizontal design force", Reference.DERIVED)
                  .largest("T_l", "T", "greatest force"));

  private StagedSheets() {}

  private static CalcSheet equilibrium(boolean supported) {
    CalcSheet sheet =
        CalcSheet.named(
                supported
                    ? "Equilibrium of a stage with supports"
                    : "Equilibrium of a stage without supports")
            .given("z_t", M, "level of the toe")
            .given("R_m", KN_M, "earth resistance in front that is used")
            .given("R_p", KN_M, "earth resistance in front at its passive limit")
            .note(
                "Displacement y is toward the excavation; y with index 0 is the part that plastic"
                    + " movement in earlier stages leaves. Pressure follows at each level from the"
                    + " first two tables; resultants of stretches are sums over points inside"
                    + " elements no longer than 0.1 m, with the level at which they act.")
            .table(
                side(
                    "pressure-behind",
                    "Pressure behind the wall",
                    "b",
                    "p_{0,b} − k_b·(y_b − y_{0,b})"))
            .table(
                side(
                    "pressure-front",
                    "Pressure in front of the wall",
                    "f",
                    "p_{0,f} + k_f·(y_f − y_{0,f})"))
            .table(forces("force-behind", "Forces behind the wall", "b"))
            .table(forces("force-front", "Forces in front of the wall", "f"));
    if (supported) {
      sheet =
          sheet.table(
              CalcTable.of("supports", "Supports", "support")
                  .given("T", KN_M, "horizontal force")
                  .given("z_T", M, "level")
                  .line("m_T = T·(z_T − z_t)", KNM_M, "moment about the toe", Reference.DERIVED)
                  .sum("T_s", "T", "sum of support forces")
                  .sum("M_T", "m_T", "sum of their moments"));
    }
    return sheet
        .line(
            supported ? "ΔH = E_{s,b} − E_{s,f} − T_s" : "ΔH = E_{s,b} − E_{s,f}",
            KN_M,
            "sum of horizontal forces",
            Reference.DERIVED)
        .line(
            supported ? "ΔM = M_{s,b} − M_{s,f} − M_T" : "ΔM = M_{s,b} − M_{s,f}",
            KNM_M,
            "sum of moments about the toe",
            Reference.DERIVED)
        .line("μ = R_m/R_p", ONE, "passive resistance used", Reference.DERIVED)
        .condition("abs(ΔH) ≤ 0.000001·E_{s,b}", "forces are in equilibrium", Reference.DERIVED)
        .condition("abs(ΔM) ≤ 0.000001·M_{s,b}", "moments are in equilibrium", Reference.DERIVED)
        .condition(
            "abs(E_{t,b} − E_{s,b}) ≤ 0.05·E_{s,b}",
            "pressures behind at the levels printed give the same force",
            Reference.DERIVED);
  }

  private static CalcTable side(String id, String caption, String i, String elastic) {
    return CalcTable.of(id, caption, "level")
        .given("z_" + i, M, "level")
        .given("y_" + i, MM, "displacement")
        .given("y_{0," + i + "}", MM, "displacement left by plastic movement")
        .given("k_" + i, KN_M3, "modulus of subgrade reaction")
        .given("p_{0," + i + "}", KPA, "pressure at rest")
        .given("p_{a," + i + "}", KPA, "active limit")
        .given("p_{p," + i + "}", KPA, "passive limit")
        .given("u_" + i, KPA, "water pressure")
        .line(
            "p_" + i + " = max(p_{a," + i + "}, min(p_{p," + i + "}, " + elastic + ")) + u_" + i,
            KPA,
            "pressure",
            Reference.DERIVED);
  }

  private static CalcTable forces(String id, String caption, String i) {
    return CalcTable.of(id, caption, "stretch")
        .given("z_{1," + i + "}", M, "level of the top")
        .given("z_{2," + i + "}", M, "level of the bottom")
        .given("p_{1," + i + "}", KPA, "pressure, top")
        .given("p_{2," + i + "}", KPA, "pressure, bottom")
        .given("E_" + i, KN_M, "resultant")
        .given("z_{E," + i + "}", M, "level of the resultant")
        .line(
            "e_"
                + i
                + " = (p_{1,"
                + i
                + "} + p_{2,"
                + i
                + "})/2·(z_{1,"
                + i
                + "} − z_{2,"
                + i
                + "})",
            KN_M,
            "straight-line estimate",
            Reference.DERIVED)
        .line(
            "m_" + i + " = E_" + i + "·(z_{E," + i + "} − z_t)",
            KNM_M,
            "moment about the toe",
            Reference.DERIVED)
        .sum("E_{s," + i + "}", "E_" + i, "sum of resultants")
        .sum("E_{t," + i + "}", "e_" + i, "sum of estimates")
        .sum("M_{s," + i + "}", "m_" + i, "sum of moments");
  }
}
