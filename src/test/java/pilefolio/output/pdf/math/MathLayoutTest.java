package pilefolio.output.pdf.math;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import pilefolio.output.pdf.face.Typeface;

/** Layout rules of mathematical typesetting (common practice). */
class MathLayoutTest {
  private static final double SIZE = 10;
  private final MathLayout layout =
      new MathLayout(SIZE, (face, cp) -> fail("missing " + Character.toString(cp)));

  private MathBox set(String tex) {
    return layout.layout(TexParser.parse(tex));
  }

  private static List<MathBox.Glyphs> glyphs(MathBox box) {
    return box.marks().stream()
        .filter(MathBox.Glyphs.class::isInstance)
        .map(MathBox.Glyphs.class::cast)
        .toList();
  }

  private static MathBox.Glyphs glyph(MathBox box, String text) {
    return glyphs(box).stream().filter(g -> g.text().equals(text)).findFirst().orElseThrow();
  }

  private static String text(MathBox box) {
    return glyphs(box).stream().map(MathBox.Glyphs::text).collect(Collectors.joining());
  }

  @Test
  void variablesSlantAndNumbersFunctionsUnitsDoNot() {
    MathBox box = set("x = 2·\\sin φ\\,\\mathrm{kN} + Φ");
    assertEquals(Typeface.SERIF_ITALIC, glyph(box, "x").face());
    assertEquals(Typeface.SERIF_ITALIC, glyph(box, "φ").face());
    assertEquals(Typeface.SERIF, glyph(box, "2").face());
    assertEquals(Typeface.SERIF, glyph(box, "sin").face());
    assertEquals(Typeface.SERIF, glyph(box, "kN").face());
    assertEquals(Typeface.SERIF, glyph(box, "Φ").face());
  }

  @Test
  void nameOfSeveralLettersIsUpright() {
    assertEquals(Typeface.SERIF, glyph(set("c_{min}"), "min").face());
    assertEquals(Typeface.SERIF_ITALIC, glyph(set("c_z"), "z").face());
    assertEquals(Typeface.SERIF, glyph(set("OCR + x"), "OCR").face());
    MathBox mixed = set("σ′_{a,max}");
    assertEquals(Typeface.SERIF_ITALIC, glyph(mixed, "a").face());
    assertEquals(Typeface.SERIF, glyph(mixed, "max").face());
  }

  @Test
  void scriptsAreSmallerAndOffTheBaseLine() {
    MathBox box = set("a_b^c");
    assertTrue(glyph(box, "b").y() < 0);
    assertTrue(glyph(box, "c").y() > 0);
    assertTrue(glyph(box, "b").sizePt() < SIZE);
    assertEquals(glyph(box, "b").x(), glyph(box, "c").x(), 0.1 * SIZE);
  }

  @Test
  void partsOfFractionAreCentredAboutTheBarAndClearOfIt() {
    MathBox box = set("\\frac{a}{b·c·d}");
    MathBox.Bar bar =
        box.marks().stream()
            .filter(MathBox.Bar.class::isInstance)
            .map(MathBox.Bar.class::cast)
            .findFirst()
            .orElseThrow();
    MathBox.Glyphs over = glyph(box, "a");
    double centre = over.x() + Typeface.SERIF_ITALIC.width("a", SIZE) / 2;
    assertEquals(bar.x() + bar.width() / 2, centre, 0.05 * SIZE);
    assertTrue(over.y() > bar.y() + bar.height());
    // The letter d is the tallest below; its top stays clear of the bar.
    int[] d = Typeface.SERIF_ITALIC.font().getCharBBox('d');
    assertTrue(glyph(box, "d").y() + d[3] * SIZE / 1000 < bar.y());
  }

  @Test
  void barOfFractionStandsAtTheHeightOfTheMinusSign() {
    MathBox box = set("\\frac{a}{b}");
    MathBox.Bar bar =
        (MathBox.Bar)
            box.marks().stream().filter(MathBox.Bar.class::isInstance).findFirst().orElseThrow();
    int[] minus = Typeface.SERIF.font().getCharBBox('−');
    assertEquals((minus[1] + minus[3]) / 2.0 * SIZE / 1000, bar.y() + bar.height() / 2, 1e-9);
  }

  @Test
  void bracketsGrowWithWhatTheyHold() {
    assertTrue(glyphs(set("\\left(a\\right)")).stream().anyMatch(g -> g.text().equals("(")));
    MathBox tall = set("\\left(\\frac{a}{b}\\right)");
    assertTrue(glyphs(tall).stream().noneMatch(g -> g.text().equals("(")), "drawn, not set");
    assertEquals(2, tall.marks().stream().filter(MathBox.Curve.class::isInstance).count());
  }

  @Test
  void minusInFrontIsTighterThanBetween() {
    double sign = Typeface.SERIF.width("−", SIZE);
    double a = Typeface.SERIF_ITALIC.width("a", SIZE);
    assertEquals(sign, glyph(set("−a"), "a").x(), 0.02 * SIZE);
    assertTrue(glyph(set("a−b"), "b").x() > a + sign + 0.3 * SIZE);
  }

  @Test
  void longFormulaBreaksBeforeRelations() {
    String tex = "a = b + c + d + e + f + g = 1 + 2 + 3 + 4 + 5 + 6 = 21";
    MathBox whole = set(tex);
    MathBox broken = layout.layout(TexParser.parse(tex), whole.width() * 0.6);
    assertTrue(broken.width() <= whole.width() * 0.6);
    assertTrue(broken.extent() > whole.extent());
    assertEquals(text(whole).length(), text(broken).length(), "nothing lost");
    List<MathBox.Glyphs> signs = glyphs(broken).stream().filter(g -> g.text().equals("=")).toList();
    assertTrue(signs.stream().map(MathBox.Glyphs::y).distinct().count() >= 2, "signs on two lines");
    double lowest = glyphs(broken).stream().mapToDouble(MathBox.Glyphs::y).min().orElseThrow();
    MathBox.Glyphs first =
        glyphs(broken).stream()
            .filter(g -> g.y() == lowest)
            .min(java.util.Comparator.comparingDouble(MathBox.Glyphs::x))
            .orElseThrow();
    assertEquals("=", first.text());
  }

  @Test
  void formulaWithoutRelationBreaksBeforeSums() {
    String tex = "a·b·c·d·e·f + i·j·k·l·m·n + q·r·s·t·u·v";
    MathBox broken = layout.layout(TexParser.parse(tex), set(tex).width() * 0.7);
    assertTrue(broken.width() <= set(tex).width() * 0.7);
    assertEquals(text(set(tex)).length(), text(broken).length());
  }

  @Test
  void wideSpaceIsNotTakenForCharacter() {
    assertEquals("1234", text(set("1\\,234")));
    assertEquals("1234", text(set("1\u2009234")));
  }

  @Test
  void branchesStandBelowEachOther() {
    MathBox box = set("\\begin{cases} a & \\text{if } b \\\\ c & \\text{else} \\end{cases}");
    assertTrue(glyph(box, "a").y() > glyph(box, "c").y());
    assertEquals(glyph(box, "if ").x(), glyph(box, "else").x(), 1e-9);
  }
}
