package pilefolio.analysis.staged;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Takes a wall through its stages. Always ends: in equilibrium, or with the stage that has none.
 */
public final class StagedAnalysis {
  private static final int FIRST_STEPS = 25;
  private static final int MOST_STEPS = 400;
  private static final int LOAD_STEPS = 16;
  // An iteration that fails so close to the limit load has met it.
  private static final double NEAR_LIMIT = 1e-4;
  private static final double[] SOFTER = {1e-4, 1e-3, 1e-2, 0.1, 1};

  private record Locked(double lockOff, double stiffness, double force, double displacement) {}

  private final StagedWall wall;
  private final WallMesh mesh;
  private final double[] u;
  private final double[] unbent;
  private double[] plasticBehind;
  private double[] plasticFront;
  private double stiffness;
  private final Map<String, Locked> locked = new HashMap<>();
  private StageEquations last;
  private int softSteps;

  private StagedAnalysis(StagedWall wall) {
    this.wall = wall;
    mesh = WallMesh.of(wall);
    u = new double[2 * mesh.nodes()];
    unbent = new double[2 * mesh.elements()];
    plasticBehind = new double[mesh.elements() * GaussPoints.COUNT];
    plasticFront = plasticBehind.clone();
    stiffness = wall.stages().get(0).stiffness();
  }

  /** Every stage until the first that has no equilibrium. */
  public static StagedOutcome of(StagedWall wall) {
    return new StagedAnalysis(wall).run();
  }

  private StagedOutcome run() {
    List<StageState> states = new ArrayList<>();
    for (WallStage stage : wall.stages()) {
      stiffen(stage.stiffness());
      StageEquations equations =
          new StageEquations(
              mesh,
              stiffness,
              unbent,
              SideSprings.of(stage.behind(), mesh, plasticBehind),
              SideSprings.of(stage.front(), mesh, plasticFront),
              springs(stage),
              wall.toe(),
              stage.loads());
      double[] before = u.clone();
      StageIteration iteration = new StageIteration(equations, wall.displacementLimit());
      boolean solved = iteration.solve(u, FIRST_STEPS);
      int steps = iteration.steps();
      if (!solved) {
        LimitMechanism limit = new LimitMechanism(equations, stage);
        Optional<LimitMechanism.Found> found = limit.find(0);
        if (found.isEmpty()) {
          solved = throughSofterGround(equations);
          steps = solved ? softSteps : steps;
        }
        if (!solved && found.isEmpty()) {
          System.arraycopy(before, 0, u, 0, u.length);
          solved = iteration.solve(u, MOST_STEPS);
          steps = iteration.steps();
        }
        if (!solved && found.isEmpty()) {
          found = limit.find(NEAR_LIMIT);
        }
        if (found.isPresent()) {
          return collapse(states, stage, found.get());
        }
        if (!solved) {
          System.arraycopy(before, 0, u, 0, u.length);
          steps += inSteps(equations);
          if (steps < 0) {
            return collapse(
                states,
                stage,
                new LimitMechanism.Found(
                    Mechanism.NOT_FOUND,
                    "no equilibrium was found by the iteration",
                    Failure.NONE));
          }
        }
      }
      double largest = StageIteration.largest(u);
      if (largest > wall.displacementLimit()) {
        return collapse(
            states,
            stage,
            new LimitMechanism.Found(
                Mechanism.DISPLACEMENT_BEYOND_LIMIT,
                String.format(
                    Locale.ROOT,
                    "the wall would have to move %.2f m to find equilibrium, more than the limit of"
                        + " %.2f m",
                    largest,
                    wall.displacementLimit()),
                new Failure(0, largest, wall.displacementLimit())));
      }
      states.add(new StageReport(stage, equations, u).state(steps));
      remember(equations);
    }
    return new StagedOutcome.Converged(states);
  }

