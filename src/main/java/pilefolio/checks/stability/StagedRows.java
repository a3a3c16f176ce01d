package pilefolio.checks.stability;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import pilefolio.analysis.staged.SidePoint;
import pilefolio.analysis.staged.SideSlice;
import pilefolio.analysis.staged.SpringLaw;
import pilefolio.analysis.staged.StageState;
import pilefolio.analysis.staged.SupportForce;
import pilefolio.analysis.staged.WallNode;
import pilefolio.analysis.staged.WallSlice;
import pilefolio.checks.From;
import pilefolio.trace.Binding;
import pilefolio.trace.Binding.Row;
import pilefolio.trace.CalcSheet;
import pilefolio.trace.Calculation;
import pilefolio.trace.Given;
import pilefolio.trace.Source;

/** Fills the sheets of a stage with levels a checker can follow. */
final class StagedRows {
  private static final double KILO = 1000;
  private static final double LONGEST = 0.5;
  private static final double NONE = 1e-9;
  private static final Source FOUND = new Source.Method("staged analysis");

  private final StageState state;
  private final double toe;
  // Indexes of nodes between which slices are joined.
  private final List<Integer> nodes = new ArrayList<>();

  StagedRows(StageState state) {
    this.state = state;
    int last = state.nodes().size() - 1;
    toe = state.nodes().get(last).level();
    TreeSet<Integer> marks = new TreeSet<>(List.of(0, last));
    int most = 0;
    int least = 0;
    int shearing = 0;
    int drawing = 0;
    for (int i = 1; i < last; i++) {
      WallSlice above = state.slices().get(i - 1);
      WallSlice below = state.slices().get(i);
      if (changes(above.behind(), below.behind()) || changes(above.front(), below.front())) {
        marks.add(i);
      }
      most = state.nodes().get(i).moment() > state.nodes().get(most).moment() ? i : most;
      least = state.nodes().get(i).moment() < state.nodes().get(least).moment() ? i : least;
    }
    // The greatest shear stands where the net pressure changes sign, which no other mark finds.
    for (int i = 1; i < last; i++) {
      shearing = largest(i) > largest(shearing) ? i : shearing;
      drawing = smallest(i) < smallest(drawing) ? i : drawing;
    }
    marks.add(most);
    marks.add(least);
    marks.add(shearing);
    marks.add(drawing);
    for (int i = 0; i <= last; i++) {
      WallNode n = state.nodes().get(i);
      if (Math.abs(n.shearAbove() - n.shearBelow()) > NONE
          || Math.abs(n.level() - state.stage().excavationLevel()) < NONE) {
        marks.add(i);
      }
    }
    int from = 0;
    for (int mark : marks) {
      double height = level(from) - level(mark);
      int parts = (int) Math.ceil(height / LONGEST - NONE);
      for (int p = 1; p < parts; p++) {
        int i = from + (mark - from) * p / parts;
        if (i > from && i < mark) {
          nodes.add(i);
        }
      }
      nodes.add(mark);
      from = mark;
    }
  }

  private double largest(int node) {
    WallNode n = state.nodes().get(node);
    return Math.max(n.shearAbove(), n.shearBelow());
  }

  private double smallest(int node) {
    WallNode n = state.nodes().get(node);
    return Math.min(n.shearAbove(), n.shearBelow());
  }

  private static boolean changes(SideSlice above, SideSlice below) {
    SpringLaw a = above.bottom().law();
    SpringLaw b = below.top().law();
    return above.top().state() != below.bottom().state()
        || Math.abs(a.atRest() - b.atRest()) > 1e-6
        || Math.abs(a.active() - b.active()) > 1e-6
        || Math.abs(a.passive() - b.passive()) > 1e-6
        || Math.abs(a.modulus() - b.modulus()) > 1e-6
        || Math.abs(a.water() - b.water()) > 1e-6;
  }

  private double level(int node) {
    return state.nodes().get(node).level();
  }

  Calculation equilibrium() {
    CalcSheet sheet = state.supports().isEmpty() ? StagedSheets.FREE : StagedSheets.SUPPORTED;
    double used = 0;
    double limit = 0;
    for (WallSlice s : state.slices()) {
      used += s.front().earthForce();
      limit += s.front().passiveForce();
    }
    Binding binding =
        sheet
            .bind()
            .set("z_t", From.layout(toe, "toe of the wall"))
            .set("R_m", KILO * used, FOUND)
            .set("R_p", KILO * limit, FOUND);
    pressures(binding, "pressure-behind", "b", true);
    pressures(binding, "pressure-front", "f", false);
    forces(binding, "force-behind", "b", true);
    forces(binding, "force-front", "f", false);
    for (SupportForce s : state.supports()) {
      binding.row(
          "supports",
          Row.of(s.support().id())
              .set("T", KILO * s.force(), FOUND)
              .set("z_T", s.level(), new Source.Layout("level of the support")));
    }
    return binding.calculate();
  }

