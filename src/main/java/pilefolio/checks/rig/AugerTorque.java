package pilefolio.checks.rig;

import static pilefolio.units.Units.KNM;
import static pilefolio.units.Units.M2;
import static pilefolio.units.Units.MM;
import static pilefolio.units.Units.MPA;
import static pilefolio.units.Units.M_MIN;
import static pilefolio.units.Units.ONE;
import static pilefolio.units.Units.REV_MIN;

import java.util.ArrayList;
import java.util.List;
import pilefolio.checks.CheckResult;
import pilefolio.checks.Family;
import pilefolio.checks.From;
import pilefolio.checks.Job;
import pilefolio.checks.RunCheck;
import pilefolio.checks.Subject;
import pilefolio.model.Rig;
import pilefolio.model.Technique;
import pilefolio.model.Tool;
import pilefolio.model.WallRun;
import pilefolio.trace.CalcSheet;
import pilefolio.trace.Calculation;
import pilefolio.trace.Given;
import pilefolio.trace.Reference;

/** Torque to drill, by two estimates that have nothing in common, against the auger head. */
public final class AugerTorque extends RunCheck {
  private static final CalcSheet SHEAR =
      BoreGround.on(
              CalcSheet.named("Torque of the auger from shear on the bore")
                  .given("D", MM, "outside diameter of the flights")
                  .given("m", ONE, "share of the bore wall on which shear acts while drilling")
                  .given("T_r", KNM, "rated torque of the auger head")
                  .given("ρ", ONE, "share of a rated value that may be used"))
          .line("T_w = m·π·D²/2·F_τ", KNM, "torque on the wall", Reference.PRACTICE)
          .line("T_t = τ_b·π·D³/12", KNM, "torque on the tip", Reference.DERIVED)
          .line("T_a = T_w + T_t", KNM, "torque from shear", Reference.DERIVED)
          .line("T_p = ρ·T_r", KNM, "torque that may be used", Reference.PRACTICE)
          .require("T_a ≤ T_p", "the head turns the auger with reserve", Reference.PRACTICE);

  private static final CalcSheet ENERGY =
      CalcSheet.named("Torque of the auger from the energy of cutting")
          .given("D", MM, "outside diameter of the flights")
          .given("E_s", MPA, "energy to cut a unit volume of ground")
          .given("v", M_MIN, "advance of the auger")
          .given("n_r", REV_MIN, "speed of the auger")
          .given("T_r", KNM, "rated torque of the auger head")
          .given("ρ", ONE, "share of a rated value that may be used")
          .line("A = π·D²/4", M2, "area of the bore", Reference.DERIVED)
          .line("u = v/n_r", MM, "advance in one revolution", Reference.DERIVED)
          .line("T_e = E_s·A·u/(2·π)", KNM, "torque from energy", Reference.DERIVED)
          .line("T_p = ρ·T_r", KNM, "torque that may be used", Reference.PRACTICE)
          .require("T_e ≤ T_p", "the head turns the auger with reserve", Reference.PRACTICE)
          .note("The work of the crowd is left out, which is on the safe side.");

  /** The check. */
  public AugerTorque() {
    super("auger-torque", "Torque of the auger", Family.RIG, SHEAR, ENERGY);
  }

  @Override
  protected List<CheckResult> check(Job job, WallRun run) {
    Rig rig = job.submission().rig(run);
    Tool tool = job.submission().tool(run);
    Subject subject = Subject.run(run.id()).piles("secondaries");
    Given rated = need(rig.augerTorque(), "the rated torque of the auger head of " + rig.id());
    Given reserve = From.cell(job.submission().methods().capacityReserve());
    List<Calculation> sheets = new ArrayList<>();
    if (run.technique() == Technique.UNCASED_AUGER) {
      sheets.add(
          BoreGround.layers(
                  SHEAR
                      .bind()
                      .set("D", From.cell(tool.augerDiameter()))
                      .set("m", From.cell(tool.mobilisedShare()))
                      .set("T_r", rated)
                      .set("ρ", reserve),
                  job,
                  run,
                  BoreGround.whole())
              .calculate());
    }
    List<CheckResult> results = new ArrayList<>();
    if (tool.specificEnergy().isPresent()
        && rig.penetration().isPresent()
        && rig.rotation().isPresent()) {
      sheets.add(
          ENERGY
              .bind()
              .set("D", From.cell(tool.augerDiameter()))
              .set("E_s", From.cell(tool.specificEnergy().get()))
              .set("v", From.cell(rig.penetration().get()))
              .set("n_r", From.cell(rig.rotation().get()))
              .set("T_r", rated)
              .set("ρ", reserve)
              .calculate());
    } else {
      results.add(
          CheckResult.notChecked(
              this,
              subject,
              "The estimate from energy needs the specific energy of the ground, the speed and the"
                  + " advance of the auger."));
    }
    if (!sheets.isEmpty()) {
      results.add(CheckResult.of(this, subject, sheets));
    }
    return results;
  }
}
