package pilefolio.output.pdf;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.lowagie.text.pdf.PdfDictionary;
import com.lowagie.text.pdf.PdfName;
import com.lowagie.text.pdf.PdfObject;
import com.lowagie.text.pdf.PdfReader;
import com.lowagie.text.pdf.parser.PdfTextExtractor;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The specimen, read back from its bytes. */
class PdfRendererTest {
  private static final PdfRenderer RENDERER = new PdfRenderer(TemplateSource.shipped());
  private static RenderedPdf pdf;

  @BeforeAll
  static void render() throws IOException {
    pdf = RENDERER.render(Specimen.order(Paper.A4).stamped("DRAFT").attach(p -> attached()));
    Path out = Path.of("target", "specimen");
    Files.createDirectories(out);
    Files.write(out.resolve("specimen.pdf"), pdf.content());
  }

  private static List<Attachment> attached() {
    return List.of(
        new Attachment(
            "record.json",
            "application/json",
            "{\"a\":1}".getBytes(StandardCharsets.UTF_8),
            "Record of the calculation",
            Attachment.Relationship.DATA));
  }

  @Test
  void everyFontIsEmbedded() throws IOException {
    PdfReader reader = new PdfReader(pdf.content());
    List<String> fonts = new ArrayList<>();
    for (int i = 1; i < reader.getXrefSize(); i++) {
      PdfObject object = reader.getPdfObjectRelease(i);
      if (object instanceof PdfDictionary d
          && PdfName.FONTDESCRIPTOR.equals(d.getAsName(PdfName.TYPE))) {
        assertTrue(d.get(PdfName.FONTFILE2) != null, "not embedded: " + d);
        fonts.add(d.getAsName(PdfName.FONTNAME).toString());
      } else if (object instanceof PdfDictionary d
          && PdfName.FONT.equals(d.getAsName(PdfName.TYPE))) {
        PdfName subtype = d.getAsName(PdfName.SUBTYPE);
        assertTrue(
            PdfName.TYPE0.equals(subtype) || PdfName.CIDFONTTYPE2.equals(subtype),
            "a font without an embedded file: " + d);
      }
    }
    assertTrue(fonts.size() >= 5, fonts.toString());
    assertTrue(fonts.stream().allMatch(f -> f.contains("Liberation")), fonts.toString());
  }

  @Test
  void contentsNameThePageWhereTheHeadingStands() throws IOException {
    PdfTextExtractor text = new PdfTextExtractor(new PdfReader(pdf.content()));
    int toc = pdf.pages().pageOf("toc").orElseThrow();
    String contents = text.getTextFromPage(toc);
    Map<String, String> headings =
        Map.of(
            "c1", "Overlap of the piles",
            "c11", "Overlap at depth",
            "c12", "Thrust in the primary",
            "c2", "Piles",
            "c3", "Programme",
            "c4", "Records");
    for (Map.Entry<String, String> heading : headings.entrySet()) {
      int page = pdf.pages().pageOf(heading.getKey()).orElseThrow();
      assertTrue(
          text.getTextFromPage(page).contains(heading.getValue()),
          heading.getValue() + " on " + page);
      String entry =
          contents
              .lines()
              .filter(line -> line.contains(heading.getValue() + " ."))
              .findFirst()
              .orElse("");
      assertTrue(entry.strip().endsWith(" " + page), entry + " in " + contents);
    }
  }

  @Test
  void tableHeadRepeatsOnEachPage() throws IOException {
    PdfTextExtractor text = new PdfTextExtractor(new PdfReader(pdf.content()));
    int first = pdf.pages().pageOf("c2").orElseThrow();
    int last = pdf.pages().pageOf("c3").orElseThrow() - 1;
    assertTrue(last > first, "the long table must reach a second page");
    for (int page = first; page <= last; page++) {
      assertTrue(text.getTextFromPage(page).contains("Utilisation"), "page " + page);
    }
    String all =
        IntStream.rangeClosed(first, last)
            .mapToObj(page -> textOf(text, page))
            .reduce("", String::concat);
    assertEquals(60, all.split("satisfied", -1).length - 1, "every row once");
  }

  private static String textOf(PdfTextExtractor text, int page) {
    try {
      return text.getTextFromPage(page);
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  @ParameterizedTest
  @EnumSource(Paper.class)
  void pagesHaveTheSizeOrdered(Paper paper) throws IOException {
    RenderedPdf printed = RENDERER.render(Specimen.order(paper));
    PdfReader reader = new PdfReader(printed.content());
    int wide = printed.pages().pageOf("c3").orElseThrow();
    double pointsPerMm = 72 / 25.4;
    for (int page = 1; page <= reader.getNumberOfPages(); page++) {
      var size = reader.getPageSize(page);
      double w = page == wide ? paper.heightMm() : paper.widthMm();
      double h = page == wide ? paper.widthMm() : paper.heightMm();
      assertEquals(w * pointsPerMm, size.getWidth(), 0.5, "page " + page);
      assertEquals(h * pointsPerMm, size.getHeight(), 0.5, "page " + page);
    }
  }

  @Test
  void sameOrderGivesSameBytes() {
    PdfOrder order = Specimen.order(Paper.A4).stamped("DRAFT").attach(p -> attached());
    assertArrayEquals(pdf.content(), RENDERER.render(order).content());
  }

  @Test
  void ordersPrintedSideBySideGiveTheSameBytes() {
    PdfOrder order = Specimen.order(Paper.A4).stamped("DRAFT").attach(p -> attached());
    List<byte[]> many =
        IntStream.range(0, 6)
            .parallel()
            .mapToObj(i -> new PdfRenderer(TemplateSource.shipped()).render(order).content())
            .toList();
    many.forEach(one -> assertArrayEquals(pdf.content(), one));
  }

  @Test
  void documentSaysWhatItIs() throws IOException {
    PdfReader reader = new PdfReader(pdf.content());
    Map<String, String> info = reader.getInfo();
    assertEquals(Specimen.INFO.title(), info.get("Title"));
    assertEquals(Specimen.INFO.author(), info.get("Author"));
    assertEquals("D:20260115090000Z", info.get("CreationDate").replace("+00'00'", "Z"));
    String xmp = new String(reader.getMetadata(), StandardCharsets.UTF_8);
    assertTrue(xmp.contains("<pdfaid:part>3</pdfaid:part>"), xmp);
    assertTrue(xmp.contains("<pdfaid:conformance>U</pdfaid:conformance>"), xmp);
    assertTrue(xmp.contains(Specimen.INFO.title()), xmp);
    assertTrue(reader.getCatalog().get(new PdfName("AF")) != null, "associated files");
    assertTrue(reader.getCatalog().get(PdfName.OUTLINES) != null, "bookmarks");
  }

  @Test
  void attachmentIsAskedForWithThePagesKnown() {
    List<Integer> seen = new ArrayList<>();
    RENDERER.render(
        Specimen.order(Paper.A4)
            .attach(
                pages -> {
                  seen.add(pages.pageOf("c2").orElseThrow());
                  seen.add(pages.pageCount());
                  return List.of();
                }));
    assertEquals(List.of(pdf.pages().pageOf("c2").orElseThrow(), pdf.pages().pageCount()), seen);
  }
}
