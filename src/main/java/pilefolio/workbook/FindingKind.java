package pilefolio.workbook;

import static pilefolio.findings.Severity.ERROR;
import static pilefolio.findings.Severity.WARNING;

import pilefolio.findings.CellRef;
import pilefolio.findings.Finding;
import pilefolio.findings.Severity;

/** Every kind of finding the reader knows. Codes are stable: scripts and notes refer to them. */
public enum FindingKind {
  // The file as a whole.
  FILE_MISSING(ERROR, "there is no such file"),
  FILE_EMPTY(ERROR, "the file holds nothing"),
  FILE_TOO_LARGE(ERROR, "the file is larger than a workbook of this kind can be"),
  TEXT_FILE(ERROR, "the file is text, such as CSV"),
  OLD_FORMAT(ERROR, "the workbook is in the binary format of before 2007"),
  OTHER_FORMAT(ERROR, "the file is something else than an .xlsx workbook"),
  ENCRYPTED(ERROR, "the workbook is protected by a password"),
  DAMAGED_FILE(ERROR, "the file is cut off or damaged"),
  UNSAFE_FILE(ERROR, "the file is built to exhaust the machine or to read other files"),
  TOO_MANY_CELLS(ERROR, "a sheet is larger than any job needs"),
  MACROS_IGNORED(WARNING, "the workbook holds macros; they are not run"),
  EXTERNAL_LINKS_IGNORED(WARNING, "the workbook refers to other files; they are not opened"),
  // Sheets and heads.
  MISSING_SHEET(ERROR, "a sheet that is needed is not there"),
  UNKNOWN_SHEET(WARNING, "a sheet is not known and is not read"),
  HIDDEN_SHEET(WARNING, "a sheet is hidden; it is read all the same"),
  NO_HEAD_ROW(ERROR, "the row with the names of the columns is not found"),
  MISSING_COLUMN(ERROR, "a column that is needed is not there"),
  UNKNOWN_COLUMN(ERROR, "a column or item is not known"),
  DUPLICATE_COLUMN(ERROR, "a column or item stands there twice"),
  MISSING_UNIT(ERROR, "a column of numbers has no unit"),
  UNKNOWN_UNIT(ERROR, "a unit is not known"),
  UNIT_DOES_NOT_FIT(ERROR, "a unit is of another kind than the column"),
  NO_ROWS(ERROR, "a sheet that is needed has no rows"),
  HIDDEN_ROW(WARNING, "a row is hidden; it is read all the same"),
  HIDDEN_COLUMN(WARNING, "a column is hidden; it is read all the same"),
  MERGED_CELLS(ERROR, "cells are merged"),
  STRAY_VALUE(WARNING, "something stands outside the table and is not read"),
  // Single cells.
  MISSING(ERROR, "a cell that is needed is empty"),
  NOT_A_NUMBER(ERROR, "a number cell holds text"),
  NUMBER_AS_TEXT(WARNING, "a number is stored as text"),
  COMMA_DECIMAL(ERROR, "a number is written with a comma"),
  RATIO_TYPED(ERROR, "a ratio such as 1:200 stands where its second number is wanted"),
  BLOWS_PER_PENETRATION(ERROR, "a refusal such as 50/75 mm stands where a count is wanted"),
  DATE_IN_NUMBER_CELL(ERROR, "a number cell holds a date or a time"),
  PERCENT_FORMAT(ERROR, "a cell is formatted as per cent where no ratio is wanted"),
  OUT_OF_RANGE(ERROR, "a number cannot be right"),
  UNUSUAL_VALUE(WARNING, "a number is unusual"),
  NOT_WHOLE(ERROR, "a count is not a whole number"),
  NOT_A_CHOICE(ERROR, "an answer is none of the choices"),
  NOT_A_DATE(ERROR, "a date cell holds something else"),
  DATE_AS_TEXT(WARNING, "a date is stored as text"),
  NOT_TEXT(WARNING, "a text cell holds a number"),
  STRAY_SPACES(WARNING, "spaces stand before or after a text"),
  CONTROL_CHARACTER(ERROR, "a text holds characters that cannot be printed"),
  TEXT_TOO_LONG(ERROR, "a text is too long to be printed where it belongs"),
  BAD_ID(ERROR, "an id holds characters that pile marks cannot have"),
  FORMULA_WITHOUT_VALUE(ERROR, "a formula was never calculated"),
  FORMULA_VALUE_DIFFERS(ERROR, "the saved value of a formula is not what it gives"),
  FORMULA_NOT_CHECKED(WARNING, "the saved value of a formula could not be checked"),
  ERROR_VALUE(ERROR, "a formula ended in an error"),
  // Rows against each other.
  DUPLICATE_ID(ERROR, "an id is given twice"),
  DANGLING_REFERENCE(ERROR, "a name refers to nothing"),
  UNUSED_ROW(WARNING, "nothing refers to a row"),
  UNKNOWN_BASIS(ERROR, "the design basis is not known"),
  UNKNOWN_TOLERANCE_SET(ERROR, "the set of tolerances is not known"),
  UNKNOWN_FACTOR(ERROR, "the design basis has no such factor"),
  UNKNOWN_SECTION(ERROR, "the section is in no table"),
  SAME_CHECKER(WARNING, "the same person prepares and checks"),
  REVISION_NOT_LISTED(WARNING, "the revision of the job is not in the list of revisions"),
  PROFILE_WITHOUT_LAYERS(ERROR, "a ground profile has no layers"),
  LAYERS_OUT_OF_ORDER(ERROR, "layers do not follow each other downwards"),
  BASE_ABOVE_LAYER(ERROR, "the ground is known to a level above a layer"),
  GROUND_STARTS_TOO_LOW(ERROR, "the first layer begins below the ground behind the wall"),
  GROUND_KNOWN_TOO_SHALLOW(WARNING, "the ground is not known deep enough below the toe"),
  STRENGTH_MISSING(ERROR, "a layer lacks the strength its drainage needs"),
  STRENGTH_NOT_USED(WARNING, "a layer has a strength its drainage does not use"),
  LIGHTER_BELOW_WATER(ERROR, "a layer is lighter below water than above"),
  RUN_LENGTH_UNCLEAR(ERROR, "a run has neither a count of secondaries nor a length, or both"),
  RUNS_COLLIDE(WARNING, "piles of two runs stand in the same place"),
  PILES_MISSING(ERROR, "a run lacks its primaries or its secondaries"),
  PILES_TWICE(ERROR, "a run has its primaries or its secondaries twice"),
  SHEETS_MISSING(ERROR, "a run of sheet piles lacks its sheet piles"),
  LAGGING_MISSING(WARNING, "a run of soldier beams lacks its lagging"),
  INFILL_TWICE(ERROR, "a run has its sheet piles or its lagging twice"),
  INFILL_NOT_USED(WARNING, "sheet piles or lagging belong to a run that has none"),
  PILES_RUN_INTO_EACH_OTHER(ERROR, "single piles overlap as set out"),
  NO_OVERLAP(ERROR, "neighbouring piles do not overlap as set out"),
  UNUSUAL_SPACING(WARNING, "the spacing is unusual for the diameter"),
  SECONDARY_MUCH_THINNER(WARNING, "secondaries are much thinner than primaries"),
  CUT_OFF_ABOVE_PLATFORM(ERROR, "piles are cut off above the working platform"),
  TOE_ABOVE_CUT_OFF(ERROR, "the toe of a pile is above its cut-off"),
  TOE_TOO_SHALLOW(ERROR, "secondaries end less than a metre below the excavation"),
  PRIMARY_DEEPER(WARNING, "primaries are deeper than secondaries"),
  BEAM_LEVELS_MISSING(ERROR, "a beam has no level of its top"),
  BEAM_LEVELS_WRONG(ERROR, "the levels of a beam do not fit its pile"),
  LOAD_WITHOUT_BEAM(WARNING, "a loaded pile has no beam"),
  RUN_WITHOUT_STAGES(ERROR, "a run has no construction stages"),
  STAGES_NOT_COUNTED(ERROR, "stages of a run are not numbered 1, 2, 3 and so on"),
  EXCAVATION_RISES(WARNING, "the excavation is higher than in the stage before"),
  EXCAVATION_ABOVE_GROUND(ERROR, "the excavation is above the ground behind the wall"),
  WATER_LEVEL_ODD(ERROR, "a water level cannot be right"),
  WATER_HIGHER_IN_FRONT(WARNING, "the water stands higher in front of the wall than behind"),
  SUPPORT_NOT_IN_PLACE(WARNING, "a run has a support that is never in place"),
  SUPPORT_UNKNOWN_IN_STAGE(ERROR, "a stage has a support in place, but the run has none"),
  SUPPORT_LEVEL_WRONG(ERROR, "the level of a support does not fit the wall or its stages"),
  PROP_INCLINED(WARNING, "a prop is inclined or an anchor is level"),
  MEMBER_TWICE(ERROR, "a support is said twice to consist of something"),
  MEMBER_NOT_OF_KIND(ERROR, "what a support consists of does not suit its kind"),
  STRUT_SECTION_UNCLEAR(ERROR, "a strut is neither a beam nor a whole tube"),
  BOND_GIVEN_TWICE(ERROR, "an anchor has two values of its bond"),
  TECHNIQUE_DIFFERS(ERROR, "rig or tool do not suit the technique of a run"),
  TOOL_DOES_NOT_FIT(ERROR, "the tool does not bore the diameter of the piles"),
  TOOL_SIZES_WRONG(ERROR, "stem, auger and casing of a tool do not go into each other"),
  MIX_USED_WRONGLY(WARNING, "a mix is used for piles it is not meant for"),
  STRENGTH_WINDOW_EMPTY(ERROR, "no strength lies between standing and cutting limit"),
  STRENGTH_WINDOW_OPEN(WARNING, "a primary mix lacks its standing or cutting limit"),
  STRENGTH_CONSTANTS_MISSING(ERROR, "the strength model lacks its constants"),
  RIG_WITHOUT_CREW(ERROR, "a rig has no crew"),
  SHIFT_TOO_SHORT(ERROR, "start, stop and breaks take the whole shift"),
  START_NOT_WORKED(WARNING, "the first working day is not worked"),
  TRIGGERS_OUT_OF_ORDER(ERROR, "the red trigger is not beyond the amber one");

  private final Severity severity;
  private final String meaning;

  FindingKind(Severity severity, String meaning) {
    this.severity = severity;
    this.meaning = meaning;
  }

  /** Stable name, such as {@code out-of-range}. */
  public String code() {
    return name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
  }

  /** How much it matters. */
  public Severity severity() {
    return severity;
  }

  /** What it means, in words. */
  public String meaning() {
    return meaning;
  }

  /** A finding of this kind. */
  Finding at(CellRef where, String found, String expected) {
    return new Finding(severity, code(), where, found, expected);
  }
}
