package pilefolio.workbook;

import java.util.function.Consumer;
import pilefolio.findings.Finding;

/** Something that must hold between cells; it leaves out what could not be read. */
interface Rule {
  void check(Book book, KnownNames names, Consumer<Finding> findings);
}
