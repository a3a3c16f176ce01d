package pilefolio.findings;

/** How much a finding matters. */
public enum Severity {
  /** Nothing can be produced until it is put right. */
  ERROR,
  /** The run goes on; a person should look. */
  WARNING
}
