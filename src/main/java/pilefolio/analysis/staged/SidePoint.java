package pilefolio.analysis.staged;

/**
 * Ground on one side at one end of a slice.
 *
 * @param law the law there
 * @param movement movement into this ground since the beginning, m
 * @param plastic plastic movement into this ground that is remembered, m
 * @param earth earth pressure, kPa
 * @param state state of the ground
 */
public record SidePoint(
    SpringLaw law, double movement, double plastic, double earth, SoilState state) {

  /** Earth and water pressure on the wall, kPa. */
  public double pressure() {
    return earth + law.water();
  }
}
