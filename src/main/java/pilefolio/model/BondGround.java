package pilefolio.model;

/** Ground in which an anchor is bonded, by the names of the tables of presumptive bond. */
public enum BondGround implements Choice {
  /** Sand and gravel, loose. */
  SAND_GRAVEL_LOOSE("Sand and gravel, loose"),
  /** Sand and gravel, medium dense. */
  SAND_GRAVEL_MEDIUM_DENSE("Sand and gravel, medium dense"),
  /** Sand and gravel, dense. */
  SAND_GRAVEL_DENSE("Sand and gravel, dense"),
  /** Sand, loose. */
  SAND_LOOSE("Sand, loose"),
  /** Sand, medium dense. */
  SAND_MEDIUM_DENSE("Sand, medium dense"),
  /** Sand, dense. */
  SAND_DENSE("Sand, dense"),
  /** Sand and silt, loose. */
  SAND_SILT_LOOSE("Sand and silt, loose"),
  /** Sand and silt, medium dense. */
  SAND_SILT_MEDIUM_DENSE("Sand and silt, medium dense"),
  /** Sand and silt, dense. */
  SAND_SILT_DENSE("Sand and silt, dense"),
  /** Silt-clay or fine micaceous sand, stiff. */
  SILT_CLAY_STIFF("Silt-clay or fine micaceous sand, stiff"),
  /** Silt-clay or fine micaceous sand, hard. */
  SILT_CLAY_HARD("Silt-clay or fine micaceous sand, hard"),
  /** Granite or basalt. */
  GRANITE("Granite or basalt"),
  /** Dolomitic limestone. */
  DOLOMITIC_LIMESTONE("Dolomitic limestone"),
  /** Soft limestone. */
  SOFT_LIMESTONE("Soft limestone"),
  /** Sandstone. */
  SANDSTONE("Sandstone"),
  /** Slate or hard shale. */
  SLATE("Slate or hard shale"),
  /** Soft shale. */
  SOFT_SHALE("Soft shale"),
  /** Weathered sandstone. */
  WEATHERED_SANDSTONE("Weathered sandstone"),
  /** Chalk. */
  CHALK("Chalk"),
  /** Weathered marl. */
  WEATHERED_MARL("Weathered marl"),
  /** Concrete. */
  CONCRETE("Concrete"),
  /** Soft silty clay, pressure grouted. */
  SOFT_SILTY_CLAY_PRESSURE("Soft silty clay, pressure grouted"),
  /** Silty clay, pressure grouted. */
  SILTY_CLAY_PRESSURE("Silty clay, pressure grouted"),
  /** Stiff clay of medium to high plasticity, pressure grouted. */
  STIFF_PLASTIC_CLAY_PRESSURE("Stiff clay of medium to high plasticity, pressure grouted"),
  /** Very stiff clay of medium to high plasticity, pressure grouted. */
  VERY_STIFF_PLASTIC_CLAY_PRESSURE(
      "Very stiff clay of medium to high plasticity, pressure grouted"),
  /** Stiff clay of medium plasticity, pressure grouted. */
  STIFF_CLAY_PRESSURE("Stiff clay of medium plasticity, pressure grouted"),
  /** Very stiff clay of medium plasticity, pressure grouted. */
  VERY_STIFF_CLAY_PRESSURE("Very stiff clay of medium plasticity, pressure grouted"),
  /** Very stiff sandy silt, pressure grouted. */
  VERY_STIFF_SANDY_SILT_PRESSURE("Very stiff sandy silt, pressure grouted"),
  /** Fine to medium sand, pressure grouted. */
  FINE_SAND_PRESSURE("Fine to medium sand, pressure grouted"),
  /** Medium to coarse sand with gravel, medium dense, pressure grouted. */
  COARSE_SAND_MEDIUM_PRESSURE("Medium to coarse sand with gravel, medium dense, pressure grouted"),
  /** Medium to coarse sand with gravel, dense, pressure grouted. */
  COARSE_SAND_DENSE_PRESSURE("Medium to coarse sand with gravel, dense, pressure grouted"),
  /** Silty sand, pressure grouted. */
  SILTY_SAND_PRESSURE("Silty sand, pressure grouted"),
  /** Dense till, pressure grouted. */
  DENSE_TILL_PRESSURE("Dense till, pressure grouted"),
  /** Sandy gravel, medium dense to dense, pressure grouted. */
  SANDY_GRAVEL_MEDIUM_PRESSURE("Sandy gravel, medium dense to dense, pressure grouted"),
  /** Sandy gravel, dense to very dense, pressure grouted. */
  SANDY_GRAVEL_DENSE_PRESSURE("Sandy gravel, dense to very dense, pressure grouted");

  private final String label;

  BondGround(String label) {
    this.label = label;
  }

  @Override
  public String label() {
    return label;
  }
}
