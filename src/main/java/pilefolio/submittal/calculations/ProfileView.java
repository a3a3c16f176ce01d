package pilefolio.submittal.calculations;

import java.util.List;

/**
 * A ground profile: its facts, a row of numbers a layer, the words on each layer, and initial
 * state, stiffness and water of the layers if any of these was entered.
 */
public record ProfileView(
    String id,
    String investigation,
    String base,
    String groundwater,
    String temperature,
    List<List<String>> layers,
    List<List<String>> descriptions,
    List<List<String>> states) {}
