package pilefolio.checks.structure;

import static pilefolio.units.Units.CM2;
import static pilefolio.units.Units.CM3;
import static pilefolio.units.Units.CM4;
import static pilefolio.units.Units.DEG;
import static pilefolio.units.Units.GPA;
import static pilefolio.units.Units.KN;
import static pilefolio.units.Units.KNM;
import static pilefolio.units.Units.KNM_M;
import static pilefolio.units.Units.KN_M;
import static pilefolio.units.Units.M;
import static pilefolio.units.Units.MM;
import static pilefolio.units.Units.N_MM2;
import static pilefolio.units.Units.ONE;

import pilefolio.checks.From;
import pilefolio.checks.Job;
import pilefolio.standards.DesignBasis;
import pilefolio.trace.Binding;
import pilefolio.trace.CalcSheet;
import pilefolio.trace.Choice;
import pilefolio.trace.Reference;

/**
 * Calculation sheets of rolled I beams after AISC 360: allowable strength against service loads, or
 * design strength against factored loads. Nominal strengths are the same.
 */
final class AiscBeam {
  private static final String CODE = "AISC 360-22";
  private static final Reference B4 = Reference.quoted(CODE, "Table B4.1");
  private static final Reference F2 = Reference.quoted(CODE, "F2");
  private static final Reference F3 = Reference.quoted(CODE, "F3");
  private static final Reference F6 = Reference.quoted(CODE, "F6");
  private static final Reference F1 = Reference.quoted(CODE, "F1");
  private static final Reference G2 = Reference.quoted(CODE, "G2.1");
  private static final Reference G6 = Reference.memory(CODE, "G6");
  private static final Reference E3 = Reference.quoted(CODE, "E3");
  private static final Reference E7 = Reference.memory(CODE, "E7");
  private static final Reference H1 = Reference.quoted(CODE, "H1.1");

  /** Allowable strength: nominal strength over a safety factor. */
  static final AiscBeam ALLOWABLE = new AiscBeam(Safety.ALLOWABLE);

  /** Design strength: nominal strength times a resistance factor. */
  static final AiscBeam DESIGN = new AiscBeam(Safety.DESIGN);

  private enum Safety {
    ALLOWABLE,
    DESIGN
  }

  /**
   * A safety factor of the allowable strength with the resistance factor of the design strength.
   */
  enum On {
    /** Flexure. */
    BENDING("b", "steel.bending", "steel.bending.resistance"),
    /** Shear of stocky rolled webs. */
    ROLLED_SHEAR("v,r", "steel.shear.rolled", "steel.shear.rolled.resistance"),
    /** Other shear. */
    SHEAR("v", "steel.shear", "steel.shear.resistance"),
    /** Compression. */
    COMPRESSION("c", "steel.compression", "steel.compression.resistance");

    private final String index;
    private final String safetyKey;
    private final String resistanceKey;

    On(String index, String safetyKey, String resistanceKey) {
      this.index = index;
      this.safetyKey = safetyKey;
      this.resistanceKey = resistanceKey;
    }
  }

  private final Safety safety;

  private final CalcSheet strong;
  private final CalcSheet weak;
  private final CalcSheet shear;
  private final CalcSheet weakShear;
  private final CalcSheet unrestrained;
  private final CalcSheet axial;

  private AiscBeam(Safety safety) {
    this.safety = safety;
    strong = makeStrong();
    weak = makeWeak();
    shear = makeShear();
    weakShear = makeWeakShear();
    unrestrained = makeUnrestrained();
    axial = makeAxial();
  }

  /** Bending about the strong axis of a beam held over its length. */
  CalcSheet strong() {
    return strong;
  }

  private CalcSheet makeStrong() {
    return bending(title("Bending of the beam about its strong axis"), "Z_x", "S_x")
        .given("h_w", MM, "straight depth of the web between fillets")
        .given("t_w", MM, "web thickness")
        .line("λ_w = h_w/t_w", ONE, "slenderness of the web", B4)
        .line("λ_pw = 3.76·√(E/F_y)", ONE, "limit of a compact web", B4)
        .line("M_p = F_y·Z_x", KNM, "plastic moment", F2)
        .choose(
            "M_n",
            KNM,
            "nominal moment; the web is compact, the beam is held sideways",
            F3,
            Choice.when("λ_w ≤ λ_pw and λ_f ≤ λ_pf", "M_p")
                .or(
                    "λ_w ≤ λ_pw and λ_f ≤ λ_rf",
                    "M_p − (M_p − 0.7·F_y·S_x)·(λ_f − λ_pf)/(λ_rf − λ_pf)"))
        .line(capacity("M") + " = " + strength("M_n", "b"), KNM, word("moment"), F1)
        .require(effect("M") + " ≤ " + capacity("M"), "the beam carries the bending moment", F1);
  }

