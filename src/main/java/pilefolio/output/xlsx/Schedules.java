package pilefolio.output.xlsx;

import static pilefolio.units.Units.KG_M;
import static pilefolio.units.Units.M;
import static pilefolio.units.Units.M3;
import static pilefolio.units.Units.MIN;
import static pilefolio.units.Units.MM;

import java.time.format.TextStyle;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import pilefolio.analysis.sequence.Programme.PlannedPile;
import pilefolio.checks.sequence.Programmes;
import pilefolio.model.PileKind;
import pilefolio.model.Project;
import pilefolio.output.xlsx.ScheduleSheet.Column;
import pilefolio.submittal.Submittal;
import pilefolio.submittal.schedule.BeamLine;
import pilefolio.submittal.schedule.ConcreteDayLine;
import pilefolio.submittal.schedule.PileLine;
import pilefolio.submittal.schedule.PileSchedule;
import pilefolio.submittal.schedule.QuantityLine;

/**
 * The schedules as a workbook: piles, beams, programme, concrete by day, quantities. Numbers are
 * picked from the submittal; only sums are made here, as live formulas.
 */
public final class Schedules {
  private final Submittal submittal;
  private final SpreadsheetFile file;
  private final PileSchedule piles;

  private Schedules(Submittal submittal) {
    Project project = submittal.job().submission().project();
    this.submittal = submittal;
    this.file = new SpreadsheetFile("Schedules, " + project.title(), project.date());
    this.piles = PileSchedule.of(submittal);
  }

  /** The schedules as a file. */
  public static byte[] write(Submittal submittal) {
    Schedules schedules = new Schedules(submittal);
    schedules.piles();
    schedules.beams();
    schedules.days();
    schedules.concrete();
    schedules.quantities();
    schedules.file.book().getCreationHelper().createFormulaEvaluator().evaluateAll();
    schedules.file.book().setForceFormulaRecalculation(true);
    return schedules.file.bytes();
  }

  private ScheduleSheet sheet(String name) {
    Project project = submittal.job().submission().project();
    ScheduleSheet sheet =
        new ScheduleSheet(file, name, name + ": " + project.title(), submittal.system());
    sheet.note(
        "Document "
            + project.documentNumber()
            + ", revision "
            + project.revision()
            + ", "
            + project.status().label().toLowerCase(Locale.ROOT)
            + ", "
            + project.date()
            + ". Levels: "
            + project.datum()
            + ".");
    return sheet;
  }

  private void piles() {
    ScheduleSheet sheet = sheet("Pile schedule");
    noteProgramme(sheet);
    sheet.head(
        List.of(
            Column.text("Pile", 10),
            Column.text("Run", 8),
            Column.text("Kind", 11),
            Column.number("Easting", M, 3),
            Column.number("Northing", M, 3),
            Column.number("Platform", M, 2),
            Column.number("Cut-off", M, 2),
            Column.number("Toe", M, 2),
            Column.number("Drilled length", M, 2).sum(),
            Column.number("Cast length", M, 2).sum(),
            Column.number("Diameter", MM, 0),
            Column.text("Mix", 10),
            Column.number("Concrete to order", M3, 2).sum(),
            Column.text("Beam", 14),
            Column.number("Beam length", M, 2).sum(),
            Column.number("Order", null, 0),
            Column.text("Planned", 12),
            Column.text("Rig", 12)));
    List<BeamLine> beams = BeamLine.all(submittal);
    for (PileLine line : piles.piles()) {
      Optional<BeamLine> beam =
          beams.stream()
              .filter(b -> b.run().equals(line.pile().run()) && b.kind() == line.pile().kind())
              .findFirst();
      Optional<PlannedPile> planned = line.planned();
      sheet.row(
          line.pile().mark(),
          line.pile().run(),
          words(line.pile().kind()),
          line.pile().east(),
          line.pile().north(),
          line.platform(),
          line.cutOff(),
          line.toe(),
          line.drilled(),
          line.cast(),
          line.diameter(),
          line.mix(),
          line.volume(),
          line.beam().orElse(null),
          beam.map(BeamLine::length).orElse(null),
          planned.map(PlannedPile::order).orElse(null),
          planned.map(PlannedPile::date).orElse(null),
          planned.map(PlannedPile::crew).orElse(null));
    }
    sheet.sums();
  }

