package pilefolio.checks.movement;

import static pilefolio.units.Units.KN_M3;
import static pilefolio.units.Units.M;
import static pilefolio.units.Units.MM;
import static pilefolio.units.Units.ONE;
import static pilefolio.units.Units.PERCENT;

import java.util.Map;
import pilefolio.analysis.movement.TroughShape;
import pilefolio.trace.CalcSheet;
import pilefolio.trace.CalcTable;
import pilefolio.trace.Reference;
import pilefolio.units.Unit;
import pilefolio.units.Units;

/** Sheets about the movement of wall and ground. */
final class MovementSheets {
  /** Bending stiffness for one metre of wall. */
  static final Unit STIFFNESS = Units.of("kN·m²/m");

  private static final Unit VOLUME = Units.of("m³/m");
  private static final Reference RECORDS = Reference.memory("Clough and O’Rourke (1990)", "");
  private static final Reference RATIO = Reference.PRACTICE;

  /** Table of the stages. */
  static final String STAGES = "stages";

  /** Table of places behind the wall. */
  static final String PLACES = "places";

  static final CalcSheet WALL =
      CalcSheet.named("Displacement of the wall")
          .given("δ_lim", MM, "greatest horizontal displacement allowed")
          .given("z_0", M, "ground level behind")
          .table(
              CalcTable.of(STAGES, "Greatest displacement toward the excavation", "stage")
                  .given("H", M, "retained height")
                  .given("z_δ", M, "level of the greatest displacement")
                  .line("h_δ = z_0 − z_δ", M, "depth of it below the ground", Reference.DERIVED)
                  .given("δ_h", MM, "greatest displacement")
                  .line("n_δ = δ_h/H", PERCENT, "over the retained height", Reference.DERIVED)
                  .largest("δ_max", "δ_h", "greatest displacement of all stages")
                  .largest("H_max", "H", "greatest retained height"))
          .line("n_max = δ_max/H_max", PERCENT, "over the greatest height", Reference.DERIVED)
          .line(
              "δ_m = 0.002·H_max",
              MM,
              "average of records in stiff clays, residual soils and sands",
              RECORDS)
          .line("δ_o = 0.003·H_max", MM, "outer line of these records", RECORDS)
          .note(
              "The records are a second opinion: they hold average workmanship and do not know this"
                  + " wall. A calculated movement far below them asks for a second look at the"
                  + " stiffness of the ground.")
          .require("δ_max ≤ δ_lim", "the wall moves no more than is allowed", Reference.DERIVED);

  static final CalcSheet STIFFNESS_OF_SYSTEM =
      CalcSheet.named("Stiffness of wall and supports")
          .given("EI", STIFFNESS, "bending stiffness of the wall")
          .given("z_1", M, "level of the highest support")
          .given("z_e", M, "lowest excavation level")
          .given("n", ONE, "levels of supports")
          .given("γ_t", KN_M3, "mean unit weight of the ground over the retained height")
          .line(
              "h = (z_1 − z_e)/n",
              M,
              "average vertical distance, down to the excavation",
              Reference.DERIVED)
          .line(
              "S_w = EI/(9.81[kN/m³]·h^4)",
              ONE,
              "stiffness of the system, with the unit weight of water",
              Reference.memory("Clough et al. (1989)", ""))
          .line(
              "S_t = EI/(γ_t·h^4)",
              ONE,
              "stiffness of the system, with the unit weight of the ground",
              Reference.read("UFC 3-220-20 (2025)", "Eq. 2-2"))
          .note(
              "With the unit weight of the ground a system of 10 to 50 is called flexible and one"
                  + " above 100 stiff.");

  /** Settlement with distance. */
  static final Map<TroughShape, CalcSheet> GROUND =
      TroughFormula.sheets(
          f ->
              CalcSheet.named("Settlement of the ground, " + f.words())
                  .given("H", M, "retained height")
                  .given("δ_h", MM, "greatest displacement of the wall so far")
                  .given("R_v", ONE, "greatest settlement over that displacement")
                  .line("δ_v = R_v·δ_h", MM, "greatest settlement", RATIO)
                  .table(
                      CalcTable.of(PLACES, "Movement of the ground with distance", "place")
                          .given("r", ONE, "distance over retained height")
                          .line("x = r·H", M, "distance from the wall", Reference.DERIVED)
                          .choose(
                              "δ_s", MM, "settlement", f.reference(), f.settlement("δ_v", "x", "H"))
                          .choose(
                              "δ_g",
                              MM,
                              "horizontal movement",
                              Reference.PRACTICE,
                              f.horizontal("δ_h", "x", "H")))
                  .line(
                      "V_s = " + f.area() + "·δ_v·H",
                      VOLUME,
                      "volume of the trough",
                      Reference.DERIVED)
                  .found(
                      "V_w",
                      VOLUME,
                      "ground swept by the deflected wall",
                      "area between the straight and the deflected wall")
                  .line(
                      "ΔV = V_s − V_w",
                      VOLUME,
                      "difference; nil in ground that keeps its volume",
                      Reference.DERIVED)
                  .note(
                      "The shape is that of records of finished excavations; its size follows the"
                          + " calculated wall. Horizontal movement is taken to fall with distance as"
                          + " the settlement does."));

  /** Settlement of a neighbour by stage. */
  static final Map<TroughShape, CalcSheet> NEIGHBOUR =
      TroughFormula.sheets(
          f ->
              CalcSheet.named("Settlement of a neighbour, " + f.words())
                  .given("d_n", M, "distance of its near side from the wall")
                  .given("B", M, "its extent away from the wall, nil if not given")
                  .line("d_f = d_n + B", M, "distance of its far side", Reference.DERIVED)
                  .given("R_v", ONE, "greatest settlement over displacement of the wall")
                  .given("δ_lim", MM, "settlement its owner allows")
                  .table(
                      CalcTable.of(STAGES, "Settlement by stage", "stage")
                          .given("H", M, "retained height")
                          .given("δ_h", MM, "greatest displacement of the wall so far")
                          .line("δ_v = R_v·δ_h", MM, "greatest settlement", RATIO)
                          .choose(
                              "x",
                              M,
                              "where it settles most",
                              Reference.DERIVED,
                              f.deepest("d_n", "d_f", "H"))
                          .choose(
                              "δ_s",
                              MM,
                              "settlement there",
                              f.reference(),
                              f.settlement("δ_v", "x", "H"))
                          .largest("δ_max", "δ_s", "greatest settlement of all stages"))
                  .require("δ_max ≤ δ_lim", "it settles no more than allowed", Reference.DERIVED));

  /** Amber and red against what is expected and what is allowed. */
  static final CalcSheet TRIGGERS =
      CalcSheet.named("Trigger levels")
          .given("δ_E", MM, "movement expected by calculation")
          .given("δ_lim", MM, "movement allowed")
          .given("δ_A", MM, "amber trigger")
          .given("δ_R", MM, "red trigger")
          .require(
              "δ_E ≤ δ_A",
              "amber is not reached while the works go as calculated",
              Reference.PRACTICE)
          .condition("δ_A ≤ δ_R", "amber comes before red", Reference.PRACTICE)
          .condition(
              "δ_R ≤ δ_lim", "red comes before what is allowed is used up", Reference.PRACTICE)
          .note(
              "Readings contain the movements of boring and of installing the wall, of temperature"
                  + " and of the instrument itself; the calculated value does not.");

  private MovementSheets() {}
}
