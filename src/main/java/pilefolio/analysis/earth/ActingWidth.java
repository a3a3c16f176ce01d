package pilefolio.analysis.earth;

/**
 * Shares of the length of wall on which pressure acts below the excavation, where single piles
 * stand in the ground there. Above the excavation the whole length is retained.
 *
 * @param spacing distance of the piles along the wall, m, more than zero
 * @param width width of one pile in the ground, m; more than zero, no more than the spacing
 * @param rule how wide the ground is that resists
 * @param neglected depth below the excavation in which undrained ground gives no passive pressure,
 *     m; zero or more
 */
public record ActingWidth(double spacing, double width, PassiveWidth rule, double neglected) {

  /** Depth without passive pressure in undrained ground, in widths of the pile. */
  public static final double NEGLECTED_WIDTHS = 1.5;

  /** A wall without gaps. */
  public static final ActingWidth WHOLE = new ActingWidth(1, 1, PassiveWidth.OWN_WIDTH, 0);

  /**
   * @throws OutsideRange if a value leaves its range
   */
  public ActingWidth {
    if (!(spacing > 0 && width > 0 && width <= spacing * (1 + 1e-12))) {
      throw new OutsideRange(
          "the width of a pile in the ground must lie between zero and the spacing, is "
              + width
              + " m at a spacing of "
              + spacing
              + " m");
    }
    if (!(neglected >= 0)) {
      throw new OutsideRange("the depth without passive pressure must be zero or more");
    }
  }

  /** Single piles; undrained ground gives no passive pressure over one and a half widths. */
  public static ActingWidth piles(double spacing, double width, PassiveWidth rule) {
    return new ActingWidth(spacing, width, rule, NEGLECTED_WIDTHS * width);
  }

  /** Whether the wall has no gaps below the excavation. */
  public boolean whole() {
    return width >= spacing;
  }

  /** Share on which active pressure and water act, 0 to 1. */
  public double own() {
    return Math.min(1, width / spacing);
  }

  /** Width on which passive pressure acts in a layer, m; never more than the spacing. */
  public double passiveWidth(Strength strength) {
    return Math.min(spacing, rule.factor(strength) * width);
  }

  /**
   * Share on which earth pressure acts.
   *
   * @param state active or passive
   * @param layer the layer
   * @param depth depth below the excavation, m; nothing is left out above it
   */
  public double earth(Mobilisation state, SoilLayer layer, double depth) {
    if (depth <= 0 || whole()) {
      return 1;
    }
    if (state == Mobilisation.ACTIVE) {
      return own();
    }
    return layer.isUndrained() && depth < neglected ? 0 : passiveWidth(layer.strength()) / spacing;
  }

  /** Share on which water pressure acts at a depth below the excavation, m. */
  public double water(double depth) {
    return depth <= 0 ? 1 : own();
  }
}