  /** Bending about the weak axis. */
  CalcSheet weak() {
    return weak;
  }

  private CalcSheet makeWeak() {
    return bending(title("Bending of the beam about its weak axis"), "Z_y", "S_y")
        .line("M_p = min(F_y·Z_y, 1.6·F_y·S_y)", KNM, "plastic moment", F6)
        .choose(
            "M_n",
            KNM,
            "nominal moment",
            F6,
            Choice.when("λ_f ≤ λ_pf", "M_p")
                .or("λ_f ≤ λ_rf", "M_p − (M_p − 0.7·F_y·S_y)·(λ_f − λ_pf)/(λ_rf − λ_pf)"))
        .line(capacity("M") + " = " + strength("M_n", "b"), KNM, word("moment"), F1)
        .require(effect("M") + " ≤ " + capacity("M"), "the beam carries the bending moment", F1);
  }

  /** Shear parallel to the web. */
  CalcSheet shear() {
    return shear;
  }

  private CalcSheet makeShear() {
    return CalcSheet.named(title("Shear of the beam"))
        .given("V", KN_M, "shear force of the wall")
        .given("s_b", M, "spacing of the beams")
        .given("d", MM, "depth of the beam")
        .given("t_w", MM, "web thickness")
        .given("h_w", MM, "straight depth of the web between fillets")
        .given("F_y", N_MM2, "yield strength")
        .given("E", GPA, "modulus of elasticity")
        .given(factor("v,r"), ONE, factorWord("stocky rolled webs"))
        .given(factor("v"), ONE, factorWord("other webs"))
        .line(effect("V") + " = V·s_b", KN, "shear force of one beam", Reference.DERIVED)
        .line("λ_w = h_w/t_w", ONE, "slenderness of the web", G2)
        .line("λ_v = 2.24·√(E/F_y)", ONE, "limit of a stocky rolled web", G2)
        .line("λ_1 = 1.10·√(5.34·E/F_y)", ONE, "limit of shear yielding, k_v = 5.34", G2)
        .choose(
            "C_v1",
            ONE,
            "shear strength coefficient of the web",
            G2,
            Choice.when("λ_w ≤ λ_1", "1").otherwise("λ_1/λ_w"))
        .choose(
            factor(""),
            ONE,
            factorWord("the web"),
            G2,
            Choice.when("λ_w ≤ λ_v", factor("v,r")).otherwise(factor("v")))
        .line("V_n = 0.6·F_y·d·t_w·C_v1", KN, "nominal shear strength", G2)
        .line(capacity("V") + " = " + strength("V_n", ""), KN, word("shear force"), G2)
        .require(effect("V") + " ≤ " + capacity("V"), "the web carries the shear force", G2);
  }

  /** Shear across the web: the flanges carry it. */
  CalcSheet weakShear() {
    return weakShear;
  }

  private CalcSheet makeWeakShear() {
    return CalcSheet.named(title("Shear of the flanges of the beam"))
        .given("V", KN_M, "shear force of the wall")
        .given("s_b", M, "spacing of the beams")
        .given("b_f", MM, "flange width")
        .given("t_f", MM, "flange thickness")
        .given("F_y", N_MM2, "yield strength")
        .given("E", GPA, "modulus of elasticity")
        .given(factor("v"), ONE, factorWord("shear"))
        .line(effect("V") + " = V·s_b", KN, "shear force of one beam", Reference.DERIVED)
        .line("λ_f = b_f/(2·t_f)", ONE, "slenderness of a flange", G6)
        .line("λ_1 = 1.10·√(1.2·E/F_y)", ONE, "limit of shear yielding, k_v = 1.2", G6)
        .choose(
            "C_v2",
            ONE,
            "shear strength coefficient; more slender flanges do not occur in rolled shapes",
            G6,
            Choice.when("λ_f ≤ λ_1", "1"))
        .line("V_n = 2·0.6·F_y·b_f·t_f·C_v2", KN, "nominal shear strength", G6)
        .line(capacity("V") + " = " + strength("V_n", "v"), KN, word("shear force"), G6)
        .require(effect("V") + " ≤ " + capacity("V"), "the flanges carry the shear force", G6);
  }

  /** Bending with a length that is not held sideways. */
  CalcSheet unrestrained() {
    return unrestrained;
  }

