package pilefolio.workbook;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;
import org.apache.poi.ooxml.POIXMLException;
import org.apache.poi.openxml4j.exceptions.InvalidFormatException;
import org.apache.poi.openxml4j.exceptions.OpenXML4JRuntimeException;
import org.apache.poi.openxml4j.opc.OPCPackage;
import org.apache.poi.openxml4j.util.ZipSecureFile;
import org.apache.poi.poifs.filesystem.FileMagic;
import org.apache.poi.poifs.filesystem.POIFSFileSystem;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import pilefolio.findings.CellRef;
import pilefolio.findings.Finding;

/** Opens a workbook file and refuses what is none, or what would exhaust the machine. */
final class FileGate {
  /** Largest file, bytes. Workbooks of a hundred runs have less than 1 MB. */
  static final long LARGEST_FILE = 20L << 20;

  /** Largest part of the file once unpacked, bytes. */
  private static final long LARGEST_PART = 48L << 20;

  private static final int MOST_SHEETS = 80;

  /** Last row that is read, from 1. */
  static final int MOST_ROWS = 5000;

  private static final int MOST_CELLS = 300_000;

  private static final String EXTERNAL_LINK =
      "application/vnd.openxmlformats-officedocument.spreadsheetml.externalLink+xml";

  /** The whole file. */
  static final CellRef FILE = CellRef.sheet("file");

  static {
    QuietLog.set();
    ZipSecureFile.setMaxEntrySize(LARGEST_PART);
    ZipSecureFile.setMaxFileCount(1000);
  }

  private final Consumer<Finding> findings;

  FileGate(Consumer<Finding> findings) {
    this.findings = findings;
  }

  /** The workbook; empty if a finding says why not. */
  Optional<XSSFWorkbook> open(Path file) throws IOException {
    if (!Files.isRegularFile(file)) {
      return refused(FindingKind.FILE_MISSING, "there is no file " + file, "check the path");
    }
    long size = Files.size(file);
    if (size > LARGEST_FILE) {
      return refused(
          FindingKind.FILE_TOO_LARGE,
          "the file has " + (size >> 20) + " MB",
          "a workbook of this kind has less than " + (LARGEST_FILE >> 20) + " MB; remove pictures");
    }
    return open(Files.readAllBytes(file));
  }

  Optional<XSSFWorkbook> open(byte[] bytes) throws IOException {
    if (bytes.length == 0) {
      return refused(FindingKind.FILE_EMPTY, "the file holds nothing", "save the workbook again");
    }
    FileMagic magic = FileMagic.valueOf(bytes);
    if (magic == FileMagic.OLE2) {
      return refusedBinary(bytes);
    }
    if (magic != FileMagic.OOXML) {
      return isText(bytes)
          ? refused(FindingKind.TEXT_FILE, "the file is plain text", "save it as an .xlsx workbook")
          : refused(
              FindingKind.OTHER_FORMAT,
              "the file is no .xlsx workbook",
              "save it as an .xlsx workbook");
    }
    return unpack(bytes);
  }

  private Optional<XSSFWorkbook> refusedBinary(byte[] bytes) {
    try (InputStream in = new ByteArrayInputStream(bytes);
        POIFSFileSystem system = new POIFSFileSystem(in)) {
      if (system.getRoot().hasEntryCaseInsensitive("EncryptedPackage")) {
        return refused(
            FindingKind.ENCRYPTED,
            "the workbook is protected by a password",
            "save it without a password");
      }
    } catch (IOException | RuntimeException damaged) {
      return refused(
          FindingKind.DAMAGED_FILE, "the file is damaged", "save it again as an .xlsx workbook");
    }
    return refused(
        FindingKind.OLD_FORMAT,
        "the file is in the binary format of before 2007",
        "save it as an .xlsx workbook");
  }

