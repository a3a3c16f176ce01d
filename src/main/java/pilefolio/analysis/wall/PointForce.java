package pilefolio.analysis.wall;

/**
 * A concentrated force.
 *
 * @param name what it is
 * @param level where it acts, m
 * @param force kN/m, positive toward the excavation
 */
public record PointForce(String name, double level, double force) {}
