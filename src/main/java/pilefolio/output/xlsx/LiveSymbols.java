package pilefolio.output.xlsx;

import java.util.LinkedHashMap;
import java.util.Map;
import pilefolio.trace.Formula;
import pilefolio.units.Unit;

/** The cells of the symbols of a sheet, or of a row within it. */
final class LiveSymbols {
  /** Conversion factors are written with ten digits. */
  private static final double SHARE = 1e-10;

  private final Map<String, LiveSymbol> own = new LinkedHashMap<>();
  private final LiveSymbols outer;

  LiveSymbols() {
    this(null);
  }

  /** Symbols of a row, within those of the sheet. */
  LiveSymbols(LiveSymbols outer) {
    this.outer = outer;
  }

  Map<String, LiveSymbol> all() {
    return own;
  }

  void add(String symbol, String address, Unit unit, double si, double noise) {
    own.put(symbol, new LiveSymbol(address, unit, si, noise));
  }

  LiveSymbol get(String symbol) {
    LiveSymbol found = own.get(symbol);
    return found == null && outer != null ? outer.get(symbol) : found;
  }

  Unit unit(String symbol) {
    return get(symbol).unit();
  }

  String address(String symbol) {
    return get(symbol).address();
  }

  /** How far the last bits may carry a formula's value, coherent SI. */
  double noise(Formula formula) {
    return formula.wander(
        name -> get(name).si(), name -> SHARE * Math.abs(get(name).si()) + get(name).noise());
  }
}
