package pilefolio.trace;

/** An equation split into the symbol on its left and the formula on its right. */
record Equation(String symbol, Formula formula) {
  static Equation of(String text) {
    int at = text.indexOf('=');
    if (at < 0) {
      throw new FormulaException("in \"" + text + "\": expected \"symbol = formula\"");
    }
    return new Equation(
        FormulaParser.symbol(text.substring(0, at)), Formula.of(text.substring(at + 1).strip()));
  }
}
