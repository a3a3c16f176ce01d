package pilefolio.workbook;

import static pilefolio.workbook.ChoiceColumn.choice;
import static pilefolio.workbook.NumberColumn.number;
import static pilefolio.workbook.TextColumn.id;
import static pilefolio.workbook.TextColumn.reference;
import static pilefolio.workbook.TextColumn.words;

import java.util.Arrays;
import java.util.List;
import pilefolio.model.Berm;
import pilefolio.model.Stage;
import pilefolio.model.StageConditions;
import pilefolio.model.Support;
import pilefolio.model.SupportKind;

/** The tables of construction stages and of supports. */
final class StageSheet {
  static final TextColumn RUN =
      reference("Run", "Wall runs", "Run before which is excavated.", "A").required();
  static final NumberColumn NUMBER =
      number("Stage", "", "Number in the order of the works, from 1.")
          .hard(1, 50)
          .count()
          .required()
          .such("1");
  static final TextColumn DESCRIPTION =
      words("Description", "What is done.", "Excavate to formation").required();
  static final NumberColumn EXCAVATION =
      Levels.level("Excavation level", "In front of the wall, as planned.").required().such("1.4");
  static final NumberColumn WATER_BEHIND =
      Levels.level("Water level behind", "Empty if there is no water.").such("2.5");
  static final NumberColumn WATER_FRONT =
      Levels.level("Water level in front", "Empty if there is no water.").such("0.9");
  static final NumberColumn PERMANENT_SURCHARGE =
      number("Permanent surcharge", "kPa", "On the ground behind the wall.")
          .hard(0, 300)
          .usual(0, 60)
          .standard(0);
  static final NumberColumn VARIABLE_SURCHARGE =
      number("Variable surcharge", "kPa", "On the ground behind the wall.")
          .hard(0, 300)
          .usual(5, 60)
          .standard(10);
  static final TextColumn SUPPORTS_IN_PLACE =
      words("Supports in place", "Those that act in this stage, with commas between.", "S1, S2");
  static final ChoiceColumn<Boolean> LONG_TERM =
      ChoiceColumn.yesNo("Long term", "Whether undrained layers act with their drained strength.")
          .standard(false);
  static final ChoiceColumn<Boolean> EARTHQUAKE =
      ChoiceColumn.yesNo("Earthquake", "Whether the seismic coefficients act.").standard(false);

  static final NumberColumn BERM_HEIGHT =
      number("Berm height", "m", "Of ground left against the wall, above the excavation.")
          .hard(0.1, 10)
          .such("1.5");
  static final NumberColumn BERM_TOP =
      number("Berm top width", "m", "Of its level top.").hard(0, 20).usual(0.5, 6).standard(1);
  static final NumberColumn BERM_SLOPE =
      number("Berm slope, 1 in", "", "Horizontal run of its face for one of height.")
          .hard(0, 10)
          .usual(1, 3)
          .standard(2);

  static final SheetSpec STAGES =
      SheetSpec.table(
          "Stages",
          true,
          "Construction stages of each run in their order.",
          RUN,
          NUMBER,
          DESCRIPTION,
          EXCAVATION,
          WATER_BEHIND,
          WATER_FRONT,
          PERMANENT_SURCHARGE,
          VARIABLE_SURCHARGE,
          SUPPORTS_IN_PLACE,
          LONG_TERM,
          EARTHQUAKE,
          BERM_HEIGHT,
          BERM_TOP,
          BERM_SLOPE);

  static final TextColumn SUPPORT_ID = id("Support", "Name of the support.", "S1");
  static final ChoiceColumn<SupportKind> KIND =
      choice("Kind", SupportKind.class, "How it holds the wall.").required();
  static final NumberColumn LEVEL =
      Levels.level("Level", "Where it meets the wall.").required().such("4.8");
  static final NumberColumn SPACING =
      number("Spacing", "m", "Along the wall.").hard(0.5, 15).usual(1.2, 8).required().such("4.2");
  static final NumberColumn INCLINATION =
      number("Inclination", "°", "Below the horizontal.").hard(0, 60).usual(0, 45).standard(0);
  static final NumberColumn RESISTANCE =
      number(
              "Resistance",
              "kN",
              "Of one, along its axis: allowable on an allowable-stress basis, design value"
                  + " otherwise. Empty if others design it for the force found.")
          .hard(1, 10000)
          .usual(50, 3000)
          .such("600");
  static final TextColumn PRELOAD =
      words("Preload", "Preload or lock-off.", "Lock off at 80 % of the design force");
  static final NumberColumn LOCK_OFF =
      number("Lock-off load", "kN", "Force of one locked in when installed, along its axis.")
          .hard(0, 10000)
          .usual(20, 2500)
          .such("300");
  static final NumberColumn STIFFNESS =
      number(
              "Stiffness",
              "kN/m",
              "Of one along its axis; the staged analysis needs it. Empty means from its members.")
          .hard(100, 1e8)
          .such("30000");

  static final SheetSpec SUPPORTS =
      SheetSpec.table(
          "Supports",
          false,
          "Props, slabs, rakers and anchors: one row a level. Stages say which are in place.",
          SUPPORT_ID,
          KIND,
          LEVEL,
          SPACING,
          INCLINATION,
          RESISTANCE,
          PRELOAD,
          LOCK_OFF,
          STIFFNESS);

  private StageSheet() {}

  static Stage stage(Row row) {
    return new Stage(
        row.at(),
        row.get(RUN),
        (int) row.get(NUMBER).si(),
        row.get(DESCRIPTION),
        row.get(EXCAVATION),
        row.find(WATER_BEHIND),
        row.find(WATER_FRONT),
        row.get(PERMANENT_SURCHARGE),
        row.get(VARIABLE_SURCHARGE),
        listed(row),
        new StageConditions(
            row.effective(LONG_TERM).orElse(false),
            row.effective(EARTHQUAKE).orElse(false),
            row.find(BERM_HEIGHT)
                .map(height -> new Berm(height, row.get(BERM_TOP), row.get(BERM_SLOPE)))));
  }

  static Support support(Row row) {
    return new Support(
        row.at(),
        row.get(SUPPORT_ID),
        row.get(KIND),
        row.get(LEVEL),
        row.get(SPACING),
        row.get(INCLINATION),
        row.find(RESISTANCE),
        row.textOr(PRELOAD),
        row.find(LOCK_OFF),
        row.find(STIFFNESS));
  }

  /** Ids of the supports in place in a stage. */
  static List<String> listed(Row row) {
    return row.find(SUPPORTS_IN_PLACE).stream()
        .flatMap(text -> Arrays.stream(text.split("[,;]")))
        .map(String::strip)
        .filter(id -> !id.isEmpty())
        .distinct()
        .toList();
  }
}
