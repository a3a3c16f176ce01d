package pilefolio.checks.rig;

import static pilefolio.units.Units.DEG;
import static pilefolio.units.Units.KN_M;
import static pilefolio.units.Units.KN_M3;
import static pilefolio.units.Units.KPA;
import static pilefolio.units.Units.M;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import pilefolio.checks.From;
import pilefolio.checks.Job;
import pilefolio.checks.RunCheck;
import pilefolio.checks.geometry.SetOut;
import pilefolio.model.Drainage;
import pilefolio.model.GroundProfile;
import pilefolio.model.Layer;
import pilefolio.model.PileKind;
import pilefolio.model.WallRun;
import pilefolio.trace.Binding;
import pilefolio.trace.Binding.Row;
import pilefolio.trace.CalcSheet;
import pilefolio.trace.CalcTable;
import pilefolio.trace.Given;
import pilefolio.trace.Reference;

/** Shear of the ground along a bore, layer by layer from the platform to the toe. */
final class BoreGround {
  private static final double WATER = 9810;

  private static final CalcTable TABLE =
      CalcTable.of("layers", "Shear along the bore", "layer")
          .given("h", M, "thickness bored")
          .given("γ", KN_M3, "unit weight")
          .given("u", KPA, "pore pressure at mid-height")
          .given("φ'", DEG, "angle of friction; 0 if undrained")
          .given("s_u", KPA, "undrained shear strength at mid-height; 0 if drained")
          .carried("σ_{v,0}", KPA, "total stress at the top", "σ_v", "q_0")
          .line("σ_v = σ_{v,0} + γ·h", KPA, "total stress at the bottom", Reference.DERIVED)
          .line(
              "σ'_m = σ_{v,0} + γ·h/2 − u",
              KPA,
              "effective stress at mid-height",
              Reference.DERIVED)
          .line("τ = α_s·s_u + K·σ'_m·tan(f_δ·φ')", KPA, "shear on the bore", Reference.PRACTICE)
          .line("T_h = τ·h", KN_M, "shear along the layer", Reference.DERIVED)
          .sum("F_τ", "T_h", "shear along the bore, for each unit of its circumference")
          .largest("τ_b", "τ", "greatest shear, taken for the tip too")
          .largest("σ_b", "σ_v", "total stress at the toe");

  private BoreGround() {}

  /** The whole undrained strength, where a share of the bore wall allows for remoulding. */
  static Given whole() {
    return From.layout(1, "undisturbed");
  }

  /** Half of it, where a turning casing has remoulded the clay. */
  static Given remoulded() {
    return From.layout(0.5, "practice for remoulded clay, 0.2 to 0.5");
  }

  /** Adds what the table needs, and the table, to a sheet. */
  static CalcSheet on(CalcSheet sheet) {
    return sheet
        .given("q_0", KPA, "stress at platform level")
        .given("α_s", pilefolio.units.Units.ONE, "share of the undrained strength on the bore")
        .given("K", pilefolio.units.Units.ONE, "horizontal over vertical stress on the bore")
        .given("f_δ", pilefolio.units.Units.ONE, "friction on the bore over angle of friction")
        .table(TABLE);
  }

  /** Hands in the layers that the secondaries of a run go through. */
  static Binding layers(Binding binding, Job job, WallRun run, Given share) {
    binding
        .set("q_0", From.layout(0, "no load on the platform"))
        .set("α_s", share)
        .set("K", From.layout(0.5, "practice, 0.4 to 0.8"))
        .set("f_δ", From.layout(2.0 / 3, "practice, 0.5 to 0.67"));
    GroundProfile profile = job.submission().profile(run);
    double platform = run.levels().platform().si();
    double toe = SetOut.toe(job, run, PileKind.SECONDARY).si();
    double water = profile.groundwater().map(w -> w.si()).orElse(Double.NEGATIVE_INFINITY);
    if (toe >= platform) {
      throw new RunCheck.MissingInput("The toe does not lie below the platform.");
    }
    if (profile.base().si() > toe) {
      throw new RunCheck.MissingInput("The ground is not known down to the toe.");
    }
    TreeSet<Double> cuts = new TreeSet<>(List.of(platform, toe));
    profile.layers().forEach(layer -> cuts.add(layer.top().si()));
    cuts.add(water);
    List<Double> levels = new ArrayList<>(cuts.subSet(toe, true, platform, true).descendingSet());
    for (int i = 0; i + 1 < levels.size(); i++) {
      binding.row("layers", row(profile, levels.get(i), levels.get(i + 1), water));
    }
    return binding;
  }

  private static Row row(GroundProfile profile, double top, double bottom, double water) {
    double middle = (top + bottom) / 2;
    // Made ground between the profile and a higher platform counts as the uppermost layer.
    Layer layer = profile.layers().get(0);
    for (Layer next : profile.layers()) {
      if (next.top().si() > middle) {
        layer = next;
      }
    }
    boolean wet = middle < water;
    boolean drained = layer.drainage() == Drainage.DRAINED;
    Row row =
        Row.of(layer.name())
            .set("h", From.layout(top - bottom, "levels of the layer"))
            .set("γ", From.cell(wet ? layer.unitWeightBelow() : layer.unitWeight()))
            .set("u", From.layout(wet ? WATER * (water - middle) : 0, "groundwater, at rest"));
    if (drained) {
      return row.set("φ'", RunCheck.need(layer.frictionAngle(), "the angle of friction"))
          .set("s_u", From.layout(0, "drained"));
    }
    double strength =
        RunCheck.needed(layer.shearStrength(), "the undrained shear strength").si()
            + layer.shearStrengthIncrease().map(v -> v.si()).orElse(0.0)
                * Math.max(0, layer.top().si() - middle);
    return row.set("φ'", From.layout(0, "undrained"))
        .set("s_u", From.layout(strength, "strength at mid-height"));
  }
}
