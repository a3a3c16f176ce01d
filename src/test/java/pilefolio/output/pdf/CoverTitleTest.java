package pilefolio.output.pdf;

import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The cover has wider margins than other pages; titles about as wide as its line must still break.
 */
class CoverTitleTest {
  @ParameterizedTest
  @ValueSource(
      strings = {
        "River Street pump station, riverside",
        "River Street pump station, riverside wal",
        "River Street pump station, riverside wall",
        "River Street pump station, riverside walls"
      })
  void aTitleOfAnyLengthFits(String title) {
    String cover = "<div class=\"cover\"><div class=\"name\">" + title + "</div></div>";
    assertTrue(
        new PdfRenderer(TemplateSource.shipped()).render(Specimen.small(cover)).content().length
            > 0);
  }
}
