package pilefolio.output.json;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import java.util.function.UnaryOperator;
import pilefolio.output.json.RecordLine.Side;
import pilefolio.trace.CalcTable.CarriedColumn;
import pilefolio.trace.CalcTable.ChooseColumn;
import pilefolio.trace.CalcTable.Column;
import pilefolio.trace.CalcTable.Kind;
import pilefolio.trace.CalcTable.LineColumn;
import pilefolio.trace.CalcTable.Total;
import pilefolio.trace.Calculation;
import pilefolio.trace.Calculation.ChooseEntry;
import pilefolio.trace.Calculation.Entry;
import pilefolio.trace.Calculation.FoundEntry;
import pilefolio.trace.Calculation.GivenEntry;
import pilefolio.trace.Calculation.LineEntry;
import pilefolio.trace.Calculation.RequireEntry;
import pilefolio.trace.Calculation.RowValues;
import pilefolio.trace.Calculation.TableEntry;
import pilefolio.trace.Condition;
import pilefolio.trace.Condition.Comparison;
import pilefolio.trace.Condition.Sign;
import pilefolio.trace.Element.Case;
import pilefolio.trace.Expr.Fn;
import pilefolio.trace.ExpressionText;
import pilefolio.trace.Formula;
import pilefolio.trace.Printer;
import pilefolio.units.DisplaySystem;
import pilefolio.units.Unit;

/** Writes the calculations of one check as lines of plain text. */
final class RecordLines {
  private final DisplaySystem system;
  private final RecordNames names = new RecordNames();
  private final List<RecordLine> lines = new ArrayList<>();
  private Calculation calculation;
  private Map<String, String> nameOf;

  private RecordLines(DisplaySystem system) {
    this.system = system;
  }

  /** Every line of the calculations, in order. */
  static List<RecordLine> of(List<Calculation> calculations, DisplaySystem system) {
    RecordLines record = new RecordLines(system);
    for (Calculation calculation : calculations) {
      record.add(calculation);
    }
    return record.lines;
  }

  private void add(Calculation next) {
    calculation = next;
    nameOf = new HashMap<>();
    for (Entry entry : next.entries()) {
      if (entry instanceof GivenEntry e) {
        number("given", e.element().symbol(), e.element().unit(), e.element().meaning())
            .value(e.given().si())
            .source(e.given().source().text())
            .add();
      } else if (entry instanceof FoundEntry e) {
        number("found", e.element().symbol(), e.element().unit(), e.element().meaning())
            .value(e.given().si())
            .source(e.element().method())
            .add();
      } else if (entry instanceof LineEntry e) {
        number("line", e.element().symbol(), e.element().unit(), e.element().meaning())
            .value(e.value())
            .formula(e.element().formula(), nameOf::get, this::value)
            .source(e.element().reference().text())
            .add();
      } else if (entry instanceof ChooseEntry e) {
        number("choice", e.element().symbol(), e.element().unit(), e.element().meaning())
            .value(e.value())
            .taken(e.taken(), nameOf::get, this::value)
            .source(e.element().reference().text())
            .add();
      } else if (entry instanceof TableEntry e) {
        table(e);
      } else if (entry instanceof RequireEntry e) {
        require(e);
      }
    }
  }

  private double value(String symbol) {
    return calculation.values().get(symbol);
  }

  private Draft number(String kind, String symbol, Unit declared, String meaning) {
    String name = names.take(symbol);
    nameOf.put(symbol, name);
    return new Draft(kind, name, symbol, system.of(declared), meaning);
  }

  private void table(TableEntry entry) {
    List<Map<String, String>> cells = new ArrayList<>();
    for (int index = 0; index < entry.rows().size(); index++) {
      RowValues row = entry.rows().get(index);
      Map<String, String> here = new HashMap<>();
      UnaryOperator<String> name =
          symbol -> here.containsKey(symbol) ? here.get(symbol) : nameOf.get(symbol);
      ToDoubleFunction<String> si =
          symbol -> here.containsKey(symbol) ? row.values().get(symbol) : value(symbol);
      for (Column column : entry.table().columns()) {
        String symbol = column.symbol();
        String own = names.take(symbol, index + 1);
        Draft draft =
            new Draft("cell", own, symbol, system.of(column.unit()), column.meaning())
                .value(row.values().get(symbol));
        draft.row = row.label();
        if (column instanceof LineColumn line) {
          draft.formula(line.formula(), name, si).source(line.reference().text());
        } else if (column instanceof ChooseColumn choose) {
          draft.taken(row.taken().get(symbol), name, si).source(choose.reference().text());
        } else if (column instanceof CarriedColumn carried) {
          draft.formula =
              index == 0 ? nameOf.get(carried.first()) : cells.get(index - 1).get(carried.from());
          draft.source("row above");
        } else {
          draft.source(row.sources().get(symbol).text());
        }
        draft.add();
        here.put(symbol, own);
      }
      cells.add(here);
    }
    for (Total total : entry.table().totals()) {
      total(entry, total, cells);
    }
  }

