package pilefolio.analysis.apparent;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import pilefolio.analysis.wall.WallStatics;

/**
 * What the supports carry.
 *
 * @param idealisation how it was found
 * @param supports levels from the top down, m
 * @param reactions of the supports, kN/m, positive when they hold the wall back
 * @param baseReaction reaction below the lowest support, kN/m; empty if the wall overhangs there
 * @param supportMoments moments at the supports, kNm/m, tension on the retained side positive
 * @param spanMoments moment of largest absolute value inside each span, from the top span down to
 *     the one that ends at the base reaction, kNm/m; tension on the retained side positive
 * @param greatestMoment largest absolute moment anywhere, kNm/m
 * @param greatestShear largest absolute shear anywhere, kN/m
 * @param statics shear and moment over the wall; empty for tributary areas, which are no beam
 */
public record SupportReactions(
    Idealisation idealisation,
    List<Double> supports,
    List<Double> reactions,
    OptionalDouble baseReaction,
    List<Double> supportMoments,
    List<Double> spanMoments,
    double greatestMoment,
    double greatestShear,
    Optional<WallStatics> statics) {

  /** Copies the lists. */
  public SupportReactions {
    supports = List.copyOf(supports);
    reactions = List.copyOf(reactions);
    supportMoments = List.copyOf(supportMoments);
    spanMoments = List.copyOf(spanMoments);
  }

  /** Sum of all reactions, kN/m. */
  public double sum() {
    return reactions.stream().mapToDouble(Double::doubleValue).sum() + baseReaction.orElse(0);
  }

  /** True if a support or the base would have to pull. */
  public boolean anyPulls() {
    return reactions.stream().anyMatch(r -> r < 0) || baseReaction.orElse(0) < 0;
  }
}
