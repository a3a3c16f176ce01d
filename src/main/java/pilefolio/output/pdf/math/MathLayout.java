package pilefolio.output.pdf.math;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiConsumer;
import pilefolio.output.pdf.face.Typeface;
import pilefolio.output.pdf.math.Tex.Kind;

/**
 * Sets a formula in a serif face at a letter size. Proportions follow common mathematical
 * typesetting: fractions on the axis of the minus sign, scripts at about 0.7 of the size, thin
 * space at operators and a wider one at relations.
 */
public final class MathLayout {
  private static final double[] SCALE = {1, 1, 0.74, 0.62};
  private static final double THIN = 3 / 18.0;
  private static final double MEDIUM = 3.6 / 18;
  private static final double THICK = 5 / 18.0;
  private static final double RULE = 0.05;

  /** Levels of size: display, text, script, script of a script. */
  private static final int SCRIPT = 2;

  private final double size;
  private final double minimum;
  private final BiConsumer<Typeface, Integer> missing;

  /**
   * A layout.
   *
   * @param sizePt letter size in points
   * @param missing told of each character that the face does not have
   */
  public MathLayout(double sizePt, BiConsumer<Typeface, Integer> missing) {
    this.size = sizePt;
    this.minimum = Math.min(sizePt, 5.6);
    this.missing = missing;
  }

  /** Lays out on one line. */
  public MathBox layout(Tex formula) {
    return join(atoms(formula, 0));
  }

  /**
   * Lays out on as many lines as it takes; the base line is that of the last one.
   *
   * @param width room in points; what has no place to break may still be wider
   */
  public MathBox layout(Tex formula, double width) {
    List<Atom> atoms = atoms(formula, 0);
    MathBox whole = join(atoms);
    if (whole.width() <= width) {
      return whole;
    }
    return LineBreaks.stack(atoms, width, size);
  }

  /**
   * A part with its place in a row.
   *
   * @param box what to draw
   * @param kind decides spaces
   * @param before space in front of it, in points
   * @param sign the sign, for relations and operators; empty for others
   * @param nesting how many plain brackets stand open before it
   */
  record Atom(MathBox box, Kind kind, double before, String sign, int nesting) {}

  static MathBox join(List<Atom> atoms) {
    MathBox.Builder row = new MathBox.Builder();
    double x = 0;
    for (Atom atom : atoms) {
      x += atom.before();
      row.put(atom.box(), x, 0);
      x += atom.box().width();
    }
    return row.extend(x, 0, 0).build();
  }

  private double at(int level) {
    return Math.max(minimum, size * SCALE[Math.min(level, SCALE.length - 1)]);
  }

  private double axis(int level) {
    int[] minus = Typeface.SERIF.font().getCharBBox('−');
    return (minus[1] + minus[3]) / 2.0 * at(level) / 1000;
  }

  private MathBox box(Tex tex, int level) {
    return join(atoms(tex, level));
  }

  private List<Atom> atoms(Tex tex, int level) {
    List<Tex> items = new ArrayList<>();
    flatten(tex, items, level);
    List<Atom> atoms = new ArrayList<>();
    Kind last = null;
    double extra = 0;
    int nesting = 0;
    for (int i = 0; i < items.size(); i++) {
      Tex item = items.get(i);
      if (item instanceof Tex.Space space) {
        extra += space.em() * at(level);
        continue;
      }
      Kind kind = kind(item);
      if (kind == Kind.BINARY && !binds(last, i + 1 < items.size() ? items.get(i + 1) : null)) {
        kind = Kind.ORDINARY;
      }
      double before = last == null ? 0 : gap(last, kind, level, item, atoms) * at(level);
      String sign = item instanceof Tex.Symbol symbol ? symbol.text() : "";
      if (kind == Kind.CLOSE) {
        nesting--;
      }
      atoms.add(new Atom(single(item, level), kind, before + extra, sign, nesting));
      if (kind == Kind.OPEN) {
        nesting++;
      }
      extra = 0;
      last = kind;
    }
    if (extra > 0) {
      atoms.add(new Atom(MathBox.space(extra), Kind.ORDINARY, 0, "", nesting));
    }
    return atoms;
  }

