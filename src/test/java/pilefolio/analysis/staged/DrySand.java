package pilefolio.analysis.staged;

import java.util.List;

/** Dry uniform ground without cohesion under a level surface, with a uniform load on it. */
record DrySand(
    double surface, double gamma, double k0, double ka, double kp, double modulus, double load)
    implements SoilSide {

  @Override
  public SpringLaw at(double level, double seenFrom) {
    if (seenFrom >= surface) {
      return SpringLaw.NOTHING;
    }
    double sigma = load + gamma * (surface - level);
    return new SpringLaw(k0 * sigma, ka * sigma, kp * sigma, modulus, 0);
  }

  @Override
  public List<Double> breaks() {
    return List.of(surface);
  }

  DrySand dugTo(double level) {
    return new DrySand(level, gamma, k0, ka, kp, modulus, 0);
  }
}
