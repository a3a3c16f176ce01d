package pilefolio.output.pdf.math;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import pilefolio.output.pdf.math.MathLayout.Atom;
import pilefolio.output.pdf.math.Tex.Kind;

/**
 * Breaks a row that is too long. Breaks stand before relations, else before plus and minus, else
 * before times, outside brackets before inside; a new line begins with the sign.
 */
final class LineBreaks {
  private static final int NEVER = Integer.MAX_VALUE;

  /** A line filled to this part is not worth a break at a worse place. */
  private static final double ENOUGH = 0.35;

  private LineBreaks() {}

  static MathBox stack(List<Atom> atoms, double width, double size) {
    List<MathBox> lines = new ArrayList<>();
    List<Double> indents = new ArrayList<>();
    double indent = 0;
    double hanging = hangingIndent(atoms, width, size);
    int from = 0;
    while (from < atoms.size()) {
      int to = end(atoms, from, width - indent);
      List<Atom> line = new ArrayList<>(atoms.subList(from, to));
      Atom first = line.get(0);
      if (from > 0) {
        line.set(0, new Atom(first.box(), first.kind(), 0, first.sign(), first.nesting()));
      }
      // A leading sign keeps its usual distance to what follows it.
      lines.add(MathLayout.join(line));
      indents.add(from > 0 && first.kind() != Kind.RELATION ? indent + size * 0.9 : indent);
      from = to;
      indent = hanging;
    }
    return pile(lines, indents, size);
  }

  /** Continuation lines start under the first relation when that stands near the left edge. */
  private static double hangingIndent(List<Atom> atoms, double width, double size) {
    double x = 0;
    for (Atom atom : atoms) {
      x += atom.before();
      if (atom.kind() == Kind.RELATION && atom.nesting() == 0) {
        return x <= width * 0.3 ? x : size * 1.5;
      }
      x += atom.box().width();
    }
    return size * 1.5;
  }

  /** Index after the last atom of the line that begins at an atom. */
  private static int end(List<Atom> atoms, int from, double width) {
    // For each cost, the last place to break that still fits, and how far along it lies.
    Map<Integer, Integer> place = new TreeMap<>();
    Map<Integer, Double> reach = new TreeMap<>();
    double x = 0;
    for (int i = from; i < atoms.size(); i++) {
      Atom atom = atoms.get(i);
      if (i > from) {
        int cost = cost(atom);
        if (cost != NEVER) {
          place.put(cost, i);
          reach.put(cost, x);
        }
        x += atom.before();
      }
      x += atom.box().width();
      if (x > width + 0.01) {
        return place.isEmpty() ? nextBreak(atoms, i) : place.get(choose(reach, width));
      }
    }
    return atoms.size();
  }

  /** The cheapest break that leaves the line reasonably full, else the one that fills it most. */
  private static int choose(Map<Integer, Double> reach, double width) {
    int fullest = -1;
    for (Map.Entry<Integer, Double> entry : reach.entrySet()) {
      if (entry.getValue() >= width * ENOUGH) {
        return entry.getKey();
      }
      if (fullest < 0 || entry.getValue() > reach.get(fullest)) {
        fullest = entry.getKey();
      }
    }
    return fullest;
  }

  private static int nextBreak(List<Atom> atoms, int from) {
    for (int i = from + 1; i < atoms.size(); i++) {
      if (cost(atoms.get(i)) != NEVER) {
        return i;
      }
    }
    return atoms.size();
  }

  private static int cost(Atom atom) {
    int deep = Math.max(0, atom.nesting()) * 4;
    if (atom.kind() == Kind.RELATION) {
      return deep;
    }
    if (atom.kind() != Kind.BINARY) {
      return NEVER;
    }
    return deep + ("·".equals(atom.sign()) || "×".equals(atom.sign()) ? 2 : 1);
  }

  private static MathBox pile(List<MathBox> lines, List<Double> indents, double size) {
    double lead = size * 0.32;
    MathBox.Builder all = new MathBox.Builder();
    double y = 0;
    for (int i = lines.size() - 1; i >= 0; i--) {
      MathBox line = lines.get(i);
      double depth = Math.max(line.depth(), size * 0.2);
      double height = Math.max(line.height(), size * 0.65);
      if (i < lines.size() - 1) {
        y += depth + lead;
      }
      all.put(line, indents.get(i), y);
      y += height;
    }
    return all.build();
  }
}