  private static boolean isText(byte[] bytes) {
    int end = Math.min(bytes.length, 4096);
    for (int i = 0; i < end; i++) {
      if (bytes[i] == 0) {
        return false;
      }
    }
    String start = new String(bytes, 0, end, StandardCharsets.UTF_8);
    return start.chars().filter(c -> c == '\uFFFD').count() <= end / 20;
  }

  private Optional<XSSFWorkbook> unpack(byte[] bytes) {
    try {
      OPCPackage parts = OPCPackage.open(new ByteArrayInputStream(bytes));
      XSSFWorkbook book = new XSSFWorkbook(parts);
      if (book.isMacroEnabled()) {
        findings.accept(
            FindingKind.MACROS_IGNORED.at(
                FILE, "the workbook holds macros", "they are not run; save it as .xlsx"));
      }
      if (!parts.getPartsByContentType(EXTERNAL_LINK).isEmpty()) {
        findings.accept(
            FindingKind.EXTERNAL_LINKS_IGNORED.at(
                FILE,
                "the workbook refers to other files",
                "they are not opened and saved values are used; replace the links by values"));
      }
      return isTooLarge(book) ? Optional.empty() : Optional.of(book);
    } catch (InvalidFormatException | IOException | RuntimeException refusal) {
      return refused(refusal);
    }
  }

  private Optional<XSSFWorkbook> refused(Exception refusal) {
    String all = messages(refusal);
    if (all.contains("Zip bomb")
        || all.contains("exceeds the max")
        || all.contains("exceed the limit")
        || all.contains("too many")
        || all.contains("The number of files")
        || all.contains("DOCTYPE")
        || all.contains("entity")) {
      return refused(
          FindingKind.UNSAFE_FILE,
          "the file unpacks to far more than it holds, or refers to other files",
          "make a new workbook and copy the cells into it");
    }
    if (refusal instanceof POIXMLException
        || all.contains("content type")
        || all.contains("Content_Types")
        || all.contains("Package should contain")
        || all.contains("mimetype")
        || all.contains("ODF")) {
      return refused(
          FindingKind.OTHER_FORMAT,
          "the file is packed like a workbook but is none",
          "save it as an .xlsx workbook");
    }
    return refused(
        FindingKind.DAMAGED_FILE, "the file is cut off or damaged", "save the workbook again");
  }

  private static String messages(Throwable refusal) {
    StringBuilder all = new StringBuilder();
    int depth = 0;
    for (Throwable t = refusal; t != null && depth < 10; t = t.getCause(), depth++) {
      all.append(t.getMessage()).append('\n');
    }
    if (refusal instanceof OpenXML4JRuntimeException) {
      all.append("Package should contain");
    }
    return all.toString();
  }

  private boolean isTooLarge(XSSFWorkbook book) {
    if (book.getNumberOfSheets() > MOST_SHEETS) {
      findings.accept(
          FindingKind.TOO_MANY_CELLS.at(
              FILE,
              "the workbook has " + book.getNumberOfSheets() + " sheets",
              "at most " + MOST_SHEETS + " are read; remove those not needed"));
      return true;
    }
    long cells = 0;
    for (int i = 0; i < book.getNumberOfSheets(); i++) {
      XSSFSheet sheet = book.getSheetAt(i);
      for (org.apache.poi.ss.usermodel.Row row : sheet) {
        cells += row.getPhysicalNumberOfCells();
      }
      if (sheet.getPhysicalNumberOfRows() > MOST_ROWS || cells > MOST_CELLS) {
        findings.accept(
            FindingKind.TOO_MANY_CELLS.at(
                CellRef.sheet(sheet.getSheetName()),
                "the sheet has " + sheet.getPhysicalNumberOfRows() + " rows",
                "at most " + MOST_ROWS + " are read; delete rows below the table"));
        return true;
      }
    }
    return false;
  }

  private Optional<XSSFWorkbook> refused(FindingKind kind, String found, String expected) {
    findings.accept(kind.at(FILE, found, expected));
    return Optional.empty();
  }
}
