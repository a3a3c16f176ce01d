package pilefolio.workbook;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Optional;
import org.apache.poi.ss.usermodel.DateUtil;
import pilefolio.findings.CellRef;
import pilefolio.units.Unit;

/**
 * A column of dates.
 *
 * @param name name in the head row
 * @param need whether a cell must be filled in
 * @param meaning what is meant
 * @param example an example, as {@code 2027-03-01}
 */
public record DateColumn(String name, Need need, String meaning, String example)
    implements Column<LocalDate> {

  private static final LocalDate FIRST = LocalDate.of(1990, 1, 1);
  private static final LocalDate LAST = LocalDate.of(2199, 12, 31);

  @Override
  public String expected(Unit unit) {
    return name + " is a date between 1990 and 2199, such as " + example;
  }

  @Override
  public Optional<LocalDate> read(CellContent content, Place place) {
    if (content instanceof CellContent.Figure figure
        && figure.date()
        && DateUtil.isValidExcelDate(figure.value())) {
      return checked(DateUtil.getLocalDateTime(figure.value()).toLocalDate(), place);
    }
    if (content instanceof CellContent.Words words) {
      try {
        LocalDate date = LocalDate.parse(words.text().strip());
        place.report(
            FindingKind.DATE_AS_TEXT,
            name + " " + date + " is stored as text",
            "it is read as that date; format the cell as a date and type it again");
        return checked(date, place);
      } catch (DateTimeParseException notIso) {
        // Any other order of day and month could be read in two ways.
        return refused("\"" + NumberColumn.shortened(words.text()) + "\"", place);
      }
    }
    if (content instanceof CellContent.Figure figure) {
      return refused("the number " + figure.value(), place);
    }
    return refused("TRUE or FALSE", place);
  }

  private Optional<LocalDate> checked(LocalDate date, Place place) {
    return date.isBefore(FIRST) || date.isAfter(LAST)
        ? refused(date.toString(), place)
        : Optional.of(date);
  }

  private Optional<LocalDate> refused(String found, Place place) {
    place.report(
        FindingKind.NOT_A_DATE,
        name + " is " + found,
        "format the cell as a date; " + expected(place.unit()));
    return Optional.empty();
  }

  @Override
  public Optional<LocalDate> standard(CellRef cell) {
    return Optional.empty();
  }

  @Override
  public String standardText() {
    return "";
  }
}
