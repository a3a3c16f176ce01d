package pilefolio.workbook;

import java.io.IOException;
import java.io.UncheckedIOException;
import pilefolio.model.Submission;

/** A sample with words of its source replaced. */
public final class EditedSample {
  private String text;

  private EditedSample(String text) {
    this.text = text;
  }

  /** A sample as it stands. */
  public static EditedSample of(String name) {
    return new EditedSample(TextTables.source(name));
  }

  /** Replaces words that the source must have. */
  public EditedSample replace(String words, String others) {
    if (!text.contains(words)) {
      throw new IllegalArgumentException("the sample does not say \"" + words + "\"");
    }
    text = text.replace(words, others);
    return this;
  }

  /** What it describes. */
  public Submission submission() {
    try {
      ReadResult read = WorkbookReader.read(TextTables.parse(text).bytes(), KnownNames.none());
      return read.submission()
          .orElseThrow(() -> new IllegalArgumentException(read.findings().toString()));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
