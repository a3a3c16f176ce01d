package pilefolio.checks.pile;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import pilefolio.checks.Check;
import pilefolio.checks.CheckResult;
import pilefolio.checks.Family;
import pilefolio.checks.From;
import pilefolio.checks.Job;
import pilefolio.checks.Subject;
import pilefolio.checks.pile.ShaftSheets.Base;
import pilefolio.checks.pile.ShaftSheets.Beta;
import pilefolio.checks.pile.ShaftSheets.Kind;
import pilefolio.checks.pile.ShaftSheets.Safety;
import pilefolio.checks.situation.DesignSituation;
import pilefolio.checks.situation.PileToes;
import pilefolio.checks.structure.Effects;
import pilefolio.model.AxialLoad;
import pilefolio.model.Drainage;
import pilefolio.model.GroundProfile;
import pilefolio.model.Layer;
import pilefolio.model.PileKind;
import pilefolio.model.SoilKind;
import pilefolio.model.Stage;
import pilefolio.model.Support;
import pilefolio.model.Technique;
import pilefolio.model.Value;
import pilefolio.model.WallRun;
import pilefolio.model.WaterRegime;
import pilefolio.standards.Combination;
import pilefolio.standards.DesignBasis;
import pilefolio.trace.Binding;
import pilefolio.trace.Binding.Row;
import pilefolio.trace.CalcSheet;
import pilefolio.trace.Calculation;
import pilefolio.trace.Given;
import pilefolio.trace.Source;
import pilefolio.units.NumberText;

/** Axial capacity of a load-bearing secondary in layered ground. */
final class PileAxialCapacity implements Check {
  private static final double WATER = 9810;

  @Override
  public String id() {
    return "pile-axial-capacity";
  }

  @Override
  public String title() {
    return "Axial capacity of load-bearing secondaries";
  }

  @Override
  public Family family() {
    return Family.PILE;
  }

  @Override
  public List<CalcSheet> sheets() {
    List<CalcSheet> sheets = new ArrayList<>();
    sheets.add(ShaftSheets.STRESS);
    sheets.addAll(ShaftSheets.ALL.values());
    return sheets;
  }

  @Override
  public List<CheckResult> run(Job job) {
    List<CheckResult> results = new ArrayList<>();
    // Walls without primaries have another perimeter; their capacity is not this sheet's question.
    for (WallRun run : job.submission().secantRuns()) {
      if (bearsLoad(job, run)) {
        for (Combination combination : job.combinations()) {
          results.add(result(job, run, combination.id()));
        }
      }
    }
    return results;
  }

  private static boolean bearsLoad(Job job, WallRun run) {
    boolean loaded = run.secondary().load().map(AxialLoad::isPresent).orElse(false);
    boolean inclined =
        job.submission().supports(run).stream().anyMatch(s -> s.inclination().si() != 0);
    return loaded || inclined;
  }

  /** What stands in the way of a calculation, as a sentence for the user. */
  private static final class NotCovered extends Exception {
    private static final long serialVersionUID = 1L;

    NotCovered(String reason) {
      super(reason);
    }
  }

  private CheckResult result(Job job, WallRun run, String combination) {
    Subject subject = Subject.run(run.id()).combination(combination);
    try {
      List<Calculation> calculations = calculations(job, run, combination);
      return CheckResult.of(this, subject, calculations);
    } catch (NotCovered e) {
      return CheckResult.notChecked(this, subject, e.getMessage());
    } catch (ArithmeticException e) {
      return CheckResult.notChecked(
          this, subject, "the strength of a layer is outside the range of the rules used");
    }
  }

  private List<Calculation> calculations(Job job, WallRun run, String combination)
      throws NotCovered {
    DesignSituation deepest = deepest(job, run, combination);
    GroundProfile profile = job.submission().profile(run);
    double diameter = run.secondary().diameter().si();
    double toe = toe(job, run);
    if (toe - 2 * diameter < profile.base().si()) {
      throw new NotCovered("the ground must be known to two diameters below the toe of the piles");
    }
    if (toe >= deepest.designExcavation()) {
      throw new NotCovered("the piles end above excavation level");
    }
    double primaryToe = PileToes.of(job, run, PileKind.PRIMARY).map(Given::si).orElse(toe);
    List<ShaftSlice> slices =
        ShaftSlice.cut(
            profile,
            new ShaftSlice.Place(
                deepest.designExcavation(),
                toe,
                primaryToe,
                water(job, deepest.stage()),
                diameter));
    Calculation stress = stress(deepest, slices);
    List<Calculation> found = new ArrayList<>();
    for (Layer under : bearingLayers(profile, toe, diameter)) {
      found.add(capacity(job, run, combination, new Ground(slices, stress, under, toe)));
    }
    Calculation weakest =
        found.stream().max(Comparator.comparingDouble(c -> c.verdict().severity())).orElseThrow();
    return List.of(stress, weakest);
  }