  /** Opens groups, and brackets round content no taller than a letter, so that lines may break. */
  private void flatten(Tex tex, List<Tex> into, int level) {
    if (tex instanceof Tex.Row row) {
      row.items().forEach(item -> flatten(item, into, level));
    } else if (tex instanceof Tex.Fence fence
        && !fence.open().isEmpty()
        && !fence.close().isEmpty()
        && !fence.open().equals("|")
        && box(fence.body(), level).extent() < at(level) * 1.12) {
      into.add(new Tex.Symbol(fence.open(), false, Kind.OPEN));
      flatten(fence.body(), into, level);
      into.add(new Tex.Symbol(fence.close(), false, Kind.CLOSE));
    } else {
      into.add(tex);
    }
  }

  private static boolean binds(Kind last, Tex next) {
    if (last == null
        || last == Kind.BINARY
        || last == Kind.RELATION
        || last == Kind.OPEN
        || last == Kind.FUNCTION
        || last == Kind.PUNCTUATION) {
      return false;
    }
    return next != null
        && !(next instanceof Tex.Symbol symbol
            && (symbol.kind() == Kind.RELATION || symbol.kind() == Kind.CLOSE));
  }

  private static Kind kind(Tex tex) {
    if (tex instanceof Tex.Symbol symbol) {
      return symbol.kind();
    }
    if (tex instanceof Tex.Scripts scripts) {
      Tex base = scripts.base();
      if (base instanceof Tex.Row row && row.items().size() == 1) {
        base = row.items().get(0);
      }
      return kind(base) == Kind.INNER ? Kind.ORDINARY : kind(base);
    }
    return tex instanceof Tex.Fraction || tex instanceof Tex.Fence ? Kind.INNER : Kind.ORDINARY;
  }

  private static double gap(Kind left, Kind right, int level, Tex item, List<Atom> before) {
    boolean script = level >= SCRIPT;
    if (left == Kind.RELATION || right == Kind.RELATION) {
      return script || left == right ? 0 : THICK;
    }
    if (left == Kind.BINARY || right == Kind.BINARY) {
      String sign =
          right == Kind.BINARY ? ((Tex.Symbol) item).text() : before.get(before.size() - 1).sign();
      double full = "·".equals(sign) ? 2.4 / 18 : "×".equals(sign) ? THIN : MEDIUM;
      return script ? 0.06 : full;
    }
    if (left == Kind.PUNCTUATION) {
      return script ? 0 : THIN;
    }
    if (left == Kind.OPEN || right == Kind.CLOSE || right == Kind.PUNCTUATION) {
      return 0;
    }
    if (left == Kind.FUNCTION) {
      return right == Kind.OPEN ? 0 : THIN;
    }
    if (right == Kind.FUNCTION) {
      return THIN;
    }
    if (left == Kind.INNER || right == Kind.INNER) {
      return script || right == Kind.OPEN ? 0 : THIN / 2;
    }
    return 0;
  }

  private MathBox single(Tex tex, int level) {
    if (tex instanceof Tex.Symbol symbol) {
      return symbol(symbol, level);
    }
    if (tex instanceof Tex.Fraction fraction) {
      return fraction(fraction, level);
    }
    if (tex instanceof Tex.Root root) {
      return root(root, level);
    }
    if (tex instanceof Tex.Scripts scripts) {
      return scripts(scripts, level);
    }
    if (tex instanceof Tex.Fence fence) {
      return fence(fence, level);
    }
    if (tex instanceof Tex.Overline overline) {
      MathBox of = box(overline.of(), level);
      double y = of.height() + at(level) * 0.1;
      return new MathBox.Builder()
          .put(of, 0, 0)
          .draw(new MathBox.Bar(0, y, of.width(), at(level) * RULE))
          .extend(0, y + at(level) * RULE * 2, 0)
          .build();
    }
    if (tex instanceof Tex.Table table) {
      return table(table, level);
    }
    return box(tex, level);
  }

  private MathBox symbol(Tex.Symbol symbol, int level) {
    return text(symbol.text(), symbol.italic(), at(level));
  }

  private MathBox text(String text, boolean italic, double sizePt) {
    MathBox.Builder line = new MathBox.Builder();
    StringBuilder run = new StringBuilder();
    Typeface face = null;
    double x = 0;
    for (int cp : text.codePoints().toArray()) {
      Typeface wanted = face(cp, italic);
      if (face != null && wanted != face) {
        x += put(line, run, face, sizePt, x);
      }
      face = wanted;
      run.appendCodePoint(cp);
    }
    if (face != null) {
      put(line, run, face, sizePt, x);
    }
    return line.build();
  }

