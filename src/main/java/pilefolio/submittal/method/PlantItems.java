package pilefolio.submittal.method;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import pilefolio.model.Crew;
import pilefolio.model.Rig;
import pilefolio.model.Submission;
import pilefolio.model.Technique;
import pilefolio.model.Tool;
import pilefolio.model.WallRun;
import pilefolio.units.Units;

/** Rigs, tools and crews that this job uses. */
final class PlantItems {
  private PlantItems() {}

  /** Rigs that a wall run names, with the ratings their owner states. */
  static List<Item> rigs(Submission submission, FactWriter writer) {
    Set<String> used = names(submission, WallRun::rig);
    return submission.rigs().stream()
        .filter(rig -> used.contains(rig.id()))
        .map(rig -> rig(rig, runs(submission, run -> run.rig().equals(rig.id())), writer))
        .toList();
  }

  private static Item rig(Rig rig, String runs, FactWriter writer) {
    ItemBuilder item =
        new ItemBuilder(writer, rig.id(), rig.description())
            .words("technique", rig.technique().label())
            .words("runs", runs)
            .fact("mass", rig.mass().map(v -> writer.entered(v, Units.T)))
            .value("augerTorque", rig.augerTorque(), Units.KNM)
            .value("crowd", rig.crowd(), Units.KN)
            .value("pull", rig.pull(), Units.KN)
            .value("stroke", rig.stroke(), Units.M)
            .value("extension", rig.extension(), Units.M)
            .value("hookHeight", rig.hookHeight(), Units.M)
            .value("winchLinePull", rig.winchLinePull(), Units.KN)
            .value("winchParts", rig.winchParts(), Units.ONE)
            .value("reach", rig.reach(), Units.M)
            .value("rotation", rig.rotation(), Units.REV_MIN)
            .value("penetration", rig.penetration(), Units.M_MIN);
    if (rig.technique() == Technique.CASED_AUGER) {
      item.value("casingTorque", rig.casingTorque(), Units.KNM);
    }
    return item.build();
  }

  /** Augers and casings that a wall run names. */
  static List<Item> tools(Submission submission, FactWriter writer) {
    Set<String> used = names(submission, WallRun::tool);
    return submission.tools().stream()
        .filter(tool -> used.contains(tool.id()))
        .map(tool -> tool(tool, runs(submission, run -> run.tool().equals(tool.id())), writer))
        .toList();
  }

  private static Item tool(Tool tool, String runs, FactWriter writer) {
    return new ItemBuilder(writer, tool.id(), "")
        .words("runs", runs)
        .value("auger", tool.augerDiameter(), Units.MM)
        .value("stem", tool.stemDiameter(), Units.MM)
        .value("pitch", tool.pitch(), Units.MM)
        .value("casingOuter", tool.casingOuter(), Units.MM)
        .value("casingInner", tool.casingInner(), Units.MM)
        .build();
  }

  /** Crews on those rigs. */
  static List<Item> crews(Submission submission, FactWriter writer) {
    Set<String> used = names(submission, WallRun::rig);
    return submission.crews().stream()
        .filter(crew -> used.contains(crew.rig()))
        .map(crew -> crew(crew, writer))
        .toList();
  }

  private static Item crew(Crew crew, FactWriter writer) {
    return new ItemBuilder(writer, crew.id(), "")
        .words("rig", crew.rig())
        .value("shift", crew.shift(), Units.H)
        .value("nonProductive", crew.nonProductive(), Units.MIN)
        .value("availability", crew.availability(), Units.PERCENT)
        .value("moveAndSetUp", crew.moveAndSetUp(), Units.MIN)
        .value("beamSetting", crew.beamSetting(), Units.MIN)
        .value("cleaning", crew.cleaning(), Units.MIN)
        .value("drillingPrimary", crew.drillingPrimary(), Units.M_MIN)
        .value("drillingSecondary", crew.drillingSecondary(), Units.M_MIN)
        .value("pilesPerShift", crew.pilesPerShift(), Units.ONE)
        .build();
  }

  private static Set<String> names(
      Submission submission, java.util.function.Function<WallRun, String> name) {
    Set<String> names = new TreeSet<>();
    submission.runs().forEach(run -> names.add(name.apply(run)));
    return names;
  }

  private static String runs(Submission submission, java.util.function.Predicate<WallRun> uses) {
    return String.join(", ", submission.runs().stream().filter(uses).map(WallRun::id).toList());
  }
}
