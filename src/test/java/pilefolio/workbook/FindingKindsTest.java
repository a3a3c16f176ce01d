package pilefolio.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import pilefolio.findings.Finding;

/**
 * Each kind of finding inside a workbook: the small sample with one thing spoilt, and the cell
 * where it must be reported. Kinds about the file as a whole are in {@link FileGateTest}.
 */
class FindingKindsTest {
  private static byte[] good;

  /**
   * @param kind what must be found
   * @param at where
   * @param edits what is spoilt: a cell, a bar and what is put there; or an order to a whole sheet
   */
  private record Case(FindingKind kind, String at, List<String> edits) {}

  private static Case one(FindingKind kind, String at, String... edits) {
    return new Case(kind, at, List.of(edits));
  }

  private static final List<Case> CASES =
      List.of(
          one(FindingKind.MISSING_SHEET, "Mixes", "drop sheet Mixes"),
          one(FindingKind.UNKNOWN_SHEET, "Persons", "rename sheet People to Persons"),
          one(FindingKind.HIDDEN_SHEET, "Ground", "hide sheet Ground"),
          one(FindingKind.NO_HEAD_ROW, "Rigs", "clear row Rigs!2"),
          one(FindingKind.NO_HEAD_ROW, "Calendar", "clear row Calendar!2"),
          one(FindingKind.MISSING_COLUMN, "Rigs!2", "Rigs!C2|!empty", "Rigs!C4|!empty"),
          one(FindingKind.MISSING_COLUMN, "Project", "clear row Project!3"),
          one(FindingKind.UNKNOWN_COLUMN, "Ground!E2", "Ground!E2|Top levle"),
          one(FindingKind.DUPLICATE_COLUMN, "Ground!N2", "Ground!N2|Top level"),
          one(FindingKind.DUPLICATE_COLUMN, "Project!A4", "Project!A4|Title"),
          one(FindingKind.MISSING_UNIT, "Ground!F3", "Ground!F3|!empty"),
          one(FindingKind.UNKNOWN_UNIT, "Ground!F3", "Ground!F3|kN/cbm"),
          one(FindingKind.UNIT_DOES_NOT_FIT, "Ground!F3", "Ground!F3|kN/m2"),
          one(FindingKind.UNIT_DOES_NOT_FIT, "Methods!C13", "Methods!C13|mm"),
          one(FindingKind.NO_ROWS, "Stages", "clear row Stages!4", "clear row Stages!5"),
          one(FindingKind.HIDDEN_ROW, "Ground!5", "Ground!A5|!hide row"),
          one(FindingKind.HIDDEN_ROW, "Methods!4", "Methods!A4|!hide row"),
          one(FindingKind.HIDDEN_COLUMN, "Ground!I2", "Ground!I2|!hide column"),
          one(FindingKind.MERGED_CELLS, "Ground!C4", "Ground!C4|!merge C4:C5"),
          one(FindingKind.STRAY_VALUE, "Ground!P5", "Ground!P5|ask the lab"),
          one(FindingKind.MISSING, "Ground!B5", "Ground!B5|!empty"),
          one(FindingKind.MISSING, "Project!B3", "Project!B3|!empty"),
          one(FindingKind.MISSING, "Piles!D4", "Piles!D4|!empty"),
          one(FindingKind.NOT_A_NUMBER, "Ground!F5", "Ground!F5|about 18"),
          one(FindingKind.NUMBER_AS_TEXT, "Ground!F5", "Ground!F5|'18.5 "),
          one(FindingKind.COMMA_DECIMAL, "Ground!F5", "Ground!F5|'18,5"),
          one(FindingKind.RATIO_TYPED, "Methods!B13", "Methods!B13|'1 in 150"),
          one(FindingKind.BLOWS_PER_PENETRATION, "Ground!L5", "Ground!L5|'50/3 in"),
          one(FindingKind.DATE_IN_NUMBER_CELL, "Ground!F5", "format Ground!F5 yyyy-mm-dd"),
          one(FindingKind.PERCENT_FORMAT, "Ground!F5", "format Ground!F5 0%"),
          one(FindingKind.OUT_OF_RANGE, "Ground!F5", "Ground!F5|29"),
          one(FindingKind.UNUSUAL_VALUE, "Ground!I5", "Ground!I5|43"),
          one(FindingKind.NOT_WHOLE, "Wall runs!K4", "Wall runs!K4|2.5"),
          one(FindingKind.NOT_A_CHOICE, "Ground!D5", "Ground!D5|Sandy"),
          one(FindingKind.NOT_A_DATE, "Project!B11", "Project!B11|'1.3.2027"),
          one(FindingKind.NOT_A_DATE, "Project!B11", "Project!B11|20270301"),
          one(FindingKind.DATE_AS_TEXT, "Project!B11", "Project!B11|'2027-03-01"),
          one(
              FindingKind.NOT_TEXT,
              "Beams!A5",
              "Beams!A5|1.1",
              "Beams!B5|HEB 200",
              "Beams!C5|S355",
              "Beams!D5|355"),
          one(FindingKind.STRAY_SPACES, "Wall runs!Q4", "Wall runs!Q4|'R1 "),
          one(FindingKind.CONTROL_CHARACTER, "Project!B3", "Project!B3|'Pit\u200B"),
          one(FindingKind.TEXT_TOO_LONG, "Project!B3", "Project!B3|" + "Pit ".repeat(70)),
          one(FindingKind.BAD_ID, "Beams!A4", "Beams!A4|#1", "Piles!F5|!empty", "Piles!F7|!empty"),
          one(FindingKind.FORMULA_WITHOUT_VALUE, "Ground!F5", "Ground!F5|=37/2"),
          one(FindingKind.FORMULA_VALUE_DIFFERS, "Ground!F5", "Ground!F5|=37/2 -> 18"),
          one(FindingKind.FORMULA_NOT_CHECKED, "Ground!F5", "Ground!F5|=RAND()*0+18.5 -> 18.5"),
          one(FindingKind.ERROR_VALUE, "Ground!F5", "Ground!F5|!error"),
          one(
              FindingKind.DUPLICATE_ID,
              "Profiles!A5",
              "Profiles!A5|g1",
              "Profiles!B5|BH2",
              "Profiles!C5|-3"),
          one(FindingKind.DANGLING_REFERENCE, "Piles!E4", "Piles!E4|F9"),
          one(
              FindingKind.UNUSED_ROW,
              "Beams!A5",
              "Beams!A5|B2",
              "Beams!B5|HEB 200",
              "Beams!C5|S355",
              "Beams!D5|355"),
          one(FindingKind.UNKNOWN_BASIS, "Methods!B3", "Methods!B3|ec7-da9"),
          one(FindingKind.UNKNOWN_TOLERANCE_SET, "Methods!B11", "Methods!B11|secant"),
          one(
              FindingKind.UNKNOWN_FACTOR,
              "Factors!A4",
              "Factors!A4|ground.fiction",
              "Factors!B4|1.3",
              "Factors!C4|Annex"),
          one(FindingKind.UNKNOWN_SECTION, "Beams!B4", "Beams!B4|HEB 245"),
          one(FindingKind.SAME_CHECKER, "Project!B13", "Project!B13|e. varga"),
          one(FindingKind.REVISION_NOT_LISTED, "Project!B9", "Project!B9|P07"),
          one(
              FindingKind.PROFILE_WITHOUT_LAYERS,
              "Profiles!A5",
              "Profiles!A5|G2",
              "Profiles!B5|BH2",
              "Profiles!C5|-3"),
          one(FindingKind.LAYERS_OUT_OF_ORDER, "Ground!E5", "Ground!E5|10"),
          one(FindingKind.BASE_ABOVE_LAYER, "Profiles!C4", "Profiles!C4|5.7"),
          one(FindingKind.GROUND_STARTS_TOO_LOW, "Wall runs!N4", "Wall runs!N4|10.5"),
          one(FindingKind.GROUND_KNOWN_TOO_SHALLOW, "Piles!D5", "Profiles!C4|1.5"),
          one(FindingKind.STRENGTH_MISSING, "Ground!I5", "Ground!I5|!empty"),
          one(FindingKind.STRENGTH_MISSING, "Ground!K5", "Ground!H5|Undrained"),
          one(FindingKind.STRENGTH_NOT_USED, "Ground!K5", "Ground!K5|60"),
          one(FindingKind.LIGHTER_BELOW_WATER, "Ground!G5", "Ground!G5|18"),
          one(FindingKind.RUN_LENGTH_UNCLEAR, "Wall runs!K4", "Wall runs!K4|!empty"),
          one(FindingKind.RUNS_COLLIDE, "Wall runs!A5", "Wall runs!G5|52.4"),
          one(FindingKind.PILES_MISSING, "Wall runs!A5", "clear row Piles!6"),
          one(FindingKind.PILES_TWICE, "Piles!B7", "Piles!A7|A"),
          one(FindingKind.SHEETS_MISSING, "Wall runs!A4", "Wall runs!C4|Sheet piles"),
          one(FindingKind.LAGGING_MISSING, "Wall runs!A4", "Wall runs!C4|Soldier beams and timber"),
          one(FindingKind.INFILL_NOT_USED, "Lagging!A4", "Lagging!A4|A"),
          one(
              FindingKind.INFILL_TWICE,
              "Sheet piles!A5",
              "Wall runs!C4|Sheet piles",
              "Sheet piles!A4|A",
              "Sheet piles!A5|A"),
          one(
              FindingKind.PILES_RUN_INTO_EACH_OTHER,
              "Wall runs!J4",
              "Wall runs!C4|Contiguous",
              "Piles!B5|Single"),
          one(FindingKind.NO_OVERLAP, "Wall runs!J4", "Wall runs!J4|760"),
          one(FindingKind.UNUSUAL_SPACING, "Wall runs!J4", "Wall runs!J4|720"),
          one(FindingKind.SECONDARY_MUCH_THINNER, "Piles!C5", "Piles!C5|590"),
          one(FindingKind.CUT_OFF_ABOVE_PLATFORM, "Wall runs!O4", "Wall runs!O4|10.1"),
          one(FindingKind.TOE_ABOVE_CUT_OFF, "Piles!D4", "Piles!D4|9.9"),
          one(FindingKind.TOE_TOO_SHALLOW, "Piles!D5", "Piles!D5|6.5", "Piles!H5|7"),
          one(FindingKind.PRIMARY_DEEPER, "Piles!D4", "Piles!D4|2.5"),
          one(FindingKind.BEAM_LEVELS_MISSING, "Piles!G5", "Piles!G5|!empty"),
          one(FindingKind.BEAM_LEVELS_WRONG, "Piles!H5", "Piles!H5|2.1"),
          one(FindingKind.BEAM_LEVELS_WRONG, "Piles!H5", "Piles!H5|9.6"),
          one(FindingKind.BEAM_LEVELS_WRONG, "Piles!G5", "Piles!G5|11.2"),
          one(
              FindingKind.LOAD_WITHOUT_BEAM,
              "Piles!J4",
              "Piles!J2|Permanent load",
              "Piles!J3|kN",
              "Piles!J4|90"),
          one(FindingKind.RUN_WITHOUT_STAGES, "Wall runs!A5", "clear row Stages!5"),
          one(FindingKind.STAGES_NOT_COUNTED, "Stages!B5", "Stages!A5|A", "Stages!B5|3"),
          one(
              FindingKind.EXCAVATION_RISES,
              "Stages!D5",
              "Stages!A5|A",
              "Stages!B5|2",
              "Stages!D5|7.9"),
          one(FindingKind.EXCAVATION_ABOVE_GROUND, "Stages!D4", "Stages!D4|10.2"),
          one(FindingKind.WATER_LEVEL_ODD, "Stages!E4", "Stages!E4|11.5"),
          one(FindingKind.WATER_LEVEL_ODD, "Stages!F4", "Stages!F4|-4.5"),
          one(FindingKind.WATER_LEVEL_ODD, "Profiles!D4", "Profiles!D4|-6"),
          one(FindingKind.WATER_HIGHER_IN_FRONT, "Stages!F4", "Stages!F4|6.9"),
          one(FindingKind.SUPPORT_NOT_IN_PLACE, "Supports!A4", "support 9.2 0"),
          one(FindingKind.SUPPORT_UNKNOWN_IN_STAGE, "Stages!I4", "Stages!I4|S9"),
          one(FindingKind.SUPPORT_LEVEL_WRONG, "Supports!C4", "Stages!I4|S1", "support 7.1 0"),
          one(FindingKind.SUPPORT_LEVEL_WRONG, "Supports!C4", "Stages!I4|S1", "support 10.9 0"),
          one(FindingKind.PROP_INCLINED, "Supports!E4", "Stages!I4|S1", "support 9.2 12"),
          one(
              FindingKind.MEMBER_TWICE,
              "Walers!A5",
              "Stages!I4|S1",
              "support 9.2 0",
              "Walers!A4|S1",
              "Walers!B4|B1",
              "Walers!A5|S1",
              "Walers!B5|B1"),
          one(
              FindingKind.MEMBER_NOT_OF_KIND,
              "Anchors!A4",
              "Stages!I4|S1",
              "support 9.2 0",
              "Anchors!A4|S1"),
          one(
              FindingKind.DANGLING_REFERENCE,
              "Struts!A4",
              "Struts!A4|S9",
              "Struts!B4|B1",
              "Struts!G4|6"),
          one(
              FindingKind.STRUT_SECTION_UNCLEAR,
              "Struts!B4",
              "Stages!I4|S1",
              "support 9.2 0",
              "Struts!A4|S1",
              "Struts!C4|508",
              "Struts!G4|6"),
          one(
              FindingKind.STRUT_SECTION_UNCLEAR,
              "Struts!B4",
              "Stages!I4|S1",
              "support 9.2 0",
              "Struts!A4|S1",
              "Struts!C4|60",
              "Struts!D4|40",
              "Struts!E4|355",
              "Struts!G4|6"),
          one(
              FindingKind.BOND_GIVEN_TWICE,
              "Anchors!M4",
              "Anchors!A4|S1",
              "Anchors!L4|145",
              "Anchors!M4|120"),
          one(FindingKind.TECHNIQUE_DIFFERS, "Wall runs!Q4", "Wall runs!D4|Cased auger"),
          one(FindingKind.TECHNIQUE_DIFFERS, "Wall runs!R4", "Wall runs!D4|Cased auger"),
          one(FindingKind.TOOL_DOES_NOT_FIT, "Piles!C6", "Piles!C6|800"),
          one(FindingKind.TOOL_SIZES_WRONG, "Tools!B4", "Tools!C4|780"),
          one(FindingKind.MIX_USED_WRONGLY, "Piles!E4", "Piles!E4|C1"),
          one(FindingKind.STRENGTH_WINDOW_EMPTY, "Mixes!N4", "Mixes!M4|1", "Mixes!N4|1.5"),
          one(FindingKind.STRENGTH_WINDOW_OPEN, "Mixes!M4", "Mixes!M4|!empty"),
          one(FindingKind.STRENGTH_CONSTANTS_MISSING, "Mixes!5", "Methods!B20|ACI 209"),
          one(
              FindingKind.RIG_WITHOUT_CREW,
              "Wall runs!Q4",
              "Crews!B4|R2",
              "Rigs!A5|R2",
              "Rigs!C5|Uncased auger"),
          one(FindingKind.SHIFT_TOO_SHORT, "Crews!D4", "Crews!D4|541"),
          one(FindingKind.START_NOT_WORKED, "Calendar!B3", "Calendar!B3|2027-04-09"),
          one(FindingKind.TRIGGERS_OUT_OF_ORDER, "Monitoring!E4", "Monitoring!E4|12"));

