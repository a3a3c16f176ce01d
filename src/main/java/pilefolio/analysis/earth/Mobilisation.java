package pilefolio.analysis.earth;

/** The state in which the ground on one side is. */
public enum Mobilisation {
  /** The wall moves away from the ground. */
  ACTIVE,
  /** The wall moves into the ground. */
  PASSIVE
}