  private void total(TableEntry entry, Total total, List<Map<String, String>> cells) {
    Draft draft = number("total", total.symbol(), total.unit(), total.meaning());
    draft.value(entry.totals().get(total.symbol()));
    draft.formula =
        joined(total.kind(), cells.stream().map(row -> row.get(total.column())).toList());
    draft.substituted =
        joined(
            total.kind(),
            entry.rows().stream()
                .map(row -> ExpressionText.number(row.values().get(total.column())))
                .toList());
    draft.source(entry.table().caption()).add();
  }

  private static String joined(Kind kind, List<String> terms) {
    return switch (kind) {
      case SUM -> ExpressionText.sum(terms);
      case LARGEST -> ExpressionText.extreme(Fn.MAX, terms);
      case SMALLEST -> ExpressionText.extreme(Fn.MIN, terms);
    };
  }

  /**
   * A requirement is recorded as its margin, capacity less demand: negative if it does not hold.
   */
  private void require(RequireEntry entry) {
    Comparison comparison = entry.element().condition().parts().get(0);
    Sign sign = comparison.sign();
    Side left = side("left", comparison.left(), entry.left(), entry);
    Side right = side("right", comparison.right(), entry.right(), entry);
    boolean leftIsDemand = sign == Sign.AT_MOST || sign == Sign.LESS;
    Side demand = leftIsDemand ? left : right;
    Side capacity = leftIsDemand ? right : left;
    Unit unit = new Printer(system).unit(entry, calculation.sheet());
    Draft draft = new Draft("requirement", names.take("margin"), "", unit, "");
    draft.meaning = entry.element().meaning();
    draft.formula = "(" + capacity.formula() + ") - (" + demand.formula() + ")";
    draft.substituted = "(" + capacity.substituted() + ") - (" + demand.substituted() + ")";
    draft.si = capacity.si() - demand.si();
    draft.sides = List.of(left, right);
    draft.source(entry.element().reference().text()).add();
  }

  private Side side(String name, Formula formula, double si, RequireEntry entry) {
    return new Side(
        name,
        ExpressionText.withNames(formula, nameOf::get),
        ExpressionText.withNumbers(formula, this::value),
        si,
        entry.element().condition().parts().get(0).sign(),
        entry.satisfied());
  }

  /** A line in the making; without a formula it is a plain number. */
  private final class Draft {
    private final String kind;
    private final String name;
    private final String symbol;
    private final Unit unit;
    private String meaning;
    private double si;
    private String formula;
    private String substituted;
    private String source = "";
    private String row = "";
    private String condition = "";
    private List<Side> sides = List.of();

    Draft(String kind, String name, String symbol, Unit unit, String meaning) {
      this.kind = kind;
      this.name = name;
      this.symbol = symbol;
      this.unit = unit;
      this.meaning = meaning;
    }

    Draft value(double coherent) {
      si = coherent + 0.0;
      formula = ExpressionText.number(coherent);
      substituted = formula;
      return this;
    }

    Draft formula(
        Formula of, UnaryOperator<String> nameOfSymbol, ToDoubleFunction<String> siOfSymbol) {
      formula = ExpressionText.withNames(of, nameOfSymbol);
      substituted = ExpressionText.withNumbers(of, siOfSymbol);
      return this;
    }

    Draft taken(Case of, UnaryOperator<String> nameOfSymbol, ToDoubleFunction<String> siOfSymbol) {
      condition = condition(of.condition(), nameOfSymbol);
      return formula(of.formula(), nameOfSymbol, siOfSymbol);
    }

    Draft source(String words) {
      source = words;
      return this;
    }

    void add() {
      lines.add(
          new RecordLine(
              kind,
              name,
              symbol,
              meaning,
              calculation.sheet().title(),
              row,
              formula,
              substituted,
              si,
              unit,
              source,
              condition,
              sides));
    }
  }

  private static String condition(Condition condition, UnaryOperator<String> name) {
    if (condition == null) {
      return "otherwise";
    }
    List<String> parts = new ArrayList<>();
    for (Comparison part : condition.parts()) {
      parts.add(
          ExpressionText.withNames(part.left(), name)
              + " "
              + ascii(part.sign())
              + " "
              + ExpressionText.withNames(part.right(), name));
    }
    return String.join(" and ", parts);
  }

  static String ascii(Sign sign) {
    return switch (sign) {
      case AT_MOST -> "<=";
      case AT_LEAST -> ">=";
      case LESS -> "<";
      case MORE -> ">";
    };
  }
}
