package pilefolio.checks.support;

import static pilefolio.units.Units.CM2;
import static pilefolio.units.Units.GPA;
import static pilefolio.units.Units.KN;
import static pilefolio.units.Units.M;
import static pilefolio.units.Units.ONE;

import pilefolio.trace.CalcSheet;
import pilefolio.trace.Reference;
import pilefolio.units.Units;

/** Sheets of the force that a warming strut finds between walls that hold it. */
final class StrutTemperatureSheets {
  private static final Reference EXPANSION = Reference.memory("EN 1993-1-1:2005", "3.2.6");

  /** The user states the degree of restraint. */
  static final CalcSheet SHARE =
      force(
          common(CalcSheet.named("Force in a strut from a rise of temperature"))
              .given("β", ONE, "degree of restraint"));

  /** The restraint follows from the stiffness of the walls and the ground behind them. */
  static final CalcSheet STIFFNESS =
      force(
          common(CalcSheet.named("Force in a strut from a rise of temperature, walls that yield"))
              .given("L", M, "length between pins")
              .given("s", M, "spacing along the wall")
              .given(
                  "k_w",
                  Units.of("kPa"),
                  "stiffness of wall and ground at the strut, a metre of wall")
              .given("n_w", ONE, "walls that yield: two, or one if the other end stands firm")
              .line("k_s = E·A/L", Units.of("kN/m"), "stiffness of the strut", Reference.DERIVED)
              .line(
                  "β = 1/(1 + n_w·k_s/(k_w·s))",
                  ONE,
                  "degree of restraint: strut and walls in line",
                  Reference.DERIVED));

  private StrutTemperatureSheets() {}

  private static CalcSheet common(CalcSheet sheet) {
    return sheet
        .given("A", CM2, "cross-section of one strut")
        .given("E", GPA, "modulus of elasticity")
        .given("ΔT", Units.of("K"), "rise above the temperature at installation");
  }

  private static CalcSheet force(CalcSheet sheet) {
    return sheet
        .line("N_full = E·A·0.000012[1/K]·ΔT", KN, "force if nothing yields", EXPANSION)
        .line("N_T = β·N_full", KN, "force from the rise of temperature", Reference.DERIVED);
  }
}
