package pilefolio.output.figure;

import java.util.ArrayList;
import java.util.List;
import pilefolio.submittal.figure.ProgrammeData;

/**
 * Bars day by day; days off are shaded. A long programme goes on in a second band below the first.
 * The label of a bar is left out where there is no room; the schedule lists every pile.
 */
public final class ProgrammeFigure implements Figure {
  private static final double WIDTH = 168;
  private static final double NAMES = 40;
  private static final double LEAST_DAY = 3.0;
  private static final double MOST_DAY = 7.5;
  private static final double HEAD = 11;
  private static final double ROW = 5.6;
  private static final double BAND_GAP = 5;
  private static final double KEY = 6;

  /** Height that fits on a page of either size with its caption, in mm. */
  private static final double MOST = 212;

  private final ProgrammeData data;
  private final int sheet;
  private final int daysInBand;
  private final int firstBand;
  private final int lastBand;

  /**
   * The days on as many sheets as fit on pages. The first sheet has the id of the data, the others
   * that id with -sheet-2 and so on.
   *
   * @throws IllegalArgumentException when there are no days
   */
  public static List<ProgrammeFigure> sheets(ProgrammeData data) {
    if (data.days().isEmpty()) {
      throw new IllegalArgumentException("a programme needs days");
    }
    List<ProgrammeFigure> sheets = new ArrayList<>();
    int next = 0;
    int bands = bands(data);
    while (next < bands) {
      ProgrammeFigure sheet = new ProgrammeFigure(data, sheets.size() + 1, next);
      sheets.add(sheet);
      next = sheet.lastBand;
    }
    return List.copyOf(sheets);
  }

  private ProgrammeFigure(ProgrammeData data, int sheet, int firstBand) {
    this.data = data;
    this.sheet = sheet;
    int bands = bands(data);
    this.daysInBand = (data.days().size() + bands - 1) / bands;
    this.firstBand = firstBand;
    double height = KEY + bandHeight(firstBand);
    int next = firstBand + 1;
    while (next < bands && height + BAND_GAP + bandHeight(next) <= MOST) {
      height += BAND_GAP + bandHeight(next);
      next++;
    }
    this.lastBand = next;
  }

  private static int bands(ProgrammeData data) {
    int most = (int) ((WIDTH - NAMES) / LEAST_DAY);
    return (data.days().size() + most - 1) / most;
  }

  @Override
  public String id() {
    return sheet == 1 ? data.id() : data.id() + "-sheet-" + sheet;
  }

  @Override
  public double widthMm() {
    return WIDTH;
  }

  @Override
  public double heightMm() {
    double height = (lastBand - firstBand - 1) * BAND_GAP + KEY;
    for (int band = firstBand; band < lastBand; band++) {
      height += bandHeight(band);
    }
    return height;
  }

  @Override
  public String caption() {
    return sheet == 1 ? data.caption() : "Sheet " + sheet + ". " + data.caption();
  }

  private double bandHeight(int band) {
    return HEAD + ROW * rows(band).size();
  }

  /** The rows with work in a band. */
  private List<ProgrammeData.Row> rows(int band) {
    int from = band * daysInBand;
    int to = from + daysInBand;
    return data.rows().stream()
        .filter(
            row ->
                row.bars().stream().anyMatch(bar -> bar.lastDay() >= from && bar.firstDay() < to))
        .toList();
  }

  @Override
  public void draw(Canvas canvas) {
    double top = 0;
    for (int band = firstBand; band < lastBand; band++) {
      int from = band * daysInBand;
      int to = Math.min(data.days().size(), from + daysInBand);
      band(canvas, rows(band), top, from, to);
      top += bandHeight(band) + BAND_GAP;
    }
    Key.inRows(
        canvas,
        NAMES,
        heightMm() - KEY + 2,
        WIDTH - NAMES,
        List.of(
            Key.Entry.fill("primaries", Palette.LIGHT_GREY),
            Key.Entry.fill("secondaries", Palette.ACCENT),
            Key.Entry.fill("day off", Palette.FAINT.tint(0.7))));
  }

