package pilefolio.standards;

import java.util.Objects;

/**
 * A rolled I or H section with its tabulated properties, in coherent SI.
 *
 * <p>The strong axis is parallel to the flanges, the weak axis lies in the web. Properties are the
 * tabulated ones; they are never recomputed from the dimensions, because rounding and the assumed
 * fillet would change them.
 *
 * @param name designation as printed, such as {@code W18×50} or {@code HE 300 B}
 * @param family table the section belongs to
 * @param standard standard the table follows
 * @param mass mass per length, kg/m
 * @param depth overall depth d or h, m
 * @param width flange width b, m
 * @param web web thickness, m
 * @param flange flange thickness, m
 * @param rootRadius root fillet r, m; for American sections design k less the flange thickness
 * @param area cross-section, m²
 * @param inertia second moment of area about the strong axis, m⁴
 * @param elasticModulus elastic section modulus about the strong axis, m³
 * @param plasticModulus plastic section modulus about the strong axis, m³
 * @param weakInertia second moment of area about the weak axis, m⁴
 * @param weakElasticModulus elastic section modulus about the weak axis, m³
 * @param weakPlasticModulus plastic section modulus about the weak axis, m³
 * @param torsionConstant St Venant torsion constant, m⁴
 * @param warpingConstant warping constant, m⁶
 * @param effectiveRadius effective radius of gyration r_ts for lateral-torsional buckling, m
 * @param flangeCentres distance between flange centroids h_o, m
 */
public record Section(
    String name,
    SectionFamily family,
    String standard,
    double mass,
    double depth,
    double width,
    double web,
    double flange,
    double rootRadius,
    double area,
    double inertia,
    double elasticModulus,
    double plasticModulus,
    double weakInertia,
    double weakElasticModulus,
    double weakPlasticModulus,
    double torsionConstant,
    double warpingConstant,
    double effectiveRadius,
    double flangeCentres) {

  /** Checks that every property is positive and that the plates fit together. */
  public Section {
    Objects.requireNonNull(name);
    Objects.requireNonNull(family);
    Objects.requireNonNull(standard);
    double[] all = {
      mass,
      depth,
      width,
      web,
      flange,
      rootRadius,
      area,
      inertia,
      elasticModulus,
      plasticModulus,
      weakInertia,
      weakElasticModulus,
      weakPlasticModulus,
      torsionConstant,
      warpingConstant,
      effectiveRadius,
      flangeCentres
    };
    for (double value : all) {
      if (!(value > 0) || !Double.isFinite(value)) {
        throw new IllegalArgumentException(name + ": every property must be positive");
      }
    }
    if (2 * (flange + rootRadius) >= depth || web + 2 * rootRadius > width) {
      throw new IllegalArgumentException(name + ": plates and fillets do not fit the outline");
    }
  }

  /** Radius of gyration about the strong axis, m. */
  public double radius() {
    return Math.sqrt(inertia / area);
  }

  /** Radius of gyration about the weak axis, m. */
  public double weakRadius() {
    return Math.sqrt(weakInertia / area);
  }

  /** Distance from the outer face to the toe of the fillet, k_des, m. */
  public double fillet() {
    return flange + rootRadius;
  }

  /** Clear depth of the web between flanges, h_w, m. */
  public double webBetweenFlanges() {
    return depth - 2 * flange;
  }

  /** Straight depth of the web between fillets, m. */
  public double webBetweenFillets() {
    return depth - 2 * fillet();
  }

  /** Flange outstand beyond the root fillet, m. */
  public double outstand() {
    return (width - web) / 2 - rootRadius;
  }

  /** Diagonal of the outline, m: the least round bore that takes the section without cover. */
  public double diagonal() {
    return Math.hypot(depth, width);
  }

  /** Length of the rectangle around the section, m. */
  public double boxPerimeter() {
    return 2 * (depth + width);
  }

  /** Length of the surface of the section, m, fillets included. */
  public double perimeter() {
    return 4 * width + 2 * depth - 2 * web - (8 - 2 * Math.PI) * rootRadius;
  }
}
