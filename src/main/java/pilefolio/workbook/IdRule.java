package pilefolio.workbook;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;
import pilefolio.findings.Finding;

/** Ids are given once, references name one of them, and every row is used. */
final class IdRule implements Rule {
  /** Sheets whose rows are only there to be referred to. */
  private static final List<SheetSpec> REFERRED_TO =
      List.of(GroundSheet.PROFILES, MaterialSheet.BEAMS, PlantSheet.RIGS, PlantSheet.TOOLS);

  @Override
  public void check(Book book, KnownNames names, Consumer<Finding> findings) {
    Map<String, Set<String>> ids = ids(book, findings);
    Map<String, Set<String>> used = new HashMap<>();
    for (SheetSpec spec : WorkbookSpec.SHEETS) {
      for (Column<?> column : spec.columns()) {
        if (column instanceof TextColumn text && text.role() == TextColumn.Role.REFERENCE) {
          book.rows(spec).forEach(row -> reference(row, text, ids, used, findings));
        }
      }
    }
    for (SheetSpec spec : REFERRED_TO) {
      TextColumn id = (TextColumn) spec.columns().get(0);
      for (Row row : book.rows(spec)) {
        row.find(id)
            .filter(name -> !used.getOrDefault(spec.name(), Set.of()).contains(name))
            .ifPresent(
                name ->
                    findings.accept(
                        FindingKind.UNUSED_ROW.at(
                            row.place(id),
                            id.name() + " " + name + " is used nowhere",
                            "delete the row or refer to it")));
      }
    }
  }

  private static Map<String, Set<String>> ids(Book book, Consumer<Finding> findings) {
    Map<String, Set<String>> ids = new LinkedHashMap<>();
    for (SheetSpec spec : WorkbookSpec.SHEETS) {
      if (spec.columns().get(0) instanceof TextColumn name
          && name.role() == TextColumn.Role.WORDS) {
        Set<String> met = ids.computeIfAbsent(spec.name(), sheet -> new LinkedHashSet<>());
        book.rows(spec).forEach(row -> row.find(name).ifPresent(met::add));
      }
      if (spec.columns().get(0) instanceof TextColumn id && id.role() == TextColumn.Role.ID) {
        Set<String> met = ids.computeIfAbsent(spec.name(), name -> new LinkedHashSet<>());
        Set<String> folded = new LinkedHashSet<>();
        for (Row row : book.rows(spec)) {
          row.find(id)
              .ifPresent(
                  name -> {
                    met.add(name);
                    // a and A would be one pile mark on site.
                    if (!folded.add(name.toLowerCase(Locale.ROOT))) {
                      findings.accept(
                          FindingKind.DUPLICATE_ID.at(
                              row.place(id),
                              id.name() + " " + name + " is given twice",
                              "give each row a name of its own; capitals make no difference"));
                    }
                  });
        }
      }
    }
    return ids;
  }

  private static void reference(
      Row row,
      TextColumn column,
      Map<String, Set<String>> ids,
      Map<String, Set<String>> used,
      Consumer<Finding> findings) {
    row.find(column)
        .ifPresent(
            name -> {
              used.computeIfAbsent(column.target(), sheet -> new LinkedHashSet<>()).add(name);
              Set<String> known = ids.getOrDefault(column.target(), Set.of());
              if (!known.contains(name)) {
                findings.accept(
                    FindingKind.DANGLING_REFERENCE.at(
                        row.place(column),
                        column.name() + " " + name + " is not on the sheet " + column.target(),
                        known.isEmpty()
                            ? "add it there"
                            : "add it there, or use one of: " + String.join(", ", known)));
              }
            });
  }
}
