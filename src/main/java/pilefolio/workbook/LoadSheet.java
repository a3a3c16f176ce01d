package pilefolio.workbook;

import static pilefolio.workbook.ChoiceColumn.choice;
import static pilefolio.workbook.NumberColumn.number;
import static pilefolio.workbook.TextColumn.id;
import static pilefolio.workbook.TextColumn.reference;

import pilefolio.model.LoadKind;
import pilefolio.model.LocalLoad;

/** The table of local loads behind a wall. */
final class LoadSheet {
  static final TextColumn LOAD = id("Load", "Name of the load.", "F1");
  static final TextColumn RUN =
      reference("Run", "Wall runs", "Run behind which it acts.", "A").required();
  static final ChoiceColumn<LoadKind> KIND =
      choice("Kind", LoadKind.class, "Shape of the load in plan.").required();
  static final NumberColumn DISTANCE =
      number(
              "Distance",
              "m",
              "From the back of the wall to its near edge, or to the line or point.")
          .hard(0, 200)
          .usual(0, 40)
          .required()
          .such("2");
  static final NumberColumn WIDTH =
      number("Width", "m", "Across the wall; of a strip or footing.").hard(0.05, 100).such("1.2");
  static final NumberColumn LENGTH =
      number("Length", "m", "Along the wall; of a footing.").hard(0.05, 200).such("6");
  static final NumberColumn LEVEL =
      Levels.level("Level", "Level it acts at.").required().such("4.6");
  static final NumberColumn PRESSURE =
      number("Pressure", "kPa", "Of a strip or footing.").hard(0.1, 2000).usual(5, 500).such("120");
  static final NumberColumn LINE_LOAD =
      number("Line load", "kN/m", "Of a line.").hard(0.1, 5000).usual(5, 600).such("80");
  static final NumberColumn FORCE =
      number("Force", "kN", "Of a point.").hard(0.1, 50000).usual(10, 3000).such("200");
  static final NumberColumn OFFSET =
      number("Offset", "m", "Of a point or footing along the wall from the section considered.")
          .hard(-200, 200)
          .such("1.5");
  static final ChoiceColumn<Boolean> VARIABLE =
      ChoiceColumn.yesNo("Variable", "Whether it is a variable load.").standard(false);
  static final NumberColumn FIRST =
      number("From stage", "", "First stage in which it acts; empty means from the start.")
          .hard(1, 50)
          .count()
          .such("1");
  static final NumberColumn LAST =
      number("To stage", "", "Last stage in which it acts; empty means to the end.")
          .hard(1, 50)
          .count()
          .such("4");

  static final SheetSpec SPEC =
      SheetSpec.table(
          "Local loads",
          false,
          "Footings, crane pads, tracks and other loads of limited extent behind a wall.",
          LOAD,
          RUN,
          KIND,
          DISTANCE,
          WIDTH,
          LENGTH,
          LEVEL,
          PRESSURE,
          LINE_LOAD,
          FORCE,
          OFFSET,
          VARIABLE,
          FIRST,
          LAST);

  private LoadSheet() {}

  static LocalLoad read(Row row) {
    return new LocalLoad(
        row.at(),
        row.get(LOAD),
        row.get(RUN),
        row.get(KIND),
        row.get(DISTANCE),
        row.find(WIDTH),
        row.find(LENGTH),
        row.get(LEVEL),
        row.find(PRESSURE),
        row.find(LINE_LOAD),
        row.find(FORCE),
        row.find(OFFSET),
        row.effective(VARIABLE).orElse(false),
        row.find(FIRST),
        row.find(LAST));
  }
}
