package pilefolio.submittal;

import java.util.List;
import pilefolio.trace.Calculation;
import pilefolio.trace.Calculation.RequireEntry;
import pilefolio.trace.Condition.Sign;
import pilefolio.trace.Printed;
import pilefolio.trace.Printed.PrintedRequire;
import pilefolio.trace.Printer;

/**
 * The requirement that decides an answer: demand and capacity as printed.
 *
 * @param meaning what is required
 * @param demand the demand with its unit
 * @param capacity the capacity with its unit
 */
public record KeyFigure(String meaning, String demand, String capacity) {
  /** An answer without a requirement. */
  public static final KeyFigure NONE = new KeyFigure("", "", "");

  /** The requirement with the greatest utilisation, one that does not hold before all others. */
  public static KeyFigure of(Answer answer, Printer printer) {
    List<Calculation> calculations = answer.result().calculations();
    Calculation in = null;
    int at = -1;
    double worst = -1;
    for (Calculation calculation : calculations) {
      int index = 0;
      for (Calculation.Entry entry : calculation.entries()) {
        if (entry instanceof RequireEntry require) {
          double weight =
              (require.satisfied() ? 0 : 1e9) + Math.min(1e8, require.utilisation().orElse(0));
          if (weight > worst) {
            worst = weight;
            in = calculation;
            at = index;
          }
        }
        index++;
      }
    }
    if (in == null) {
      return NONE;
    }
    Printed printed = printer.print(in);
    PrintedRequire require = (PrintedRequire) printed.entries().get(at);
    RequireEntry entry = (RequireEntry) in.entries().get(at);
    Sign sign = entry.element().condition().parts().get(0).sign();
    boolean leftIsDemand = sign == Sign.AT_MOST || sign == Sign.LESS;
    String unit = require.unit().symbol();
    String left = with(require.leftNumber(), unit);
    String right = with(require.rightNumber(), unit);
    return new KeyFigure(
        require.meaning(), leftIsDemand ? left : right, leftIsDemand ? right : left);
  }

  private static String with(String number, String unit) {
    return unit.isEmpty() || unit.equals("°") ? number + unit : number + " " + unit;
  }
}
