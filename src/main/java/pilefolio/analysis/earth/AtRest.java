package pilefolio.analysis.earth;

/** Earth pressure at rest. Angles in radians; OCR is the overconsolidation ratio, 1 or more. */
public final class AtRest {
  private AtRest() {}

  /** (1 − sin φ)·OCR^sin φ: Mayne and Kulhawy 1982, UFC 3-220-20 Eq. 4-2. */
  public static double power(double phiRad, double ocr) {
    requireOcr(ocr);
    return (1 - Math.sin(phiRad)) * Math.pow(ocr, Math.sin(phiRad));
  }

  /** (1 − sin φ)·√OCR·(1 + sin β): EN 1997-1 for ground that slopes at β. */
  public static double squareRoot(double phiRad, double ocr, double betaRad) {
    requireOcr(ocr);
    return (1 - Math.sin(phiRad)) * Math.sqrt(ocr) * (1 + Math.sin(betaRad));
  }

  private static void requireOcr(double ocr) {
    if (!(ocr >= 1)) {
      throw new OutsideRange("overconsolidation ratio must be 1 or more, is " + ocr);
    }
  }
}
