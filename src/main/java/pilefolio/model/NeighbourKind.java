package pilefolio.model;

/** What stands beside the works. */
public enum NeighbourKind implements Choice {
  /** Building of masonry. */
  MASONRY_BUILDING("Masonry building"),
  /** Building with a frame. */
  FRAMED_BUILDING("Framed building"),
  /** Pipe, cable or duct in the ground. */
  BURIED_SERVICE("Buried service"),
  /** Line above ground. */
  OVERHEAD_LINE("Overhead line"),
  /** Road, pavement or track. */
  ROAD_OR_RAIL("Road or rail"),
  /** River, canal or drain. */
  WATERCOURSE("Watercourse"),
  /** Anything else. */
  OTHER("Other");

  private final String label;

  NeighbourKind(String label) {
    this.label = label;
  }

  @Override
  public String label() {
    return label;
  }
}
