package pilefolio.model;

/** Pore pressures on the two faces of the wall. */
public enum WaterRegime implements Choice {
  /** Each side hydrostatic from its own water level. */
  HYDROSTATIC("Hydrostatic"),
  /** Head lost evenly round the toe, equal pressures at the toe. */
  LINEAR_SEEPAGE("Linear seepage"),
  /** Heads from a flow net of the layers, round the toe as built. */
  FLOW_NET("Flow net");

  private final String label;

  WaterRegime(String label) {
    this.label = label;
  }

  @Override
  public String label() {
    return label;
  }
}
