package pilefolio.checks.support;

import java.util.List;
import pilefolio.checks.Check;

/** The checks of what holds the wall, in the order of the calculation package. */
public final class SupportChecks {
  /** Every check. */
  public static final List<Check> ALL =
      List.of(
          StrutTemperature.CHECK,
          new StrutBucklingAisc(),
          new StrutBucklingEn(),
          new WalerBending(),
          new AnchorFreeLengthCheck(),
          new AnchorBondLength(),
          new AnchorTendon(),
          new AnchorTests(),
          new RakerFootingCheck(),
          new DeadmanResistance(),
          new DeadmanDistance());

  private SupportChecks() {}
}