  private CalcSheet makeUnrestrained() {
    return CalcSheet.named(title("Lateral-torsional buckling of the beam above the concrete"))
        .given("M", KNM_M, "greatest bending moment of the wall")
        .given("s_b", M, "spacing of the beams")
        .given("L_b", M, "length not held sideways")
        .given("C_b", ONE, "factor of the moment diagram")
        .given("F_y", N_MM2, "yield strength")
        .given("E", GPA, "modulus of elasticity")
        .given("Z_x", CM3, "plastic section modulus")
        .given("S_x", CM3, "elastic section modulus")
        .given("r_y", MM, "radius of gyration about the weak axis")
        .given("r_ts", MM, "effective radius of gyration")
        .given("J", CM4, "torsion constant")
        .given("h_o", MM, "distance of flange centroids")
        .given(factor("b"), ONE, factorWord("flexure"))
        .line(effect("M") + " = M·s_b", KNM, "bending moment of one beam", Reference.DERIVED)
        .line("M_p = F_y·Z_x", KNM, "plastic moment", F2)
        .line("L_p = 1.76·r_y·√(E/F_y)", M, "length up to which the beam yields", F2)
        .line("j = J/(S_x·h_o)", ONE, "torsional stiffness of the section", F2)
        .line(
            "L_r = 1.95·r_ts·E/(0.7·F_y)·√(j + √(j² + 6.76·(0.7·F_y/E)²))",
            M,
            "length from which the beam buckles elastically",
            F2)
        .choose(
            "M_n",
            KNM,
            "nominal moment",
            F2,
            Choice.when("L_b ≤ L_p", "M_p")
                .or(
                    "L_b ≤ L_r",
                    "min(M_p, C_b·(M_p − (M_p − 0.7·F_y·S_x)·(L_b − L_p)/(L_r − L_p)))")
                .otherwise("min(M_p, C_b·π²·E/(L_b/r_ts)²·√(1 + 0.078·j·(L_b/r_ts)²)·S_x)"))
        .line(capacity("M") + " = " + strength("M_n", "b"), KNM, word("moment"), F1)
        .require(
            effect("M") + " ≤ " + capacity("M"), "the free length does not buckle sideways", F1);
  }

  /** Axial load with bending of a load-bearing secondary, on the steel alone. */
  CalcSheet axial() {
    return axial;
  }

  private CalcSheet makeAxial() {
    CalcSheet sheet =
        CalcSheet.named(title("Axial load with bending of the beam"))
            .given("G_k", KN, "permanent vertical load on one pile")
            .given("Q_k", KN, "variable vertical load on one pile")
            .given("F_h", KN_M, "horizontal support force of the wall")
            .given("i", DEG, "inclination of the support below the horizontal")
            .given("e_N", MM, "distance of the load from the axis of the beam")
            .given("M", KNM_M, "bending moment of the wall")
            .given("s_b", M, "spacing of the beams")
            .given("L_c", M, "length that may buckle; nil where the beam is in concrete")
            .given("M_n", KNM, "nominal moment, from the check of bending")
            .given("A_g", CM2, "cross-section")
            .given("I", CM4, "second moment of area in the plane of bending")
            .given("r_y", MM, "least radius of gyration")
            .given("b_f", MM, "flange width")
            .given("t_f", MM, "flange thickness")
            .given("h_w", MM, "straight depth of the web between fillets")
            .given("t_w", MM, "web thickness")
            .given("F_y", N_MM2, "yield strength")
            .given("E", GPA, "modulus of elasticity")
            .given(factor("b"), ONE, factorWord("flexure"))
            .given(factor("c"), ONE, factorWord("compression"));
    if (!allowable()) {
      sheet =
          sheet
              .given("γ_G", ONE, "multiplier of permanent vertical load")
              .given("γ_Q", ONE, "multiplier of variable vertical load");
    }
    return sheet
        .line(
            allowable()
                ? "P_r = G_k + Q_k + F_h·sin(i)/cos(i)·s_b"
                : "P_r = γ_G·G_k + γ_Q·Q_k + F_h·sin(i)/cos(i)·s_b",
            KN,
            "axial force of one beam",
            Reference.DERIVED)
        .choose(
            "F_n",
            N_MM2,
            "critical stress",
            E3,
            Choice.when("L_c/r_y ≤ 4.71·√(E/F_y)", "0.658^((L_c/r_y)²·F_y/(π²·E))·F_y")
                .otherwise("0.877·π²·E/(L_c/r_y)²"))
        .line("λ_w = h_w/t_w", ONE, "slenderness of the web", B4)
        .line("λ_rw = 1.49·√(E/F_y)", ONE, "limit of a web that is fully effective", B4)
        .choose(
            "h_e",
            MM,
            "effective depth of the web",
            E7,
            Choice.when("λ_w ≤ λ_rw·√(F_y/F_n)", "h_w")
                .otherwise("h_w·(1 − 0.18·1.31·λ_rw/λ_w·√(F_y/F_n))·1.31·λ_rw/λ_w·√(F_y/F_n)"))
        .line("λ_f = b_f/(2·t_f)", ONE, "slenderness of a flange", B4)
        .line("λ_rf = 0.56·√(E/F_y)", ONE, "limit of a flange that is fully effective", B4)
        .choose(
            "b_e",
            MM,
            "effective width of a flange",
            E7,
            Choice.when("λ_f ≤ λ_rf·√(F_y/F_n)", "b_f")
                .otherwise("b_f·(1 − 0.22·1.49·λ_rf/λ_f·√(F_y/F_n))·1.49·λ_rf/λ_f·√(F_y/F_n)"))
        .line("A_e = A_g − (h_w − h_e)·t_w − 2·(b_f − b_e)·t_f", CM2, "effective cross-section", E7)
        .line("P_c = " + strength("F_n·A_e", "c"), KN, word("axial force"), E3)
        .line(
            (allowable() ? "n_E = 1.6·P_r" : "n_E = P_r") + "·L_c²/(π²·E·I)",
            ONE,
            "axial force over the Euler load, at strength level",
            Reference.memory(CODE, "Appendix 8"))
        .choose(
            "B_1",
            ONE,
            "growth of the moment over the free length, C_m = 1",
            Reference.memory(CODE, "Appendix 8"),
            Choice.when("n_E ≤ 0.9", "1/(1 − n_E)"))
        .line(
            "M_r = (M·s_b + P_r·abs(e_N))·B_1",
            KNM,
            "bending moment of one beam with the eccentric load",
            Reference.DERIVED)
        .line("M_c = " + strength("M_n", "b"), KNM, word("moment"), F1)
        .choose(
            "u",
            ONE,
            "interaction",
            H1,
            Choice.when("P_r/P_c ≥ 0.2", "P_r/P_c + 8/9·M_r/M_c")
                .otherwise("P_r/(2·P_c) + M_r/M_c"))
        .require("u ≤ 1", "axial load and bending together", H1);
  }

