package pilefolio.workbook;

import static pilefolio.workbook.ChoiceColumn.choice;
import static pilefolio.workbook.NumberColumn.number;
import static pilefolio.workbook.TextColumn.id;
import static pilefolio.workbook.TextColumn.words;

import pilefolio.model.Rig;
import pilefolio.model.Technique;
import pilefolio.model.Tool;

/** The tables of rigs and of tools. */
final class PlantSheet {
  static final TextColumn RIG_ID = id("Rig", "Name of the rig.", "R1");
  static final TextColumn RIG_DESCRIPTION =
      words("Description", "What it is.", "60 t hydraulic rig with two heads");
  static final ChoiceColumn<Technique> TECHNIQUE =
      choice("Technique", Technique.class, "How it bores.").required().such(Technique.CASED_AUGER);
  static final NumberColumn MASS =
      number("Mass", "t", "Working mass with tool.")
          .us("kip")
          .hard(5, 250)
          .usual(20, 120)
          .such("62");
  static final NumberColumn AUGER_TORQUE =
      number("Auger torque", "kN·m", "Rated torque of the auger head.")
          .hard(5, 1000)
          .usual(60, 500)
          .such("180");
  static final NumberColumn CASING_TORQUE =
      number("Casing torque", "kN·m", "Rated torque of the casing head.")
          .hard(5, 1000)
          .usual(60, 700)
          .such("260");
  static final NumberColumn CROWD =
      number("Crowd", "kN", "Rated downward force.").hard(0, 1000).usual(10, 400).such("200");
  static final NumberColumn PULL =
      number("Pull", "kN", "Rated extraction force.").hard(10, 3000).usual(150, 1200).such("780");
  static final NumberColumn STROKE =
      number("Stroke", "m", "Travel of the head on the mast.")
          .hard(2, 60)
          .usual(6, 32)
          .such("17.5");
  static final NumberColumn EXTENSION =
      number("Extension", "m", "Length a drill string extension adds to the stroke.")
          .hard(0, 20)
          .usual(0, 10)
          .such("4");
  static final NumberColumn HEAD_OFFSET =
      number("Head offset", "m", "Stroke lost to auger cleaner and casing ejector.")
          .hard(0, 6)
          .usual(0.3, 3)
          .such("1.4");
  static final NumberColumn LINE_PULL =
      number("Winch line pull", "kN", "Rated pull of one line of the winch used for beams.")
          .hard(5, 600)
          .usual(20, 300)
          .such("80");
  static final NumberColumn LINE_PARTS =
      number("Winch parts of line", "", "Count of parts of line.").hard(1, 8).count().such("1");
  static final NumberColumn HOOK_HEIGHT =
      number("Hook height", "m", "Greatest height of the hook above the platform.")
          .hard(2, 70)
          .usual(8, 40)
          .such("22");
  static final NumberColumn REACH =
      number("Reach", "m", "Rated greatest distance from the centre of slewing to the pile axis.")
          .hard(1, 12)
          .usual(2.5, 6)
          .such("3.9");
  static final NumberColumn SET_UP =
      number(
              "Set-up distance",
              "m",
              "From the centre of slewing to the pile axis as the rig is set up, clear of the guide"
                  + " wall and of what stands beside it.")
          .hard(1, 12)
          .usual(2, 6)
          .such("3.1");
  static final NumberColumn FORWARD =
      number("Batter forward", "°", "Greatest inclination of the mast forward.")
          .hard(0, 30)
          .usual(0, 15)
          .such("5");
  static final NumberColumn BACKWARD =
      number("Batter backward", "°", "Greatest inclination of the mast backward.")
          .hard(0, 30)
          .usual(0, 20)
          .such("15");
  static final NumberColumn ROTATION =
      number("Rotation", "rev/min", "Speed of the auger while drilling.")
          .hard(1, 100)
          .usual(8, 40)
          .such("14");
  static final NumberColumn PENETRATION =
      number("Penetration", "m/min", "Advance of the auger while drilling.")
          .hard(0.05, 10)
          .usual(0.2, 4)
          .such("3");

