package pilefolio.submittal.method;

import java.util.ArrayList;
import java.util.List;
import pilefolio.model.Drainage;
import pilefolio.model.GroundProfile;
import pilefolio.model.Layer;
import pilefolio.model.Submission;
import pilefolio.model.WallRun;
import pilefolio.units.Units;

/**
 * A ground profile as the method statement shows it.
 *
 * @param profile the profile: facts {@code base}, {@code groundwater}, {@code temperature}, {@code
 *     investigation}
 * @param runs wall runs in it
 * @param layers its layers: facts {@code top}, {@code bottom}, {@code unitWeight}, {@code
 *     strength}, {@code increase}, {@code cohesion}, {@code n60}; words {@code kind}, {@code
 *     drainage}, {@code source}
 */
public record Ground(Item profile, List<String> runs, List<Item> layers) {
  /** Copies the lists. */
  public Ground {
    runs = List.copyOf(runs);
    layers = List.copyOf(layers);
  }

  /** Every profile that a wall run stands in. */
  static List<Ground> all(Submission submission, FactWriter writer) {
    List<Ground> all = new ArrayList<>();
    for (GroundProfile profile : submission.profiles()) {
      List<String> runs =
          submission.runs().stream()
              .filter(run -> run.profile().equals(profile.id()))
              .map(WallRun::id)
              .toList();
      if (!runs.isEmpty()) {
        all.add(of(profile, runs, writer));
      }
    }
    return all;
  }

  private static Ground of(GroundProfile profile, List<String> runs, FactWriter writer) {
    List<Item> layers = new ArrayList<>();
    for (int i = 0; i < profile.layers().size(); i++) {
      layers.add(layer(profile, i, writer));
    }
    Item item =
        new ItemBuilder(writer, profile.id(), "")
            .cell("investigation", profile.investigation(), profile.at())
            .level("base", profile.base())
            .level("groundwater", profile.groundwater())
            .fact("temperature", writer.entered(profile.temperature(), Units.CELSIUS))
            .build();
    return new Ground(item, runs, layers);
  }

  private static Item layer(GroundProfile profile, int index, FactWriter writer) {
    Layer layer = profile.layers().get(index);
    boolean drained = layer.drainage() == Drainage.DRAINED;
    String next =
        index + 1 < profile.layers().size()
            ? FactWriter.source(profile.layers().get(index + 1).top())
            : FactWriter.source(profile.base());
    return new ItemBuilder(writer, layer.name(), layer.description())
        .words("kind", layer.kind().label())
        .words("drainage", layer.drainage().label())
        .words("source", layer.source())
        .level("top", layer.top())
        .fact("bottom", new Fact(writer.levelText(profile.bottom(index)), next))
        .value("unitWeight", layer.unitWeight(), Units.KN_M3)
        .value("unitWeightBelow", layer.unitWeightBelow(), Units.KN_M3)
        .fact(
            "strength",
            drained
                ? writer.value(layer.frictionAngle(), Units.DEG)
                : writer.value(layer.shearStrength(), Units.KPA))
        .fact(
            "increase",
            drained
                ? java.util.Optional.empty()
                : writer.value(layer.shearStrengthIncrease(), Units.of("kPa/m")))
        .fact(
            "cohesion",
            drained ? writer.value(layer.cohesion(), Units.KPA) : java.util.Optional.empty())
        .value("n60", layer.n60(), Units.ONE)
        .build();
  }
}
