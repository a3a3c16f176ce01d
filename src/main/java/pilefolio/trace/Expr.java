package pilefolio.trace;

import java.util.List;
import pilefolio.units.Unit;

/**
 * A formula as a tree; every reader (evaluate, print, spreadsheet, record) works on this one tree.
 */
public sealed interface Expr {

  /**
   * A number written in the formula, with its unit.
   *
   * @param value the number as written
   * @param text its digits as written
   * @param unit its unit; a plain number has {@link pilefolio.units.Units#ONE}
   */
  record Num(double value, String text, Unit unit) implements Expr {
    /** A bare 0 fits any dimension, as in max(0, p). */
    boolean isBareZero() {
      return value == 0 && unit.symbol().isEmpty();
    }
  }

  /** The number π. */
  record Pi() implements Expr {}

  /** A symbol of the sheet. */
  record Sym(String name) implements Expr {}

  /** A negated term. */
  record Neg(Expr inner) implements Expr {}

  /** A sum, difference, product or quotient. */
  record Bin(Op op, Expr left, Expr right) implements Expr {}

  /** A power. */
  record Pow(Expr base, Expr exponent) implements Expr {}

  /** A function of one or more arguments. */
  record Call(Fn fn, List<Expr> args) implements Expr {}

  /** The four operations. */
  enum Op {
    /** Sum. */
    ADD("+"),
    /** Difference. */
    SUB("−"),
    /** Product. */
    MUL("·"),
    /** Quotient. */
    DIV("/");

    private final String sign;

    Op(String sign) {
      this.sign = sign;
    }

    /** The sign as printed. */
    public String sign() {
      return sign;
    }
  }

  /** The functions of the notation. */
  enum Fn {
    /** Sine of an angle. */
    SIN,
    /** Cosine of an angle. */
    COS,
    /** Tangent of an angle. */
    TAN,
    /** Angle of a sine. */
    ASIN,
    /** Angle of a cosine. */
    ACOS,
    /** Angle of a tangent. */
    ATAN,
    /** Natural exponential. */
    EXP,
    /** Natural logarithm. */
    LN,
    /** Square root. */
    SQRT,
    /** Least of the arguments. */
    MIN,
    /** Greatest of the arguments. */
    MAX,
    /** Absolute value. */
    ABS,
    /** Next whole number upwards. */
    CEIL,
    /** Next whole number downwards. */
    FLOOR;

    /** The name as written in formulas and in the record. */
    public String lower() {
      return name().toLowerCase(java.util.Locale.ROOT);
    }

    boolean takesAngle() {
      return this == SIN || this == COS || this == TAN;
    }

    boolean givesAngle() {
      return this == ASIN || this == ACOS || this == ATAN;
    }
  }
}
