package pilefolio.submittal.method;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * The runs bored by one technique, with their facts side by side.
 *
 * @param cased true for the cased auger
 * @param runs ids of the runs
 * @param beams true if any pile holds a beam
 * @param loaded true if any secondary carries vertical load
 * @param guideWall true if any run has a guide wall
 * @param emptyBore true if any cut-off lies below the platform
 * @param groundwater true if groundwater is met
 * @param battered true if any pile leans
 * @param facts facts by name
 */
public record TechniqueWork(
    boolean cased,
    List<String> runs,
    boolean beams,
    boolean loaded,
    boolean guideWall,
    boolean emptyBore,
    boolean groundwater,
    boolean battered,
    Map<String, List<RunFact>> facts) {

  /** The techniques by which the secant walls of a job are bored, cased first. */
  static List<TechniqueWork> all(List<RunWork> works) {
    List<TechniqueWork> all = new ArrayList<>();
    for (boolean cased : new boolean[] {true, false}) {
      List<RunWork> own = works.stream().filter(w -> w.secant() && w.cased() == cased).toList();
      if (!own.isEmpty()) {
        all.add(
            new TechniqueWork(
                cased,
                own.stream().map(w -> w.run().id()).toList(),
                own.stream().anyMatch(w -> w.primaryBeams() || w.secondaryBeams()),
                own.stream().anyMatch(RunWork::loaded),
                own.stream().anyMatch(RunWork::guideWall),
                own.stream().anyMatch(RunWork::emptyBore),
                own.stream().anyMatch(w -> w.run().facts().containsKey("groundwater")),
                own.stream().anyMatch(RunWork::battered),
                RunFact.byName(own)));
      }
    }
    return all;
  }
}
