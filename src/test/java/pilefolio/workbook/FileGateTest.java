package pilefolio.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.openxml4j.opc.OPCPackage;
import org.apache.poi.openxml4j.opc.PackagePart;
import org.apache.poi.openxml4j.opc.PackagingURIHelper;
import org.apache.poi.openxml4j.opc.TargetMode;
import org.apache.poi.poifs.crypt.EncryptionInfo;
import org.apache.poi.poifs.crypt.EncryptionMode;
import org.apache.poi.poifs.crypt.Encryptor;
import org.apache.poi.poifs.filesystem.POIFSFileSystem;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.apache.poi.xssf.usermodel.XSSFWorkbookType;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Files that are no workbook, or hostile ones: each is refused with its own finding, quickly. */
class FileGateTest {
  /** The kinds tested here. */
  static final Set<FindingKind> KINDS =
      EnumSet.of(
          FindingKind.FILE_MISSING,
          FindingKind.FILE_EMPTY,
          FindingKind.FILE_TOO_LARGE,
          FindingKind.TEXT_FILE,
          FindingKind.OLD_FORMAT,
          FindingKind.OTHER_FORMAT,
          FindingKind.ENCRYPTED,
          FindingKind.DAMAGED_FILE,
          FindingKind.UNSAFE_FILE,
          FindingKind.TOO_MANY_CELLS,
          FindingKind.MACROS_IGNORED,
          FindingKind.EXTERNAL_LINKS_IGNORED);

  private static byte[] good;

  @TempDir Path folder;

  @BeforeAll
  static void build() throws IOException {
    good = TextTables.sample("ten-piles").bytes();
  }

  private static void refused(FindingKind kind, byte[] file) throws IOException {
    refused(kind, WorkbookReader.read(file, KnownNames.none()));
  }

  private static void refused(FindingKind kind, ReadResult result) {
    assertEquals(List.of(kind.code()), result.findings().stream().map(f -> f.code()).toList());
    assertTrue(result.submission().isEmpty());
  }

  @Test
  void missingFile() throws IOException {
    refused(FindingKind.FILE_MISSING, WorkbookReader.read(folder.resolve("none.xlsx")));
  }

  @Test
  void folderInPlaceOfAFile() throws IOException {
    refused(FindingKind.FILE_MISSING, WorkbookReader.read(folder));
  }

  @Test
  void emptyFile() throws IOException {
    refused(FindingKind.FILE_EMPTY, new byte[0]);
  }

  @Test
  void hugeFile() throws IOException {
    Path file = folder.resolve("huge.xlsx");
    try (RandomAccessFile out = new RandomAccessFile(file.toFile(), "rw")) {
      out.setLength(FileGate.LARGEST_FILE + 1);
    }
    refused(FindingKind.FILE_TOO_LARGE, WorkbookReader.read(file));
  }

  @Test
  void commaSeparatedText() throws IOException {
    refused(FindingKind.TEXT_FILE, "Profile;Layer\nG1;Sand\n".getBytes(StandardCharsets.UTF_8));
  }

