package pilefolio.analysis.staged;

/** State of the ground on one side at one level. */
public enum SoilState {
  /** There is no ground. */
  NONE,
  /** Pressure at its active limit. */
  ACTIVE,
  /** Pressure between its limits. */
  ELASTIC,
  /** Pressure at its passive limit. */
  PASSIVE
}
