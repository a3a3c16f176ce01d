package pilefolio.checks.situation;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import pilefolio.analysis.earth.AtRest;
import pilefolio.analysis.earth.CoefficientMethod;
import pilefolio.analysis.earth.CohesionRule;
import pilefolio.analysis.earth.DrainedStrength;
import pilefolio.analysis.earth.Earthquake;
import pilefolio.analysis.earth.OutsideRange;
import pilefolio.analysis.earth.PressureFactors;
import pilefolio.analysis.earth.RaisedExcavation;
import pilefolio.analysis.earth.Side;
import pilefolio.analysis.earth.SoilLayer;
import pilefolio.analysis.earth.SoilProfile;
import pilefolio.analysis.earth.Strength;
import pilefolio.analysis.earth.Surroundings;
import pilefolio.analysis.earth.UndrainedStrength;
import pilefolio.analysis.earth.WallGround;
import pilefolio.analysis.earth.WaterField;
import pilefolio.analysis.earth.WaterFlow;
import pilefolio.checks.Subject;
import pilefolio.model.AllowableMargin;
import pilefolio.model.AtRestRule;
import pilefolio.model.Drainage;
import pilefolio.model.GroundChoices;
import pilefolio.model.GroundProfile;
import pilefolio.model.Layer;
import pilefolio.model.Methods;
import pilefolio.model.Stage;
import pilefolio.model.Submission;
import pilefolio.model.Support;
import pilefolio.model.Value;
import pilefolio.model.WallRun;
import pilefolio.model.WaterRegime;
import pilefolio.standards.Combination;
import pilefolio.standards.DesignBasis;
import pilefolio.units.Units;

/**
 * One stage of one wall run in one combination of the design basis.
 *
 * @param submission what the user described
 * @param basis the design basis with the user's overrides
 * @param run the wall run
 * @param stage the stage
 * @param combination the combination
 */
