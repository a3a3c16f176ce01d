package pilefolio.workbook;

import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import pilefolio.findings.Finding;

/** Document control: two pairs of eyes, and a revision that is listed. */
final class ControlRule implements Rule {
  @Override
  public void check(Book book, KnownNames names, Consumer<Finding> findings) {
    book.form(ProjectSheet.SPEC).ifPresent(form -> check(form, book, findings));
  }

  private static void check(Row form, Book book, Consumer<Finding> findings) {
    Optional<String> author = form.find(ProjectSheet.PREPARED_BY).map(ControlRule::plain);
    Optional<String> checker = form.find(ProjectSheet.CHECKED_BY).map(ControlRule::plain);
    if (checker.isPresent() && checker.equals(author)) {
      findings.accept(
          FindingKind.SAME_CHECKER.at(
              form.place(ProjectSheet.CHECKED_BY),
              "the person who prepares also checks",
              "name somebody else, or leave it empty until somebody is found"));
    }
    if (book.rows(SurroundingsSheet.REVISIONS).isEmpty()) {
      return;
    }
    form.find(ProjectSheet.REVISION)
        .filter(
            mark -> book.where(SurroundingsSheet.REVISIONS, SurroundingsSheet.MARK, mark).isEmpty())
        .ifPresent(
            mark ->
                findings.accept(
                    FindingKind.REVISION_NOT_LISTED.at(
                        form.place(ProjectSheet.REVISION),
                        "the revision " + mark + " is not on the sheet Revisions",
                        "add a row there that tells what changed")));
  }

  private static String plain(String name) {
    return name.replaceAll("\\s+", " ").toLowerCase(Locale.ROOT);
  }
}
