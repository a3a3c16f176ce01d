package pilefolio.output.figure;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * Patterns for ground and materials, made of single lines cut at the polygon, so that nothing
 * becomes a picture. The choice of pattern for a soil is common drawing practice.
 */
public enum Hatch {
  /** Lines rising to the right. */
  RISING {
    @Override
    void draw(Canvas canvas, Pen pen, double spacing, double... xy) {
      parallel(canvas, pen, spacing, 45, 0, xy);
    }
  },
  /** Lines falling to the right. */
  FALLING {
    @Override
    void draw(Canvas canvas, Pen pen, double spacing, double... xy) {
      parallel(canvas, pen, spacing, -45, 0, xy);
    }
  },
  /** Both. */
  CROSSED {
    @Override
    void draw(Canvas canvas, Pen pen, double spacing, double... xy) {
      parallel(canvas, pen, spacing, 45, 0, xy);
      parallel(canvas, pen, spacing, -45, 0, xy);
    }
  },
  /** Level lines, for clay. */
  LEVEL {
    @Override
    void draw(Canvas canvas, Pen pen, double spacing, double... xy) {
      parallel(canvas, pen, spacing, 0, 0, xy);
    }
  },
  /** Broken level lines, for silt and sandy clay. */
  DASHES {
    @Override
    void draw(Canvas canvas, Pen pen, double spacing, double... xy) {
      parallel(canvas, pen, spacing, 0, spacing * 1.2, xy);
    }
  },
  /** Dots, for sand. */
  DOTS {
    @Override
    void draw(Canvas canvas, Pen pen, double spacing, double... xy) {
      points(canvas, pen, spacing, Math.min(0.16, spacing / 8), false, xy);
    }
  },
  /** Small circles, for gravel. */
  PEBBLES {
    @Override
    void draw(Canvas canvas, Pen pen, double spacing, double... xy) {
      points(canvas, pen, spacing * 1.4, spacing / 4, true, xy);
    }
  },
  /** Short crossed strokes, for made ground. */
  STROKES {
    @Override
    void draw(Canvas canvas, Pen pen, double spacing, double... xy) {
      parallel(canvas, pen, spacing * 1.6, 45, spacing, xy);
      parallel(canvas, pen, spacing * 1.6, -45, spacing, xy);
    }
  },
  /** Courses with joints, for rock. */
  COURSES {
    @Override
    void draw(Canvas canvas, Pen pen, double spacing, double... xy) {
      courses(canvas, pen, spacing * 1.3, xy);
    }
  },
  /** Dots among rising lines, for concrete. */
  CONCRETE {
    @Override
    void draw(Canvas canvas, Pen pen, double spacing, double... xy) {
      parallel(canvas, pen, spacing * 2, 45, spacing * 1.5, xy);
      points(canvas, pen, spacing * 1.5, 0.12, false, xy);
    }
  };

  abstract void draw(Canvas canvas, Pen pen, double spacing, double... xy);

  /**
   * Parallel lines over a polygon.
   *
   * @param broken length of dash and gap in mm, 0 for full lines; neighbours are staggered
   */
  private static void parallel(
      Canvas canvas, Pen pen, double spacing, double degrees, double broken, double... xy) {
    double c = Math.cos(Math.toRadians(degrees));
    double s = -Math.sin(Math.toRadians(degrees));
    double[] turned = new double[xy.length];
    double low = Double.MAX_VALUE;
    double high = -Double.MAX_VALUE;
    for (int i = 0; i < xy.length; i += 2) {
      turned[i] = xy[i] * c + xy[i + 1] * s;
      turned[i + 1] = -xy[i] * s + xy[i + 1] * c;
      low = Math.min(low, turned[i + 1]);
      high = Math.max(high, turned[i + 1]);
    }
    long first = (long) Math.ceil(low / spacing);
    for (long row = first; row * spacing < high; row++) {
      // A hair off the grid, so that no line runs along an edge of the polygon.
      double v = row * spacing + 1e-6;
      List<Double> cuts = cuts(turned, v);
      for (int k = 0; k + 1 < cuts.size(); k += 2) {
        double u1 = cuts.get(k);
        double u2 = cuts.get(k + 1);
        if (broken == 0) {
          segment(canvas, pen, u1, u2, v, c, s);
        } else {
          double shift = Math.floorMod(row, 2L) == 0 ? 0 : broken;
          long from = (long) Math.floor((u1 - shift) / (2 * broken));
          for (long d = from; d * 2 * broken + shift < u2; d++) {
            double a = Math.max(u1, d * 2 * broken + shift);
            double b = Math.min(u2, d * 2 * broken + shift + broken);
            if (b > a) {
              segment(canvas, pen, a, b, v, c, s);
            }
          }
        }
      }
    }
  }