  private Typeface face(int cp, boolean italic) {
    Typeface first = italic ? Typeface.SERIF_ITALIC : Typeface.SERIF;
    if (first.shows(cp)) {
      return first;
    }
    Typeface second = italic ? Typeface.SERIF : Typeface.SANS;
    if (!second.shows(cp)) {
      missing.accept(first, cp);
    }
    return second;
  }

  private static double put(
      MathBox.Builder line, StringBuilder run, Typeface face, double sizePt, double x) {
    String text = run.toString();
    run.setLength(0);
    double width = face.width(text, sizePt);
    double height = 0;
    double depth = 0;
    int right = 0;
    for (int cp : text.codePoints().toArray()) {
      int[] bounds = face.font().getCharBBox(cp);
      if (bounds != null) {
        height = Math.max(height, bounds[3] * sizePt / 1000);
        depth = Math.max(depth, -bounds[1] * sizePt / 1000);
        right = bounds[2];
      }
    }
    // A slanted letter leans over its advance; keep what follows clear of it.
    int last = text.codePointBefore(text.length());
    double lean =
        face.isItalic() ? Math.max(0, right - face.font().getWidth(last)) * sizePt / 1000 : 0;
    line.put(
        new MathBox(
            width + lean, height, depth, List.of(new MathBox.Glyphs(0, 0, face, sizePt, text))),
        x,
        0);
    return width + lean;
  }

  private MathBox fraction(Tex.Fraction fraction, int level) {
    int inner = Math.max(1, level + 1);
    MathBox over = box(fraction.over(), inner);
    MathBox under = box(fraction.under(), inner);
    double em = at(level);
    double rule = em * RULE;
    double gap = em * (level == 0 ? 0.17 : 0.12);
    double width = Math.max(over.width(), under.width()) + em * 0.16;
    double axis = axis(level);
    double up = Math.max(axis + rule / 2 + gap + over.depth(), level == 0 ? em * 0.62 : em * 0.42);
    double down =
        Math.max(gap + rule / 2 - axis + under.height(), level == 0 ? em * 0.62 : em * 0.32);
    double side = em * 0.08;
    return new MathBox.Builder()
        .put(over, side + (width - over.width()) / 2, up)
        .put(under, side + (width - under.width()) / 2, -down)
        .draw(new MathBox.Bar(side, axis - rule / 2, width, rule))
        .extend(width + 2 * side, 0, 0)
        .build();
  }

  private MathBox root(Tex.Root root, int level) {
    double em = at(level);
    MathBox of = box(root.of(), level);
    double rule = em * RULE;
    double gap = em * 0.12;
    double height = Math.max(of.height(), em * 0.62);
    double depth = Math.max(of.depth(), em * 0.04);
    double top = height + gap + rule / 2;
    double bottom = -depth - em * 0.05;
    double tall = top - bottom;
    double foot = em * 0.26;
    double head = em * 0.5 + Math.min(em * 0.12, tall * 0.03);
    double start = 0;
    MathBox.Builder sign = new MathBox.Builder();
    double tickY = bottom + Math.min(tall * 0.52, em * 0.52);
    if (root.index() != null) {
      MathBox index = box(root.index(), 3);
      double x = Math.max(0, index.width() - em * 0.16);
      sign.put(index, 0, tickY + em * 0.12);
      start = x;
    }
    sign.draw(
        new MathBox.Strokes(
            rule * 0.9, List.of(start + em * 0.03, tickY - em * 0.05, start + em * 0.12, tickY)));
    sign.draw(
        new MathBox.Strokes(
            rule * 1.7, List.of(start + em * 0.12, tickY, start + foot, bottom + rule)));
    sign.draw(
        new MathBox.Strokes(
            rule,
            List.of(
                start + foot, bottom + rule * 0.5,
                start + head, top,
                start + head + of.width() + em * 0.12, top)));
    return sign.put(of, start + head + em * 0.06, 0)
        .extend(start + head + of.width() + em * 0.16, top + rule / 2 + em * 0.06, -bottom)
        .build();
  }

