package pilefolio.checks.rig;

import static pilefolio.units.Units.CM2;
import static pilefolio.units.Units.KN;
import static pilefolio.units.Units.KN_M3;
import static pilefolio.units.Units.M;
import static pilefolio.units.Units.MIN;
import static pilefolio.units.Units.MM;
import static pilefolio.units.Units.M_MIN;
import static pilefolio.units.Units.PA;
import static pilefolio.units.Units.PA_S;

import java.util.ArrayList;
import java.util.List;
import pilefolio.checks.CheckResult;
import pilefolio.checks.Family;
import pilefolio.checks.From;
import pilefolio.checks.Job;
import pilefolio.checks.RunCheck;
import pilefolio.checks.Subject;
import pilefolio.checks.geometry.Levels;
import pilefolio.model.Crew;
import pilefolio.model.Mix;
import pilefolio.model.WallRun;
import pilefolio.standards.Section;
import pilefolio.trace.CalcSheet;
import pilefolio.trace.Choice;
import pilefolio.trace.Reference;

/** Whether a beam sinks into the wet concrete by its own weight in the time it takes to set it. */
public final class BeamSetting extends RunCheck {
  private static final CalcSheet SHEET =
      CalcSheet.named("Time in which a beam sinks into wet concrete")
          .given("A_s", CM2, "area of the section")
          .given("P_s", MM, "surface of the section for each length")
          .given("b", MM, "width of the section")
          .given("h", MM, "depth of the section")
          .given("l_b", M, "length of the beam")
          .given("γ_c", KN_M3, "weight of the fresh concrete")
          .given("τ_0", PA, "yield stress of the fresh concrete at rest")
          .given("A_x", PA_S, "growth of that yield stress at rest")
          .given("t_v", MIN, "time in which the mix can be worked")
          .given("t_n", MIN, "time to set one beam")
          .given("v_l", M_MIN, "lift rate at which the pile was filled")
          .line(
              "W_e = A_s·l_b·(78.5[kN/m³] − γ_c)",
              KN,
              "weight of the beam in the concrete",
              Reference.DERIVED)
          .line("A_t = 9·b·h", CM2, "bearing of the tip, nine times its box", Reference.DERIVED)
          .line(
              "τ_s = W_e/(P_s·l_b + A_t)",
              PA,
              "yield stress at which the beam stops",
              Reference.DERIVED)
          .choose(
              "t_s",
              MIN,
              "time until the concrete has stiffened to that",
              Reference.memory("Roussel, 2006", "thixotropy of fresh concrete"),
              Choice.when("τ_s ≤ τ_0", "0").otherwise("(τ_s − τ_0)/A_x"))
          .line("t_w = min(t_s, t_v)", MIN, "time available", Reference.DERIVED)
          .line(
              "t_r = t_n + l_b/v_l",
              MIN,
              "rest of the lowest concrete when the beam is at its level",
              Reference.DERIVED)
          .require("t_r ≤ t_w", "the beam reaches its level by its own weight", Reference.PRACTICE)
          .note(
              "If a beam stalls more than half a metre short it is pulled and the pile drilled"
                  + " again; a vibrator is a reserve.");

  /** The check. */
  public BeamSetting() {
    super("beam-setting", "Setting the beams into wet concrete", Family.RIG, SHEET);
  }

  @Override
  protected List<CheckResult> check(Job job, WallRun run) {
    List<CheckResult> results = new ArrayList<>();
    for (HungBeam hung : HungBeam.of(job, run)) {
      Mix mix = job.submission().mix(run.piles(hung.kind()));
      Crew crew =
          job.submission().crews(run).stream()
              .findFirst()
              .orElseThrow(() -> new MissingInput("No crew works on the rig of this run."));
      Section section = hung.section();
      results.add(
          CheckResult.of(
              this,
              Subject.run(run.id()).piles("beams of the " + Levels.plural(hung.kind())),
              SHEET
                  .bind()
                  .set("A_s", hung.property(section.area()))
                  .set("P_s", hung.property(section.perimeter()))
                  .set("b", hung.property(section.width()))
                  .set("h", hung.property(section.depth()))
                  .set("l_b", hung.length())
                  .set("γ_c", From.cell(mix.unitWeight()))
                  .set("τ_0", need(mix.yieldStress(), "the yield stress of mix " + mix.id()))
                  .set("A_x", need(mix.thixotropy(), "the stiffening of mix " + mix.id()))
                  .set("t_v", From.cell(mix.workabilityLife()))
                  .set("t_n", From.cell(crew.beamSetting()))
                  .set("v_l", From.cell(job.submission().supply().liftRate()))
                  .calculate()));
    }
    return results;
  }
}
