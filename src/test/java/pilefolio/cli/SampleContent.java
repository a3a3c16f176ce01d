package pilefolio.cli;

import java.nio.file.Path;
import pilefolio.submittal.Submittal;

/** Lets the benchmark reach the content of a sample's package. */
public final class SampleContent {
  private SampleContent() {}

  /** The content of a workbook's package. */
  public static Submittal of(Path workbook) {
    return Samples.submittal(workbook);
  }
}
