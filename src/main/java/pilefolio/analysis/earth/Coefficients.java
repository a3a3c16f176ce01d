package pilefolio.analysis.earth;

import java.util.Optional;
import java.util.Set;

/**
 * Earth-pressure coefficients of one layer on a vertical wall; horizontal components throughout.
 *
 * <p>Active pressure is K_a·σ_v − K_ac·c, passive pressure K_p·σ_v + K_pc·c, where σ_v is the
 * effective vertical stress and c the effective cohesion of a drained layer, or the total vertical
 * stress and the undrained strength of an undrained one (then K_a = K_p = 1).
 *
 * @param method the method that gave them
 * @param kA active coefficient K_a
 * @param kAc coefficient on cohesion, active, K_ac
 * @param kP passive coefficient K_p
 * @param kPc coefficient on cohesion, passive, K_pc
 * @param activeFan intermediate values on the active side, Annex C.2 only
 * @param passiveFan intermediate values on the passive side, Annex C.2 only
 * @param cautions limits of the method that the input exceeds
 */
public record Coefficients(
    CoefficientMethod method,
    double kA,
    double kAc,
    double kP,
    double kPc,
    Optional<SlipFan> activeFan,
    Optional<SlipFan> passiveFan,
    Set<Caution> cautions) {

  /** A stated limit of a method that the input exceeds. */
  public enum Caution {
    /** Passive pressure on plane slip surfaces is unsafe for δ/φ' above 0.4. */
    PLANE_PASSIVE_UNSAFE
  }

  public Coefficients {
    cautions = Set.copyOf(cautions);
  }

  static Coefficients plain(
      CoefficientMethod method, double kA, double kAc, double kP, double kPc) {
    return new Coefficients(method, kA, kAc, kP, kPc, Optional.empty(), Optional.empty(), Set.of());
  }

  /** The same with another passive coefficient on stress. */
  Coefficients withPassive(double other) {
    return new Coefficients(method, kA, kAc, other, kPc, activeFan, passiveFan, cautions);
  }

  /** The active coefficients of these with the passive ones of others. */
  Coefficients withPassiveOf(Coefficients other) {
    return new Coefficients(
        method, kA, kAc, other.kP, other.kPc, activeFan, other.passiveFan, other.cautions);
  }
}
