package pilefolio.checks.structure;

import java.util.Comparator;
import java.util.List;
import pilefolio.checks.CheckResult;
import pilefolio.checks.From;
import pilefolio.checks.Job;
import pilefolio.checks.Subject;
import pilefolio.model.AxialLoad;
import pilefolio.model.Support;
import pilefolio.model.WallRun;
import pilefolio.standards.Section;
import pilefolio.trace.Binding;
import pilefolio.trace.CalcSheet;
import pilefolio.trace.Calculation;
import pilefolio.trace.Given;

/** Axial load with bending of a load-bearing secondary, carried by the beam alone. */
final class BeamAxial extends BeamCheck {

  @Override
  public String id() {
    return "beam-axial-bending";
  }

  @Override
  public String title() {
    return "Axial load with bending of the beam";
  }

  @Override
  public List<CalcSheet> sheets() {
    return List.of(AiscBeam.ALLOWABLE.axial(), AiscBeam.DESIGN.axial(), EnBeam.AXIAL);
  }

  @Override
  List<CheckResult> examine(Job job, WallBeam beam) {
    if (!beam.run().bearing().orElseThrow().load().map(AxialLoad::isPresent).orElse(false)) {
      return List.of();
    }
    AxialLoad load = beam.run().bearing().orElseThrow().load().orElseThrow();
    if (load.permanent().si() < 0 || load.variable().si() < 0) {
      return List.of(
          CheckResult.notChecked(
              this, Subject.run(beam.run().id()), "uplift on the piles is not covered"));
    }
    if (!aisc(job) && !beam.strong()) {
      return List.of(
          CheckResult.notChecked(
              this,
              Subject.run(beam.run().id()),
              "axial load with bending about the weak axis is not covered on this basis"));
    }
    return eachCombination(
        job,
        beam.run(),
        Effects::worstMoment,
        effects -> aisc(job) ? aisc(job, beam, effects) : en(job, beam, effects),
        "the section is too slender, or the free length too long, for the rules used");
  }

  /** Steepest inclination of the supports of a run below the horizontal, rad. */
  static Given inclination(Job job, WallRun run) {
    return job.submission().supports(run).stream()
        .max(Comparator.comparingDouble(s -> s.inclination().si()))
        .map(Support::inclination)
        .map(From::cell)
        .orElse(From.layout(0, "no support"));
  }

  private static void common(Binding binding, Job job, WallBeam beam, Effects effects) {
    AxialLoad load = beam.run().bearing().orElseThrow().load().orElseThrow();
    binding
        .set("G_k", From.cell(load.permanent()))
        .set("Q_k", From.cell(load.variable()))
        .set("e_N", From.cell(load.eccentricity()))
        .set("F_h", effects.supportForce())
        .set("i", inclination(job, beam.run()))
        .set("M", effects.moment())
        .set("s_b", beam.spacing())
        .set("t_f", beam.property(beam.section().flange()))
        .set("t_w", beam.property(beam.section().web()))
        .set("E", beam.elasticModulus(job.basis()));
  }

  private static Given free(Job job, WallBeam beam) {
    return From.layout(
        beam.freeLength(job.submission()),
        beam.run().type().kingOrSoldierBeams()
            ? beam.freeLengthName()
            : "length above the concrete");
  }

  private static Calculation aisc(Job job, WallBeam beam, Effects effects) {
    Section s = beam.section();
    AiscBeam code = AiscBeam.of(job);
    Calculation bending = BeamBending.calculation(job, beam, effects);
    Binding binding =
        code.axial()
            .bind()
            .set("L_c", free(job, beam))
            .set("M_n", From.line(new BeamBending(), bending, "M_n"))
            .set("A_g", beam.property(s.area()))
            .set("I", beam.property(beam.strong() ? s.inertia() : s.weakInertia()))
            .set("r_y", beam.property(s.weakRadius()))
            .set("b_f", beam.property(s.width()))
            .set("h_w", beam.property(s.webBetweenFillets()))
            .set("F_y", beam.yieldStrength());
    code.bind(binding, AiscBeam.On.BENDING, job, effects.combination());
    code.bind(binding, AiscBeam.On.COMPRESSION, job, effects.combination());
    if (code == AiscBeam.DESIGN) {
      String combination = effects.combination();
      binding
          .set("γ_G", From.factor(job, "action.structural.permanent", combination))
          .set("γ_Q", From.factor(job, "action.structural.variable", combination));
    }
    common(binding, job, beam, effects);
    return binding.calculate();
  }

  private static Calculation en(Job job, WallBeam beam, Effects effects) {
    Section s = beam.section();
    String combination = effects.combination();
    Binding binding =
        EnBeam.AXIAL
            .bind()
            .set("γ_G", From.factor(job, "action.structural.permanent", combination))
            .set("γ_Q", From.factor(job, "action.structural.variable", combination))
            .set("L", free(job, beam))
            .set("A", beam.property(s.area()))
            .set("W_pl", beam.property(s.plasticModulus()))
            .set("W_el", beam.property(s.elasticModulus()))
            .set("I", beam.property(s.inertia()))
            .set("i_z", beam.property(s.weakRadius()))
            .set("h", beam.property(s.depth()))
            .set("b", beam.property(s.width()))
            .set("r", beam.property(s.rootRadius()))
            .set("h_w", beam.property(s.webBetweenFlanges()))
            .set("f_y", beam.yieldStrength())
            .set("γ_M0", From.factor(job, "steel.yield", combination))
            .set("γ_M1", From.factor(job, "steel.buckling", combination));
    common(binding, job, beam, effects);
    return binding.calculate();
  }
}