  private static DesignSituation deepest(Job job, WallRun run, String combination)
      throws NotCovered {
    return DesignSituation.of(job.submission(), job.basis(), run).stream()
        .filter(s -> s.combination().id().equals(combination))
        .min(Comparator.comparingDouble(DesignSituation::designExcavation))
        .orElseThrow(() -> new NotCovered("no stage excavates before the wall"));
  }

  private static double toe(Job job, WallRun run) throws NotCovered {
    return PileToes.of(job, run, PileKind.SECONDARY)
        .orElseThrow(
            () ->
                new NotCovered(
                    "the toe of the piles is not known, since the wall has no equilibrium"))
        .si();
  }

  /** With seepage the higher level is taken: more pore pressure, less effective stress. */
  private static double water(Job job, Stage stage) {
    double none = Double.NEGATIVE_INFINITY;
    double front = stage.waterFront().map(Value::si).orElse(none);
    double behind = stage.waterBehind().map(Value::si).orElse(none);
    boolean seepage = job.submission().methods().waterRegime() == WaterRegime.LINEAR_SEEPAGE;
    return seepage ? Math.max(front, behind) : front;
  }

  private static Calculation stress(DesignSituation deepest, List<ShaftSlice> slices) {
    double excavation = deepest.designExcavation();
    double water = slices.get(0).waterLevel();
    double lowest = slices.get(slices.size() - 1).bottom();
    boolean none = water == Double.NEGATIVE_INFINITY;
    double shownWater = none ? lowest : water;
    double free = Math.max(0, (none ? lowest : water) - excavation);
    Binding binding =
        ShaftSheets.STRESS
            .bind()
            .set("γ_w", From.layout(WATER, "unit weight of fresh water"))
            .set("σ_e", From.layout(WATER * free, "free water above excavation level"))
            .set("z_w", From.layout(shownWater, none ? "no water along the pile" : waterSource()));
    for (int i = 0; i < slices.size(); i++) {
      ShaftSlice slice = slices.get(i);
      binding.row(
          ShaftSheets.SLICES,
          Row.of(label(slices, i))
              .set("z_1", From.layout(slice.top(), "slice"))
              .set("z_2", From.layout(slice.bottom(), "slice"))
              .set("γ", From.cell(slice.unitWeight())));
    }
    return binding.calculate();
  }

  private static String waterSource() {
    return "water level in front; with seepage the higher of the two";
  }

  private static String label(List<ShaftSlice> slices, int at) {
    ShaftSlice slice = slices.get(at);
    return (at + 1) + " " + slice.layer().name() + (slice.counts() ? "" : ", not counted");
  }

  /** The layers within two diameters below the toe: the weakest counts. */
  private static List<Layer> bearingLayers(GroundProfile profile, double toe, double diameter)
      throws NotCovered {
    List<Layer> layers = new ArrayList<>();
    Layer first = ShaftSlice.layerAt(profile, toe - 1e-6);
    layers.add(first);
    for (Layer layer : profile.layers()) {
      double top = layer.top().si();
      if (top < toe - 1e-6 && top > toe - 2 * diameter) {
        layers.add(layer);
      }
    }
    for (Layer layer : layers) {
      if (layer.kind() == SoilKind.ROCK || layer.kind() == SoilKind.FILL) {
        throw new NotCovered(
            "piles that stand in or just above "
                + layer.kind().label().toLowerCase(Locale.ROOT)
                + " are not covered");
      }
    }
    return layers;
  }

  /**
   * Ground of one calculation.
   *
   * @param slices the shaft
   * @param stress the sheet of vertical stress
   * @param under the layer the base is taken to stand on
   * @param toe level of the toe, m
   */
  private record Ground(List<ShaftSlice> slices, Calculation stress, Layer under, double toe) {}

