package pilefolio.submittal.method;

import java.util.List;
import java.util.Optional;

/**
 * A line of the calculations that a step of the works needs.
 *
 * @param name name by which the template calls it
 * @param check id of the check
 * @param piles first words of the subject's piles, or empty for any
 * @param symbol symbol of the line
 */
record Pick(String name, String check, String piles, String symbol) {

  /** Every line that the steps of the works name, for a wall run. */
  static final List<Pick> ALL =
      List.of(
          new Pick("overlapSetOut", "joint-overlap", "", "c_0"),
          new Pick("overlapDepth", "joint-overlap", "", "z_c"),
          new Pick("planAtCutOff", "tolerance-set", "", "e_C"),
          new Pick("position", "tolerance-set", "", "e_0"),
          new Pick("verticality", "tolerance-set", "", "n"),
          new Pick("primaryToe", "levels", "primaries", "L_T"),
          new Pick("secondaryToe", "levels", "secondaries", "L_T"),
          new Pick("emptyBore", "levels", "", "h_e"),
          new Pick("primaryDrilled", "levels", "primaries", "l_d"),
          new Pick("secondaryDrilled", "levels", "secondaries", "l_d"),
          new Pick("primaryCast", "levels", "primaries", "l_c"),
          new Pick("secondaryCast", "levels", "secondaries", "l_c"));

  /** The fact for a run, or empty if the check was not made for it. */
  Optional<Fact> of(FactWriter writer, String run) {
    return writer.result(check, run, piles, symbol);
  }
}