  @Test
  void binaryWorkbook() throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (HSSFWorkbook book = new HSSFWorkbook()) {
      book.createSheet("Ground");
      book.write(bytes);
    }
    refused(FindingKind.OLD_FORMAT, bytes.toByteArray());
  }

  @Test
  void pictureAndOtherArchives() throws IOException {
    byte[] picture = new byte[200];
    picture[0] = (byte) 0x89;
    picture[1] = 'P';
    refused(FindingKind.OTHER_FORMAT, picture);
    refused(FindingKind.OTHER_FORMAT, zip("mimetype", "application/vnd.oasis.opendocument"));
    refused(FindingKind.OTHER_FORMAT, zip("notes.txt", "nothing here"));
  }

  private static byte[] zip(String name, String text) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ZipOutputStream out = new ZipOutputStream(bytes)) {
      out.putNextEntry(new ZipEntry(name));
      out.write(text.getBytes(StandardCharsets.UTF_8));
      out.closeEntry();
    }
    return bytes.toByteArray();
  }

  @Test
  void password() throws Exception {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (POIFSFileSystem system = new POIFSFileSystem()) {
      Encryptor encryptor = new EncryptionInfo(EncryptionMode.standard).getEncryptor();
      encryptor.confirmPassword("wall");
      try (OutputStream out = encryptor.getDataStream(system)) {
        out.write(good);
      }
      system.writeFilesystem(bytes);
    }
    refused(FindingKind.ENCRYPTED, bytes.toByteArray());
  }

  @Test
  void cutOff() throws IOException {
    refused(FindingKind.DAMAGED_FILE, Arrays.copyOf(good, good.length / 3));
  }

  @Test
  void archiveThatUnpacksToFarMore() throws IOException {
    refused(
        FindingKind.UNSAFE_FILE,
        changed("xl/worksheets/sheet1.xml", xml -> xml + " ".repeat(60 << 20)));
  }

  @Test
  void documentTypeThatReadsFiles() throws IOException {
    refused(
        FindingKind.UNSAFE_FILE,
        changed(
            "xl/workbook.xml",
            xml ->
                "<!DOCTYPE w [<!ENTITY x SYSTEM \"file:///etc/hostname\">]>"
                    + xml.replaceFirst("^<\\?xml[^>]*>\\s*", "")));
  }

  private static byte[] changed(String part, UnaryOperator<String> change) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    boolean met = false;
    try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(good));
        ZipOutputStream out = new ZipOutputStream(bytes)) {
      for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
        byte[] content = in.readAllBytes();
        out.putNextEntry(new ZipEntry(entry.getName()));
        if (entry.getName().equals(part)) {
          met = true;
          content =
              change
                  .apply(new String(content, StandardCharsets.UTF_8))
                  .getBytes(StandardCharsets.UTF_8);
        }
        out.write(content);
        out.closeEntry();
      }
    }
    assertTrue(met, part);
    return bytes.toByteArray();
  }

  @Test
  void moreRowsThanAnyJobNeeds() throws IOException {
    try (XSSFWorkbook book = new XSSFWorkbook(new ByteArrayInputStream(good))) {
      XSSFSheet notes = book.createSheet("Notes");
      for (int i = 0; i <= FileGate.MOST_ROWS; i++) {
        notes.createRow(i).createCell(0).setCellValue(i);
      }
      ByteArrayOutputStream bytes = new ByteArrayOutputStream();
      book.write(bytes);
      refused(FindingKind.TOO_MANY_CELLS, bytes.toByteArray());
    }
  }

  @Test
  void macrosAreIgnored() throws IOException {
    try (XSSFWorkbook book = new XSSFWorkbook(new ByteArrayInputStream(good))) {
      book.setWorkbookType(XSSFWorkbookType.XLSM);
      ByteArrayOutputStream bytes = new ByteArrayOutputStream();
      book.write(bytes);
      ReadResult result = WorkbookReader.read(bytes.toByteArray(), KnownNames.none());
      assertEquals("macros-ignored", result.findings().get(0).code());
      assertTrue(result.submission().isPresent());
    }
  }

  @Test
  void linksToOtherFilesAreIgnored() throws Exception {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (OPCPackage parts = OPCPackage.open(new ByteArrayInputStream(good))) {
      PackagePart link =
          parts.createPart(
              PackagingURIHelper.createPartName("/xl/externalLinks/externalLink1.xml"),
              "application/vnd.openxmlformats-officedocument.spreadsheetml.externalLink+xml");
      try (OutputStream out = link.getOutputStream()) {
        out.write(
            ("<externalLink xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\">"
                    + "<externalBook/></externalLink>")
                .getBytes(StandardCharsets.UTF_8));
      }
      PackagePart book = parts.getPart(PackagingURIHelper.createPartName("/xl/workbook.xml"));
      book.addRelationship(
          link.getPartName(),
          TargetMode.INTERNAL,
          "http://schemas.openxmlformats.org/officeDocument/2006/relationships/externalLink");
      parts.save(bytes);
    }
    ReadResult result = WorkbookReader.read(bytes.toByteArray(), KnownNames.none());
    assertEquals("external-links-ignored", result.findings().get(0).code());
    assertTrue(result.submission().isPresent());
  }
}
