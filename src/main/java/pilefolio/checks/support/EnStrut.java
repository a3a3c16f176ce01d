package pilefolio.checks.support;

import static pilefolio.units.Units.CM2;
import static pilefolio.units.Units.CM3;
import static pilefolio.units.Units.CM4;
import static pilefolio.units.Units.CM6;
import static pilefolio.units.Units.GPA;
import static pilefolio.units.Units.KN;
import static pilefolio.units.Units.KNM;
import static pilefolio.units.Units.KN_M;
import static pilefolio.units.Units.M;
import static pilefolio.units.Units.MM;
import static pilefolio.units.Units.N_MM2;
import static pilefolio.units.Units.ONE;
import static pilefolio.units.Units.PER_M;

import pilefolio.trace.CalcSheet;
import pilefolio.trace.Choice;
import pilefolio.trace.Reference;

/**
 * Calculation sheets of struts after EN 1993-1-1. The moment grows along the strut by the exact
 * solution of the pinned beam-column.
 */
final class EnStrut {
  private static final String CODE = "EN 1993-1-1:2005";
  private static final Reference BENDING = Reference.quoted(CODE, "6.2.5");
  private static final Reference BUCKLING = Reference.quoted(CODE, "6.3.1");
  private static final Reference BOTH = Reference.memory(CODE, "6.3.3");

  /** A rolled I section with its web upright, not held between its ends. */
  static final CalcSheet ROLLED =
      interaction(
          EnBending.unheld(
              second(
                  EnBending.plates(
                          demand(
                                  CalcSheet.named(
                                      "Buckling of a strut of rolled section, EN 1993-1-1"))
                              .given("A", CM2, "cross-section")
                              .given("I", CM4, "second moment of area about the strong axis")
                              .given("I_z", CM4, "second moment of area about the weak axis")
                              .given("h", MM, "depth")
                              .given("b", MM, "flange width")
                              .given("t_f", MM, "flange thickness")
                              .given("t_w", MM, "web thickness")
                              .given("r", MM, "root radius")
                              .given("h_w", MM, "depth of the web between flanges"))
                      .line("N_pl = A·f_y", KN, "squash load", Reference.DERIVED)
                      .line(
                          "λ_y = L_c/π·√(N_pl/(E·I))",
                          ONE,
                          "slenderness about the strong axis",
                          BUCKLING)
                      .line(
                          "λ_z = L_c/π·√(N_pl/(E·I_z))",
                          ONE,
                          "slenderness about the weak axis",
                          BUCKLING)
                      .choose(
                          "α_y",
                          ONE,
                          "imperfection of the buckling curve about the strong axis",
                          BUCKLING,
                          Choice.when("h/b > 1.2 and t_f ≤ 40[mm]", "0.21")
                              .or("t_f ≤ 100[mm]", "0.34")
                              .otherwise("0.76"))
                      .choose(
                          "α_z",
                          ONE,
                          "imperfection of the buckling curve about the weak axis",
                          BUCKLING,
                          Choice.when("h/b > 1.2 and t_f ≤ 40[mm]", "0.34")
                              .or("h/b ≤ 1.2 and t_f ≤ 100[mm]", "0.49")
                              .otherwise("0.76"))
                      .line(
                          "Φ_y = 0.5·(1 + α_y·(λ_y − 0.2) + λ_y²)",
                          ONE,
                          "auxiliary value",
                          BUCKLING)
                      .line(
                          "Φ_z = 0.5·(1 + α_z·(λ_z − 0.2) + λ_z²)",
                          ONE,
                          "auxiliary value",
                          BUCKLING)
                      .line(
                          "χ_y = min(1, 1/(Φ_y + √(Φ_y² − λ_y²)))",
                          ONE,
                          "reduction about the strong axis",
                          BUCKLING)
                      .line(
                          "χ_z = min(1, 1/(Φ_z + √(Φ_z² − λ_z²)))",
                          ONE,
                          "reduction about the weak axis",
                          BUCKLING)
                      .choose(
                          "N_{b,Rd}",
                          KN,
                          "buckling resistance; the section is not of class 4",
                          BUCKLING,
                          Choice.when("λ_f ≤ 14·ε and λ_w ≤ 42·ε", "min(χ_y, χ_z)·N_pl/γ_M1"))
                      .given("W_pl", CM3, "plastic section modulus")
                      .given("W_el", CM3, "elastic section modulus")
                      .given("I_t", CM4, "torsion constant")
                      .given("I_w", CM6, "warping constant")
                      .given("G", GPA, "shear modulus")
                      .given("λ_{LT,0}", ONE, "slenderness below which buckling is ignored")
                      .given("β_LT", ONE, "factor of the buckling curve")),
              "L",
              "λ_f ≤ 10·ε and λ_w ≤ 38·ε",
              "λ_f ≤ 14·ε and λ_w ≤ 42·ε"));

