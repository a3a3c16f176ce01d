package pilefolio.checks.movement;

import static pilefolio.units.Units.M;
import static pilefolio.units.Units.MM;
import static pilefolio.units.Units.ONE;
import static pilefolio.units.Units.PERCENT;

import java.util.EnumMap;
import java.util.Map;
import pilefolio.analysis.movement.DeepBeam.Bending;
import pilefolio.analysis.movement.TroughShape;
import pilefolio.trace.CalcSheet;
import pilefolio.trace.Choice;
import pilefolio.trace.Reference;

/** Sheets about damage to a building by the movement of the ground. */
final class DamageSheets {
  private static final Reference SCREEN = Reference.read("Goh and Mair (2014)", "");
  private static final Reference UFC = Reference.read("UFC 3-220-20 (2025)", "Eq. 2-3 and 2-4");
  private static final Reference STRAIN = Reference.memory("Boscardin and Cording (1989)", "");
  private static final Reference BEAM = Reference.memory("Burland and Wroth (1974)", "");
  private static final Reference CATEGORIES =
      Reference.quoted("Burland et al. (1977); Boscardin and Cording (1989)", "");

  /** First look: small settlement and slope. */
  static final Map<TroughShape, CalcSheet> FIRST_LOOK =
      TroughFormula.sheets(
          f ->
              ground(CalcSheet.named("First look at a building, " + f.words()))
                  .choose(
                      "δ_s",
                      MM,
                      "greatest settlement beyond the near side",
                      f.reference(),
                      f.shape() == TroughShape.CONCAVE
                          ? Choice.when("d_n ≤ 0.5·H", "δ_v")
                              .or("d_n ≤ 2·H", "δ_v·(1 − 0.6·(d_n/H − 0.5))")
                              .or("d_n < 4·H", "δ_v·0.05·(4 − d_n/H)")
                              .otherwise("0")
                          : f.settlement("δ_v", "d_n", "H"))
                  .choose(
                      "θ",
                      PERCENT,
                      "steepest slope of the ground beyond the near side",
                      f.reference(),
                      f.steepest("δ_v", "d_n", "H"))
                  .require("δ_s ≤ 10[mm]", "settlement is below 10 mm", SCREEN)
                  .require("θ ≤ 1/500", "slope is below 1 in 500", SCREEN)
                  .note(
                      "Where both hold, damage is negligible (category 0) and the building is not"
                          + " looked at further."));

  /** Slope and strain between the near and the far side. */
  static final Map<TroughShape, CalcSheet> SLOPE =
      TroughFormula.sheets(
          f ->
              ground(CalcSheet.named("Slope and strain of a building, " + f.words()))
                  .given("B", M, "extent of the building away from the wall")
                  .given("ε_lim", PERCENT, "tensile strain of the greatest category allowed")
                  .line("d_f = d_n + B", M, "distance of its far side", Reference.DERIVED)
                  .choose(
                      "δ_n",
                      MM,
                      "settlement of the near side",
                      f.reference(),
                      f.settlement("δ_v", "d_n", "H"))
                  .choose(
                      "δ_f",
                      MM,
                      "settlement of the far side",
                      f.reference(),
                      f.settlement("δ_v", "d_f", "H"))
                  .line("Δδ = abs(δ_n − δ_f)", MM, "differential settlement", Reference.DERIVED)
                  .line("β = Δδ/B", PERCENT, "slope between the sides, tilt included", UFC)
                  .choose(
                      "u_n",
                      MM,
                      "horizontal movement of the near side",
                      Reference.PRACTICE,
                      f.horizontal("δ_h", "d_n", "H"))
                  .choose(
                      "u_f",
                      MM,
                      "horizontal movement of the far side",
                      Reference.PRACTICE,
                      f.horizontal("δ_h", "d_f", "H"))
                  .line("ε_h = (u_n − u_f)/B", PERCENT, "horizontal strain", UFC)
                  .line("ε = ε_h/2 + √(ε_h² + β²)/2", PERCENT, "principal tensile strain", STRAIN)
                  .choose("c_ε", ONE, "category of damage", CATEGORIES, category())
                  .require("ε ≤ ε_lim", "damage stays within what is allowed", CATEGORIES));

  /** A part of a building that bends like a bowl; only shapes that have such ground. */
  static final Map<TroughShape, CalcSheet> SAGGING = beams(Bending.SAGGING);

  /** A part of a building that bends like a hill. */
  static final Map<TroughShape, CalcSheet> HOGGING = beams(Bending.HOGGING);

  private DamageSheets() {}

