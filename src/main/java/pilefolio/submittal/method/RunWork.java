package pilefolio.submittal.method;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pilefolio.checks.sequence.Programmes;
import pilefolio.model.AxialLoad;
import pilefolio.model.PileKind;
import pilefolio.model.PileSpec;
import pilefolio.model.Stage;
import pilefolio.model.Submission;
import pilefolio.model.Support;
import pilefolio.model.Technique;
import pilefolio.model.WallRun;
import pilefolio.model.WallType;
import pilefolio.submittal.Submittal;
import pilefolio.units.Units;

/**
 * One wall run: what is built there, in which stages, with which support.
 *
 * @param run the run; words {@code interlock}, {@code technique}, {@code rig}, {@code tool}, {@code
 *     profile}; facts of levels, diameters, tolerances and every {@link Pick}
 * @param secant true for overlapping primaries and secondaries
 * @param beamsInHoles true for soldier or king beams in drilled holes
 * @param timber true for timber lagging
 * @param shotcrete true for sprayed concrete between the beams
 * @param sheets true for sheet piles
 * @param cased true if bored with a cased auger
 * @param guideWall true if bored through a guide wall
 * @param permanent true if the wall stays in service
 * @param battered true if the piles lean
 * @param emptyBore true if the cut-off lies below the platform
 * @param loaded true if secondaries carry vertical load
 * @param primaryBeams true if primaries hold a beam
 * @param secondaryBeams true if secondaries hold a beam
 * @param stages stages of the excavation in their order: facts {@code excavation}, {@code
 *     waterBehind}, {@code waterFront}, {@code permanentSurcharge}, {@code variableSurcharge};
 *     words of the supports in place
 * @param support the support, or an empty list for a cantilever
 */
public record RunWork(
    Item run,
    boolean secant,
    boolean beamsInHoles,
    boolean timber,
    boolean shotcrete,
    boolean sheets,
    boolean cased,
    boolean guideWall,
    boolean permanent,
    boolean battered,
    boolean emptyBore,
    boolean loaded,
    boolean primaryBeams,
    boolean secondaryBeams,
    List<Item> stages,
    List<Item> support) {

  /** Copies the lists. */
  public RunWork {
    stages = List.copyOf(stages);
    support = List.copyOf(support);
  }

  static List<RunWork> all(Submittal submittal, FactWriter writer) {
    Submission submission = submittal.job().submission();
    List<RunWork> all = new ArrayList<>();
    for (WallRun run : submission.runs()) {
      all.add(
          new RunWork(
              run(submittal, run, writer),
              run.type().secant(),
              run.type().kingOrSoldierBeams(),
              run.type() == WallType.SOLDIER_TIMBER,
              run.type() == WallType.SOLDIER_SHOTCRETE,
              run.type().sheetPiles(),
              run.technique() == Technique.CASED_AUGER,
              run.guideWall(),
              run.permanent(),
              run.batter().isPresent(),
              run.levels().platform().si() > run.levels().cutOff().si(),
              run.bearing().flatMap(PileSpec::load).map(AxialLoad::isPresent).orElse(false),
              run.find(PileKind.PRIMARY).flatMap(PileSpec::beam).isPresent(),
              run.bearing().flatMap(PileSpec::beam).isPresent(),
              submission.stages(run).stream().map(stage -> stage(stage, writer)).toList(),
              submission.supports(run).stream().map(s -> support(run, s, writer)).toList()));
    }
    return all;
  }

  private static Item run(Submittal submittal, WallRun run, FactWriter writer) {
    Submission submission = submittal.job().submission();
    ItemBuilder item =
        new ItemBuilder(writer, run.id(), run.description())
            .words("interlock", run.type().label())
            .words("technique", run.technique().label())
            .words("rig", run.rig())
            .words("tool", run.tool())
            .words("profile", run.profile())
            .words("primaryMix", run.find(PileKind.PRIMARY).map(PileSpec::mix).orElse(""))
            .words("secondaryMix", run.bearing().map(PileSpec::mix).orElse(""))
            .level("platform", run.levels().platform())
            .level("retained", run.levels().retained())
            .level("cutOff", run.levels().cutOff())
            .level("groundwater", submission.profile(run).groundwater())
            .value("primaryDiameter", run.find(PileKind.PRIMARY).map(PileSpec::diameter), Units.MM)
            .value("secondaryDiameter", run.bearing().map(PileSpec::diameter), Units.MM)
            .value("spacing", run.line().spacing(), Units.MM)
            .value("unplanned", run.unplannedExcavation(), Units.M)
            .fact("batter", run.batter().map(writer::slope));
    if (!run.type().secant()) {
      item.level("toe", run.toe());
    }
    for (Pick pick : Pick.ALL) {
      item.fact(pick.name(), worded(pick.name(), pick.of(writer, run.id()), submittal, run));
    }
    return item.build();
  }

  /** Numbers that are said in words of their own. */
  private static Optional<Fact> worded(
      String name, Optional<Fact> fact, Submittal submittal, WallRun run) {
    return switch (name) {
      case "verticality" -> fact.map(f -> new Fact("1 in " + f.text(), f.source()));
      case "windowTo" ->
          fact.map(
              f ->
                  endless(submittal, run)
                      ? new Fact(
                          "no closing age by the law of strength alone; samples decide", f.source())
                      : f);
      default -> fact;
    };
  }

  /** True if the primaries of a run never grow too hard to be cut. */
  private static boolean endless(Submittal submittal, WallRun run) {
    return Programmes.of(submittal.job()).sequence().stream()
        .flatMap(job -> job.piles().stream())
        .filter(pile -> pile.isPrimary() && pile.run().equals(run.id()))
        .anyMatch(pile -> Double.isInfinite(pile.window().to()));
  }

  private static Item stage(Stage stage, FactWriter writer) {
    return new ItemBuilder(writer, String.valueOf(stage.number()), stage.description())
        .words("supports", String.join(", ", stage.supports()))
        .level("excavation", stage.excavation())
        .level("waterBehind", stage.waterBehind())
        .level("waterFront", stage.waterFront())
        .value("permanentSurcharge", stage.permanentSurcharge(), Units.KPA)
        .value("variableSurcharge", stage.variableSurcharge(), Units.KPA)
        .build();
  }

  private static Item support(WallRun run, Support support, FactWriter writer) {
    String piles = "support " + support.id();
    return new ItemBuilder(writer, support.id(), support.kind().label())
        .words("code", support.kind().name())
        .words("preload", support.preload())
        .level("level", support.level())
        .value("spacing", support.spacing(), Units.M)
        .value("inclination", support.inclination(), Units.DEG)
        .value("resistance", support.resistance(), Units.KN)
        .value("lockOff", support.lockOff(), Units.KN)
        .fact("freeLength", writer.result("anchor-free-length", run.id(), piles, "L_f"))
        .fact("bondLength", writer.result("anchor-bond-length", run.id(), piles, "L_b"))
        .fact("testLoad", writer.result("anchor-tests", run.id(), piles, "P_p"))
        .build();
  }
}