public record DesignSituation(
    Submission submission, DesignBasis basis, WallRun run, Stage stage, Combination combination) {

  /** Share of the embedment by which the simplified methods make up for a concentrated force. */
  public static final double SIMPLIFIED_INCREASE = 1.2;

  /** Retained height up to which a wall counts as not retaining, m. */
  static final double LEAST_HEIGHT = 0.05;

  // Local loads are followed down this many retained heights below the excavation.
  private static final double LOADED_HEIGHTS = 12;

  /** Every situation of a run in which the wall retains ground, stage by stage. */
  public static List<DesignSituation> of(Submission submission, DesignBasis basis, WallRun run) {
    List<DesignSituation> all = new ArrayList<>();
    for (Stage stage : submission.stages(run)) {
      for (Combination combination : basis.combinations()) {
        DesignSituation s = new DesignSituation(submission, basis, run, stage, combination);
        if (s.characteristicHeight() > LEAST_HEIGHT) {
          all.add(s);
        }
      }
    }
    return all;
  }

  /** Name of the situation as tables print it. */
  public String title() {
    return "run " + run.id() + ", stage " + stage.number() + ", " + combination.id();
  }

  /** Subject of a check in this situation. */
  public Subject subject() {
    return Subject.run(run.id()).stage("stage " + stage.number()).combination(combination.id());
  }

  /** A factor of the basis in this combination. */
  public double factor(String key) {
    return basis.value(key, combination.id());
  }

  /** The ground profile. */
  public GroundProfile profile() {
    return submission.profile(run);
  }

  /** The support, if there is just one in place in this stage. */
  public Optional<Support> support() {
    List<Support> all = supports();
    return all.size() == 1 ? Optional.of(all.get(0)) : Optional.empty();
  }

  /** The supports in place in this stage, from the top down. */
  public List<Support> supports() {
    return submission.supports(stage);
  }

  /** The lowest support in place in this stage. */
  public Optional<Support> lowestSupport() {
    List<Support> all = supports();
    return all.isEmpty() ? Optional.empty() : Optional.of(all.get(all.size() - 1));
  }

  /** Retained height without unplanned excavation, m. */
  public double characteristicHeight() {
    return run.levels().retained().si() - stage.excavation().si();
  }

  /** Height that the allowance for unplanned excavation is a share of, m. */
  public double heightForAllowance() {
    return lowestSupport()
        .map(s -> s.level().si() - stage.excavation().si())
        .orElse(characteristicHeight());
  }

  /** Unplanned excavation that the basis asks for, m. */
  public double allowanceOfBasis() {
    return Math.min(
        factor("overdig.fraction") * Math.max(0, heightForAllowance()), factor("overdig.limit"));
  }

  /** Unplanned excavation taken: the user's value or the one of the basis, m. */
  public double unplannedExcavation() {
    return run.unplannedExcavation().map(Value::si).orElse(allowanceOfBasis());
  }

  /** Height by which a berm in front raises the excavation in the calculation, m; 0 without one. */
  public double raisedByBerm() {
    return stage
        .conditions()
        .berm()
        .map(b -> RaisedExcavation.by(b.height().si(), b.topWidth().si(), b.slope().si()))
        .orElse(0.0);
  }

  /** Design excavation level, m, with unplanned excavation and raised by a berm. */
  public double designExcavation() {
    return stage.excavation().si() + raisedByBerm() - unplannedExcavation();
  }

  /** Divisor on passive pressure in this situation. */
  public double passiveDivisor() {
    return marginIsOnPassive() ? factor("passive.safety") : 1;
  }

  /** Multiplier of the embedment that the method requires, in this situation. */
  public double embedmentIncrease() {
    return basis.format() == DesignBasis.Format.ALLOWABLE_STRESS && marginIsOnPassive()
        ? 1
        : factor("embedment.increase");
  }

  private boolean marginIsOnPassive() {
    return basis.format() != DesignBasis.Format.ALLOWABLE_STRESS
        || submission.methods().allowableMargin() == AllowableMargin.FACTOR_ON_PASSIVE;
  }

  /**
   * Factors on pressures. Whether passive pressure carries the factor of permanent actions, because
   * weight of ground on both sides is one source, or is a resistance, is a matter of the basis.
   */
  public PressureFactors pressureFactors() {
    return new PressureFactors(
            factor("action.permanent.unfavourable"),
            factor("action.variable.unfavourable"),
            factor("passive.action"),
            passiveDivisor(),
            PressureFactors.DivisorOn.WHOLE_PASSIVE)
        .withWater(factor("action.water"))
        .on(BeamWidths.of(submission, run));
  }

  /** How coefficients are found. */
  public CoefficientMethod coefficientMethod() {
    return switch (submission.methods().earthPressure()) {
      case RANKINE -> CoefficientMethod.RANKINE;
      case COULOMB -> CoefficientMethod.COULOMB;
      case EN1997_C2 -> CoefficientMethod.EN1997_ANNEX_C2;
      case CAQUOT_KERISEL -> CoefficientMethod.CAQUOT_KERISEL;
    };
  }

  /** How a layer acts in this stage: undrained ground with long-term strength may have drained. */
  public Drainage drainage(Layer layer) {
    return stage.conditions().longTerm() && layer.frictionAngle().isPresent()
        ? Drainage.DRAINED
        : layer.drainage();
  }

  /** Design strength of a layer in this stage. */
  public Strength designStrength(Layer layer) {
    if (drainage(layer) == Drainage.DRAINED) {
      double phi =
          Math.atan(Math.tan(layer.frictionAngle().orElseThrow().si()) / factor("ground.friction"));
      double cohesion =
          layer.cohesion().map(v -> v.in(Units.KPA)).orElse(0.0) / factor("ground.cohesion");
      return new DrainedStrength(
          cohesion,
          phi,
          layer.wallFrictionActive().si() * phi,
          layer.wallFrictionPassive().si() * phi);
    }
    double su = layer.shearStrength().orElseThrow().in(Units.KPA);
    double increase = layer.shearStrengthIncrease().map(v -> v.si() / 1000).orElse(0.0);
    double divisor = factor("ground.undrained");
    return new UndrainedStrength(su / divisor, increase / divisor, layer.wallAdhesion().si());
  }

  /** Water level behind, m; the base of the known ground if there is no water. */
  public double waterBehind() {
    return stage.waterBehind().map(Value::si).orElse(profile().base().si());
  }

  /** Water level in front before unplanned excavation, m; the base if there is no water. */
  public double waterFront() {
    return stage.waterFront().map(Value::si).orElse(profile().base().si());
  }

  /** Layers with design values. */
  public SoilProfile designProfile() {
    GroundProfile profile = profile();
    double gammaFactor = factor("ground.weight");
    List<SoilLayer> layers = new ArrayList<>();
    for (int i = 0; i < profile.layers().size(); i++) {
      Layer layer = profile.layers().get(i);
      layers.add(
          new SoilLayer(
              layer.name(),
              layer.top().si(),
              profile.bottom(i),
              gammaFactor * layer.unitWeight().in(Units.KN_M3),
              gammaFactor * layer.unitWeightBelow().in(Units.KN_M3),
              designStrength(layer)));
    }
    return new SoilProfile(layers);
  }

  /** Ground, water and uniform load behind. */
  Side behind() {
    return new Side(
        run.levels().retained().si(),
        waterBehind(),
        stage.permanentSurcharge().in(Units.KPA),
        stage.variableSurcharge().in(Units.KPA));
  }

  /** Ground and water in front, unplanned excavation and berm included. */
  Side front() {
    return Side.unloaded(stage.excavation().si() + raisedByBerm(), waterFront())
        .loweredBy(unplannedExcavation());
  }

  /**
   * Ground, water, loads and factors.
   *
   * @throws pilefolio.analysis.earth.OutsideRange if a value lies outside the range of a method
   */
  public WallGround ground() {
    WallGround uniform = uniformGround(submission.methods().waterRegime());
    return uniform.with(
        surroundings(uniform, GroundWater.field(this, uniform.behind(), uniform.front())));
  }

  /** The same with simplified seepage in place of a flow net. */
  WallGround simplifiedGround() {
    WallGround uniform = uniformGround(WaterRegime.LINEAR_SEEPAGE);
    return uniform.with(surroundings(uniform, Optional.empty()));
  }

  private WallGround uniformGround(WaterRegime regime) {
    Methods methods = submission.methods();
    CohesionRule rule =
        new CohesionRule(
            switch (methods.tensionCrack()) {
              case DRY, NONE -> CohesionRule.Tension.DRY_CRACK;
              case WATER_FILLED -> CohesionRule.Tension.WATER_FILLED_CRACK;
            },
            methods.minimumFluidWeight().in(Units.KN_M3));
    return new WallGround(
        designProfile(),
        coefficientMethod(),
        behind(),
        front(),
        regime == WaterRegime.LINEAR_SEEPAGE ? WaterFlow.LINEAR_SEEPAGE : WaterFlow.HYDROSTATIC,
        WallGround.GAMMA_WATER,
        rule,
        rule,
        pressureFactors());
  }

  private Surroundings surroundings(WallGround uniform, Optional<WaterField> water) {
    double bottom =
        Math.max(
            profile().base().si(),
            uniform.front().groundLevel() - LOADED_HEIGHTS * uniform.retainedHeight());
    GroundChoices choices = submission.methods().ground();
    Surroundings all =
        Surroundings.NONE
            .withSlope(run.analysis().slopeBehind().si())
            .withLoads(
                LoadsBehind.pressure(this, false, bottom),
                LoadsBehind.pressure(this, true, bottom));
    if (water.isPresent()) {
      all = all.withWater(water.get());
    }
    if (stage.conditions().earthquake()) {
      all = all.withEarthquake(earthquake());
    }
    if (choices.softenedDepth().si() > 0) {
      all =
          all.withFrontLayers(
              uniform
                  .profile()
                  .softenedBelow(
                      uniform.front().groundLevel(),
                      choices.softenedDepth().si(),
                      choices.softenedShare().si()));
    }
    return all;
  }

  private Earthquake earthquake() {
    GroundChoices choices = submission.methods().ground();
    return new Earthquake(
        choices
            .seismicHorizontal()
            .orElseThrow(
                () -> new OutsideRange("stage with earthquake: no horizontal coefficient is given"))
            .si(),
        choices.seismicVertical().si());
  }

  /**
   * At-rest coefficient of a layer: the one given, or by the rule chosen; 1 in undrained ground.
   */
  public double atRest(Layer layer) {
    if (layer.state().atRest().isPresent()) {
      return layer.state().atRest().get().si();
    }
    if (layer.frictionAngle().isEmpty()) {
      return 1;
    }
    double phi = layer.frictionAngle().get().si();
    double ocr = layer.state().overconsolidation().si();
    return submission.methods().ground().atRest() == AtRestRule.POWER
        ? AtRest.power(phi, ocr)
        : AtRest.squareRoot(phi, ocr, Math.max(0, run.analysis().slopeBehind().si()));
  }

  /** Toe level of the wall, m, if the user gives it. */
  public OptionalDouble givenToe() {
    return run.toe().map(v -> OptionalDouble.of(v.si())).orElse(OptionalDouble.empty());
  }
}