  private Calculation capacity(Job job, WallRun run, String combination, Ground ground)
      throws NotCovered {
    boolean clay = ground.slices().stream().anyMatch(s -> s.counts() && s.clay());
    boolean sand = ground.slices().stream().anyMatch(s -> s.counts() && !s.clay());
    if (!clay && !sand) {
      throw new NotCovered("no part of the shaft below excavation level counts");
    }
    boolean rational = job.basis().value("pile.beta", combination) >= 1.5;
    Base base = ground.under().drainage() == Drainage.UNDRAINED ? Base.CLAY : Base.SAND;
    Safety safety =
        switch (job.basis().format()) {
          case ALLOWABLE_STRESS -> Safety.ALLOWABLE;
          case PARTIAL_FACTORS -> Safety.PARTIAL;
          case LOAD_AND_RESISTANCE -> Safety.RESISTANCE;
        };
    double onStrength = onStrength(job, combination);
    if (onStrength != 1 && (sand || base == Base.SAND)) {
      throw new NotCovered(
          "the basis factors the strength of the ground, and a resistance from blow counts has no"
              + " strength that could be factored");
    }
    Kind kind = new Kind(clay, sand, base, rational && sand ? Beta.RATIONAL : Beta.DEPTH, safety);
    Binding binding =
        ShaftSheets.ALL
            .get(kind)
            .bind()
            .set("D", From.cell(run.secondary().diameter()))
            .set("D_p", From.cell(run.primary().diameter()))
            .set("s", From.cell(run.line().spacing()))
            .set(
                "s_2",
                new Given(
                    2 * run.line().spacing().si(),
                    new Source.Layout("twice the distance of neighbours")));
    if (clay) {
      binding.set("α_max", From.factor(job, "pile.alpha", combination));
    }
    for (int i = 0; i < ground.slices().size(); i++) {
      if (ground.slices().get(i).counts()) {
        row(binding, job, run, combination, ground, i);
      }
    }
    base(binding, run, ground, base, onStrength);
    loads(binding, job, run, combination);
    safety(binding, job, run, combination, kind);
    return binding.calculate();
  }

  private static void row(
      Binding binding, Job job, WallRun run, String combination, Ground ground, int i)
      throws NotCovered {
    ShaftSlice slice = ground.slices().get(i);
    Layer layer = slice.layer();
    Given length = From.layout(slice.counted(), "slice");
    Given beside = From.layout(slice.besidePrimaries() ? 2 : 0, "toe of the primaries");
    if (slice.clay()) {
      binding.row(
          ShaftSheets.CLAY,
          Row.of(label(ground.slices(), i))
              .set(
                  "s_u",
                  strength(
                      ShaftSlice.shearStrength(layer, slice.middle()),
                      "layer",
                      onStrength(job, combination)))
              .set("ΔL", length)
              .set("j", beside));
      return;
    }
    if (layer.kind() == SoilKind.ROCK) {
      throw new NotCovered("shaft resistance in rock is not covered");
    }
    Value blows =
        layer
            .n60()
            .orElseThrow(
                () -> new NotCovered("the blow count of the layer " + layer.name() + " is needed"));
    double stress = ground.stress().table(ShaftSheets.SLICES).rows().get(i).values().get("σ'_v");
    Row row =
        Row.of(label(ground.slices(), i))
            .set("σ'_v", From.layout(stress, "table of stresses"))
            .set("N_60", From.cell(blows))
            .set("ΔL_t", length)
            .set("j_t", beside);
    boolean rational = job.basis().value("pile.beta", combination) >= 1.5;
    if (rational) {
      boolean silty = layer.kind() == SoilKind.SILT;
      row = row.set("m", From.layout(silty ? 0.8 : 0.6, silty ? "silt" : "clean sand"));
    } else {
      boolean gravel = layer.kind() == SoilKind.GRAVEL;
      String how = gravel ? "gravel" : "sand";
      double depth = run.levels().retained().si() - slice.middle();
      row =
          row.set("z", From.layout(depth, "ground level behind less level of the middle"))
              .set("b_0", From.layout(gravel ? 2.0 : 1.5, how))
              .set("b_1", From.layout(gravel ? 0.15 : 0.2445, how))
              .set("n", From.layout(gravel ? 0.75 : 0.5, how))
              .set("β_max", From.layout(gravel ? 1.8 : 1.2, how));
    }
    binding.row(ShaftSheets.SAND, row);
  }

