package pilefolio.output.json;

import java.util.HashSet;
import java.util.Set;
import pilefolio.trace.ExpressionText;

/** Plain names for the symbols of one check, each used once. */
final class RecordNames {
  private final Set<String> taken = new HashSet<>();

  /** A name for a symbol of a sheet. */
  String take(String symbol) {
    return unique(ExpressionText.name(symbol));
  }

  /** A name for a cell of a table. */
  String take(String symbol, int row) {
    return unique(ExpressionText.name(symbol) + "_" + row);
  }

  private String unique(String wanted) {
    String name = wanted;
    for (int again = 2; !taken.add(name); again++) {
      name = wanted + "__" + again;
    }
    return name;
  }
}
