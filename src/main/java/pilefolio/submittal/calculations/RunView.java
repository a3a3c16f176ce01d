package pilefolio.submittal.calculations;

import java.util.List;

/** A wall run: what it is, as pairs of words; its stages, supports and local loads as rows. */
public record RunView(
    String id,
    String description,
    List<List<String>> facts,
    List<List<String>> stages,
    List<List<String>> supports,
    List<List<String>> loads) {}
