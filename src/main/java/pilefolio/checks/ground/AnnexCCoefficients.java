package pilefolio.checks.ground;

import static pilefolio.units.Units.DEG;
import static pilefolio.units.Units.ONE;

import java.util.List;
import pilefolio.model.EarthPressureMethod;
import pilefolio.trace.CalcSheet;
import pilefolio.trace.CalcTable;
import pilefolio.trace.Reference;

/** Coefficients by the closed-form procedure of EN 1997-1 Annex C.2, every line of it. */
public final class AnnexCCoefficients extends CoefficientCheck {
  private static final Reference C2 = Reference.memory("EN 1997-1:2004", "Annex C.2");

  static final CalcSheet SHEET =
      CalcSheet.named("Earth-pressure coefficients by EN 1997-1 Annex C.2")
          .given("β", DEG, "slope of the ground, rising away from the wall")
          .note(
              "Vertical wall. In the active case friction enters with a negative sign; it is"
                  + " written out here. Exponents take the angle v in radians.")
          .table(
              CalcTable.of("passive", "Passive side", "layer")
                  .given("φ'_{d,p}", DEG, "design friction angle")
                  .given("δ_p", DEG, "design wall friction")
                  .line(
                      "m_{t,p} = (acos(−sin(β)/sin(φ'_{d,p})) − φ'_{d,p} − β)/2",
                      DEG,
                      "angle at the surface",
                      C2)
                  .line(
                      "m_{w,p} = (acos(sin(δ_p)/sin(φ'_{d,p})) − φ'_{d,p} − δ_p)/2",
                      DEG,
                      "angle at the wall",
                      C2)
                  .line("v_p = m_{t,p} + β − m_{w,p}", DEG, "angle of the fan", C2)
                  .line(
                      "K_{n,p} = (1 + sin(φ'_{d,p})·sin(2·m_{w,p} + φ'_{d,p}))"
                          + "/(1 − sin(φ'_{d,p})·sin(2·m_{t,p} + φ'_{d,p}))"
                          + "·exp(2·v_p·tan(φ'_{d,p}))",
                      ONE,
                      "for load normal to the surface",
                      C2)
                  .line("K_p = K_{n,p}·cos(β)²", ONE, "passive, horizontal", C2)
                  .line("K_pc = (K_{n,p} − 1)/tan(φ'_{d,p})", ONE, "passive, on cohesion", C2)
                  .smallest("v_{p,s}", "v_p", "smallest angle, passive"))
          .table(
              CalcTable.of("active", "Active side", "layer")
                  .given("φ'_d", DEG, "design friction angle")
                  .given("δ_a", DEG, "design wall friction")
                  .line(
                      "m_{t,a} = (acos(sin(β)/sin(φ'_d)) + φ'_d − β)/2",
                      DEG,
                      "angle at the surface",
                      C2)
                  .line(
                      "m_{w,a} = (acos(sin(δ_a)/sin(φ'_d)) + φ'_d + δ_a)/2",
                      DEG,
                      "angle at the wall",
                      C2)
                  .line("v_a = m_{t,a} + β − m_{w,a}", DEG, "angle of the fan", C2)
                  .line(
                      "K_{n,a} = (1 − sin(φ'_d)·sin(2·m_{w,a} − φ'_d))"
                          + "/(1 + sin(φ'_d)·sin(2·m_{t,a} − φ'_d))"
                          + "·exp(−2·v_a·tan(φ'_d))",
                      ONE,
                      "for load normal to the surface",
                      C2)
                  .line("K_a = K_{n,a}·cos(β)²", ONE, "active, horizontal", C2)
                  .line("K_ac = (1 − K_{n,a})/tan(φ'_d)", ONE, "active, on cohesion", C2)
                  .smallest("v_{a,s}", "v_a", "smallest angle, active"))
          .require("v_{p,s} ≥ 0", "the procedure holds on the passive side", C2)
          .require("v_{a,s} ≥ 0", "the procedure holds on the active side", C2);

  /** The check. */
  public AnnexCCoefficients() {
    super(
        EarthPressureMethod.EN1997_C2,
        SHEET,
        true,
        List.of(List.of("passive", "φ'_{d,p}=φ'_d", "δ_p"), List.of("active", "φ'_d", "δ_a")));
  }

  @Override
  public String id() {
    return "coefficients-annex-c";
  }

  @Override
  public String title() {
    return "Earth-pressure coefficients by EN 1997-1 Annex C.2";
  }
}
