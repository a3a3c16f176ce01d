package pilefolio.analysis.earth;

import java.util.Optional;
import java.util.Set;

/** How earth-pressure coefficients are found for level ground and a vertical wall. */
public enum CoefficientMethod {
  /** Smooth wall, plane slip surfaces; wall friction and adhesion are left out. */
  RANKINE {
    @Override
    Coefficients drained(DrainedStrength s) {
      double kA = Rankine.active(s.phiRad());
      double kP = Rankine.passive(s.phiRad());
      return Coefficients.plain(this, kA, 2 * Math.sqrt(kA), kP, 2 * Math.sqrt(kP));
    }

    @Override
    Coefficients undrained(UndrainedStrength s) {
      return Coefficients.plain(this, 1, 2, 1, 2);
    }
  },

  /**
   * Wall friction with plane slip surfaces. Cohesion enters as 2√K; adhesion is used in undrained
   * layers only, as 2√(1 + a/s_u).
   */
  COULOMB {
    @Override
    Coefficients drained(DrainedStrength s) {
      double kA = Coulomb.active(s.phiRad(), s.deltaActiveRad(), 0) * Math.cos(s.deltaActiveRad());
      double kP =
          Coulomb.passive(s.phiRad(), s.deltaPassiveRad(), 0) * Math.cos(s.deltaPassiveRad());
      Set<Coefficients.Caution> cautions =
          Coulomb.passiveIsUnsafe(s.phiRad(), s.deltaPassiveRad())
              ? Set.of(Coefficients.Caution.PLANE_PASSIVE_UNSAFE)
              : Set.of();
      return new Coefficients(
          this,
          kA,
          2 * Math.sqrt(kA),
          kP,
          2 * Math.sqrt(kP),
          Optional.empty(),
          Optional.empty(),
          cautions);
    }

    @Override
    Coefficients undrained(UndrainedStrength s) {
      double k = 2 * Math.sqrt(1 + s.adhesionRatio());
      return Coefficients.plain(this, 1, k, 1, k);
    }
  },

  /** Wall friction and adhesion with a curved slip surface: EN 1997-1:2004 Annex C.2. */
  EN1997_ANNEX_C2 {
    @Override
    Coefficients drained(DrainedStrength s) {
      AnnexC2.Result active = AnnexC2.active(s.phiRad(), s.deltaActiveRad(), 0, 0);
      AnnexC2.Result passive = AnnexC2.passive(s.phiRad(), s.deltaPassiveRad(), 0, 0);
      return new Coefficients(
          this,
          active.kGamma(),
          active.kC(),
          passive.kGamma(),
          passive.kC(),
          Optional.of(active.fan()),
          Optional.of(passive.fan()),
          Set.of());
    }

    @Override
    Coefficients undrained(UndrainedStrength s) {
      AnnexC2.Result r = AnnexC2.undrained(s.adhesionRatio());
      return new Coefficients(
          this, 1, r.kC(), 1, r.kC(), Optional.of(r.fan()), Optional.of(r.fan()), Set.of());
    }
  };

  abstract Coefficients drained(DrainedStrength s);

  abstract Coefficients undrained(UndrainedStrength s);

  /**
   * Coefficients of a layer.
   *
   * @throws OutsideRange if the strength lies outside the range of this method
   */
  public Coefficients of(Strength strength) {
    if (strength instanceof DrainedStrength d) {
      return drained(d);
    }
    return undrained((UndrainedStrength) strength);
  }
}