  private static CalcSheet ground(CalcSheet sheet) {
    return sheet
        .given("H", M, "retained height")
        .given("δ_h", MM, "greatest displacement of the wall so far")
        .given("R_v", ONE, "greatest settlement over that displacement")
        .given("d_n", M, "distance of the near side from the wall")
        .line("δ_v = R_v·δ_h", MM, "greatest settlement", Reference.PRACTICE);
  }

  private static Choice category() {
    return Choice.when("ε ≤ 0.05[%]", "0")
        .or("ε ≤ 0.075[%]", "1")
        .or("ε ≤ 0.15[%]", "2")
        .or("ε ≤ 0.3[%]", "3")
        .otherwise("4");
  }

  private static Map<TroughShape, CalcSheet> beams(Bending bending) {
    Map<TroughShape, CalcSheet> sheets = new EnumMap<>(TroughShape.class);
    for (TroughShape shape : TroughShape.values()) {
      if (bending == Bending.HOGGING || !shape.inflections().isEmpty()) {
        sheets.put(shape, beam(TroughFormula.of(shape), bending));
      }
    }
    return sheets;
  }

  private static CalcSheet beam(TroughFormula f, Bending bending) {
    boolean sagging = bending == Bending.SAGGING;
    return CalcSheet.named(
            (sagging ? "Part bent like a bowl (sagging), " : "Part bent like a hill (hogging), ")
                + f.words())
        .given("H", M, "retained height")
        .given("δ_h", MM, "greatest displacement of the wall so far")
        .given("R_v", ONE, "greatest settlement over that displacement")
        .given("x_1", M, "distance of the near end of the part from the wall")
        .given("x_2", M, "distance of the far end of the part from the wall")
        .given("H_b", M, "height of the building from foundation to eaves")
        .given("e", ONE, "E/G of the building")
        .given("ε_lim", PERCENT, "tensile strain of the greatest category allowed")
        .found(
            "x_Δ",
            M,
            "distance at which the ground is farthest from the straight between the ends",
            "search along the part")
        .line("δ_v = R_v·δ_h", MM, "greatest settlement", Reference.PRACTICE)
        .choose("δ_1", MM, "settlement of the near end", f.reference(), at(f, "x_1"))
        .choose("δ_2", MM, "settlement of the far end", f.reference(), at(f, "x_2"))
        .choose("δ_3", MM, "settlement between", f.reference(), at(f, "x_Δ"))
        .line("L = x_2 − x_1", M, "length of the part", Reference.DERIVED)
        .line(
            "δ_c = δ_1 + (δ_2 − δ_1)·(x_Δ − x_1)/L",
            MM,
            "straight between the ends",
            Reference.DERIVED)
        .line("Δ = abs(δ_3 − δ_c)", MM, "deflection", Reference.DERIVED)
        .line("ρ = Δ/L", PERCENT, "deflection ratio", Reference.DERIVED)
        .choose(
            "u_1",
            MM,
            "horizontal movement of the near end",
            Reference.PRACTICE,
            f.horizontal("δ_h", "x_1", "H"))
        .choose(
            "u_2",
            MM,
            "horizontal movement of the far end",
            Reference.PRACTICE,
            f.horizontal("δ_h", "x_2", "H"))
        .line("ε_h = (u_1 − u_2)/L", PERCENT, "horizontal strain", UFC)
        .line(
            sagging ? "ε_b = ρ/(L/(6·H_b) + H_b·e/(4·L))" : "ε_b = ρ/(L/(12·H_b) + H_b·e/(2·L))",
            PERCENT,
            sagging
                ? "bending strain, axis at half height"
                : "bending strain, axis at the foundation",
            BEAM)
        .line(
            sagging ? "ε_d = ρ/(1 + 2·L²/(3·H_b²·e))" : "ε_d = ρ/(1 + L²/(6·H_b²·e))",
            PERCENT,
            "diagonal strain",
            BEAM)
        .line("ε_{b,r} = ε_b + ε_h", PERCENT, "bending with horizontal strain", STRAIN)
        .line(
            "ε_{d,r} = 0.35·ε_h + √((0.65·ε_h)² + ε_d²)",
            PERCENT,
            "diagonal with horizontal strain, ν = 0.3",
            STRAIN)
        .line("ε = max(ε_{b,r}, ε_{d,r})", PERCENT, "greatest tensile strain", Reference.DERIVED)
        .choose("c_ε", ONE, "category of damage", CATEGORIES, category())
        .require("ε ≤ ε_lim", "damage stays within what is allowed", CATEGORIES);
  }

  private static Choice at(TroughFormula f, String x) {
    return f.settlement("δ_v", x, "H");
  }
}
