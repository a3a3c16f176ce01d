package pilefolio.analysis.apparent;

import java.util.ArrayList;
import java.util.List;
import pilefolio.analysis.earth.DrainedStrength;
import pilefolio.analysis.earth.OutsideRange;
import pilefolio.analysis.earth.SoilLayer;
import pilefolio.analysis.earth.SoilProfile;
import pilefolio.analysis.earth.UndrainedStrength;

/**
 * Ground beside an excavation as one material, because envelopes were drawn for one. Unit weight,
 * tan φ' and s_u are averaged by thickness; drained layers below water count with the effective
 * unit weight, and c' is left out. Sand over clay becomes the equivalent clay of Peck (1943). Clay
 * over sand, and alternations, have no published envelope.
 *
 * @param kind what the ground is taken for
 * @param height depth of excavation, m
 * @param unitWeight average unit weight, kN/m³
 * @param tanPhi average tan φ' of the drained layers; zero if there are none
 * @param su average or equivalent undrained strength, kPa; zero in sand
 * @param sandHeight thickness of the drained layers, m
 * @param sandWeight average unit weight of the drained layers, kN/m³
 * @param clayStrength average s_u of the undrained layers, kPa
 * @param pieces what was averaged, from the top down
 */
public record GroundBeside(
    Kind kind,
    double height,
    double unitWeight,
    double tanPhi,
    double su,
    double sandHeight,
    double sandWeight,
    double clayStrength,
    List<Piece> pieces) {

  /** Share of the strength of clay that Peck counts on in sand over clay. */
  public static final double PROGRESSIVE_FAILURE = 0.75;

  private static final double DEPTH_FACTOR = 5.14;

  /** What the ground is taken for. */
  public enum Kind {
    /** Drained layers only. */
    SAND,
    /** Undrained layers only. */
    CLAY,
    /** Drained layers over undrained ones. */
    SAND_OVER_CLAY
  }

  /**
   * A part of a layer with one unit weight.
   *
   * @param layer name
   * @param thickness m
   * @param unitWeight kN/m³; effective in drained ground below water
   * @param tanPhi tan φ'; zero in undrained ground
   * @param su undrained strength at mid-height, kPa; zero in drained ground
   */
  public record Piece(String layer, double thickness, double unitWeight, double tanPhi, double su) {

    /** True for drained ground. */
    public boolean drained() {
      return tanPhi > 0;
    }
  }

  /** Copies the list. */
  public GroundBeside {
    pieces = List.copyOf(pieces);
  }

  /**
   * The ground between two levels.
   *
   * @param water water level behind, m
   * @param gammaWater unit weight of water, kN/m³
   * @throws OutsideRange if no published envelope is for such ground
   */
  public static GroundBeside of(
      SoilProfile profile, double top, double excavation, double water, double gammaWater) {
    List<Piece> pieces = new ArrayList<>();
    for (SoilLayer layer : profile.layers()) {
      double upper = Math.min(top, layer.topLevel());
      double lower = Math.max(excavation, layer.bottomLevel());
      double cut = Math.max(lower, Math.min(upper, water));
      add(pieces, layer, upper, cut, layer.gammaAbove());
      double below = layer.gammaBelow() - (layer.isUndrained() ? 0 : gammaWater);
      add(pieces, layer, cut, lower, below);
    }
    return of(pieces);
  }

  private static void add(
      List<Piece> pieces, SoilLayer layer, double upper, double lower, double gamma) {
    if (upper - lower < 1e-9) {
      return;
    }
    boolean clay = layer.strength() instanceof UndrainedStrength;
    pieces.add(
        new Piece(
            layer.name(),
            upper - lower,
            gamma,
            clay ? 0 : Math.tan(((DrainedStrength) layer.strength()).phiRad()),
            clay ? layer.cohesionAt((upper + lower) / 2) : 0));
  }

  /** Ground of pieces from the top down. */
  public static GroundBeside of(List<Piece> pieces) {
    double height = 0;
    double weight = 0;
    double sand = 0;
    double sandWeight = 0;
    double friction = 0;
    double strength = 0;
    boolean clayAbove = false;
    for (Piece p : pieces) {
      height += p.thickness();
      weight += p.thickness() * p.unitWeight();
      if (p.drained()) {
        if (clayAbove) {
          throw new OutsideRange(
              "no published envelope is for drained ground below undrained ground (layer "
                  + p.layer()
                  + ")");
        }
        sand += p.thickness();
        sandWeight += p.thickness() * p.unitWeight();
        friction += p.thickness() * p.tanPhi();
      } else {
        clayAbove = true;
        strength += p.thickness() * p.su();
      }
    }
    if (!(height > 0)) {
      throw new OutsideRange("the ground profile has no ground beside the excavation");
    }
    double clay = height - sand;
    double clayStrength = clayAbove ? strength / clay : 0;
    double tanPhi = sand > 0 ? friction / sand : 0;
    double gammaSand = sand > 0 ? sandWeight / sand : 0;
    Kind kind = !clayAbove ? Kind.SAND : sand > 0 ? Kind.SAND_OVER_CLAY : Kind.CLAY;
    double su =
        switch (kind) {
          case SAND -> 0;
          case CLAY -> clayStrength;
          case SAND_OVER_CLAY -> equivalentStrength(height, sand, gammaSand, tanPhi, clayStrength);
        };
    return new GroundBeside(
        kind, height, weight / height, tanPhi, su, sand, gammaSand, clayStrength, pieces);
  }

  /**
   * Strength of the clay that stands for sand over clay, after Peck (1943): [γ_s·H_s²·tan φ +
   * 2·n·s_u·(H − H_s)]/(2·H), with a lateral coefficient of 1 in the sand.
   */
  public static double equivalentStrength(
      double height, double sandHeight, double sandWeight, double tanPhi, double su) {
    return (sandWeight * sandHeight * sandHeight * tanPhi
            + 2 * PROGRESSIVE_FAILURE * su * (height - sandHeight))
        / (2 * height);
  }

  /** Rankine's active coefficient of the averaged friction. */
  public double kA() {
    double sin = tanPhi / Math.sqrt(1 + tanPhi * tanPhi);
    return (1 - sin) / (1 + sin);
  }

  /** γH/c. */
  public double stabilityNumber() {
    return ClayClass.stabilityNumber(unitWeight, height, su);
  }

  /**
   * Clay below the base that yields under the weight beside it: undrained layers from the base down
   * as long as s_u at mid-height is less than γH/5.14.
   *
   * @param thickness m; zero if there is none
   * @param su average undrained strength, kPa; zero if there is none
   */
  public record SoftBelow(double thickness, double su) {}

  /** The soft clay below an excavation. */
  public SoftBelow softBelow(SoilProfile profile, double excavation) {
    double thickness = 0;
    double strength = 0;
    for (SoilLayer layer : profile.layers()) {
      double upper = Math.min(excavation, layer.topLevel());
      double lower = layer.bottomLevel();
      if (upper - lower < 1e-9) {
        continue;
      }
      if (!layer.isUndrained() || Double.isInfinite(lower)) {
        break;
      }
      double su = layer.cohesionAt((upper + lower) / 2);
      if (su * DEPTH_FACTOR >= unitWeight * height) {
        break;
      }
      thickness += upper - lower;
      strength += su * (upper - lower);
    }
    return new SoftBelow(thickness, thickness > 0 ? strength / thickness : 0);
  }
}
