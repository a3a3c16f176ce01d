package pilefolio.analysis.earth;

/**
 * Passive coefficients on curved surfaces, level ground and a vertical wall, along the wall
 * friction: the table of NAVFAC DM-7.02 (1986), Chapter 3, after Caquot and Kérisel (1948), from
 * memory. It gives the coefficient for δ = φ at every fifth degree and reductions for smaller δ.
 * Between angles the logarithm of the coefficient, between ratios the reduction itself, is taken
 * linear.
 */
public final class CaquotKerisel {
  /** Friction angles of the rows, degrees. */
  private static final double[] PHI = {10, 15, 20, 25, 30, 35, 40, 45};

  /** Ratios δ/φ of the columns of reductions. */
  private static final double[] RATIO = {0, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 1};

  private static final double[] FULL = {1.65, 2.19, 3.01, 4.29, 6.42, 10.2, 17.5, 33.5};

  private static final double[][] REDUCTION = {
    {.864, .881, .898, .912, .929, .946, .962, .978, 1},
    {.775, .803, .830, .854, .881, .907, .934, .961, 1},
    {.678, .716, .752, .787, .824, .862, .901, .939, 1},
    {.574, .620, .666, .711, .759, .808, .860, .912, 1},
    {.467, .520, .574, .627, .686, .746, .811, .878, 1},
    {.362, .417, .475, .536, .603, .674, .752, .836, 1},
    {.262, .316, .375, .439, .512, .592, .682, .783, 1},
    {.174, .221, .276, .339, .414, .500, .600, .718, 1}
  };

  private CaquotKerisel() {}

  /**
   * The entries of the table around a pair of angles, and what is read between them.
   *
   * @param phiLow friction angle of the row below, degrees
   * @param phiHigh friction angle of the row above, degrees
   * @param ratioLow δ/φ of the column before
   * @param ratioHigh δ/φ of the column after
   * @param fullLow coefficient for δ = φ in the row below
   * @param fullHigh coefficient for δ = φ in the row above
   * @param lowBefore reduction in the row below, column before
   * @param lowAfter reduction in the row below, column after
   * @param highBefore reduction in the row above, column before
   * @param highAfter reduction in the row above, column after
   * @param kP passive coefficient along the wall friction
   */
  public record Reading(
      double phiLow,
      double phiHigh,
      double ratioLow,
      double ratioHigh,
      double fullLow,
      double fullHigh,
      double lowBefore,
      double lowAfter,
      double highBefore,
      double highAfter,
      double kP) {}

  /**
   * Passive coefficient along the wall friction.
   *
   * @param phiRad friction angle, 10° to 45°
   * @param deltaRad wall friction, 0 to φ
   * @throws OutsideRange outside the table
   */
  public static double passive(double phiRad, double deltaRad) {
    return read(phiRad, deltaRad).kP();
  }

  /**
   * Reads the table.
   *
   * @param phiRad friction angle, 10° to 45°
   * @param deltaRad wall friction, 0 to φ
   * @throws OutsideRange outside the table
   */
  public static Reading read(double phiRad, double deltaRad) {
    double phi = Math.toDegrees(phiRad);
    double ratio = deltaRad / phiRad;
    if (!(phi >= PHI[0] - 1e-9 && phi <= PHI[PHI.length - 1] + 1e-9)) {
      throw new OutsideRange(
          String.format(
              java.util.Locale.ROOT,
              "the table of passive coefficients on curved surfaces holds for friction angles of"
                  + " 10 to 45 degrees; here it is %.1f degrees",
              phi));
    }
    if (!(ratio >= -1e-9 && ratio <= 1 + 1e-9)) {
      throw new OutsideRange("wall friction must lie between 0 and the friction angle");
    }
    int i = interval(PHI, phi);
    int j = interval(RATIO, ratio);
    double t = (phi - PHI[i]) / (PHI[i + 1] - PHI[i]);
    double s = (ratio - RATIO[j]) / (RATIO[j + 1] - RATIO[j]);
    double low = FULL[i] * (REDUCTION[i][j] + s * (REDUCTION[i][j + 1] - REDUCTION[i][j]));
    double high =
        FULL[i + 1] * (REDUCTION[i + 1][j] + s * (REDUCTION[i + 1][j + 1] - REDUCTION[i + 1][j]));
    return new Reading(
        PHI[i],
        PHI[i + 1],
        RATIO[j],
        RATIO[j + 1],
        FULL[i],
        FULL[i + 1],
        REDUCTION[i][j],
        REDUCTION[i][j + 1],
        REDUCTION[i + 1][j],
        REDUCTION[i + 1][j + 1],
        low * Math.pow(high / low, t));
  }

  private static int interval(double[] places, double at) {
    int i = 0;
    while (i + 2 < places.length && at > places[i + 1] + 1e-12) {
      i++;
    }
    return i;
  }
}
