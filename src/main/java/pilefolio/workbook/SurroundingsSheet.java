package pilefolio.workbook;

import static pilefolio.workbook.ChoiceColumn.choice;
import static pilefolio.workbook.NumberColumn.number;
import static pilefolio.workbook.TextColumn.nameOf;
import static pilefolio.workbook.TextColumn.reference;
import static pilefolio.workbook.TextColumn.words;

import pilefolio.model.AllowedDamage;
import pilefolio.model.BuildingForm;
import pilefolio.model.Monitoring;
import pilefolio.model.Neighbour;
import pilefolio.model.NeighbourKind;
import pilefolio.model.Person;
import pilefolio.model.Revision;

/** Neighbours, monitoring, people and revisions. */
final class SurroundingsSheet {
  static final TextColumn NEIGHBOUR =
      words("Neighbour", "What it is called.", "House, Mill Lane 6").required();
  static final ChoiceColumn<NeighbourKind> KIND =
      choice("Kind", NeighbourKind.class, "What it is.").required();
  static final TextColumn RUN = reference("Run", "Wall runs", "Nearest wall run.", "A").required();
  static final NumberColumn DISTANCE =
      number("Distance", "m", "From the wall.").hard(0, 500).usual(0.3, 100).required().such("2.4");
  static final NumberColumn FOUNDATION =
      Levels.level("Foundation level", "Of its foundation or invert.").such("4.6");
  static final NumberColumn SETTLEMENT_LIMIT =
      number("Settlement limit", "mm", "Settlement its owner allows.")
          .hard(0.5, 200)
          .usual(3, 50)
          .such("10");
  static final NumberColumn VIBRATION_LIMIT =
      number("Vibration limit", "mm/s", "Peak particle velocity its owner allows.")
          .us("in/s")
          .hard(0.1, 100)
          .usual(2, 50)
          .such("5");
  static final NumberColumn EXTENT =
      number("Extent", "m", "Of a building, away from the wall.")
          .hard(0.5, 300)
          .usual(3, 60)
          .such("9.5");
  static final NumberColumn HEIGHT =
      number("Height", "m", "Of a building, from foundation to eaves.")
          .hard(1, 300)
          .usual(2.5, 60)
          .such("7");
  static final NumberColumn STIFFNESS_RATIO =
      number("E/G", "", "Modulus of elasticity over shear modulus of a building; more for a frame.")
          .hard(0.1, 50)
          .usual(0.5, 15)
          .standard(2.6);
  static final ChoiceColumn<AllowedDamage> ALLOWED =
      choice("Damage allowed", AllowedDamage.class, "Greatest category allowed at a building.")
          .such(AllowedDamage.VERY_SLIGHT);
  static final TextColumn NOTE = words("Note", "Anything else.", "Condition survey before start");

  static final SheetSpec NEIGHBOURS =
      SheetSpec.table(
          "Neighbours",
          false,
          "What stands beside the works and must not be harmed.",
          NEIGHBOUR,
          KIND,
          RUN,
          DISTANCE,
          FOUNDATION,
          SETTLEMENT_LIMIT,
          VIBRATION_LIMIT,
          EXTENT,
          HEIGHT,
          STIFFNESS_RATIO,
          ALLOWED,
          NOTE);

  static final TextColumn INSTRUMENT =
      words("Instrument", "What measures.", "Levelling points").required();
  static final TextColumn LOCATION = words("Location", "Where.", "Facade of the house").required();
  static final TextColumn QUANTITY =
      words("Measured", "What is measured.", "Settlement").required();
  static final NumberColumn AMBER =
      number("Amber trigger", "mm", "First trigger.").hard(0.1, 500).usual(1, 100).such("6");
  static final NumberColumn RED =
      number("Red trigger", "mm", "Second trigger.").hard(0.1, 500).usual(1, 100).such("10");
  static final TextColumn OF_RUN =
      reference(
          "Of run", "Wall runs", "Run whose displacement the triggers are compared with.", "A");
  static final TextColumn OF_NEIGHBOUR =
      nameOf(
          "Of neighbour",
          "Neighbours",
          "Neighbour whose settlement the triggers are compared with.",
          "House, Mill Lane 6");
  static final TextColumn FREQUENCY =
      words("Frequency", "How often.", "Daily while excavating").required();
  static final TextColumn READER = words("Read by", "Who reads it.", "Site surveyor");

  static final SheetSpec MONITORING =
      SheetSpec.table(
          "Monitoring",
          false,
          "Measurements during the works.",
          INSTRUMENT,
          LOCATION,
          QUANTITY,
          AMBER,
          RED,
          OF_RUN,
          OF_NEIGHBOUR,
          FREQUENCY,
          READER);

  static final TextColumn ROLE =
      words("Role", "Part in the works.", "Temporary works coordinator").required();
  static final TextColumn NAME = words("Name", "Name.", "T. Avila").required();
  static final TextColumn ORGANISATION = words("Organisation", "Organisation.", "Oldford Piling");
  static final TextColumn CONTACT = words("Contact", "Telephone or mail.", "See site board");

  static final SheetSpec PEOPLE =
      SheetSpec.table("People", false, "Roles and contacts.", ROLE, NAME, ORGANISATION, CONTACT);

  static final TextColumn MARK = words("Revision", "Mark of the revision.", "P01").required();
  static final DateColumn DATE =
      new DateColumn("Date", Need.REQUIRED, "Date of the revision.", "2027-03-01");
  static final TextColumn CHANGE =
      words("Change", "What changed.", "First issue for review").required();
  static final TextColumn BY = words("By", "Who made it.", "J. Marten");

  static final SheetSpec REVISIONS =
      SheetSpec.table(
          "Revisions", false, "Revisions of the documents so far.", MARK, DATE, CHANGE, BY);

  private SurroundingsSheet() {}

  static Neighbour neighbour(Row row) {
    return new Neighbour(
        row.at(),
        row.get(NEIGHBOUR),
        row.get(KIND),
        row.get(RUN),
        row.get(DISTANCE),
        row.find(FOUNDATION),
        row.find(SETTLEMENT_LIMIT),
        row.find(VIBRATION_LIMIT),
        new BuildingForm(
            row.find(EXTENT), row.find(HEIGHT), row.quiet(STIFFNESS_RATIO), row.find(ALLOWED)),
        row.textOr(NOTE));
  }

  static Monitoring monitoring(Row row) {
    return new Monitoring(
        row.at(),
        row.get(INSTRUMENT),
        row.get(LOCATION),
        row.get(QUANTITY),
        row.find(AMBER),
        row.find(RED),
        row.find(OF_RUN),
        row.find(OF_NEIGHBOUR),
        row.get(FREQUENCY),
        row.textOr(READER));
  }

  static Person person(Row row) {
    return new Person(
        row.at(), row.get(ROLE), row.get(NAME), row.textOr(ORGANISATION), row.textOr(CONTACT));
  }

  static Revision revision(Row row) {
    return new Revision(row.at(), row.get(MARK), row.get(DATE), row.get(CHANGE), row.textOr(BY));
  }
}