  private void beams() {
    ScheduleSheet sheet = sheet("Beams");
    sheet.head(
        List.of(
            Column.text("Beam", 10),
            Column.text("Run", 8),
            Column.text("In", 11),
            Column.number("Number", null, 0).sum(),
            Column.text("Section", 16),
            Column.text("Grade", 12),
            Column.text("Stands", 13),
            Column.number("Top", M, 2),
            Column.number("Foot", M, 2),
            Column.number("Length", M, 2),
            Column.number("Mass", KG_M, 1),
            Column.number("Least cover", MM, 0),
            Column.text("Splice", 30)));
    for (BeamLine line : BeamLine.all(submittal)) {
      sheet.row(
          line.beam().id(),
          line.run(),
          words(line.kind()),
          line.count(),
          line.beam().section(),
          line.beam().grade(),
          line.beam().orientation().label(),
          line.top(),
          line.toe(),
          line.length(),
          line.mass(),
          line.cover(),
          line.beam().splice().orElse(null));
    }
    sheet.sums();
  }

  private void days() {
    ScheduleSheet sheet = sheet("Programme");
    noteProgramme(sheet);
    sheet.note("Start is working time gone in the shift of the rig.");
    sheet.head(
        List.of(
            Column.number("Order", null, 0),
            Column.text("Date", 12),
            Column.text("Day", 11),
            Column.text("Rig", 12),
            Column.number("Place in shift", null, 0),
            Column.text("Pile", 10),
            Column.text("Kind", 11),
            Column.number("Start", MIN, 0),
            Column.text("Mix", 10),
            Column.number("Concrete to order", M3, 2).sum(),
            Column.text("Done", 12)));
    for (PileLine line : piles.inOrder()) {
      if (line.planned().isPresent()) {
        PlannedPile planned = line.planned().get();
        sheet.row(
            planned.order(),
            planned.date(),
            planned.date().getDayOfWeek().getDisplayName(TextStyle.FULL, Locale.ENGLISH),
            planned.crew(),
            planned.place(),
            line.pile().mark(),
            words(line.pile().kind()),
            MIN.toSi(planned.afterMinutes()),
            line.mix(),
            line.volume(),
            null);
      }
    }
    sheet.sums();
  }

  private void concrete() {
    ScheduleSheet sheet = sheet("Concrete by day");
    noteProgramme(sheet);
    sheet.head(
        List.of(
            Column.text("Date", 12),
            Column.text("Day", 11),
            Column.text("Mix", 10),
            Column.number("Piles", null, 0).sum(),
            Column.number("Concrete to order", M3, 2).sum()));
    for (ConcreteDayLine line : ConcreteDayLine.all(piles)) {
      sheet.row(
          line.date(),
          line.date().getDayOfWeek().getDisplayName(TextStyle.FULL, Locale.ENGLISH),
          line.mix(),
          line.piles(),
          line.volume());
    }
    sheet.sums();
  }

  private void quantities() {
    ScheduleSheet sheet = sheet("Quantities");
    sheet.note("Concrete includes the overbreak of the design; trimming and waste are not added.");
    sheet.head(
        List.of(
            Column.text("Run", 10),
            Column.text("Piles", 11),
            Column.number("Number", null, 0).sum(),
            Column.number("Diameter", MM, 0),
            Column.number("Drilled, each", M, 2),
            Column.number("Drilled, all", M, 2).sum(),
            Column.text("Mix", 10),
            Column.number("Concrete, each", M3, 2),
            Column.number("Concrete, all", M3, 2).sum(),
            Column.text("Beam", 12)));
    for (QuantityLine line : QuantityLine.all(submittal)) {
      sheet.row(
          line.run(),
          words(line.kind()),
          line.count(),
          line.diameter(),
          line.drilled(),
          line.drilledAll(),
          line.mix(),
          line.volume(),
          line.total(),
          line.beam().orElse(null));
    }
    sheet.sums();
  }

  private void noteProgramme(ScheduleSheet sheet) {
    Programmes programmes = Programmes.of(submittal.job());
    if (programmes.programme().isEmpty()) {
      sheet.note(
          "No programme: "
              + (programmes.missing().isEmpty()
                  ? "no order was found that keeps every rule."
                  : programmes.missing()));
    }
  }

  private static String words(PileKind kind) {
    return kind == PileKind.PRIMARY ? "primary" : "secondary";
  }
}
