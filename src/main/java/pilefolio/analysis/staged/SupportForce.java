package pilefolio.analysis.staged;

/**
 * What a support does at the end of a stage.
 *
 * @param support the support
 * @param level level of the node it holds, m
 * @param force horizontal force, kN/m, positive toward the retained ground
 * @param displacement displacement of the wall there, m
 * @param lockedDisplacement displacement at which it was locked off, m
 * @param lockedForce force with which it was locked off, kN/m
 * @param placedHere true in the stage in which it is placed or stressed anew
 */
public record SupportForce(
    ElasticSupport support,
    double level,
    double force,
    double displacement,
    double lockedDisplacement,
    double lockedForce,
    boolean placedHere) {

  /** True if a support that can only push or pull has lost its load. */
  public boolean lost() {
    return support.action() == ElasticSupport.Action.ONE_WAY && force <= 0 && !placedHere;
  }
}