  /** A round tube. */
  static final CalcSheet TUBE =
      interaction(
          second(
                  demand(CalcSheet.named("Buckling of a strut of round tube, EN 1993-1-1"))
                      .given("D", MM, "outside diameter")
                      .given("t", MM, "wall thickness")
                      .given("α", ONE, "imperfection of the buckling curve")
                      .line("A = π/4·(D² − (D − 2·t)²)", CM2, "cross-section", Reference.DERIVED)
                      .line(
                          "I = π/64·(D^4 − (D − 2·t)^4)",
                          CM4,
                          "second moment of area",
                          Reference.DERIVED)
                      .line("ε = √(235[N/mm²]/f_y)", ONE, "strength factor", EnBending.CLASS)
                      .line("λ_D = D/t", ONE, "slenderness of the wall", EnBending.CLASS)
                      .line("N_cr = π²·E·I/L_c²", KN, "Euler load", Reference.DERIVED)
                      .line("λ = √(A·f_y/N_cr)", ONE, "slenderness", BUCKLING)
                      .line("Φ = 0.5·(1 + α·(λ − 0.2) + λ²)", ONE, "auxiliary value", BUCKLING)
                      .line(
                          "χ = min(1, 1/(Φ + √(Φ² − λ²)))", ONE, "reduction for buckling", BUCKLING)
                      .choose(
                          "N_{b,Rd}",
                          KN,
                          "buckling resistance; the wall is not of class 4",
                          BUCKLING,
                          Choice.when("λ_D ≤ 90·ε²", "χ·A·f_y/γ_M1")))
              .choose(
                  "W",
                  CM3,
                  "section modulus of class 1 or 2, or of class 3",
                  EnBending.CLASS,
                  Choice.when("λ_D ≤ 70·ε²", "(D³ − (D − 2·t)³)/6").otherwise("2·I/D"))
              .line("M_{b,Rd} = W·f_y/γ_M1", KNM, "resistance to bending", BENDING));

  private EnStrut() {}

  private static CalcSheet demand(CalcSheet sheet) {
    return StrutDemand.lines(sheet, "N_Ed")
        .given("K", ONE, "effective length factor")
        .given("f_y", N_MM2, "yield strength")
        .given("E", GPA, "modulus of elasticity")
        .given("γ_M1", ONE, "partial factor of members")
        .line("L_c = K·L", M, "buckling length", Reference.DERIVED);
  }

  private static CalcSheet second(CalcSheet sheet) {
    return sheet
        .given("w", KN_M, "self weight and load on the strut")
        .given("γ_G", ONE, "multiplier of permanent actions")
        .given("e", MM, "eccentricity of the force, up or down")
        .line("k = √(N_Ed/(E·I))", PER_M, "wave number of the strut", Reference.DERIVED)
        .choose(
            "a",
            ONE,
            "growth of an end moment at mid-length",
            Reference.DERIVED,
            Choice.when("k·L ≤ 0.9487·π", "1/cos(k·L/2)"))
        .line("M_w = γ_G·w/k²·(a − 1)", KNM, "moment of the weight, with growth", Reference.DERIVED)
        .line(
            "M_e = N_Ed·e·a", KNM, "moment of the eccentric force, with growth", Reference.DERIVED)
        .line("M_Ed = M_w + M_e", KNM, "greatest moment", Reference.DERIVED);
  }

  private static CalcSheet interaction(CalcSheet sheet) {
    return sheet
        .line("u = N_Ed/N_{b,Rd} + M_Ed/M_{b,Rd}", ONE, "interaction, both shares added", BOTH)
        .require("N_Ed ≤ N_{b,Rd}", "the strut does not buckle", BUCKLING)
        .require("u ≤ 1", "force, weight and eccentricity together", BOTH)
        .note(StrutDemand.CAUTION);
  }
}
