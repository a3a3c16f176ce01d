package pilefolio.checks.ground;

import pilefolio.analysis.earth.Mobilisation;
import pilefolio.trace.CalcSheet;

/** Active pressure behind the wall, and in front of it below the pivot of a cantilever. */
public final class ActivePressure extends PressureCheck {
  static final CalcSheet BEHIND = PressureSheet.active("Active pressure behind the wall");
  static final CalcSheet FRONT =
      PressureSheet.active("Active pressure in front of the wall, below the pivot");

  /** The check. */
  public ActivePressure() {
    super(Mobilisation.ACTIVE, BEHIND, FRONT);
  }

  @Override
  public String id() {
    return "pressure-active";
  }

  @Override
  public String title() {
    return "Active pressure on the wall";
  }
}
