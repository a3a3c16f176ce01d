package pilefolio.analysis.staged;

import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Everything that acts on the wall at the end of a stage.
 *
 * @param name what the stage is called
 * @param behind the retained side
 * @param front the excavated side
 * @param excavationLevel level of the ground in front, m; for the names of mechanisms and the
 *     mobilised passive share
 * @param stiffness flexural stiffness EI of the wall, kNm² per m, more than zero
 * @param supports supports in place; one that was there before and is missing is removed
 * @param loads loads on the wall itself
 */
public record WallStage(
    String name,
    SoilSide behind,
    SoilSide front,
    double excavationLevel,
    double stiffness,
    List<ElasticSupport> supports,
    List<DirectLoad> loads) {

  /**
   * @throws IllegalArgumentException if the stiffness is not more than zero or two supports have
   *     one id
   */
  public WallStage {
    supports = List.copyOf(supports);
    loads = List.copyOf(loads);
    if (!(stiffness > 0) || Double.isInfinite(stiffness)) {
      throw new IllegalArgumentException("stiffness of the wall must be more than zero");
    }
    Set<String> ids = new HashSet<>();
    for (ElasticSupport s : supports) {
      if (!ids.add(s.id())) {
        throw new IllegalArgumentException("two supports are called " + s.id());
      }
    }
  }
}
