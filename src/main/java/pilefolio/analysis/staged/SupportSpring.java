package pilefolio.analysis.staged;

/**
 * A support in the equations of one stage.
 *
 * @param support the support
 * @param node node it holds
 * @param lockedForce force at the displacement where it was locked off, kN/m
 * @param lockedDisplacement that displacement, m; not used while it is being placed
 * @param placing true in the stage in which it acts with its lock-off force alone
 */
record SupportSpring(
    ElasticSupport support,
    int node,
    double lockedForce,
    double lockedDisplacement,
    boolean placing) {

  double force(double displacement) {
    if (placing) {
      return lockedForce;
    }
    double free = lockedForce + support.stiffness() * (displacement - lockedDisplacement);
    return support.action() == ElasticSupport.Action.ONE_WAY ? Math.max(0, free) : free;
  }

  double tangent(double displacement) {
    if (placing) {
      return 0;
    }
    double free = lockedForce + support.stiffness() * (displacement - lockedDisplacement);
    return support.action() == ElasticSupport.Action.ONE_WAY && free <= 0 ? 0 : support.stiffness();
  }
}
