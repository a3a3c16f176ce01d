package pilefolio.checks.apparent;

import java.util.List;
import pilefolio.analysis.apparent.GroundBeside;
import pilefolio.analysis.wall.NetPressure;
import pilefolio.analysis.wall.NetSegment;
import pilefolio.checks.From;
import pilefolio.checks.Job;
import pilefolio.checks.situation.ApparentDesign;
import pilefolio.checks.situation.DesignSituation;
import pilefolio.model.ApparentDiagram;
import pilefolio.model.Support;
import pilefolio.trace.Binding;
import pilefolio.trace.Binding.Row;
import pilefolio.trace.Calculation;
import pilefolio.trace.Source;

/** Envelope of apparent pressure of a wall with several supports. */
public final class ApparentPressure extends ApparentCheck {

  /** The check. */
  public ApparentPressure() {
    super(
        "apparent-pressure",
        "Apparent pressure of a wall with several supports",
        EnvelopeSheets.ALL);
  }

  @Override
  public boolean derivation() {
    return true;
  }

  @Override
  Calculation calculate(Job job, ApparentDesign design) {
    DesignSituation s = design.situation();
    ApparentDesign.Solved solved = design.solved().orElseThrow();
    GroundBeside ground = solved.ground();
    ApparentDiagram diagram = solved.choice().diagram();
    String c = s.combination().id();
    Binding b =
        EnvelopeSheets.of(ground.kind(), diagram, ApparentDesign.lrfd(s))
            .bind()
            .set("z_r", From.cell(s.run().levels().retained()))
            .set(
                "z_e",
                s.designExcavation(),
                new Source.Line("design-excavation", "Design excavation level", "z_d"))
            .set("γ_a", From.factor(job, "action.apparent", c))
            .set("γ_G", From.factor(job, "action.permanent.unfavourable", c))
            .set("γ_Q", From.factor(job, "action.variable.unfavourable", c))
            .set("q_G", From.cell(s.stage().permanentSurcharge()))
            .set("q_Q", From.cell(s.stage().variableSurcharge()));
    ground(b, ground);
    if (diagram == ApparentDiagram.STIFF_CLAY || diagram == ApparentDiagram.LEVELS_CLAY) {
      b.set("f_s", From.cell(job.submission().methods().apparent().stiffShare()));
    }
    if (diagram == ApparentDiagram.SOFT_CLAY) {
      b.set("m", From.layout(ApparentDesign.M_FACTOR, solved.choice().why()));
    }
    if (diagram == ApparentDiagram.SOFT_CLAY_DEEP) {
      Source below = new Source.Layout("undrained layers below the base with s_u < γ·H/5.14");
      b.set("d", solved.soft().thickness(), below).set("s_b", KILO * solved.soft().su(), below);
    }
    if (diagram.byLevels()) {
      List<Support> supports = s.supports();
      b.set("z_1", From.cell(supports.get(0).level()))
          .set("z_n", From.cell(supports.get(supports.size() - 1).level()));
    }
    stretches(b, solved);
    return b.calculate();
  }

  /** The layers, from the top down. */
  static void ground(Binding b, GroundBeside ground) {
    Source value = new Source.Layout("design value of the layer");
    boolean mixed = ground.kind() == GroundBeside.Kind.SAND_OVER_CLAY;
    if (mixed) {
      b.set("n", GroundBeside.PROGRESSIVE_FAILURE, new Source.Layout("average of 0.5 to 1"));
    }
    for (GroundBeside.Piece p : ground.pieces()) {
      if (p.drained()) {
        b.row(
            mixed ? EnvelopeSheets.SAND : EnvelopeSheets.GROUND,
            Row.of(p.layer())
                .set("h", p.thickness(), value)
                .set("γ", KILO * p.unitWeight(), value)
                .set("φ", Math.atan(p.tanPhi()), value));
      } else {
        b.row(
            mixed ? EnvelopeSheets.CLAY : EnvelopeSheets.GROUND,
            Row.of(p.layer())
                .set(mixed ? "h_i" : "h", p.thickness(), value)
                .set(mixed ? "γ_i" : "γ", KILO * p.unitWeight(), value)
                .set("s_u", KILO * p.su(), value));
      }
    }
  }

  private static void stretches(Binding b, ApparentDesign.Solved solved) {
    Source level = new Source.Layout("break of the diagrams");
    Source beside = new Source.Line("pressure-active", "Active pressure on the wall", "p");
    int number = 1;
    for (NetSegment s : solved.design().segments()) {
      b.row(
          EnvelopeSheets.STRETCHES,
          Row.of(String.valueOf(number++))
              .set("z_t", s.topLevel(), level)
              .set("z_b", s.bottomLevel(), level)
              .set("p_{w,t}", KILO * at(solved.beside(), s, s.topLevel()), beside)
              .set("p_{w,b}", KILO * at(solved.beside(), s, s.bottomLevel()), beside));
    }
  }

  private static double at(NetPressure p, NetSegment within, double level) {
    double mid = (within.topLevel() + within.bottomLevel()) / 2;
    return p.segments().stream()
        .filter(s -> s.topLevel() > mid && s.bottomLevel() < mid)
        .mapToDouble(s -> s.at(level))
        .findFirst()
        .orElse(0);
  }
}
