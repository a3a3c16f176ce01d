package pilefolio.analysis.staged;

import java.util.ArrayList;
import java.util.List;
import java.util.NavigableSet;
import java.util.TreeSet;

/** Nodes from the top of the wall to its toe, the same in every stage. */
final class WallMesh {
  // Places closer than this share a node where neither is a support: slivers spoil the equations.
  private static final double LEAST = 0.01;
  private static final double SAME = 1e-3;

  private final double[] levels;

  private WallMesh(double[] levels) {
    this.levels = levels;
  }

  static WallMesh of(StagedWall wall) {
    TreeSet<Double> fixed = new TreeSet<>();
    fixed.add(wall.topLevel());
    fixed.add(wall.toeLevel());
    TreeSet<Double> wanted = new TreeSet<>();
    for (WallStage stage : wall.stages()) {
      for (ElasticSupport s : stage.supports()) {
        add(fixed, s.level(), SAME);
      }
      wanted.add(stage.excavationLevel());
      wanted.addAll(stage.behind().breaks());
      wanted.addAll(stage.front().breaks());
      for (DirectLoad load : stage.loads()) {
        if (load instanceof DirectLoad.Pressure p) {
          wanted.add(p.upper());
          wanted.add(p.lower());
        } else if (load instanceof DirectLoad.Force f) {
          add(fixed, f.level(), SAME);
        } else if (load instanceof DirectLoad.Moment m) {
          add(fixed, m.level(), SAME);
        }
      }
    }
    for (double level : wanted) {
      if (level < wall.topLevel() && level > wall.toeLevel()) {
        add(fixed, level, LEAST);
      }
    }
    List<Double> nodes = new ArrayList<>();
    Double upper = null;
    for (double lower : fixed.descendingSet()) {
      if (upper != null) {
        int parts = (int) Math.max(1, Math.ceil((upper - lower) / wall.elementLength() - 1e-9));
        for (int i = 1; i < parts; i++) {
          nodes.add(upper + (lower - upper) * i / parts);
        }
      }
      nodes.add(lower);
      upper = lower;
    }
    return new WallMesh(nodes.stream().mapToDouble(Double::doubleValue).toArray());
  }

  private static void add(NavigableSet<Double> levels, double level, double least) {
    Double above = levels.ceiling(level);
    Double below = levels.floor(level);
    if ((above == null || above - level >= least) && (below == null || level - below >= least)) {
      levels.add(level);
    }
  }

  int elements() {
    return levels.length - 1;
  }

  int nodes() {
    return levels.length;
  }

  double level(int node) {
    return levels[node];
  }

  double length(int element) {
    return levels[element] - levels[element + 1];
  }

  double top() {
    return levels[0];
  }

  double toe() {
    return levels[levels.length - 1];
  }

  int nearest(double level) {
    int low = 0;
    int high = levels.length - 1;
    while (high - low > 1) {
      int mid = (low + high) >>> 1;
      if (levels[mid] >= level) {
        low = mid;
      } else {
        high = mid;
      }
    }
    return levels[low] - level <= level - levels[high] ? low : high;
  }
}