  static final SheetSpec RIGS =
      SheetSpec.table(
          "Rigs",
          true,
          "Rigs by the ratings of their maker. An empty rating leaves its check out, and says so.",
          RIG_ID,
          RIG_DESCRIPTION,
          TECHNIQUE,
          MASS,
          AUGER_TORQUE,
          CASING_TORQUE,
          CROWD,
          PULL,
          STROKE,
          EXTENSION,
          HEAD_OFFSET,
          LINE_PULL,
          LINE_PARTS,
          HOOK_HEIGHT,
          REACH,
          SET_UP,
          FORWARD,
          BACKWARD,
          ROTATION,
          PENETRATION);

  static final TextColumn TOOL_ID = id("Tool", "Name of the tool.", "T1");
  static final NumberColumn AUGER =
      number("Auger diameter", "mm", "Outside of the flights.")
          .hard(100, 3000)
          .usual(300, 1500)
          .required()
          .such("780");
  static final NumberColumn STEM =
      number("Stem diameter", "mm", "Outside of the hollow stem.")
          .hard(40, 800)
          .usual(100, 300)
          .required()
          .such("152");
  static final NumberColumn PITCH =
      number("Pitch", "mm", "Of the flights.")
          .hard(50, 2000)
          .usual(200, 900)
          .required()
          .such("500");
  static final NumberColumn CASING_OUTER =
      number("Casing outer diameter", "mm", "Over the cutting shoe; only if cased.")
          .hard(150, 3000)
          .usual(350, 1500)
          .such("880");
  static final NumberColumn CASING_INNER =
      number("Casing inner diameter", "mm", "Only if cased.")
          .hard(100, 2950)
          .usual(300, 1450)
          .such("820");
  static final NumberColumn STRING_MASS =
      number("String mass", "kg/m", "Of the auger string.")
          .us("lb/ft")
          .hard(10, 3000)
          .usual(50, 600)
          .such("210");
  static final NumberColumn CASING_MASS =
      number("Casing mass", "kg/m", "Of the casing.")
          .us("lb/ft")
          .hard(10, 4000)
          .usual(80, 1000)
          .such("430");
  static final NumberColumn MOBILISED =
      number(
              "Wall share drilling",
              "",
              "Share of the bore wall on which shear acts while drilling.")
          .hard(0, 1)
          .usual(0.1, 0.25)
          .standard(0.15);
  static final NumberColumn STUCK =
      number(
              "Wall share stuck",
              "",
              "Share of the bore wall's shear to be overcome to pull a stuck auger or casing.")
          .hard(0, 1)
          .usual(0.1, 1)
          .standard(0.25);
  static final NumberColumn ENERGY =
      number("Specific energy", "MPa", "Energy to cut a unit volume of ground.")
          .hard(0.5, 200)
          .usual(1, 100)
          .such("8");

  static final SheetSpec TOOLS =
      SheetSpec.table(
          "Tools",
          true,
          "Augers and casings.",
          TOOL_ID,
          AUGER,
          STEM,
          PITCH,
          CASING_OUTER,
          CASING_INNER,
          STRING_MASS,
          CASING_MASS,
          MOBILISED,
          STUCK,
          ENERGY);

  private PlantSheet() {}

  static Rig rig(Row row) {
    return new Rig(
        row.at(),
        row.get(RIG_ID),
        row.textOr(RIG_DESCRIPTION),
        row.get(TECHNIQUE),
        row.find(MASS),
        row.find(AUGER_TORQUE),
        row.find(CASING_TORQUE),
        row.find(CROWD),
        row.find(PULL),
        row.find(STROKE),
        row.find(EXTENSION),
        row.find(HEAD_OFFSET),
        row.find(LINE_PULL),
        row.find(LINE_PARTS),
        row.find(HOOK_HEIGHT),
        row.find(REACH),
        row.find(SET_UP),
        row.find(FORWARD),
        row.find(BACKWARD),
        row.find(ROTATION),
        row.find(PENETRATION));
  }

  static Tool tool(Row row) {
    return new Tool(
        row.at(),
        row.get(TOOL_ID),
        row.get(AUGER),
        row.get(STEM),
        row.get(PITCH),
        row.find(CASING_OUTER),
        row.find(CASING_INNER),
        row.find(STRING_MASS),
        row.find(CASING_MASS),
        row.get(MOBILISED),
        row.get(STUCK),
        row.find(ENERGY));
  }
}