  private MathBox scripts(Tex.Scripts scripts, int level) {
    double em = at(level);
    MathBox base = box(scripts.base(), level);
    MathBox.Builder all = new MathBox.Builder().put(base, 0, 0);
    double x = base.width() + (isSlanted(scripts.base()) ? 0 : em * 0.03);
    double supX = x;
    if (scripts.primes() > 0) {
      MathBox primes = text("′".repeat(scripts.primes()), false, em);
      double lift = Math.max(0, base.height() - em * 0.72);
      all.put(primes, x, lift);
      supX += primes.width();
    }
    int inner = Math.max(SCRIPT, level + 1);
    boolean both = scripts.sub() != null && scripts.sup() != null;
    double scriptEm = at(inner);
    double down = 0;
    if (scripts.sub() != null) {
      MathBox sub = box(scripts.sub(), inner);
      down = Math.max(em * (both ? 0.22 : 0.16), base.depth() - em * 0.05 + scriptEm * 0.12);
      down = Math.max(down, sub.height() - em * 0.36);
      // A lowered part tucks under a slanted base, as its foot lies left of its head.
      double tuck = isSlanted(scripts.base()) ? em * 0.04 : 0;
      all.put(sub, x - tuck, -down);
    }
    if (scripts.sup() != null) {
      MathBox sup = box(scripts.sup(), inner);
      double up = Math.max(em * 0.36, base.height() - scriptEm * 0.42);
      up = Math.max(up, sup.depth() + em * 0.2);
      if (both) {
        MathBox sub = box(scripts.sub(), inner);
        double clear = (up - sup.depth()) - (sub.height() - down);
        up += Math.max(0, em * 0.1 - clear);
      }
      all.put(sup, supX, up);
    }
    return all.extend(all.width() + em * 0.04, 0, 0).build();
  }

  private static boolean isSlanted(Tex base) {
    if (base instanceof Tex.Row row && row.items().size() == 1) {
      return isSlanted(row.items().get(0));
    }
    return base instanceof Tex.Symbol symbol && symbol.italic();
  }

  private MathBox fence(Tex.Fence fence, int level) {
    MathBox body = box(fence.body(), level);
    double em = at(level);
    double axis = axis(level);
    double half = Math.max(body.height() - axis, body.depth() + axis);
    half = Math.max(half, em * 0.45);
    double x = 0;
    MathBox.Builder all = new MathBox.Builder();
    if (!fence.open().isEmpty()) {
      MathBox open = Brackets.draw(fence.open(), em, axis - half, axis + half);
      all.put(open, 0, 0);
      x = open.width();
    }
    all.put(body, x, 0);
    x += body.width();
    if (!fence.close().isEmpty()) {
      all.put(Brackets.draw(fence.close(), em, axis - half, axis + half), x, 0);
    }
    return all.build();
  }

  private MathBox table(Tex.Table table, int level) {
    double em = at(level);
    List<List<MathBox>> rows = new ArrayList<>();
    List<Double> widths = new ArrayList<>();
    for (List<Tex> cells : table.rows()) {
      List<MathBox> row = cells.stream().map(cell -> box(cell, level)).toList();
      rows.add(row);
      for (int i = 0; i < row.size(); i++) {
        if (widths.size() <= i) {
          widths.add(0.0);
        }
        widths.set(i, Math.max(widths.get(i), row.get(i).width()));
      }
    }
    double total = 0;
    List<Double> heights = new ArrayList<>();
    List<Double> depths = new ArrayList<>();
    for (List<MathBox> row : rows) {
      double h = row.stream().mapToDouble(MathBox::height).max().orElse(0);
      double d = row.stream().mapToDouble(MathBox::depth).max().orElse(0);
      heights.add(Math.max(h, em * 0.7));
      depths.add(Math.max(d, em * 0.25));
      total += heights.get(heights.size() - 1) + depths.get(depths.size() - 1);
    }
    double lead = em * 0.2;
    total += lead * (rows.size() - 1);
    double y = axis(level) + total / 2;
    MathBox.Builder all = new MathBox.Builder();
    for (int r = 0; r < rows.size(); r++) {
      y -= heights.get(r);
      double x = 0;
      for (int i = 0; i < rows.get(r).size(); i++) {
        all.put(rows.get(r).get(i), x, y);
        x += widths.get(i) + em;
      }
      y -= depths.get(r) + lead;
    }
    return all.build();
  }
}
