package pilefolio.submittal.calculations;

import java.util.List;

/** A ground profile: its facts, a row of numbers a layer, and the words on each layer. */
public record ProfileView(
    String id,
    String investigation,
    String base,
    String groundwater,
    String temperature,
    List<List<String>> layers,
    List<List<String>> descriptions) {}
