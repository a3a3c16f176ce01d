package pilefolio.output.figure;

/** A bar that shows a length of the drawing, for prints that are not at their own size. */
public final class ScaleBar {
  private ScaleBar() {}

  /**
   * Draws a bar of about the length wanted, rounded to 1, 2 or 5 times a power of ten.
   *
   * @param x left end in mm
   * @param y upper edge in mm
   * @param mmPerUnit mm on paper for one unit of length
   * @param wantedMm length of the bar in mm to aim at
   * @param unit name of the unit
   */
  public static void draw(
      Canvas canvas, double x, double y, double mmPerUnit, double wantedMm, String unit) {
    double units = wantedMm / mmPerUnit;
    double power = Math.pow(10, Math.floor(Math.log10(units)));
    double lead = units / power;
    double length = (lead >= 5 ? 5 : lead >= 2 ? 2 : 1) * power;
    double part = length * mmPerUnit / 4;
    Pen pen = Pen.FINE.with(Palette.INK);
    for (int i = 0; i < 4; i++) {
      canvas.rectangle(pen, i % 2 == 0 ? Palette.INK : Palette.WHITE, x + i * part, y, part, 1.1);
    }
    Lettering lettering = Lettering.SMALL.middle().below();
    canvas.text(x, y + 1.8, "0", lettering);
    double half = length / 2;
    String middle = Axis.number(half, lead >= 5 ? half / 10 : half);
    canvas.text(x + 2 * part, y + 1.8, middle, lettering);
    canvas.text(x + 4 * part, y + 1.8, Axis.number(length, length) + " " + unit, lettering);
  }
}
