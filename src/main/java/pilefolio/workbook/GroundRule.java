package pilefolio.workbook;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import pilefolio.findings.Finding;
import pilefolio.model.Drainage;

/** Layers follow each other downwards and have the strength they need. */
final class GroundRule implements Rule {
  /** A flood may stand this much above the ground, m. */
  static final double FLOOD = 1.0;

  @Override
  public void check(Book book, KnownNames names, Consumer<Finding> findings) {
    for (Row profile : book.rows(GroundSheet.PROFILES)) {
      profile
          .find(GroundSheet.PROFILE_ID)
          .ifPresent(
              id ->
                  profile(
                      profile, book.where(GroundSheet.LAYERS, GroundSheet.PROFILE, id), findings));
    }
    for (Row layer : book.rows(GroundSheet.LAYERS)) {
      strength(layer, findings);
      weight(layer, findings);
    }
  }

  private static void profile(Row profile, List<Row> layers, Consumer<Finding> findings) {
    if (layers.isEmpty()) {
      findings.accept(
          FindingKind.PROFILE_WITHOUT_LAYERS.at(
              profile.place(GroundSheet.PROFILE_ID),
              "the profile " + profile.subject() + " has no layers",
              "add its layers on the sheet Ground, from the surface downwards"));
      return;
    }
    double above = Double.POSITIVE_INFINITY;
    for (Row layer : layers) {
      Optional<Double> top = layer.si(GroundSheet.TOP);
      if (top.isPresent() && top.get() >= above) {
        findings.accept(
            FindingKind.LAYERS_OUT_OF_ORDER.at(
                layer.place(GroundSheet.TOP),
                "the layer begins at or above the top of the layer before it",
                "give levels, not depths, each lower than the one before"));
      }
      above = top.orElse(above);
    }
    double lowest = above;
    profile
        .si(GroundSheet.BASE)
        .filter(base -> base >= lowest)
        .ifPresent(
            base ->
                findings.accept(
                    FindingKind.BASE_ABOVE_LAYER.at(
                        profile.place(GroundSheet.BASE),
                        "the ground is known to a level at or above the top of its last layer",
                        "give the level of the foot of the deepest borehole")));
    water(profile, layers, findings);
  }

  private static void water(Row profile, List<Row> layers, Consumer<Finding> findings) {
    Optional<Double> water = profile.si(GroundSheet.GROUNDWATER);
    Optional<Double> top = layers.get(0).si(GroundSheet.TOP);
    Optional<Double> base = profile.si(GroundSheet.BASE);
    if (water.isEmpty() || top.isEmpty() || base.isEmpty()) {
      return;
    }
    if (water.get() > top.get() + FLOOD || water.get() < base.get()) {
      findings.accept(
          FindingKind.WATER_LEVEL_ODD.at(
              profile.place(GroundSheet.GROUNDWATER),
              "the groundwater stands above the ground or below its known base",
              "give a level, not a depth; leave it empty if no water was met"));
    }
  }

  private static void strength(Row layer, Consumer<Finding> findings) {
    Optional<Drainage> drainage = layer.find(GroundSheet.DRAINAGE);
    if (drainage.isEmpty()) {
      return;
    }
    boolean drained = drainage.get() == Drainage.DRAINED;
    NumberColumn needed = drained ? GroundSheet.FRICTION : GroundSheet.SHEAR_STRENGTH;
    NumberColumn other = drained ? GroundSheet.SHEAR_STRENGTH : GroundSheet.FRICTION;
    if (layer.find(needed).isEmpty()) {
      findings.accept(
          FindingKind.STRENGTH_MISSING.at(
              layer.place(needed),
              needed.name() + " is empty, and the layer is " + drainage.get().label(),
              needed.expected(needed.unit())));
    }
    if (layer.find(other).isPresent()) {
      findings.accept(
          FindingKind.STRENGTH_NOT_USED.at(
              layer.place(other),
              other.name() + " is given, but the layer is " + drainage.get().label(),
              "it is not used; make sure that the drainage is what you mean"));
    }
  }

  private static void weight(Row layer, Consumer<Finding> findings) {
    Optional<Double> above = layer.si(GroundSheet.UNIT_WEIGHT);
    Optional<Double> below = layer.si(GroundSheet.UNIT_WEIGHT_BELOW);
    if (above.isPresent() && below.isPresent() && below.get() < above.get() * (1 - 1e-9)) {
      findings.accept(
          FindingKind.LIGHTER_BELOW_WATER.at(
              layer.place(GroundSheet.UNIT_WEIGHT_BELOW),
              "the layer is lighter below water than above",
              "give the saturated weight, not the buoyant one"));
    }
  }
}
