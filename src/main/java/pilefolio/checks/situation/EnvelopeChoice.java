package pilefolio.checks.situation;

import java.util.List;
import java.util.Locale;
import pilefolio.analysis.apparent.ClayClass;
import pilefolio.analysis.apparent.GroundBeside;
import pilefolio.analysis.earth.OutsideRange;
import pilefolio.model.ApparentDiagram;
import pilefolio.model.Support;

/**
 * The envelope that is taken for some ground and some supports.
 *
 * @param diagram the envelope
 * @param why why this one, as a clause without its full stop
 */
public record EnvelopeChoice(ApparentDiagram diagram, String why) {
  private static final double STIFF_LIMIT = 4;

  /**
   * The envelope that the user asks for, or the one that the ground asks for.
   *
   * @throws OutsideRange if the envelope asked for is not for such ground
   */
  static EnvelopeChoice of(
      ApparentDiagram asked,
      GroundBeside ground,
      GroundBeside.SoftBelow soft,
      List<Support> supports) {
    return asked == ApparentDiagram.BY_GROUND
        ? byGround(ground, soft, supports)
        : entered(asked, ground);
  }

  private static EnvelopeChoice entered(ApparentDiagram asked, GroundBeside ground) {
    boolean forSand = asked == ApparentDiagram.SAND || asked == ApparentDiagram.LEVELS_SAND;
    boolean sand = ground.kind() == GroundBeside.Kind.SAND;
    if (forSand != sand) {
      throw new OutsideRange(
          "the apparent pressure chosen, “"
              + asked.label()
              + "”, is not for "
              + (sand ? "drained ground" : "ground with undrained layers"));
    }
    boolean forStiff = asked == ApparentDiagram.STIFF_CLAY || asked == ApparentDiagram.LEVELS_CLAY;
    if (forStiff && ground.stabilityNumber() > STIFF_LIMIT) {
      throw new OutsideRange(
          String.format(
              Locale.ROOT,
              "the apparent pressure chosen, “%s”, is for stability numbers up to 4, not %.2f",
              asked.label(),
              ground.stabilityNumber()));
    }
    return new EnvelopeChoice(asked, "chosen by the user");
  }

  private static EnvelopeChoice byGround(
      GroundBeside ground, GroundBeside.SoftBelow soft, List<Support> supports) {
    boolean tied = supports.stream().allMatch(s -> s.kind().pulls());
    String held = tied ? "every support pulls" : "not every support pulls";
    if (ground.kind() == GroundBeside.Kind.SAND) {
      return new EnvelopeChoice(
          tied ? ApparentDiagram.LEVELS_SAND : ApparentDiagram.SAND,
          "drained ground beside the excavation, and " + held);
    }
    double n = ground.stabilityNumber();
    return switch (ClayClass.of(n)) {
      case STIFF ->
          new EnvelopeChoice(
              tied ? ApparentDiagram.LEVELS_CLAY : ApparentDiagram.STIFF_CLAY,
              "stability number up to 4, and " + held);
      case SOFT_TO_MEDIUM ->
          new EnvelopeChoice(ApparentDiagram.SOFT_CLAY, "stability number above 4 and up to 6");
      case SOFT ->
          soft.thickness() > 0
              ? new EnvelopeChoice(
                  ApparentDiagram.SOFT_CLAY_DEEP,
                  "stability number above 6, and soft clay continues below the base")
              : new EnvelopeChoice(
                  ApparentDiagram.SOFT_CLAY,
                  "stability number above 6, but no soft clay below the base");
    };
  }
}
