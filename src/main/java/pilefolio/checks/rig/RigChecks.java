package pilefolio.checks.rig;

import java.util.List;
import pilefolio.checks.Check;

/** The checks of the rig and handling, in the order of the calculation package. */
public final class RigChecks {
  /** Every check of the family. */
  public static final List<Check> ALL =
      List.of(
          new AugerTorque(),
          new AugerPull(),
          new CasingTorque(),
          new CasingPull(),
          new Crowd(),
          new Stroke(),
          new Reach(),
          new Batter(),
          new Winch(),
          new BeamUpending(),
          new BeamSetting(),
          new BeamHanging());

  private RigChecks() {}
}