  private SideSlice side(int slice, boolean behind) {
    WallSlice s = state.slices().get(slice);
    return behind ? s.behind() : s.front();
  }

  private static boolean empty(SidePoint p) {
    return p.law().equals(SpringLaw.NOTHING);
  }

  private void pressures(Binding binding, String table, String i, boolean behind) {
    int number = 1;
    for (int k = 0; k < nodes.size(); k++) {
      int node = nodes.get(k);
      SidePoint above = k == 0 ? null : side(node - 1, behind).bottom();
      SidePoint below = k == nodes.size() - 1 ? null : side(node, behind).top();
      boolean same =
          above != null
              && below != null
              && Math.abs(above.pressure() - below.pressure()) < 1e-6
              && Math.abs(above.plastic() - below.plastic()) < 1e-6;
      if (above != null && !empty(above)) {
        number = pressure(binding, table, i, behind, node, above, number);
      }
      if (below != null && !empty(below) && (above == null || !same)) {
        number = pressure(binding, table, i, behind, node, below, number);
      }
    }
  }

  private int pressure(
      Binding binding, String table, String i, boolean behind, int node, SidePoint p, int number) {
    // Displacement is toward the excavation; movement is into the ground of each side.
    double toward = behind ? -1 : 1;
    binding.row(
        table,
        Row.of(String.valueOf(number))
            .set("z_" + i, level(node), new Source.Layout("node"))
            .set("y_" + i, toward * p.movement(), FOUND)
            .set("y_{0," + i + "}", clean(toward * p.plastic()), FOUND)
            .set("k_" + i, KILO * p.law().modulus(), new Source.Layout("of the layer"))
            .set("p_{0," + i + "}", KILO * p.law().atRest(), new Source.Layout("of the stage"))
            .set("p_{a," + i + "}", KILO * p.law().active(), new Source.Layout("of the stage"))
            .set("p_{p," + i + "}", KILO * p.law().passive(), new Source.Layout("of the stage"))
            .set("u_" + i, KILO * p.law().water(), new Source.Layout("of the stage")));
    return number + 1;
  }

  private static double clean(double value) {
    return Math.abs(value) < NONE ? 0 : value;
  }

  private void forces(Binding binding, String table, String i, boolean behind) {
    int number = 1;
    for (int k = 1; k < nodes.size(); k++) {
      int first = nodes.get(k - 1);
      int last = nodes.get(k);
      double force = 0;
      double moment = 0;
      for (int s = first; s < last; s++) {
        SideSlice side = side(s, behind);
        force += side.force();
        moment += side.moment() + side.force() * (level(s + 1) - toe);
      }
      SidePoint top = side(first, behind).top();
      SidePoint bottom = side(last - 1, behind).bottom();
      if (empty(top) && empty(bottom)) {
        continue;
      }
      double at = force > NONE ? toe + moment / force : (level(first) + level(last)) / 2;
      binding.row(
          table,
          Row.of(String.valueOf(number++))
              .set("z_{1," + i + "}", level(first), new Source.Layout("node"))
              .set("z_{2," + i + "}", level(last), new Source.Layout("node"))
              .set("p_{1," + i + "}", KILO * top.pressure(), new Source.Layout("table above"))
              .set("p_{2," + i + "}", KILO * bottom.pressure(), new Source.Layout("table above"))
              .set("E_" + i, KILO * force, FOUND)
              .set("z_{E," + i + "}", at, FOUND));
    }
  }

  Calculation effects(Given factor) {
    Binding binding =
        StagedSheets.EFFECTS
            .bind()
            .set("γ_E", factor)
            .set("V_t", From.layout(0, "free end"))
            .set("M_t", From.layout(0, "free end"))
            .set("y_t", state.nodes().get(0).displacement(), FOUND);
    Source net = new Source.Layout("behind less in front");
    int number = 1;
    for (int k = 1; k < nodes.size(); k++) {
      int first = nodes.get(k - 1);
      int last = nodes.get(k);
      double force = 0;
      double moment = 0;
      for (int s = last - 1; s >= first; s--) {
        WallSlice slice = state.slices().get(s);
        force += slice.netForce();
        moment += slice.netMoment() + slice.netForce() * (level(s + 1) - level(last));
      }
      WallNode top = state.nodes().get(first);
      binding.row(
          "wall",
          Row.of(String.valueOf(number++))
              .set("z_1", level(first), new Source.Layout("node"))
              .set("z_2", level(last), new Source.Layout("node"))
              .set("y_2", state.nodes().get(last).displacement(), FOUND)
              .set("F", KILO * clean(top.shearBelow() - top.shearAbove()), FOUND)
              .set("N", KILO * force, net)
              .set("m", KILO * moment, net));
    }
    return binding.calculate();
  }
}