  private static final KnownNames NAMES =
      new KnownNames(
          Map.of("ec7-da1", Set.of("ground.friction"), "us-asd", Set.of("passive")),
          new TreeSet<>(Set.of("secant-cfa", "secant-cased-cfa")),
          Optional.of(
              new KnownNames.SectionNames() {
                @Override
                public boolean knows(String designation) {
                  return Set.of("HEB 240", "HEB 200").contains(designation);
                }

                @Override
                public boolean knowsFamily(String family) {
                  return family.equals("HEB");
                }

                @Override
                public List<String> near(String designation) {
                  return List.of("HEB 240");
                }
              }));

  @BeforeAll
  static void build() throws IOException {
    good = TextTables.sample("ten-piles").bytes();
  }

  @Test
  void theUnspoiltSampleHasNoFindings() throws IOException {
    assertEquals(List.of(), WorkbookReader.read(good, NAMES).findings());
  }

  @TestFactory
  Stream<DynamicTest> isFoundInItsCell() {
    return CASES.stream()
        .map(
            one ->
                DynamicTest.dynamicTest(one.kind().code() + " " + one.edits(), () -> check(one)));
  }

  private static void check(Case one) throws IOException {
    ReadResult result = WorkbookReader.read(spoilt(one.edits()), NAMES);
    List<Finding> found =
        result.findings().stream().filter(f -> f.code().equals(one.kind().code())).toList();
    assertTrue(
        found.stream().anyMatch(f -> f.where().address().equals(one.at())),
        () -> one.at() + " expected, but " + result.findings());
    Finding finding = found.get(0);
    assertEquals(one.kind().severity(), finding.severity());
    assertTrue(!finding.found().isBlank() && !finding.expected().isBlank());
    assertEquals(result.hasErrors(), result.submission().isEmpty());
  }

