package pilefolio.analysis.earth;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * A piece of one layer on one side over which stress, pore pressure and strength are linear. It
 * splits itself where one expression for the pressure takes over from another.
 */
record Stretch(
    Side side,
    CohesionRule rule,
    Mobilisation state,
    SoilLayer layer,
    Coefficients coefficients,
    PressureFactors factors,
    double gammaWater,
    double upper,
    double lower,
    double sigmaUpper,
    double sigmaLower,
    double uUpper,
    double uLower) {

  List<PressureSegment> segments() {
    TreeSet<Double> cuts = new TreeSet<>();
    PressureNode.Limit[] limits = PressureNode.Limit.values();
    for (PressureNode.Limit a : limits) {
      for (PressureNode.Limit b : limits) {
        if (a.compareTo(b) < 0) {
          addCrossing(cuts, a, b);
        }
      }
    }
    cuts.add(lower);
    List<PressureSegment> out = new ArrayList<>();
    double from = upper;
    for (double to : cuts.descendingSet()) {
      PressureNode.Limit limit = governing((from + to) / 2);
      out.add(new PressureSegment(node(from, limit), node(to, limit)));
      from = to;
    }
    return merged(out);
  }

  // Crossings between expressions that do not govern leave needless breaks.
  private static List<PressureSegment> merged(List<PressureSegment> pieces) {
    List<PressureSegment> out = new ArrayList<>();
    for (PressureSegment s : pieces) {
      int last = out.size() - 1;
      if (last >= 0 && out.get(last).top().limit() == s.top().limit()) {
        out.set(last, new PressureSegment(out.get(last).top(), s.bottom()));
      } else {
        out.add(s);
      }
    }
    return out;
  }

  private void addCrossing(Set<Double> cuts, PressureNode.Limit a, PressureNode.Limit b) {
    double dUpper = value(a, upper) - value(b, upper);
    double dLower = value(a, lower) - value(b, lower);
    if (dUpper * dLower < 0) {
      double cut = upper - (upper - lower) * dUpper / (dUpper - dLower);
      if (cut < upper - 1e-9 && cut > lower + 1e-9) {
        cuts.add(cut);
      }
    }
  }

  private PressureNode.Limit governing(double level) {
    double unlimited = value(PressureNode.Limit.NONE, level);
    if (state == Mobilisation.PASSIVE) {
      return unlimited < 0 ? PressureNode.Limit.ZERO : PressureNode.Limit.NONE;
    }
    if (rule.tension() == CohesionRule.Tension.KEPT) {
      return PressureNode.Limit.NONE;
    }
    PressureNode.Limit best = PressureNode.Limit.NONE;
    double greatest = unlimited;
    if (0 > greatest) {
      best = PressureNode.Limit.ZERO;
      greatest = 0;
    }
    if (!hasCohesion()) {
      return best;
    }
    boolean crackMayHoldWater =
        rule.tension() == CohesionRule.Tension.WATER_FILLED_CRACK
            && (layer.isUndrained() || unlimited < 0);
    if (crackMayHoldWater && value(PressureNode.Limit.CRACK_WATER, level) > greatest) {
      best = PressureNode.Limit.CRACK_WATER;
      greatest = value(PressureNode.Limit.CRACK_WATER, level);
    }
    if (rule.minimumFluidWeight() > 0 && value(PressureNode.Limit.MINIMUM, level) > greatest) {
      best = PressureNode.Limit.MINIMUM;
    }
    return best;
  }

  private boolean hasCohesion() {
    return layer.cohesionAt(upper) > 0 || layer.cohesionAt(lower) > 0;
  }

  /** Earth pressure that one expression gives, after the divisor on passive pressure. */
  private double value(PressureNode.Limit limit, double level) {
    double depth = side.groundLevel() - level;
    return switch (limit) {
      case NONE -> reduced(level);
      case ZERO -> 0;
      case CRACK_WATER -> gammaWater * depth - u(level);
      case MINIMUM -> rule.minimumFluidWeight() * depth - u(level);
    };
  }

  private double unlimited(double level) {
    double c = layer.cohesionAt(level);
    double effective = sigma(level) - u(level);
    return state == Mobilisation.ACTIVE
        ? coefficients.kA() * effective - coefficients.kAc() * c
        : coefficients.kP() * effective + coefficients.kPc() * c;
  }

  private double reduced(double level) {
    if (state == Mobilisation.ACTIVE) {
      return unlimited(level);
    }
    double f = factors.passiveDivisor();
    if (layer.isUndrained() && factors.divisorOn() == PressureFactors.DivisorOn.STRENGTH_TERM) {
      return coefficients.kP() * sigma(level) + coefficients.kPc() * layer.cohesionAt(level) / f;
    }
    return unlimited(level) / f;
  }

  private double sigma(double level) {
    return between(level, sigmaUpper, sigmaLower);
  }

  private double u(double level) {
    return between(level, uUpper, uLower);
  }

  private double between(double level, double atUpper, double atLower) {
    return atUpper + (atLower - atUpper) * (upper - level) / (upper - lower);
  }

  private PressureNode node(double level, PressureNode.Limit limit) {
    boolean active = state == Mobilisation.ACTIVE;
    return new PressureNode(
        level,
        side.groundLevel() - level,
        layer.name(),
        sigma(level),
        u(level),
        sigma(level) - u(level),
        active ? coefficients.kA() : coefficients.kP(),
        active ? coefficients.kAc() : coefficients.kPc(),
        layer.cohesionAt(level),
        unlimited(level),
        value(limit, level),
        limit,
        active ? factors.onPermanent() : factors.onPassive(),
        factors.onWater(),
        Added.NOTHING);
  }

  /** Vertical stress that the coefficient multiplies, kPa, at a level. */
  double effective(double level) {
    return sigma(level) - u(level);
  }

  /** Vertical force of it over the stretch, kN per metre of wall and metre. */
  double effectiveForce() {
    return (upper - lower) * (sigmaUpper - uUpper + sigmaLower - uLower) / 2;
  }
}
