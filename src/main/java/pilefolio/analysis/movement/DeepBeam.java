package pilefolio.analysis.movement;

/**
 * A building as a deep beam of unit width that takes the deflection of the ground. After Burland
 * and Wroth (1974), with horizontal strain after Boscardin and Cording (1989) for ν = 0.3.
 *
 * @param length length of the part that sags or hogs, m, greater than zero
 * @param height height from foundation to eaves, m, greater than zero
 * @param stiffnessRatio E/G; 2.6 for an elastic wall with ν = 0.3, more for a frame
 * @param bending which way it bends
 */
public record DeepBeam(double length, double height, double stiffnessRatio, Bending bending) {
  /** E/G of an elastic wall with ν = 0.3: 2(1 + ν). */
  public static final double MASONRY = 2.6;

  /** Which way a beam bends. */
  public enum Bending {
    /** Like a bowl: neutral axis in the middle of the height. */
    SAGGING,
    /** Like a hill: neutral axis at the foundation, where the ground holds the building. */
    HOGGING
  }

  /**
   * Checks the values.
   *
   * @throws IllegalArgumentException if a value is not greater than zero
   */
  public DeepBeam {
    if (!(length > 0) || !(height > 0) || !(stiffnessRatio > 0)) {
      throw new IllegalArgumentException("a building needs length, height and stiffness");
    }
  }

  /** Second moment of area about the neutral axis, m⁴ for one metre of width. */
  public double secondMoment() {
    return Math.pow(height, 3) / (bending == Bending.SAGGING ? 12 : 3);
  }

  /** Distance of the fibre in greatest tension from the neutral axis, m. */
  public double fibre() {
    return bending == Bending.SAGGING ? height / 2 : height;
  }

  /**
   * Greatest bending strain.
   *
   * @param deflectionRatio deflection over length, zero or more
   * @return the strain
   */
  public double bendingStrain(double deflectionRatio) {
    return deflectionRatio
        / (length / (12 * fibre())
            + 3 * secondMoment() * stiffnessRatio / (2 * fibre() * length * height));
  }

  /**
   * Greatest diagonal strain.
   *
   * @param deflectionRatio deflection over length, zero or more
   * @return the strain
   */
  public double diagonalStrain(double deflectionRatio) {
    return deflectionRatio
        / (1 + height * length * length / (18 * secondMoment() * stiffnessRatio));
  }

  /** Greatest bending strain with a horizontal strain. */
  public double bendingStrain(double deflectionRatio, double horizontal) {
    return bendingStrain(deflectionRatio) + horizontal;
  }

  /** Greatest diagonal strain with a horizontal strain, ν = 0.3. */
  public double diagonalStrain(double deflectionRatio, double horizontal) {
    return 0.35 * horizontal + Math.hypot(0.65 * horizontal, diagonalStrain(deflectionRatio));
  }

  /** Greatest tensile strain, of bending and diagonal, with a horizontal strain. */
  public double greatestStrain(double deflectionRatio, double horizontal) {
    return Math.max(
        bendingStrain(deflectionRatio, horizontal), diagonalStrain(deflectionRatio, horizontal));
  }
}
