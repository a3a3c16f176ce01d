package pilefolio.workbook;

import static java.time.DayOfWeek.FRIDAY;
import static java.time.DayOfWeek.MONDAY;
import static java.time.DayOfWeek.SATURDAY;
import static java.time.DayOfWeek.SUNDAY;
import static java.time.DayOfWeek.THURSDAY;
import static java.time.DayOfWeek.TUESDAY;
import static java.time.DayOfWeek.WEDNESDAY;
import static pilefolio.workbook.NumberColumn.number;
import static pilefolio.workbook.TextColumn.id;
import static pilefolio.workbook.TextColumn.reference;
import static pilefolio.workbook.TextColumn.words;

import java.time.DayOfWeek;
import java.util.List;
import java.util.Set;
import pilefolio.model.ConcreteSupply;
import pilefolio.model.Crew;
import pilefolio.model.DayOff;
import pilefolio.model.WorkCalendar;

/** Concrete supply, crews and the calendar. */
final class WorksSheet {
  static final NumberColumn PUMP_RATE =
      number("Pump rate", "m3/h", "Output of the pump.")
          .hard(2, 120)
          .usual(15, 60)
          .required()
          .such("35");
  static final NumberColumn STROKE_VOLUME =
      number("Pump stroke volume", "L", "Volume of one stroke.")
          .hard(1, 200)
          .usual(5, 100)
          .such("20");
  static final NumberColumn PUMP_EFFICIENCY =
      number("Pump efficiency", "", "Share of the stroke volume that is delivered.")
          .hard(0.5, 1)
          .usual(0.8, 1)
          .standard(0.9);
  static final NumberColumn OVERBREAK_PRIMARY =
      number("Overbreak primaries", "", "Volume cast over nominal volume.")
          .hard(1, 3)
          .usual(1.05, 1.5)
          .standard(1.15);
  static final NumberColumn OVERBREAK_SECONDARY =
      number("Overbreak secondaries", "", "Volume cast over nominal volume.")
          .hard(1, 3)
          .usual(1.05, 1.5)
          .standard(1.1);
  static final NumberColumn TRUCK =
      number("Truck volume", "m3", "Volume of one truck.").hard(1, 15).usual(4, 12).standard(7.5);
  static final NumberColumn ROUND_TRIP =
      number("Round trip", "min", "Time of a truck from plant to plant.")
          .hard(10, 600)
          .usual(30, 180)
          .standard(75);
  static final NumberColumn DAILY_CAP =
      number("Daily supply", "m3", "Volume the plant supplies in a day.")
          .hard(5, 5000)
          .usual(20, 600)
          .such("120");
  static final NumberColumn LIFT_RATE =
      number("Lift rate", "m/min", "Rate at which the auger is withdrawn while concreting.")
          .hard(0.1, 8)
          .usual(0.5, 4)
          .required()
          .such("1.1");
  static final NumberColumn INCREMENT =
      number("Record increment", "m", "Length of pile for which each record is kept.")
          .us("ft")
          .hard(0.1, 5)
          .usual(0.25, 2)
          .standard(0.5);
  static final NumberColumn INITIAL_HEAD =
      number("Initial head", "m", "Head of concrete above the tip before the first lift.")
          .hard(0, 10)
          .usual(1, 3)
          .standard(1.5);
  static final NumberColumn CASING_HEAD =
      number("Head over casing shoe", "m", "Head of concrete kept while the casing is pulled.")
          .hard(0.5, 30)
          .usual(2, 8)
          .standard(4);
  static final NumberColumn OVERCAST =
      number("Overcast", "m", "Length cast above cut-off and trimmed; empty means to platform.")
          .hard(0, 5)
          .usual(0.1, 1.5)
          .such("0.4");

  static final SheetSpec SUPPLY =
      SheetSpec.form(
          "Concrete supply",
          true,
          "How concrete comes to the piles.",
          PUMP_RATE,
          STROKE_VOLUME,
          PUMP_EFFICIENCY,
          OVERBREAK_PRIMARY,
          OVERBREAK_SECONDARY,
          TRUCK,
          ROUND_TRIP,
          DAILY_CAP,
          LIFT_RATE,
          INCREMENT,
          INITIAL_HEAD,
          CASING_HEAD,
          OVERCAST);

