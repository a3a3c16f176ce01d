package pilefolio.checks.ground;

import pilefolio.analysis.earth.Mobilisation;
import pilefolio.trace.CalcSheet;

/** Passive pressure in front of the wall, and behind it below the pivot of a cantilever. */
public final class PassivePressure extends PressureCheck {
  static final CalcSheet FRONT = PressureSheet.passive("Passive pressure in front of the wall");
  static final CalcSheet BEHIND =
      PressureSheet.passive("Passive pressure behind the wall, below the pivot");

  /** The check. */
  public PassivePressure() {
    super(Mobilisation.PASSIVE, BEHIND, FRONT);
  }

  @Override
  public String id() {
    return "pressure-passive";
  }

  @Override
  public String title() {
    return "Passive pressure on the wall";
  }
}