  private void band(Canvas canvas, List<ProgrammeData.Row> rows, double top, int from, int to) {
    double day = Math.min(MOST_DAY, (WIDTH - NAMES) / daysInBand);
    double right = NAMES + day * (to - from);
    double bottom = top + HEAD + ROW * rows.size();
    double head = top + HEAD;
    for (int d = from; d < to; d++) {
      ProgrammeData.Day shown = data.days().get(d);
      double x = NAMES + (d - from) * day;
      if (shown.off()) {
        canvas.rectangle(null, Palette.FAINT.tint(0.7), x, top + 3.8, day, bottom - top - 3.8);
      }
      Lettering small = Lettering.SMALL.sized(5).middle().centred();
      canvas.text(x + day / 2, top + 6, shown.weekday(), small.in(Palette.GREY));
      canvas.text(x + day / 2, top + 9, Integer.toString(shown.number()), small);
      canvas.line(Pen.GRID, x, top + 3.8, x, bottom);
      boolean monthBegins = d == from || !shown.month().equals(data.days().get(d - 1).month());
      if (monthBegins) {
        canvas.line(Pen.FINE, x, top, x, bottom);
        double length = canvas.textWidth(shown.month(), Lettering.SMALL.bold());
        boolean last = d + room(d, to) == to;
        if (room(d, to) * day > length + 1 || (last && x + length < WIDTH - 1)) {
          canvas.text(x + 0.8, top + 1.8, shown.month(), Lettering.SMALL.bold().centred());
        }
      }
    }
    canvas.line(Pen.FINE, right, top, right, bottom);
    canvas.line(Pen.MEDIUM, 0, head, right, head);
    for (int r = 0; r < rows.size(); r++) {
      row(canvas, rows.get(r), head + r * ROW, day, from, to);
    }
    canvas.line(Pen.MEDIUM, 0, bottom, right, bottom);
  }

  /** Days of the same month from a day to the end of the band. */
  private int room(int from, int to) {
    int d = from;
    while (d < to && data.days().get(d).month().equals(data.days().get(from).month())) {
      d++;
    }
    return d - from;
  }

  private void row(Canvas canvas, ProgrammeData.Row row, double y, double day, int from, int to) {
    canvas.text(0, y + ROW / 2, row.name(), fitted(canvas, row.name(), NAMES - 1.5));
    canvas.line(Pen.GRID, 0, y + ROW, NAMES + day * (to - from), y + ROW);
    List<double[]> taken = new ArrayList<>();
    for (ProgrammeData.Bar bar : row.bars()) {
      if (bar.lastDay() >= from && bar.firstDay() < to) {
        double x1 = NAMES + (Math.max(bar.firstDay(), from) - from) * day;
        double x2 = NAMES + (Math.min(bar.lastDay(), to - 1) - from + 1) * day;
        canvas.rectangle(
            null,
            row.secondary() ? Palette.ACCENT : Palette.LIGHT_GREY,
            x1 + 0.2,
            y + 1.1,
            x2 - x1 - 0.4,
            ROW - 2.2);
        taken.add(new double[] {x1, x2});
      }
    }
    int next = 0;
    Lettering small = Lettering.SMALL.sized(5).centred();
    for (ProgrammeData.Bar bar : row.bars()) {
      if (bar.lastDay() < from || bar.firstDay() >= to) {
        continue;
      }
      double[] place = taken.get(next++);
      double free = next < taken.size() ? taken.get(next)[0] : NAMES + day * (to - from);
      double length = canvas.textWidth(bar.label(), small);
      if (length < place[1] - place[0] - 0.8) {
        canvas.text(
            (place[0] + place[1]) / 2,
            y + ROW / 2,
            bar.label(),
            small.middle().in(row.secondary() ? Palette.WHITE : Palette.INK));
      } else if (length + 1.4 < free - place[1]) {
        canvas.text(place[1] + 0.7, y + ROW / 2, bar.label(), small);
      }
    }
  }

  /** Lettering small enough for a width. */
  private static Lettering fitted(Canvas canvas, String text, double room) {
    Lettering lettering = Lettering.SMALL.centred();
    double length = canvas.textWidth(text, lettering);
    return length <= room ? lettering : lettering.sized(6 * room / length);
  }
}
