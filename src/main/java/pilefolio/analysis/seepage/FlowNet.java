package pilefolio.analysis.seepage;

import java.util.ArrayList;
import java.util.List;

/**
 * Heads and flow of a problem by finite volumes: on each cell of a rectangular mesh the inflow over
 * its four faces adds up to nothing, with the conductance of two half cells in a row between
 * neighbours; no flow crosses the wall, the base and the far boundaries.
 */
public final class FlowNet {
  private final FlowProblem problem;
  private final FlowMesh mesh;
  private final double[][] head;
  private final int wallColumn;

  /** A point of the wall. */
  public record Head(double level, double head) {}

  private FlowNet(FlowProblem problem, FlowMesh mesh, double[][] head, int wallColumn) {
    this.problem = problem;
    this.mesh = mesh;
    this.head = head;
    this.wallColumn = wallColumn;
  }

  /** Solves a problem on the usual mesh. */
  public static FlowNet solve(FlowProblem problem) {
    return solve(problem, 1);
  }

  /**
   * Solves a problem.
   *
   * @param refinement 1 for the usual mesh, 2 for half its spacing
   */
  public static FlowNet solve(FlowProblem problem, double refinement) {
    FlowMesh mesh = FlowMesh.of(problem, refinement);
    int nx = mesh.x().length - 1;
    int ny = mesh.y().length - 1;
    int[][] number = new int[nx][ny];
    int count = 0;
    int wall = 0;
    for (int i = 0; i < nx; i++) {
      boolean front = middle(mesh.x(), i) > 0;
      if (!front) {
        wall = i + 1;
      }
      double surface = front ? problem.surfaceFront() : problem.surfaceBehind();
      for (int j = 0; j < ny; j++) {
        number[i][j] = middle(mesh.y(), j) < surface ? count++ : -1;
      }
    }
    BandedSystem system = new BandedSystem(count, ny);
    for (int i = 0; i < nx; i++) {
      boolean front = i >= wall;
      for (int j = 0; j < ny; j++) {
        if (number[i][j] < 0) {
          continue;
        }
        double width = size(mesh.x(), i);
        PermeableLayer here = problem.layerAt(middle(mesh.y(), j));
        double halfUp = size(mesh.y(), j) / 2 / here.kVertical();
        if (j + 1 < ny && number[i][j + 1] >= 0) {
          PermeableLayer above = problem.layerAt(middle(mesh.y(), j + 1));
          double half = size(mesh.y(), j + 1) / 2 / above.kVertical();
          system.join(number[i][j], number[i][j + 1], width / (halfUp + half));
        } else {
          double given = front ? problem.headFront() : problem.headBehind();
          system.tie(number[i][j], width / halfUp, given);
        }
        boolean throughWall = i + 1 == wall && middle(mesh.y(), j) > problem.toe();
        if (i + 1 < nx && number[i + 1][j] >= 0 && !throughWall) {
          double distance = (size(mesh.x(), i) + size(mesh.x(), i + 1)) / 2;
          system.join(
              number[i][j], number[i + 1][j], size(mesh.y(), j) * here.kHorizontal() / distance);
        }
      }
    }
    double[] x = system.solve();
    double[][] head = new double[nx][ny];
    for (int i = 0; i < nx; i++) {
      for (int j = 0; j < ny; j++) {
        head[i][j] = number[i][j] < 0 ? Double.NaN : x[number[i][j]];
      }
    }
    return new FlowNet(problem, mesh, head, wall);
  }

  private static double middle(double[] lines, int i) {
    return (lines[i] + lines[i + 1]) / 2;
  }

  private static double size(double[] lines, int i) {
    return lines[i + 1] - lines[i];
  }

  /** The problem solved. */
  public FlowProblem problem() {
    return problem;
  }

  /** Number of cells. */
  public int cells() {
    return (mesh.x().length - 1) * (mesh.y().length - 1);
  }

  /** Water that leaves in front, m³/s per metre of wall. */
  public double outflow() {
    return flow(wallColumn, mesh.x().length - 1, problem.headFront());
  }

  /** Water that enters behind, m³/s per metre of wall. */
  public double inflow() {
    return -flow(0, wallColumn, problem.headBehind());
  }

  private double flow(int from, int to, double given) {
    double sum = 0;
    for (int i = from; i < to; i++) {
      int j = top(i);
      double k = problem.layerAt(middle(mesh.y(), j)).kVertical();
      sum += size(mesh.x(), i) * k * (head[i][j] - given) / (size(mesh.y(), j) / 2);
    }
    return sum;
  }

  private int top(int i) {
    int j = mesh.y().length - 2;
    while (Double.isNaN(head[i][j])) {
      j--;
    }
    return j;
  }

  /** Gradient with which water leaves beside the wall in front; positive upward. */
  public double exitGradient() {
    int j = top(wallColumn);
    return (head[wallColumn][j] - problem.headFront()) / (size(mesh.y(), j) / 2);
  }

  /** Head along the wall behind, from the surface of the water to the toe. */
  public List<Head> behind() {
    return along(wallColumn - 1, problem.surfaceBehind(), problem.headBehind());
  }

  /** Head along the wall in front, from the surface of the water to the toe. */
  public List<Head> front() {
    return along(wallColumn, problem.surfaceFront(), problem.headFront());
  }

  private List<Head> along(int column, double surface, double atSurface) {
    List<Head> heads = new ArrayList<>();
    heads.add(new Head(surface, atSurface));
    for (int j = top(column); middle(mesh.y(), j) > problem.toe(); j--) {
      heads.add(new Head(middle(mesh.y(), j), head[column][j]));
      // Heads bend where the permeability changes: the value on the face between two layers.
      if (mesh.y()[j] > problem.toe() + 1e-9
          && !problem
              .layerAt(middle(mesh.y(), j))
              .equals(problem.layerAt(middle(mesh.y(), j - 1)))) {
        heads.add(new Head(mesh.y()[j], onFace(column, j)));
      }
    }
    heads.add(new Head(problem.toe(), headAtToe()));
    return heads;
  }

  /** Head on the lower face of a cell. */
  private double onFace(int i, int j) {
    double above = problem.layerAt(middle(mesh.y(), j)).kVertical() / size(mesh.y(), j);
    double below = problem.layerAt(middle(mesh.y(), j - 1)).kVertical() / size(mesh.y(), j - 1);
    return (above * head[i][j] + below * head[i][j - 1]) / (above + below);
  }

  /** Head at the toe, m: the mean of both sides, which meet there. */
  public double headAtToe() {
    int j = rowAboveToe();
    return (onFace(wallColumn - 1, j) + onFace(wallColumn, j)) / 2;
  }

  private int rowAboveToe() {
    int j = 0;
    while (middle(mesh.y(), j) < problem.toe()) {
      j++;
    }
    return j;
  }

  /**
   * Mean head in front at the level of the toe over a width from the wall, less the head in front,
   * m.
   */
  public double meanExcessHeadAtToe(double width) {
    int j = rowAboveToe();
    double sum = 0;
    double done = 0;
    double lastX = 0;
    double last = headAtToe();
    for (int i = wallColumn; done < width && i < mesh.x().length - 1; i++) {
      double x = Math.min(width, middle(mesh.x(), i));
      double value = onFace(i, j);
      double atX = last + (value - last) * (x - lastX) / (middle(mesh.x(), i) - lastX);
      sum += (x - done) * ((last + atX) / 2 - problem.headFront());
      done = x;
      lastX = middle(mesh.x(), i);
      last = value;
    }
    return sum / width;
  }
}
