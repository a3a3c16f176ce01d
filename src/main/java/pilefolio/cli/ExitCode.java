package pilefolio.cli;

/** What the commands return; part of the contract with users' scripts. */
final class ExitCode {
  /** Every check is satisfied. */
  static final int SATISFIED = 0;

  /** Produced, but something is not satisfied or not checked. */
  static final int OPEN = 1;

  /** The command line is wrong. */
  static final int COMMAND_LINE = 2;

  /** A workbook has findings; nothing was produced from it. */
  static final int FINDINGS = 3;

  /** A fault of the program. */
  static final int FAULT = 70;

  private ExitCode() {}
}