  private CalcSheet bending(String title, String plastic, String elastic) {
    return CalcSheet.named(title)
        .given("M", KNM_M, "bending moment of the wall")
        .given("s_b", M, "spacing of the beams")
        .given(plastic, CM3, "plastic section modulus")
        .given(elastic, CM3, "elastic section modulus")
        .given("b_f", MM, "flange width")
        .given("t_f", MM, "flange thickness")
        .given("F_y", N_MM2, "yield strength")
        .given("E", GPA, "modulus of elasticity")
        .given(factor("b"), ONE, factorWord("flexure"))
        .line(effect("M") + " = M·s_b", KNM, "bending moment of one beam", Reference.DERIVED)
        .line("λ_f = b_f/(2·t_f)", ONE, "slenderness of a flange", B4)
        .line("λ_pf = 0.38·√(E/F_y)", ONE, "limit of a compact flange", B4)
        .line("λ_rf = 1.0·√(E/F_y)", ONE, "limit of a noncompact flange", B4);
  }

  private boolean allowable() {
    return safety == Safety.ALLOWABLE;
  }

  private String title(String of) {
    return of + (allowable() ? ", AISC 360" : ", AISC 360 with load and resistance factors");
  }

  /** Symbol of a safety or resistance factor. */
  private String factor(String index) {
    String letter = allowable() ? "Ω" : "φ";
    return index.isEmpty()
        ? letter
        : letter + "_" + (index.length() > 1 ? "{" + index + "}" : index);
  }

  private String factorWord(String of) {
    return (allowable() ? "safety factor of " : "resistance factor of ") + of;
  }

  private String strength(String nominal, String index) {
    return allowable() ? nominal + "/" + factor(index) : factor(index) + "·" + nominal;
  }

  private String effect(String of) {
    return of + (allowable() ? "_a" : "_u");
  }

  private String capacity(String of) {
    return of + (allowable() ? "_all" : "_d");
  }

  private String word(String of) {
    return (allowable() ? "allowable " : "design ") + of;
  }

  /** The sheets of the basis of a job. */
  static AiscBeam of(Job job) {
    return job.basis().steel() == DesignBasis.SteelCode.AISC_360_LRFD ? DESIGN : ALLOWABLE;
  }

  /** Hands a factor of the basis to a sheet. */
  void bind(Binding binding, On on, Job job, String combination) {
    String key = allowable() ? on.safetyKey : on.resistanceKey;
    binding.set(factor(on.index), From.factor(job, key, combination));
  }
}
