package pilefolio.workbook;

import static pilefolio.workbook.ChoiceColumn.choice;
import static pilefolio.workbook.NumberColumn.number;
import static pilefolio.workbook.TextColumn.id;
import static pilefolio.workbook.TextColumn.reference;
import static pilefolio.workbook.TextColumn.words;

import java.util.List;
import java.util.Optional;
import pilefolio.model.AxialLoad;
import pilefolio.model.BeamInPile;
import pilefolio.model.BeamsInGround;
import pilefolio.model.PassiveWidthRule;
import pilefolio.model.PileKind;
import pilefolio.model.PileSpec;
import pilefolio.model.RunAnalysis;
import pilefolio.model.RunLevels;
import pilefolio.model.RunLine;
import pilefolio.model.SettlementForecast;
import pilefolio.model.SettlementShape;
import pilefolio.model.Technique;
import pilefolio.model.Value;
import pilefolio.model.WallRun;
import pilefolio.model.WallType;
import pilefolio.units.Units;

/** The tables of wall runs and of their piles. */
final class WallSheet {
  static final TextColumn RUN_ID =
      id("Run", "Short name; pile marks begin with it, as in A-P07.", "A");
  static final TextColumn DESCRIPTION =
      words("Description", "Where it stands.", "Along the northern boundary");
  static final ChoiceColumn<WallType> TYPE =
      choice(
              "Wall type",
              WallType.class,
              "What the wall consists of; secant walls by the strength of their primaries.")
          .required()
          .such(WallType.HARD_FIRM);
  static final ChoiceColumn<Technique> TECHNIQUE =
      choice("Technique", Technique.class, "How the piles or beams are put in.")
          .required()
          .such(Technique.CASED_AUGER);
  static final ChoiceColumn<Boolean> PERMANENT =
      ChoiceColumn.of(
              "Service",
              List.of(false, true),
              permanent -> permanent ? "Permanent" : "Temporary",
              "Whether the wall stays in service after the works.")
          .standard(false);
  static final ChoiceColumn<Boolean> GUIDE_WALL =
      ChoiceColumn.yesNo("Guide wall", "Whether piles are bored through a guide wall.")
          .standard(true);
  static final NumberColumn EAST =
      number("Start east", "m", "Easting of the centre of the first pile.")
          .hard(-1e7, 1e7)
          .required()
          .such("100");
  static final NumberColumn NORTH =
      number("Start north", "m", "Northing of the centre of the first pile.")
          .hard(-1e7, 1e7)
          .required()
          .such("200");
  static final NumberColumn BEARING =
      number("Bearing", "°", "Direction of the run, clockwise from north.")
          .hard(0, 360)
          .required()
          .such("90");
  static final NumberColumn SPACING =
      number(
              "Spacing",
              "mm",
              "Centre to centre of a primary and the next secondary, not of two primaries; of two piles"
                  + " or beams of a wall without primaries; width of one sheet pile. Empty for soldier"
                  + " beams: the engine takes the widest that passes every check.")
          .hard(100, 5000)
          .usual(300, 3000)
          .sized()
          .such("700");
  static final NumberColumn SECONDARIES =
      number("Secondaries", "", "Count of secondaries of a secant wall; there is one primary more.")
          .hard(1, 2000)
          .count()
          .such("20");
  static final NumberColumn LENGTH =
      number(
              "Run length",
              "m",
              "Instead of the count: length between the centres of the end piles.")
          .hard(0.5, 2000)
          .such("28");
  static final TextColumn PROFILE =
      reference("Profile", "Profiles", "Ground profile along the run.", "G1").required();
  static final NumberColumn PLATFORM =
      Levels.level("Platform level", "Level of the working platform.").required().such("6.0");
  static final NumberColumn RETAINED =
      Levels.level("Ground level behind", "Ground level behind the wall.").required().such("6.0");
  static final NumberColumn CUT_OFF =
      Levels.level("Cut-off level", "Level to which piles are trimmed.").required().such("5.2");
  static final NumberColumn BATTER =
      number("Batter, 1 in", "", "n of 1 horizontal in n vertical; empty if vertical.")
          .hard(2, 1000)
          .usual(4, 1000)
          .such("10");
  static final NumberColumn MEMBERS =
      number("Members", "", "Count of piles, beams or sheets of a wall without primaries.")
          .hard(2, 5000)
          .count()
          .such("30");
  static final NumberColumn STIFFNESS =
      number(
              "Wall stiffness",
              "kN·m²/m",
              "Bending stiffness per length of wall; empty means from the section.")
          .hard(100, 1e8)
          .such("60000");
  static final NumberColumn SLOPE =
      number("Slope behind", "°", "Of the ground behind, rising away from the wall positive.")
          .hard(-40, 40)
          .standard(0);
  static final NumberColumn WIDTH =
      number("Excavation width", "m", "Clear width of the excavation in front of the run.")
          .hard(0.5, 500)
          .such("22");
  static final NumberColumn EXTENT =
      number("Excavation length", "m", "Length of the excavation along the run.")
          .hard(0.5, 2000)
          .such("45");
  static final NumberColumn DISPLACEMENT =
      number("Displacement limit", "mm", "Greatest horizontal displacement of the wall allowed.")
          .hard(1, 500)
          .usual(5, 100)
          .such("25");
  static final ChoiceColumn<SettlementShape> SETTLEMENT_SHAPE =
      choice(
              "Settlement shape",
              SettlementShape.class,
              "How the ground behind settles with distance; H is the retained height.")
          .such(SettlementShape.SAND_TRIANGLE);
  static final NumberColumn SETTLEMENT_RATIO =
      number(
              "Settlement ratio",
              "",
              "Greatest settlement over greatest displacement of the wall; records average 0.75.")
          .hard(0.1, 3)
          .usual(0.5, 1.5)
          .standard(1);
  static final ChoiceColumn<PassiveWidthRule> PASSIVE_WIDTH =
      choice(
              "Passive width",
              PassiveWidthRule.class,
              "How wide the ground is that resists one soldier beam or king pile.")
          .standard(PassiveWidthRule.THREE_WIDTHS);
  static final ChoiceColumn<Boolean> TOE_CONCRETE =
      ChoiceColumn.of(
              "Toe concrete",
              List.of(true, false),
              structural -> structural ? "Structural" : "Lean mix",
              "What fills the bore of a soldier beam or king pile below the excavation.")
          .standard(true);
  static final NumberColumn UNPLANNED =
      number(
              "Unplanned excavation",
              "m",
              "Allowance for excavation below plan; empty means as the design basis has it.")
          .hard(0, 3)
          .usual(0, 1)
          .such("0.5");
  static final TextColumn RIG =
      reference("Rig", "Rigs", "Rig that bores the run.", "R1").required();
  static final TextColumn TOOL =
      reference("Tool", "Tools", "Auger and casing on it; empty for sheet piles.", "T1");

