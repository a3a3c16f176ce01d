package pilefolio.workbook;

import java.util.List;

/** The sheets of the workbook in their order. */
public final class WorkbookSpec {
  /** Every sheet the reader reads. */
  public static final List<SheetSpec> SHEETS =
      List.of(
          ProjectSheet.SPEC,
          MethodsSheet.SPEC,
          MethodsSheet.FACTORS,
          GroundSheet.PROFILES,
          GroundSheet.LAYERS,
          WallSheet.RUNS,
          WallSheet.PILES,
          InfillSheet.SHEETS,
          InfillSheet.LAGGING,
          StageSheet.STAGES,
          StageSheet.SUPPORTS,
          MemberSheet.STRUTS,
          MemberSheet.WALERS,
          MemberSheet.ANCHORS,
          MemberSheet.FOOTINGS,
          MemberSheet.BLOCKS,
          LoadSheet.SPEC,
          MaterialSheet.BEAMS,
          MaterialSheet.MIXES,
          PlantSheet.RIGS,
          PlantSheet.TOOLS,
          WorksSheet.SUPPLY,
          WorksSheet.CREWS,
          WorksSheet.CALENDAR,
          WorksSheet.DAYS_OFF,
          SurroundingsSheet.NEIGHBOURS,
          SurroundingsSheet.MONITORING,
          SurroundingsSheet.PEOPLE,
          SurroundingsSheet.REVISIONS);

  /** Sheets for people, which the reader leaves alone. */
  static final List<String> NOT_READ = List.of("Read me", "Lists", "Findings", "Notes");

  /** A row whose first cell begins so is an example. */
  static final String EXAMPLE = "e.g.";

  /** Heads of the columns of a form. */
  static final String ITEM = "Item";

  static final String VALUE = "Value";
  static final String UNIT = "Unit";

  private WorkbookSpec() {}
}
