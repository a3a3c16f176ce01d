package pilefolio.analysis.earth;

import java.util.Optional;
import java.util.Set;

/**
 * How earth-pressure coefficients are found for a vertical wall. The ground behind may slope; where
 * it rises, passive coefficients stay those of level ground, which errs on the safe side.
 */
public enum CoefficientMethod {
  /** Smooth wall, plane slip surfaces; wall friction and adhesion are left out. */
  RANKINE {
    @Override
    Coefficients drained(DrainedStrength s, double slopeRad) {
      double falling = Math.min(0, slopeRad);
      double kA = Rankine.activeParallelToSlope(s.phiRad(), slopeRad) * Math.cos(slopeRad);
      double kP = Rankine.passiveParallelToSlope(s.phiRad(), falling) * Math.cos(falling);
      if (slopeRad == 0) {
        kA = Rankine.active(s.phiRad());
        kP = Rankine.passive(s.phiRad());
      }
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
    Coefficients drained(DrainedStrength s, double slopeRad) {
      double kA =
          Coulomb.active(s.phiRad(), s.deltaActiveRad(), slopeRad) * Math.cos(s.deltaActiveRad());
      double kP =
          Coulomb.passive(s.phiRad(), s.deltaPassiveRad(), Math.min(0, slopeRad))
              * Math.cos(s.deltaPassiveRad());
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
    Coefficients drained(DrainedStrength s, double slopeRad) {
      AnnexC2.Result active = AnnexC2.active(s.phiRad(), s.deltaActiveRad(), slopeRad, 0);
      AnnexC2.Result passive =
          AnnexC2.passive(s.phiRad(), s.deltaPassiveRad(), Math.min(0, slopeRad), 0);
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
  },

  /**
   * Active pressure on plane surfaces, passive pressure on curved ones by the table after Caquot
   * and Kérisel, which holds for level ground. Adhesion as with plane surfaces.
   */
  CAQUOT_KERISEL {
    @Override
    Coefficients drained(DrainedStrength s, double slopeRad) {
      if (slopeRad < 0) {
        throw new OutsideRange(
            "the table of passive coefficients on curved surfaces holds for level ground; behind"
                + " the wall it falls");
      }
      double kA =
          Coulomb.active(s.phiRad(), s.deltaActiveRad(), slopeRad) * Math.cos(s.deltaActiveRad());
      double kP =
          CaquotKerisel.passive(s.phiRad(), s.deltaPassiveRad()) * Math.cos(s.deltaPassiveRad());
      return Coefficients.plain(this, kA, 2 * Math.sqrt(kA), kP, 2 * Math.sqrt(kP));
    }

    @Override
    Coefficients undrained(UndrainedStrength s) {
      double k = 2 * Math.sqrt(1 + s.adhesionRatio());
      return Coefficients.plain(this, 1, k, 1, k);
    }
  };

  abstract Coefficients drained(DrainedStrength s, double slopeRad);

  abstract Coefficients undrained(UndrainedStrength s);

  /**
   * Coefficients of a layer under level ground.
   *
   * @throws OutsideRange if the strength lies outside the range of this method
   */
  public Coefficients of(Strength strength) {
    return of(strength, 0);
  }

  /**
   * Coefficients of a layer under ground that slopes.
   *
   * @param slopeRad slope, rad, positive when it rises away from the wall
   * @throws OutsideRange if strength or slope lie outside the range of this method
   */
  public Coefficients of(Strength strength, double slopeRad) {
    if (strength instanceof DrainedStrength d) {
      return drained(d, slopeRad);
    }
    if (slopeRad > 0) {
      throw new OutsideRange(
          "no coefficient is given for undrained ground under a rising slope; enter the ground"
              + " above the top of the wall as a surcharge");
    }
    return undrained((UndrainedStrength) strength);
  }
}