  static final SheetSpec RUNS =
      SheetSpec.table(
          "Wall runs",
          true,
          "Runs of wall: straight, one set of levels each. A corner is where two runs meet.",
          RUN_ID,
          DESCRIPTION,
          TYPE,
          TECHNIQUE,
          PERMANENT,
          GUIDE_WALL,
          EAST,
          NORTH,
          BEARING,
          SPACING,
          SECONDARIES,
          LENGTH,
          MEMBERS,
          PROFILE,
          PLATFORM,
          RETAINED,
          CUT_OFF,
          BATTER,
          UNPLANNED,
          RIG,
          TOOL,
          STIFFNESS,
          SLOPE,
          WIDTH,
          EXTENT,
          DISPLACEMENT,
          SETTLEMENT_SHAPE,
          SETTLEMENT_RATIO,
          PASSIVE_WIDTH,
          TOE_CONCRETE);

  static final TextColumn RUN =
      reference("Run", "Wall runs", "Run the piles belong to.", "A").required();
  static final ChoiceColumn<PileKind> PILE_KIND =
      choice("Piles", PileKind.class, "Which kind the row is about.").required();
  static final NumberColumn DIAMETER =
      number("Diameter", "mm", "Over the cutting edge.")
          .hard(150, 3000)
          .usual(350, 1500)
          .required()
          .such("880");
  static final NumberColumn TOE =
      Levels.level(
              "Toe level",
              "Level of the toe. Empty for secondaries and single piles: the engine sizes it.")
          .sized()
          .such("-6.5");
  static final TextColumn MIX = reference("Mix", "Mixes", "Concrete mix.", "C1").required();
  static final TextColumn BEAM =
      reference("Beam", "Beams", "Steel beam in the pile, if any.", "B1");
  static final NumberColumn BEAM_TOP =
      Levels.level("Beam top level", "Needed if there is a beam.").such("5.2");
  static final NumberColumn BEAM_TOE =
      Levels.level("Beam toe level", "Foot of the beam; empty means level with the pile's toe.")
          .such("-6.0");
  static final NumberColumn COVER =
      number("Beam cover", "mm", "Least concrete between the corner of the beam and the bore.")
          .hard(0, 300)
          .usual(40, 150)
          .standard(75);
  static final NumberColumn PERMANENT_LOAD =
      number("Permanent load", "kN", "Vertical load on each pile, permanent part.")
          .hard(0, 20000)
          .usual(0, 5000)
          .such("250");
  static final NumberColumn VARIABLE_LOAD =
      number("Variable load", "kN", "Vertical load on each pile, variable part.")
          .hard(0, 20000)
          .usual(0, 5000)
          .such("100");
  static final NumberColumn ECCENTRICITY =
      number(
              "Load eccentricity",
              "mm",
              "Distance of the load from the axis of the beam, towards the excavation positive.")
          .hard(-1500, 1500)
          .usual(-300, 300)
          .standard(0);

