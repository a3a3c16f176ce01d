package pilefolio.trace;

import java.util.Map;
import java.util.function.DoubleBinaryOperator;
import java.util.function.DoubleUnaryOperator;
import net.objecthunter.exp4j.ExpressionBuilder;
import net.objecthunter.exp4j.function.Function;

/** A general expression parser's opinion of the record's plain text. */
public final class Exp4j {
  private static final Function MIN = two("min", Math::min);
  private static final Function MAX = two("max", Math::max);
  private static final Function LN = one("ln", Math::log);

  private Exp4j() {}

  /** The value of a text without names. */
  public static double value(String text) {
    return value(text, Map.of());
  }

  /** The value of a text with values for its names. */
  public static double value(String text, Map<String, Double> names) {
    return new ExpressionBuilder(text)
        .functions(MIN, MAX, LN)
        .variables(names.keySet())
        .implicitMultiplication(false)
        .build()
        .setVariables(names)
        .evaluate();
  }

  private static Function two(String name, DoubleBinaryOperator op) {
    return new Function(name, 2) {
      @Override
      public double apply(double... args) {
        return op.applyAsDouble(args[0], args[1]);
      }
    };
  }

  private static Function one(String name, DoubleUnaryOperator op) {
    return new Function(name, 1) {
      @Override
      public double apply(double... args) {
        return op.applyAsDouble(args[0]);
      }
    };
  }
}
