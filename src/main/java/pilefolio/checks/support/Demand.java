package pilefolio.checks.support;

import pilefolio.checks.RunCheck.MissingInput;
import pilefolio.checks.stability.SupportForces;
import pilefolio.trace.Given;

/**
 * The force for which a support is designed in one combination.
 *
 * @param found the force with its route
 */
record Demand(SupportForces.Found found) {

  /** Id of the combination. */
  String combination() {
    return found.combination();
  }

  /**
   * Horizontal force, N/m.
   *
   * @throws MissingInput if nothing presses on the support
   */
  Given force() {
    if (!(found.perMetre() > 0)) {
      throw new MissingInput("In no stage does the wall press on the support.");
    }
    return new Given(found.perMetre(), found.source());
  }
}
