package pilefolio.analysis.earth;

/**
 * Everything that decides the pressures on both sides of a wall.
 *
 * @param profile layers, the same on both sides
 * @param method how coefficients are found
 * @param behind the retained side
 * @param front the excavated side; its ground level is the design excavation level, unplanned
 *     excavation included
 * @param flow how pore pressure varies
 * @param gammaWater unit weight of water, kN/m³
 * @param ruleBehind tension and minimum pressure behind
 * @param ruleFront tension and minimum pressure in front
 * @param factors factors on pressures
 * @param surroundings slope, local loads, other pore pressures and earthquake
 */
public record WallGround(
    SoilProfile profile,
    CoefficientMethod method,
    Side behind,
    Side front,
    WaterFlow flow,
    double gammaWater,
    CohesionRule ruleBehind,
    CohesionRule ruleFront,
    PressureFactors factors,
    Surroundings surroundings) {

  /** Unit weight of water, kN/m³. */
  public static final double GAMMA_WATER = 9.81;

  /** Level ground without local loads, water from its levels, no earthquake. */
  public WallGround(
      SoilProfile profile,
      CoefficientMethod method,
      Side behind,
      Side front,
      WaterFlow flow,
      double gammaWater,
      CohesionRule ruleBehind,
      CohesionRule ruleFront,
      PressureFactors factors) {
    this(
        profile,
        method,
        behind,
        front,
        flow,
        gammaWater,
        ruleBehind,
        ruleFront,
        factors,
        Surroundings.NONE);
  }

  public WallGround {
    if (!(behind.groundLevel() > front.groundLevel())) {
      throw new OutsideRange("the ground behind must stand higher than the excavation in front");
    }
    if (profile.topLevel() < behind.groundLevel() - 1e-9) {
      throw new OutsideRange("the ground profile starts below the ground surface behind the wall");
    }
    if (profile.bottomLevel() >= front.groundLevel()) {
      throw new OutsideRange("the ground profile ends above the excavation");
    }
  }

  /** Hydrostatic water, dry cracks, no minimum pressure, no factors. */
  public static WallGround simple(
      SoilProfile profile, CoefficientMethod method, Side behind, Side front) {
    return new WallGround(
        profile,
        method,
        behind,
        front,
        WaterFlow.HYDROSTATIC,
        GAMMA_WATER,
        CohesionRule.DRY,
        CohesionRule.DRY,
        PressureFactors.NONE);
  }

  /** The same ground with other factors. */
  public WallGround withFactors(PressureFactors other) {
    return new WallGround(
        profile,
        method,
        behind,
        front,
        flow,
        gammaWater,
        ruleBehind,
        ruleFront,
        other,
        surroundings);
  }

  /** The same ground with other rules for cohesion. */
  public WallGround withRules(CohesionRule forBehind, CohesionRule forFront) {
    return new WallGround(
        profile,
        method,
        behind,
        front,
        flow,
        gammaWater,
        forBehind,
        forFront,
        factors,
        surroundings);
  }

  /** The same ground with another rule for flow. */
  public WallGround withFlow(WaterFlow other) {
    return new WallGround(
        profile,
        method,
        behind,
        front,
        other,
        gammaWater,
        ruleBehind,
        ruleFront,
        factors,
        surroundings);
  }

  /** The same ground with another unit weight of water, kN/m³. */
  public WallGround withGammaWater(double other) {
    return new WallGround(
        profile, method, behind, front, flow, other, ruleBehind, ruleFront, factors, surroundings);
  }

  /** The same ground with the excavation lowered by an unplanned depth, m. */
  public WallGround overExcavatedBy(double depth) {
    return new WallGround(
        profile,
        method,
        behind,
        front.loweredBy(depth),
        flow,
        gammaWater,
        ruleBehind,
        ruleFront,
        factors,
        surroundings);
  }

  /** The same ground with other surroundings. */
  public WallGround with(Surroundings other) {
    return new WallGround(
        profile, method, behind, front, flow, gammaWater, ruleBehind, ruleFront, factors, other);
  }

  /** The layers on one side. */
  public SoilProfile layers(boolean behindSide) {
    return behindSide ? profile : surroundings.frontLayers().orElse(profile);
  }

  /** Retained height, m. */
  public double retainedHeight() {
    return behind.groundLevel() - front.groundLevel();
  }
}
