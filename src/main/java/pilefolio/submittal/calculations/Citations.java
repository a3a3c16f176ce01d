package pilefolio.submittal.calculations;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import pilefolio.standards.DesignBasis;
import pilefolio.submittal.Answer;
import pilefolio.submittal.Submittal;
import pilefolio.trace.CalcSheet;
import pilefolio.trace.CalcTable;
import pilefolio.trace.Calculation;
import pilefolio.trace.Element;
import pilefolio.trace.Known;
import pilefolio.trace.Reference;

/** The documents that the package cites: those of the design basis and those of every line. */
final class Citations {
  private Citations() {}

  /** A row for each document: name, how it is known, what it is used for or where it is cited. */
  static List<List<String>> of(Submittal submittal) {
    DesignBasis basis = submittal.job().basis();
    Map<String, Set<String>> places = new TreeMap<>();
    Map<String, Known> known = new LinkedHashMap<>();
    for (DesignBasis.Use use : basis.references()) {
      note(use.reference(), use.use(), places, known);
    }
    basis.factors().forEach(f -> note(f.reference(), "factors of the basis", places, known));
    for (Answer answer : submittal.answers()) {
      for (Calculation calculation : answer.result().calculations()) {
        for (Reference reference : references(calculation.sheet())) {
          note(reference, answer.number(), places, known);
        }
      }
    }
    List<List<String>> rows = new ArrayList<>();
    places.forEach(
        (document, where) ->
            rows.add(List.of(document, words(known.get(document)), String.join(", ", where))));
    return rows;
  }

  private static void note(
      Reference reference,
      String place,
      Map<String, Set<String>> places,
      Map<String, Known> known) {
    if (reference.document().isEmpty()) {
      return;
    }
    places.computeIfAbsent(reference.document(), key -> new TreeSet<>(Citations::order)).add(place);
    // A document of which one clause is cited from memory is to be confirmed.
    known.merge(reference.document(), reference.known(), (a, b) -> a.compareTo(b) >= 0 ? a : b);
  }

  /** Words before numbers, numbers of checks in their order. */
  private static int order(String a, String b) {
    Comparator<String> byNumber =
        Comparator.comparingDouble(Citations::chapter)
            .thenComparingDouble(Citations::section)
            .thenComparing(Comparator.naturalOrder());
    return byNumber.compare(a, b);
  }

  private static double chapter(String place) {
    return place.matches("\\d+\\.\\d+") ? Integer.parseInt(place.split("\\.", 2)[0]) : 0;
  }

  private static double section(String place) {
    return place.matches("\\d+\\.\\d+") ? Integer.parseInt(place.split("\\.", 2)[1]) : 0;
  }

  private static String words(Known known) {
    return switch (known) {
      case READ -> "read";
      case QUOTED -> "as quoted elsewhere; confirm";
      case MEMORY -> "in part from memory †; confirm";
      case PRACTICE, DERIVED -> "";
    };
  }

  private static List<Reference> references(CalcSheet sheet) {
    List<Reference> found = new ArrayList<>();
    for (Element element : sheet.elements()) {
      if (element instanceof Element.LineElement line) {
        found.add(line.reference());
      } else if (element instanceof Element.ChooseElement choose) {
        found.add(choose.reference());
      } else if (element instanceof Element.RequireElement require) {
        found.add(require.reference());
      } else if (element instanceof Element.TableElement table) {
        for (CalcTable.Column column : table.table().columns()) {
          if (column instanceof CalcTable.LineColumn line) {
            found.add(line.reference());
          } else if (column instanceof CalcTable.ChooseColumn choose) {
            found.add(choose.reference());
          }
        }
      }
    }
    return found;
  }
}