  static final SheetSpec PILES =
      SheetSpec.table(
          "Piles",
          true,
          "What the piles of a run have in common: a row for primaries and one for secondaries of a secant"
              + " wall, one for the single piles or beams of another.",
          RUN,
          PILE_KIND,
          DIAMETER,
          TOE,
          MIX,
          BEAM,
          BEAM_TOP,
          BEAM_TOE,
          COVER,
          PERMANENT_LOAD,
          VARIABLE_LOAD,
          ECCENTRICITY);

  /** Soldier beams stand no farther apart than this where the engine chooses, mm. */
  private static final double WIDEST = 3000;

  private WallSheet() {}

  static WallRun read(Row row, List<Row> piles, List<Row> sheets, List<Row> lagging) {
    String run = row.get(RUN_ID);
    WallType type = row.get(TYPE);
    return new WallRun(
        row.at(),
        run,
        row.textOr(DESCRIPTION),
        type,
        row.get(TECHNIQUE),
        row.get(PERMANENT),
        new RunLine(
            row.get(EAST),
            row.get(NORTH),
            row.get(BEARING),
            row.find(SPACING).orElseGet(() -> widest(row)),
            row.find(SECONDARIES),
            row.find(LENGTH),
            row.find(MEMBERS)),
        new RunLevels(row.get(PLATFORM), row.get(RETAINED), row.get(CUT_OFF)),
        row.get(PROFILE),
        row.get(GUIDE_WALL),
        row.find(BATTER),
        piles.stream().filter(p -> p.get(RUN).equals(run)).map(WallSheet::pileSpec).toList(),
        sheets.stream()
            .filter(s -> s.get(InfillSheet.SHEET_RUN).equals(run))
            .findFirst()
            .map(InfillSheet::sheets),
        row.find(UNPLANNED),
        row.get(RIG),
        row.textOr(TOOL),
        new RunAnalysis(
            row.find(STIFFNESS),
            row.quiet(SLOPE),
            row.find(WIDTH),
            row.find(EXTENT),
            row.find(DISPLACEMENT),
            new SettlementForecast(row.find(SETTLEMENT_SHAPE), row.quiet(SETTLEMENT_RATIO))),
        beams(row, type, lagging));
  }

  private static BeamsInGround beams(Row row, WallType type, List<Row> lagging) {
    if (!type.kingOrSoldierBeams()) {
      return BeamsInGround.USUAL;
    }
    return new BeamsInGround(
        row.get(PASSIVE_WIDTH),
        row.get(TOE_CONCRETE),
        lagging.stream()
            .filter(l -> type.soldierBeams())
            .filter(l -> l.get(InfillSheet.LAGGING_RUN).equals(row.get(RUN_ID)))
            .findFirst()
            .map(l -> InfillSheet.lagging(l, type == WallType.SOLDIER_TIMBER)));
  }

  /** Where the spacing is left to the engine it begins here. */
  private static Value widest(Row row) {
    return Value.assumed(WIDEST, Units.MM, row.place(SPACING), SPACING.name());
  }

  private static PileSpec pileSpec(Row row) {
    Optional<BeamInPile> beam =
        row.find(BEAM)
            .map(
                id ->
                    new BeamInPile(
                        id, row.find(BEAM_TOP).orElseThrow(), row.find(BEAM_TOE), row.get(COVER)));
    boolean loaded = row.find(PERMANENT_LOAD).isPresent() || row.find(VARIABLE_LOAD).isPresent();
    Optional<AxialLoad> load =
        loaded
            ? Optional.of(
                new AxialLoad(
                    row.orZero(PERMANENT_LOAD), row.orZero(VARIABLE_LOAD), row.get(ECCENTRICITY)))
            : Optional.empty();
    return new PileSpec(
        row.at(), row.get(PILE_KIND), row.get(DIAMETER), row.find(TOE), row.get(MIX), beam, load);
  }
}