  static final TextColumn CREW_ID = id("Crew", "Name of the crew.", "Crew 1");
  static final TextColumn CREW_RIG = reference("Rig", "Rigs", "Its rig.", "R1").required();
  static final NumberColumn SHIFT =
      number("Shift", "h", "Length of a shift.").hard(1, 24).usual(8, 12).standard(10);
  static final NumberColumn NON_PRODUCTIVE =
      number("Start, stop and breaks", "min", "Time of a shift in which no pile is made.")
          .hard(0, 600)
          .usual(30, 180)
          .standard(90);
  static final NumberColumn AVAILABILITY =
      number("Availability", "", "Share of the rest of the shift that is worked.")
          .hard(0.3, 1)
          .usual(0.65, 0.9)
          .standard(0.8);
  static final NumberColumn MOVE =
      number("Move and set up", "min", "Time a pile.").hard(1, 240).usual(5, 45).standard(15);
  static final NumberColumn BEAM_TIME =
      number("Setting of beam", "min", "Time a pile with a beam.")
          .hard(0, 240)
          .usual(5, 45)
          .standard(15);
  static final NumberColumn CLEANING =
      number("Cleaning", "min", "Time a pile.").hard(0, 240).usual(0, 30).standard(8);
  static final NumberColumn DRILLING_PRIMARY =
      number("Drilling rate primaries", "m/min", "Mean with stops.")
          .hard(0.05, 10)
          .usual(0.1, 2)
          .required()
          .such("0.6");
  static final NumberColumn DRILLING_SECONDARY =
      number("Drilling rate secondaries", "m/min", "Mean with stops, cutting two primaries.")
          .hard(0.05, 10)
          .usual(0.1, 2)
          .required()
          .such("0.4");
  static final NumberColumn PILES_PER_SHIFT =
      number("Most piles a shift", "", "Empty means as many as the cycle times allow.")
          .hard(1, 50)
          .count()
          .such("5");

  static final SheetSpec CREWS =
      SheetSpec.table(
          "Crews",
          true,
          "Crews and what they do in a shift; one crew a rig, or more in turn.",
          CREW_ID,
          CREW_RIG,
          SHIFT,
          NON_PRODUCTIVE,
          AVAILABILITY,
          MOVE,
          BEAM_TIME,
          CLEANING,
          DRILLING_PRIMARY,
          DRILLING_SECONDARY,
          PILES_PER_SHIFT);

  /** Weeks that are worked. */
  enum Week {
    TO_FRIDAY("Monday to Friday", Set.of(MONDAY, TUESDAY, WEDNESDAY, THURSDAY, FRIDAY)),
    TO_THURSDAY("Monday to Thursday", Set.of(MONDAY, TUESDAY, WEDNESDAY, THURSDAY)),
    TO_SATURDAY(
        "Monday to Saturday", Set.of(MONDAY, TUESDAY, WEDNESDAY, THURSDAY, FRIDAY, SATURDAY)),
    EVERY_DAY("Every day", Set.of(MONDAY, TUESDAY, WEDNESDAY, THURSDAY, FRIDAY, SATURDAY, SUNDAY));

    private final String label;
    private final Set<DayOfWeek> days;

    Week(String label, Set<DayOfWeek> days) {
      this.label = label;
      this.days = days;
    }

    String label() {
      return label;
    }

    Set<DayOfWeek> days() {
      return days;
    }
  }

  static final DateColumn START =
      new DateColumn(
          "First working day",
          Need.REQUIRED,
          "First day on which a pile may be made.",
          "2027-04-05");
  static final ChoiceColumn<Week> WEEK =
      ChoiceColumn.of(
              "Working week",
              List.of(Week.values()),
              Week::label,
              "Days of the week that are worked.")
          .standard(Week.TO_FRIDAY);
  static final NumberColumn START_OF_SHIFT =
      number("Start of shift", "h", "Hour of the day.").hard(0, 23.5).usual(5, 10).standard(7);

  static final SheetSpec CALENDAR =
      SheetSpec.form("Calendar", true, "When piles are made.", START, WEEK, START_OF_SHIFT);

  static final DateColumn DAY_OFF =
      new DateColumn("Day off", Need.REQUIRED, "A day on which nobody works.", "2027-05-03");
  static final TextColumn DAY_OFF_REASON = words("Reason", "Why.", "Public holiday");

  static final SheetSpec DAYS_OFF =
      SheetSpec.table("Days off", false, "Days on which no pile is made.", DAY_OFF, DAY_OFF_REASON);

  private WorksSheet() {}

  static ConcreteSupply supply(Row form) {
    return new ConcreteSupply(
        form.at(),
        form.get(PUMP_RATE),
        form.find(STROKE_VOLUME),
        form.get(PUMP_EFFICIENCY),
        form.get(OVERBREAK_PRIMARY),
        form.get(OVERBREAK_SECONDARY),
        form.get(TRUCK),
        form.get(ROUND_TRIP),
        form.find(DAILY_CAP),
        form.get(LIFT_RATE),
        form.get(INCREMENT),
        form.get(INITIAL_HEAD),
        form.get(CASING_HEAD),
        form.find(OVERCAST));
  }

  static Crew crew(Row row) {
    return new Crew(
        row.at(),
        row.get(CREW_ID),
        row.get(CREW_RIG),
        row.get(SHIFT),
        row.get(NON_PRODUCTIVE),
        row.get(AVAILABILITY),
        row.get(MOVE),
        row.get(BEAM_TIME),
        row.get(CLEANING),
        row.get(DRILLING_PRIMARY),
        row.get(DRILLING_SECONDARY),
        row.find(PILES_PER_SHIFT));
  }

  static WorkCalendar calendar(Row form, List<Row> daysOff) {
    return new WorkCalendar(
        form.place(START),
        form.get(START),
        form.get(WEEK).days(),
        daysOff.stream()
            .map(row -> new DayOff(row.at(), row.get(DAY_OFF), row.textOr(DAY_OFF_REASON)))
            .toList(),
        form.get(START_OF_SHIFT));
  }
}
