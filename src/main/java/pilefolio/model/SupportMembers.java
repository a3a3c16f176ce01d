package pilefolio.model;

import java.util.List;
import java.util.Optional;

/**
 * What supports consist of, as far as the workbook says.
 *
 * @param struts struts and rakers
 * @param walers walers
 * @param anchors ground anchors
 * @param footings footings of rakers
 * @param blocks anchor blocks
 */
public record SupportMembers(
    List<StrutMember> struts,
    List<Waler> walers,
    List<GroundAnchor> anchors,
    List<RakerFooting> footings,
    List<AnchorBlock> blocks) {
  /** Nothing is said; others design the supports. */
  public static final SupportMembers NONE =
      new SupportMembers(List.of(), List.of(), List.of(), List.of(), List.of());

  /** Copies the lists. */
  public SupportMembers {
    struts = List.copyOf(struts);
    walers = List.copyOf(walers);
    anchors = List.copyOf(anchors);
    footings = List.copyOf(footings);
    blocks = List.copyOf(blocks);
  }

  /** The struts of a support. */
  public Optional<StrutMember> strut(Support support) {
    return struts.stream().filter(m -> m.support().equals(support.id())).findFirst();
  }

  /** The waler of a support. */
  public Optional<Waler> waler(Support support) {
    return walers.stream().filter(m -> m.support().equals(support.id())).findFirst();
  }

  /** The anchors of a support. */
  public Optional<GroundAnchor> anchor(Support support) {
    return anchors.stream().filter(m -> m.support().equals(support.id())).findFirst();
  }

  /** The footings of a support. */
  public Optional<RakerFooting> footing(Support support) {
    return footings.stream().filter(m -> m.support().equals(support.id())).findFirst();
  }

  /** The anchor blocks of a support. */
  public Optional<AnchorBlock> block(Support support) {
    return blocks.stream().filter(m -> m.support().equals(support.id())).findFirst();
  }

  /** True if the workbook says what the force of a support goes into. */
  public boolean carries(Support support) {
    return strut(support).isPresent() || anchor(support).isPresent() || block(support).isPresent();
  }
}
