package pilefolio.submittal.method;

import java.util.List;
import java.util.function.Predicate;
import pilefolio.model.GroundProfile;
import pilefolio.model.Layer;
import pilefolio.model.NeighbourKind;
import pilefolio.model.SoilKind;
import pilefolio.model.Submission;
import pilefolio.model.Support;
import pilefolio.model.SupportKind;
import pilefolio.model.WallRun;
import pilefolio.standards.DesignBasis.SteelCode;
import pilefolio.submittal.Submittal;

/**
 * What this job has. The template leaves out whatever it has not.
 *
 * @param cased some run is bored with a cased auger
 * @param uncased some run is bored with an uncased auger
 * @param guideWall some run is bored through a guide wall
 * @param noGuideWall some run is bored without one
 * @param beams some pile holds a beam
 * @param battered some pile leans
 * @param loaded some secondary carries vertical load
 * @param permanent some wall stays in service
 * @param emptyBore some cut-off lies below the platform
 * @param excavation some run has stages of excavation
 * @param props some run is propped
 * @param anchors some run is anchored
 * @param cantilever some run stands without support
 * @param fill made ground is bored through
 * @param clay clay or silt is bored through
 * @param granular sand or gravel is bored through
 * @param gravel gravel is bored through
 * @param rock rock is met
 * @param groundwater groundwater is met while piles are bored
 * @param buildings a building stands beside the works
 * @param services a buried service lies beside the works
 * @param overhead an overhead line crosses or passes
 * @param traffic a road or railway passes
 * @param water a watercourse passes
 * @param otherNeighbours something else stands beside the works
 * @param vibrationLimit an owner states a limit on vibration
 * @param severalRigs more than one rig works
 * @param american the design basis is of the practice of the United States
 */
public record Applies(
    boolean cased,
    boolean uncased,
    boolean guideWall,
    boolean noGuideWall,
    boolean beams,
    boolean battered,
    boolean loaded,
    boolean permanent,
    boolean emptyBore,
    boolean excavation,
    boolean props,
    boolean anchors,
    boolean cantilever,
    boolean fill,
    boolean clay,
    boolean granular,
    boolean gravel,
    boolean rock,
    boolean groundwater,
    boolean buildings,
    boolean services,
    boolean overhead,
    boolean traffic,
    boolean water,
    boolean otherNeighbours,
    boolean vibrationLimit,
    boolean severalRigs,
    boolean american) {

  static Applies to(Submittal submittal, List<RunWork> works) {
    Submission s = submittal.job().submission();
    Predicate<Predicate<RunWork>> some = test -> works.stream().anyMatch(test);
    return new Applies(
        some.test(RunWork::cased),
        some.test(w -> !w.cased()),
        some.test(RunWork::guideWall),
        some.test(w -> !w.guideWall()),
        some.test(w -> w.primaryBeams() || w.secondaryBeams()),
        some.test(RunWork::battered),
        some.test(RunWork::loaded),
        some.test(RunWork::permanent),
        some.test(RunWork::emptyBore),
        some.test(w -> !w.stages().isEmpty()),
        supported(s, kind -> !kind.pulls()),
        supported(s, SupportKind::pulls),
        some.test(w -> w.support().isEmpty()),
        ground(s, SoilKind.FILL),
        ground(s, SoilKind.CLAY) || ground(s, SoilKind.SILT),
        ground(s, SoilKind.SAND) || ground(s, SoilKind.GRAVEL),
        ground(s, SoilKind.GRAVEL),
        ground(s, SoilKind.ROCK),
        s.runs().stream().anyMatch(r -> s.profile(r).groundwater().isPresent()),
        near(s, NeighbourKind.MASONRY_BUILDING) || near(s, NeighbourKind.FRAMED_BUILDING),
        near(s, NeighbourKind.BURIED_SERVICE),
        near(s, NeighbourKind.OVERHEAD_LINE),
        near(s, NeighbourKind.ROAD_OR_RAIL),
        near(s, NeighbourKind.WATERCOURSE),
        near(s, NeighbourKind.OTHER),
        s.neighbours().stream().anyMatch(n -> n.vibrationLimit().isPresent()),
        s.runs().stream().map(WallRun::rig).distinct().count() > 1,
        submittal.job().basis().steel() != SteelCode.EN_1993);
  }

  private static boolean supported(Submission s, Predicate<SupportKind> kind) {
    return s.runs().stream().flatMap(r -> s.supports(r).stream()).map(Support::kind).anyMatch(kind);
  }

  private static boolean near(Submission s, NeighbourKind kind) {
    return s.neighbours().stream().anyMatch(n -> n.kind() == kind);
  }

  /** Whether ground of a kind lies above the toe of some pile, or anywhere if no toe is given. */
  private static boolean ground(Submission s, SoilKind kind) {
    return s.runs().stream().anyMatch(run -> bored(s.profile(run), run, kind));
  }

  private static boolean bored(GroundProfile profile, WallRun run, SoilKind kind) {
    double toe = run.toe().map(v -> v.si()).orElse(profile.base().si());
    for (int i = 0; i < profile.layers().size(); i++) {
      Layer layer = profile.layers().get(i);
      boolean reached = layer.top().si() > toe;
      boolean belowPlatform = profile.bottom(i) < run.levels().platform().si();
      if (layer.kind() == kind && reached && belowPlatform) {
        return true;
      }
    }
    return false;
  }
}
