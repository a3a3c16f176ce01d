package pilefolio.output.pdf;

import java.util.List;
import java.util.stream.Collectors;

/** A document was not written because something on it would have been lost or wrong. */
public final class PrintFaultException extends RuntimeException {
  private static final long serialVersionUID = 1L;
  private static final int SHOWN = 20;

  private final transient List<PrintFault> faults;

  /** Tells all faults. */
  public PrintFaultException(List<PrintFault> faults) {
    super(message(faults));
    this.faults = List.copyOf(faults);
  }

  /** All faults found, in the order of the document. */
  public List<PrintFault> faults() {
    return faults;
  }

  private static String message(List<PrintFault> faults) {
    String listed =
        faults.stream().limit(SHOWN).map(PrintFault::toString).collect(Collectors.joining("\n  "));
    String rest = faults.size() > SHOWN ? "\n  and " + (faults.size() - SHOWN) + " more" : "";
    return "the document cannot be printed as it is:\n  " + listed + rest;
  }
}
