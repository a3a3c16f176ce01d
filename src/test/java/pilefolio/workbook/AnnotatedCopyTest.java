package pilefolio.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class AnnotatedCopyTest {
  @TempDir Path folder;

  @Test
  void everyFindingStandsOnItsCellAndInTheList() throws IOException {
    Path file = folder.resolve("spoilt.xlsx");
    Files.write(file, Mistakes.workbook());
    ReadResult before = WorkbookReader.read(file);
    Path copy = folder.resolve("copy.xlsx");
    assertTrue(AnnotatedCopy.write(file, before.findings(), copy));
    try (XSSFWorkbook book = new XSSFWorkbook(Files.newInputStream(copy))) {
      XSSFCell cell = book.getSheet("Ground").getRow(3).getCell(5);
      assertTrue(cell.getCellComment().getString().getString().contains("was it entered in pcf?"));
      assertEquals(112, cell.getNumericCellValue());
      assertEquals(
          "F7C9C0", cell.getCellStyle().getFillForegroundXSSFColor().getARGBHex().substring(2));
      XSSFCell warning = book.getSheet("Ground").getRow(4).getCell(8);
      assertEquals(
          "FBE7B2", warning.getCellStyle().getFillForegroundXSSFColor().getARGBHex().substring(2));
      assertEquals("Findings", book.getSheetName(0));
      assertEquals(before.findings().size(), book.getSheet("Findings").getLastRowNum());
    }
  }

  @Test
  void theCopyReadsAsTheWorkbookDid() throws IOException {
    Path file = folder.resolve("spoilt.xlsx");
    Files.write(file, Mistakes.workbook());
    ReadResult before = WorkbookReader.read(file);
    Path copy = folder.resolve("copy.xlsx");
    AnnotatedCopy.write(file, before.findings(), copy);
    assertEquals(before.findings(), WorkbookReader.read(copy).findings());
    Path again = folder.resolve("again.xlsx");
    AnnotatedCopy.write(file, before.findings(), again);
    assertEquals(-1, Files.mismatch(copy, again));
  }

  @Test
  void whatCannotBeOpenedIsNotCopied() throws IOException {
    Path file = folder.resolve("text.xlsx");
    Files.writeString(file, "a;b;c");
    Path copy = folder.resolve("copy.xlsx");
    assertFalse(AnnotatedCopy.write(file, WorkbookReader.read(file).findings(), copy));
    assertFalse(Files.exists(copy));
  }
}
