package pilefolio.checks.support;

import java.util.List;
import pilefolio.checks.CheckResult;
import pilefolio.checks.From;
import pilefolio.checks.Job;
import pilefolio.model.Beam;
import pilefolio.model.Support;
import pilefolio.model.Waler;
import pilefolio.model.WalerSetting;
import pilefolio.standards.DesignBasis;
import pilefolio.standards.Section;
import pilefolio.trace.Binding;
import pilefolio.trace.Calculation;
import pilefolio.trace.Given;

/** Bending and shear of walers between their supports. */
final class WalerBending extends SupportCheck {
  WalerBending() {
    super(
        "waler-bending",
        "Bending and shear of a waler",
        WalerSheets.aiscSheet(AiscSafety.ALLOWABLE),
        WalerSheets.aiscSheet(AiscSafety.DESIGN),
        WalerSheets.ROLLED_EN);
  }

  @Override
  List<CheckResult> examine(Job job, Support support) {
    return members(job)
        .waler(support)
        .map(
            waler ->
                eachCombination(
                    job,
                    support,
                    demand -> List.of(calculate(job, support, waler, demand)),
                    "the flange or the web of the section is too slender for the rules used"))
        .orElse(List.of());
  }

  private static Calculation calculate(Job job, Support support, Waler waler, Demand demand) {
    boolean en = job.basis().steel() == DesignBasis.SteelCode.EN_1993;
    AiscSafety safety = AiscSafety.of(job);
    Beam beam = job.submission().beam(waler.beam());
    Section section = Strut.section(beam);
    Binding binding = (en ? WalerSheets.ROLLED_EN : WalerSheets.aiscSheet(safety)).bind();
    WalerBeam.solve(
        binding,
        demand.force(),
        From.cell(support.inclination()),
        From.cell(support.spacing()),
        From.cell(waler.overhang()),
        (int) Math.round(waler.spans().si()));
    binding
        .set("θ", angle(support, waler))
        .set("n", From.cell(waler.beams()))
        .set("E", Strut.elasticModulus(job));
    if (en) {
      en(binding, job, section, beam, demand.combination());
    } else {
      aisc(binding, section, beam);
      safety.bind(binding, AiscSafety.On.BENDING, job, demand.combination());
      safety.bind(binding, AiscSafety.On.SHEAR, job, demand.combination());
    }
    return binding.calculate();
  }

  private static Given angle(Support support, Waler waler) {
    return waler.setting() == WalerSetting.SQUARE
        ? From.layout(0, "the web lies in the direction of the supports")
        : From.cell(support.inclination());
  }

  private static void aisc(Binding binding, Section s, Beam beam) {
    binding
        .set("F_y", From.cell(beam.yieldStrength()))
        .set("b_f", of(s, s.width()))
        .set("t_f", of(s, s.flange()))
        .set("h_w", of(s, s.webBetweenFillets()))
        .set("t_w", of(s, s.web()))
        .set("d", of(s, s.depth()))
        .set("Z_x", of(s, s.plasticModulus()))
        .set("S_x", of(s, s.elasticModulus()))
        .set("Z_y", of(s, s.weakPlasticModulus()))
        .set("S_y", of(s, s.weakElasticModulus()))
        .set("r_y", of(s, s.weakRadius()))
        .set("r_ts", of(s, s.effectiveRadius()))
        .set("J", of(s, s.torsionConstant()))
        .set("h_o", of(s, s.flangeCentres()));
  }

  private static void en(Binding binding, Job job, Section s, Beam beam, String combination) {
    binding
        .set("f_y", From.cell(beam.yieldStrength()))
        .set("G", From.table(81e9, "EN 1993-1-1", "steel"))
        .set("h", of(s, s.depth()))
        .set("b", of(s, s.width()))
        .set("t_f", of(s, s.flange()))
        .set("t_w", of(s, s.web()))
        .set("r", of(s, s.rootRadius()))
        .set("h_w", of(s, s.webBetweenFlanges()))
        .set("A", of(s, s.area()))
        .set("W_pl", of(s, s.plasticModulus()))
        .set("W_el", of(s, s.elasticModulus()))
        .set("W_{pl,z}", of(s, s.weakPlasticModulus()))
        .set("W_{el,z}", of(s, s.weakElasticModulus()))
        .set("I_z", of(s, s.weakInertia()))
        .set("I_t", of(s, s.torsionConstant()))
        .set("I_w", of(s, s.warpingConstant()))
        .set("λ_{LT,0}", From.factor(job, "steel.ltb.plateau", combination))
        .set("β_LT", From.factor(job, "steel.ltb.beta", combination))
        .set("γ_M0", From.factor(job, "steel.yield", combination))
        .set("γ_M1", From.factor(job, "steel.buckling", combination));
  }

  private static Given of(Section section, double si) {
    return From.table(si, section.standard(), section.name());
  }
}
