package pilefolio.analysis.earth;

import java.util.List;
import java.util.Optional;
import pilefolio.analysis.load.PressurePolyline;

/**
 * What stands beside level ground, uniform load and one water level on each side.
 *
 * @param slopeBehindRad slope of the ground behind, rad, positive when it rises away from the wall
 * @param permanent horizontal pressure behind from permanent local loads, kPa, without factor
 * @param variable horizontal pressure behind from variable local loads, kPa, without factor
 * @param water pore pressures that differ from those of the two water levels
 * @param earthquake the earthquake that acts
 * @param frontLayers the layers in front where they differ from those behind, such as ground that
 *     has softened below the excavation
 */
public record Surroundings(
    double slopeBehindRad,
    PressurePolyline permanent,
    PressurePolyline variable,
    Optional<WaterField> water,
    Optional<Earthquake> earthquake,
    Optional<SoilProfile> frontLayers) {

  /** Level ground, no local loads, water from its levels, no earthquake. */
  public static final Surroundings NONE =
      new Surroundings(
          0,
          PressurePolyline.NONE,
          PressurePolyline.NONE,
          Optional.empty(),
          Optional.empty(),
          Optional.empty());

  /** Levels at which the pressures of local loads break. */
  List<Double> loadBreaks() {
    return java.util.stream.Stream.concat(permanent.points().stream(), variable.points().stream())
        .map(PressurePolyline.Point::level)
        .toList();
  }

  /** True if a table of pressures needs columns of its own for loads, water or earthquake. */
  public boolean needsOwnColumns() {
    return !permanent.points().isEmpty()
        || !variable.points().isEmpty()
        || water.isPresent()
        || earthquake.isPresent();
  }

  /** The same with pressures from local loads. */
  public Surroundings withLoads(PressurePolyline ofPermanent, PressurePolyline ofVariable) {
    return new Surroundings(
        slopeBehindRad, ofPermanent, ofVariable, water, earthquake, frontLayers);
  }

  /** The same with other pore pressures. */
  public Surroundings withWater(WaterField other) {
    return new Surroundings(
        slopeBehindRad, permanent, variable, Optional.of(other), earthquake, frontLayers);
  }

  /** The same with an earthquake. */
  public Surroundings withEarthquake(Earthquake other) {
    return new Surroundings(
        slopeBehindRad, permanent, variable, water, Optional.of(other), frontLayers);
  }

  /** The same with a slope of the ground behind, rad. */
  public Surroundings withSlope(double slopeRad) {
    return new Surroundings(slopeRad, permanent, variable, water, earthquake, frontLayers);
  }

  /** The same with other layers in front. */
  public Surroundings withFrontLayers(SoilProfile layers) {
    return new Surroundings(
        slopeBehindRad, permanent, variable, water, earthquake, Optional.of(layers));
  }
}
