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
          new Pick("windowFrom", "strength-window", "", "t_1"),
          new Pick("windowTo", "strength-window", "", "t_2"),
          new Pick("freshDistance", "fresh-piles", "", "a_f"),
          new Pick("freshSkip", "fresh-piles", "", "m_p"),
          new Pick("primaryCycle", "cycle-time", "primaries", "T"),
          new Pick("secondaryCycle", "cycle-time", "secondaries", "T"),
          new Pick("primaryShift", "cycle-time", "primaries", "n_s"),
          new Pick("secondaryShift", "cycle-time", "secondaries", "n_s"),
          new Pick("revolutions", "auger-revolutions", "", "N_lim"),
          new Pick("slowestAdvance", "auger-revolutions", "", "v_m"),
          new Pick("primaryVolume", "concrete-volume", "primaries", "V_a"),
          new Pick("secondaryVolume", "concrete-volume", "secondaries", "V_a"),
          new Pick("primaryTrucks", "concrete-volume", "primaries", "n_t"),
          new Pick("secondaryTrucks", "concrete-volume", "secondaries", "n_t"),
          new Pick("primaryLift", "lift-rate", "primaries", "v_w"),
          new Pick("secondaryLift", "lift-rate", "secondaries", "v_w"),
          new Pick("primaryFirst", "initial-head", "primaries", "V_1"),
          new Pick("secondaryFirst", "initial-head", "secondaries", "V_1"),
          new Pick("primaryDrop", "casing-level-drop", "primaries", "Δ_h"),
          new Pick("secondaryDrop", "casing-level-drop", "secondaries", "Δ_h"),
          new Pick("beamTime", "beam-setting", "", "t_w"),
          new Pick("beamWeight", "beam-winch", "", "W_b"),
          new Pick("hookLoad", "beam-winch", "", "F_h"),
          new Pick("supportForce", "support-force", "", "N"));

  /** The fact for a run, or empty if the check was not made for it. */
  Optional<Fact> of(FactWriter writer, String run) {
    return writer.result(check, run, piles, symbol);
  }
}
