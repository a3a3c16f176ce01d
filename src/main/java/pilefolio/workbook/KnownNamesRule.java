package pilefolio.workbook;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;
import pilefolio.findings.Finding;

/** Names of bases, factors, tolerance sets and sections are known to the standards data. */
final class KnownNamesRule implements Rule {
  @Override
  public void check(Book book, KnownNames names, Consumer<Finding> findings) {
    book.form(MethodsSheet.SPEC)
        .ifPresent(
            form -> {
              name(form, MethodsSheet.BASIS, names.bases(), FindingKind.UNKNOWN_BASIS, findings);
              name(
                  form,
                  MethodsSheet.TOLERANCES,
                  names.toleranceSets(),
                  FindingKind.UNKNOWN_TOLERANCE_SET,
                  findings);
              factors(book, form, names, findings);
            });
    for (Row row : book.rows(MaterialSheet.BEAMS)) {
      names.sections().ifPresent(known -> section(row, known, findings));
      family(row, names, findings);
    }
  }

  private static void factors(Book book, Row form, KnownNames names, Consumer<Finding> findings) {
    form.find(MethodsSheet.BASIS)
        .map(names.factors()::get)
        .ifPresent(
            known -> {
              for (Row row : book.rows(MethodsSheet.FACTORS)) {
                name(row, MethodsSheet.FACTOR, known, FindingKind.UNKNOWN_FACTOR, findings);
              }
            });
  }

  private static void name(
      Row row,
      TextColumn column,
      Collection<String> known,
      FindingKind kind,
      Consumer<Finding> findings) {
    if (known.isEmpty()) {
      return;
    }
    row.find(column)
        .filter(name -> !known.contains(withoutCombination(name)))
        .ifPresent(
            name ->
                findings.accept(
                    kind.at(
                        row.place(column),
                        column.name() + " \"" + name + "\" is not known",
                        advice(name, known))));
  }

  /** A factor may be set for one combination only: {@code ground.friction@DA1-2}. */
  private static String withoutCombination(String name) {
    int at = name.indexOf('@');
    return at < 0 ? name : name.substring(0, at);
  }

  private static String advice(String name, Collection<String> known) {
    Set<String> sorted = new TreeSet<>(known);
    return Nearest.to(name, sorted)
        .map(near -> "did you mean " + near + "?")
        .orElseGet(() -> "use one of: " + String.join(", ", sorted));
  }

  private static void section(Row row, KnownNames.SectionNames known, Consumer<Finding> findings) {
    row.find(MaterialSheet.SECTION)
        .filter(name -> !known.knows(name))
        .ifPresent(
            name -> {
              List<String> near = known.near(name);
              findings.accept(
                  FindingKind.UNKNOWN_SECTION.at(
                      row.place(MaterialSheet.SECTION),
                      "the section " + NumberColumn.shortened(name) + " is in no table",
                      near.isEmpty()
                          ? "use a designation such as HEB 400 or W18X97"
                          : "did you mean " + String.join(" or ", near) + "?"));
            });
  }

  /** A beam without a section needs a family to take one from. */
  private static void family(Row row, KnownNames names, Consumer<Finding> findings) {
    if (row.find(MaterialSheet.SECTION).isPresent()) {
      return;
    }
    Optional<String> family = row.find(MaterialSheet.SECTION_FAMILY);
    if (family.isEmpty()) {
      findings.accept(
          FindingKind.MISSING.at(
              row.place(MaterialSheet.SECTION),
              MaterialSheet.SECTION.name() + " is empty",
              "give a section, or the family from which the engine takes the lightest"));
    } else if (names.sections().filter(known -> !known.knowsFamily(family.get())).isPresent()) {
      findings.accept(
          FindingKind.UNKNOWN_SECTION.at(
              row.place(MaterialSheet.SECTION_FAMILY),
              "no section belongs to the family " + NumberColumn.shortened(family.get()),
              "use a family or depth class such as HEB, IPE, W14 or UC 305"));
    }
  }
}