  private static XSSFWorkbook spoilt(List<String> edits) throws IOException {
    XSSFWorkbook book = new XSSFWorkbook(new ByteArrayInputStream(good));
    edits.forEach(edit -> spoil(book, edit));
    return book;
  }

  private static void spoil(XSSFWorkbook book, String edit) {
    String[] words = edit.split(" ", -1);
    if (edit.contains("|")) {
      Mistakes.spoil(
          book, edit.substring(0, edit.indexOf('|')), edit.substring(edit.indexOf('|') + 1));
    } else if (edit.startsWith("drop sheet ")) {
      book.removeSheetAt(book.getSheetIndex(words[2]));
    } else if (edit.startsWith("rename sheet ")) {
      book.setSheetName(book.getSheetIndex(words[2]), words[4]);
    } else if (edit.startsWith("hide sheet ")) {
      book.setSheetHidden(book.getSheetIndex(words[2]), true);
    } else if (edit.startsWith("format ")) {
      var style = book.createCellStyle();
      style.setDataFormat(book.createDataFormat().getFormat(words[2]));
      String[] at = words[1].split("!", -1);
      var cell = new org.apache.poi.ss.util.CellReference(at[1]);
      book.getSheet(at[0]).getRow(cell.getRow()).getCell(cell.getCol()).setCellStyle(style);
    } else if (edit.startsWith("support ")) {
      List<String> cells = List.of("S1", "Prop", words[1], "4.8", words[2], "400");
      XSSFSheet sheet = book.getSheet("Supports");
      List<String> letters = List.of("A", "B", "C", "D", "E", "F");
      for (int i = 0; i < cells.size(); i++) {
        Mistakes.spoil(book, "Supports!" + letters.get(i) + "4", cells.get(i));
      }
      assertTrue(sheet.getRow(1) != null);
    } else {
      String address = edit.substring("clear row ".length());
      XSSFSheet sheet = book.getSheet(address.substring(0, address.indexOf('!')));
      Row row = sheet.getRow(Integer.parseInt(address.substring(address.indexOf('!') + 1)) - 1);
      sheet.removeRow(row);
    }
  }

  @Test
  void everyKindHasACaseHereOrAmongTheFiles() {
    Set<FindingKind> tested = EnumSet.copyOf(FileGateTest.KINDS);
    CASES.forEach(one -> tested.add(one.kind()));
    List<FindingKind> missing = new ArrayList<>(List.of(FindingKind.values()));
    missing.removeAll(tested);
    assertEquals(List.of(), missing);
  }

  @Test
  void codesAreUniqueAndManyEnough() {
    Set<String> codes = new TreeSet<>();
    for (FindingKind kind : FindingKind.values()) {
      codes.add(kind.code());
      assertTrue(kind.meaning().length() > 10, kind.code());
    }
    assertEquals(FindingKind.values().length, codes.size());
    assertTrue(codes.size() >= 40);
  }
}