  private static void base(
      Binding binding, WallRun run, Ground ground, Base base, double onStrength) throws NotCovered {
    Layer under = ground.under();
    if (base == Base.CLAY) {
      double upper = Math.min(ground.toe(), under.top().si());
      double lower = ground.toe() - 2 * run.secondary().diameter().si();
      double strength =
          Math.min(ShaftSlice.shearStrength(under, upper), ShaftSlice.shearStrength(under, lower));
      binding.set(
          "s_{u,b}", strength(strength, "least within two diameters, " + under.name(), onStrength));
      return;
    }
    Value blows =
        under
            .n60()
            .orElseThrow(
                () -> new NotCovered("the blow count of the layer " + under.name() + " is needed"));
    boolean uncased = run.technique() == Technique.UNCASED_AUGER;
    binding
        .set("N_{60,b}", From.cell(blows))
        .set(
            "q_{b,max}",
            From.layout(
                uncased ? 4.31e6 : 2.9e6, uncased ? "continuous flight auger pile" : "bored pile"));
  }

  private static void loads(Binding binding, Job job, WallRun run, String combination)
      throws NotCovered {
    Optional<AxialLoad> load = run.secondary().load();
    Optional<Support> support =
        job.submission().supports(run).stream()
            .max(Comparator.comparingDouble(s -> s.inclination().si()));
    Given none = From.layout(0, "no load entered");
    Optional<Effects> effects = Effects.of(job, run, combination);
    if (support.isPresent() && effects.isEmpty()) {
      throw new NotCovered("the wall has no equilibrium, so the support force is not known");
    }
    if (load.isPresent() && (load.get().permanent().si() < 0 || load.get().variable().si() < 0)) {
      throw new NotCovered("uplift on the piles is not covered");
    }
    binding
        .set("G_k", load.map(l -> From.cell(l.permanent())).orElse(none))
        .set("Q_k", load.map(l -> From.cell(l.variable())).orElse(none))
        .set("h_x", exposed(job, run))
        .set("γ_p", From.cell(job.submission().mix(run.secondary()).unitWeight()))
        .set(
            "F_h",
            support.isPresent() ? effects.get().supportForce() : From.layout(0, "no support"))
        .set(
            "i", support.map(s -> From.cell(s.inclination())).orElse(From.layout(0, "no support")));
  }

  private static Given exposed(Job job, WallRun run) {
    double lowest =
        job.submission().stages(run).stream()
            .mapToDouble(stage -> stage.excavation().si())
            .min()
            .orElse(run.levels().cutOff().si());
    return From.layout(
        Math.max(0, run.levels().cutOff().si() - lowest), "cut-off to the lowest excavation");
  }

  private static void safety(Binding binding, Job job, WallRun run, String combination, Kind kind) {
    if (kind.safety() == Safety.ALLOWABLE) {
      binding.set("F_S", From.factor(job, "pile.safety", combination));
      return;
    }
    binding
        .set("γ_G", From.factor(job, "action.structural.permanent", combination))
        .set("γ_Q", From.factor(job, "action.structural.variable", combination));
    if (kind.safety() == Safety.RESISTANCE) {
      resistance(binding, job, combination, kind);
      return;
    }
    // A cased auger leaves a bore like that of any bored pile; only the uncased one is a CFA pile.
    String technique = run.technique() == Technique.UNCASED_AUGER ? "pile.cfa." : "pile.bored.";
    binding
        .set("γ_Rd", From.factor(job, "pile.model", combination))
        .set("γ_s", From.factor(job, technique + "shaft", combination))
        .set("γ_b", From.factor(job, technique + "base", combination));
  }

  private static void resistance(Binding binding, Job job, String combination, Kind kind) {
    if (kind.clay()) {
      binding.set("φ_{s,c}", From.factor(job, "pile.resistance.shaft.clay", combination));
    }
    if (kind.sand()) {
      binding.set("φ_{s,s}", From.factor(job, "pile.resistance.shaft.sand", combination));
    }
    boolean clay = kind.base() == Base.CLAY;
    binding.set(
        "φ_b",
        From.factor(
            job, clay ? "pile.resistance.base.clay" : "pile.resistance.base.sand", combination));
  }

  /** Divisor of the undrained strength: more than 1 only where the basis factors strengths. */
  private static double onStrength(Job job, String combination) {
    return job.basis().format() == DesignBasis.Format.PARTIAL_FACTORS
        ? job.basis().value("pile.strength", combination)
        : 1;
  }

  private static Given strength(double characteristic, String where, double divisor) {
    return divisor == 1
        ? From.layout(characteristic, where)
        : From.layout(
            characteristic / divisor, where + ", divided by " + NumberText.usual(divisor));
  }
}