  private static void segment(
      Canvas canvas, Pen pen, double u1, double u2, double v, double c, double s) {
    canvas.line(pen, u1 * c - v * s, u1 * s + v * c, u2 * c - v * s, u2 * s + v * c);
  }

  private static void points(
      Canvas canvas, Pen pen, double spacing, double radius, boolean open, double... xy) {
    double[] box = bounds(xy);
    double rowHeight = spacing * 0.75;
    for (long row = (long) Math.ceil(box[1] / rowHeight); row * rowHeight < box[3]; row++) {
      double y = row * rowHeight;
      double shift = Math.floorMod(row, 2L) == 0 ? 0 : spacing / 2;
      for (long col = (long) Math.floor(box[0] / spacing) - 1; col * spacing < box[2]; col++) {
        // A fixed scatter keeps the pattern from looking like a grid.
        double x = col * spacing + shift + spacing * 0.18 * scatter(row * 31 + col * 17);
        double yy = y + spacing * 0.15 * scatter(row * 13 + col * 41 + 7);
        double room = radius + 0.1;
        if (inside(xy, x - room, yy)
            && inside(xy, x + room, yy)
            && inside(xy, x, yy - room)
            && inside(xy, x, yy + room)) {
          if (open) {
            canvas.circle(pen, null, x, yy, radius);
          } else {
            canvas.circle(null, pen.ink(), x, yy, radius);
          }
        }
      }
    }
  }

  private static double scatter(long seed) {
    long mixed = seed * 0x9E3779B97F4A7C15L;
    return ((mixed >>> 40) % 2001 - 1000) / 1000.0;
  }

  private static void courses(Canvas canvas, Pen pen, double spacing, double... xy) {
    parallel(canvas, pen, spacing, 0, 0, xy);
    double[] box = bounds(xy);
    double joint = spacing * 2.2;
    for (long row = (long) Math.floor(box[1] / spacing); row * spacing < box[3]; row++) {
      double shift = Math.floorMod(row, 2L) == 0 ? 0 : joint / 2;
      for (long col = (long) Math.floor(box[0] / joint) - 1; col * joint < box[2]; col++) {
        double x = col * joint + shift;
        double y1 = row * spacing;
        if (inside(xy, x, y1 + 0.01) && inside(xy, x, y1 + spacing - 0.01)) {
          canvas.line(pen, x, y1, x, y1 + spacing);
        }
      }
    }
  }

  private static List<Double> cuts(double[] xy, double v) {
    List<Double> cuts = new ArrayList<>();
    int n = xy.length / 2;
    for (int i = 0; i < n; i++) {
      int j = (i + 1) % n;
      double v1 = xy[2 * i + 1];
      double v2 = xy[2 * j + 1];
      if (v1 <= v != v2 <= v) {
        cuts.add(xy[2 * i] + (v - v1) / (v2 - v1) * (xy[2 * j] - xy[2 * i]));
      }
    }
    Collections.sort(cuts);
    return cuts;
  }

  private static boolean inside(double[] xy, double x, double y) {
    long left = cuts(xy, y).stream().filter(cut -> cut < x).count();
    return left % 2 == 1;
  }

  private static double[] bounds(double... xy) {
    double[] box = {Double.MAX_VALUE, Double.MAX_VALUE, -Double.MAX_VALUE, -Double.MAX_VALUE};
    for (int i = 0; i < xy.length; i += 2) {
      box[0] = Math.min(box[0], xy[i]);
      box[1] = Math.min(box[1], xy[i + 1]);
      box[2] = Math.max(box[2], xy[i]);
      box[3] = Math.max(box[3], xy[i + 1]);
    }
    return box;
  }
}
