package pilefolio.submittal.calculations;

import java.util.List;

/** A wall run: what it is, as pairs of words, and its stages as rows. */
public record RunView(
    String id, String description, List<List<String>> facts, List<List<String>> stages) {}
