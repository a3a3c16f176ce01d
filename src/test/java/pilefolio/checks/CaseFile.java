package pilefolio.checks;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import pilefolio.trace.Binding;
import pilefolio.trace.Binding.Row;
import pilefolio.trace.CalcSheet;
import pilefolio.trace.Calculation;
import pilefolio.trace.Source;
import pilefolio.units.Unit;
import pilefolio.units.Units;

/** A case of a check as a JSON file; see "Add a check" in DEVELOPERS.md for its shape. */
public record CaseFile(Path path, JsonNode json) {
  static final Path FOLDER = Path.of("src/test/resources/cases");
  private static final Source SOURCE = new Source.Layout("case");

  static List<CaseFile> all() {
    try (Stream<Path> files = Files.walk(FOLDER)) {
      List<CaseFile> cases = new ArrayList<>();
      for (Path path : files.filter(p -> p.toString().endsWith(".json")).sorted().toList()) {
        cases.add(new CaseFile(path, new ObjectMapper().readTree(path.toFile())));
      }
      return cases;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  String checkId() {
    return path.getParent().getFileName().toString();
  }

  String text(String field) {
    return json.path(field).asText("");
  }

  CalcSheet sheet(Check check) {
    String wanted = text("sheet");
    List<CalcSheet> fits =
        check.sheets().stream()
            .filter(sheet -> wanted.isEmpty() || sheet.title().equals(wanted))
            .toList();
    if (fits.size() != 1) {
      throw new IllegalArgumentException(
          path
              + ": \"sheet\" must name one of "
              + check.sheets().stream().map(CalcSheet::title).toList());
    }
    return fits.get(0);
  }

  /** Works the sheet out with the given values, or lets the family's solver find some of them. */
  Calculation calculate(Check check) {
    if (json.has("problem")) {
      return CaseSolvers.solve(check.id(), json.get("problem"));
    }
    Binding binding = sheet(check).bind();
    for (Map.Entry<String, JsonNode> field : json.path("given").properties()) {
      binding.set(field.getKey(), si(field.getValue().asText()), SOURCE);
    }
    for (Map.Entry<String, JsonNode> table : json.path("rows").properties()) {
      int number = 1;
      for (JsonNode cells : table.getValue()) {
        Row row = Row.of(cells.path("label").asText(String.valueOf(number++)));
        for (Map.Entry<String, JsonNode> cell : cells.properties()) {
          if (!cell.getKey().equals("label")) {
            row = row.set(cell.getKey(), si(cell.getValue().asText()), SOURCE);
          }
        }
        binding.row(table.getKey(), row);
      }
    }
    return binding.calculate();
  }

  /** A number, the unit after it, and half of its last digit. */
  record Quantity(double number, Unit unit, double halfDigit) {
    static Quantity of(String text) {
      String trimmed = text.strip().replace('−', '-');
      int end = 0;
      while (end < trimmed.length() && "+-.0123456789eE".indexOf(trimmed.charAt(end)) >= 0) {
        end++;
      }
      String digits = trimmed.substring(0, end);
      String mantissa = digits.split("[eE]", 2)[0];
      int point = mantissa.indexOf('.');
      int decimals = point < 0 ? 0 : mantissa.length() - point - 1;
      double power =
          digits.length() > mantissa.length()
              ? Integer.parseInt(digits.substring(mantissa.length() + 1))
              : 0;
      return new Quantity(
          Double.parseDouble(digits),
          Units.of(trimmed.substring(end)),
          0.5 * Math.pow(10, power - decimals));
    }
  }

  /** Coherent SI value of a number with its unit. */
  public static double si(String text) {
    Quantity quantity = Quantity.of(text);
    return quantity.unit().toSi(quantity.number());
  }
}