  private StagedOutcome collapse(
      List<StageState> states, WallStage stage, LimitMechanism.Found found) {
    return new StagedOutcome.Collapsed(
        states,
        states.size(),
        stage.name(),
        found.mechanism(),
        found.reason() + removed(stage),
        found.failure());
  }

  private String removed(WallStage stage) {
    if (last == null) {
      return "";
    }
    String gone =
        last.supports().stream()
            .map(s -> s.support().id())
            .filter(id -> stage.supports().stream().noneMatch(s -> s.id().equals(id)))
            .collect(Collectors.joining(", "));
    return gone.isEmpty() ? "" : "; removed in this stage: " + gone;
  }

  // Near the limit load stiff ground turns plastic point by point; softer ground finds the same
  // limits in a few steps and leads there.
  private boolean throughSofterGround(StageEquations equations) {
    softSteps = 0;
    for (double share : SOFTER) {
      StageIteration iteration =
          new StageIteration(equations.softened(share), wall.displacementLimit() / share);
      if (!iteration.solve(u, MOST_STEPS)) {
        return false;
      }
      softSteps += iteration.steps();
    }
    return true;
  }

  // Iterations used, or a large negative number if a step fails.
  private int inSteps(StageEquations equations) {
    int used = 0;
    for (int i = 1; i <= LOAD_STEPS; i++) {
      StageEquations part =
          i == LOAD_STEPS ? equations : equations.from(last, (double) i / LOAD_STEPS);
      StageIteration iteration = new StageIteration(part, wall.displacementLimit());
      if (!iteration.solve(u, MOST_STEPS)) {
        return Integer.MIN_VALUE / 2;
      }
      used += iteration.steps();
    }
    return used;
  }

  // What is added to a wall starts without moment; a softer wall relaxes.
  private void stiffen(double next) {
    if (next > stiffness && last != null) {
      for (int e = 0; e < mesh.elements(); e++) {
        for (int end = 0; end < 2; end++) {
          double bent = last.curvature(u, e, end);
          int i = 2 * e + end;
          unbent[i] = bent - stiffness / next * (bent - unbent[i]);
        }
      }
    }
    stiffness = next;
  }

  private List<SupportSpring> springs(WallStage stage) {
    List<SupportSpring> all = new ArrayList<>();
    for (ElasticSupport s : stage.supports()) {
      int node = mesh.nearest(s.level());
      Locked before = locked.get(s.id());
      if (before == null || before.lockOff() != s.lockOff()) {
        all.add(new SupportSpring(s, node, s.lockOff(), 0, true));
      } else if (before.stiffness() != s.stiffness()) {
        double force =
            last.supports().stream()
                .filter(o -> o.support().id().equals(s.id()))
                .mapToDouble(o -> o.force(u[2 * node]))
                .findFirst()
                .orElse(before.force());
        all.add(new SupportSpring(s, node, force, u[2 * node], false));
      } else {
        all.add(new SupportSpring(s, node, before.force(), before.displacement(), false));
      }
    }
    return all;
  }

  private void remember(StageEquations equations) {
    last = equations;
    Map<String, Locked> now = new HashMap<>();
    for (SupportSpring s : equations.supports()) {
      now.put(
          s.support().id(),
          new Locked(
              s.support().lockOff(),
              s.support().stiffness(),
              s.lockedForce(),
              s.placing() ? u[2 * s.node()] : s.lockedDisplacement()));
    }
    locked.clear();
    locked.putAll(now);
    if (wall.memory() == GroundMemory.PLASTIC_MOVEMENT) {
      double[] behind = plasticBehind.clone();
      double[] front = plasticFront.clone();
      int p = 0;
      for (int e = 0; e < mesh.elements(); e++) {
        for (int g = 0; g < GaussPoints.COUNT; g++, p++) {
          double y = equations.displacement(u, e, g);
          behind[p] = equations.behind().plasticAfter(p, -y);
          front[p] = equations.front().plasticAfter(p, y);
        }
      }
      plasticBehind = behind;
      plasticFront = front;
    }
  }
}
