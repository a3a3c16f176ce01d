package pilefolio.submittal.calculations;

import java.util.List;

/** A factor of the design basis with its value in each combination. */
public record FactorRow(
    String symbolTex, String symbol, String meaning, List<String> values, String reference) {}
