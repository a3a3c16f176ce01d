package pilefolio.checks.structure;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import pilefolio.checks.Job;
import pilefolio.checks.Subject;
import pilefolio.checks.WallEffects;
import pilefolio.checks.situation.DesignSituation;
import pilefolio.checks.situation.RunDesign;
import pilefolio.checks.situation.StagedDesign;
import pilefolio.checks.stability.WallSolutions;
import pilefolio.model.WallRun;
import pilefolio.trace.Given;
import pilefolio.trace.Source;

/**
 * The worst effects of a wall run over its stages, in one combination.
 *
 * @param run the run
 * @param combination id of the combination
 * @param stages effects of every stage in that combination; at least one
 */
public record Effects(WallRun run, String combination, List<WallEffects> stages) {

  /** Copies the list. */
  public Effects {
    stages = List.copyOf(stages);
    if (stages.isEmpty()) {
      throw new IllegalArgumentException("no stage in " + combination);
    }
  }

  /**
   * The effects of a run in a combination, by equilibrium and by the staged analysis; empty unless
   * every stage has them and is in equilibrium by each.
   */
  public static Optional<Effects> of(Job job, WallRun run, String combination) {
    boolean open =
        RunDesign.of(job, run).solutions().stream()
            .filter(s -> s.situation().combination().id().equals(combination))
            .anyMatch(s -> s.equilibrium().isEmpty());
    boolean collapsed =
        StagedDesign.of(job, run).solutions().stream()
            .anyMatch(s -> s.combination().id().equals(combination) && !s.converged());
    List<WallEffects> stages =
        WallSolutions.effects(job, run).stream()
            .filter(e -> e.combination().equals(combination))
            .toList();
    boolean gap =
        DesignSituation.of(job.submission(), job.basis(), run).stream()
            .filter(s -> s.combination().id().equals(combination))
            .anyMatch(s -> stages.stream().noneMatch(e -> e.stage() == s.stage().number()));
    return open || collapsed || gap || stages.isEmpty()
        ? Optional.empty()
        : Optional.of(new Effects(run, combination, stages));
  }

  /** The stage with the greatest moment. */
  public WallEffects worstMoment() {
    return worst(e -> Math.abs(e.moment()));
  }

  /** The stage with the greatest shear force. */
  public WallEffects worstShear() {
    return worst(e -> Math.abs(e.shear()));
  }

  /** The stage with the greatest pressure on the exposed wall. */
  public WallEffects worstPressure() {
    return worst(WallEffects::spanPressure);
  }

  /** The stage with the greatest support force; empty if no stage has a support. */
  public Optional<WallEffects> worstSupport() {
    return stages.stream()
        .filter(e -> e.supportForce().isPresent())
        .max(Comparator.comparingDouble(e -> e.supportForce().getAsDouble()));
  }

  private WallEffects worst(ToDoubleFunction<WallEffects> size) {
    return stages.stream().max(Comparator.comparingDouble(size)).orElseThrow();
  }

  /** The greatest moment, N·m/m. */
  public Given moment() {
    WallEffects e = worstMoment();
    return new Given(Math.abs(e.moment()), source(e, "M_E"));
  }

  /** The greatest shear force, N/m. */
  public Given shear() {
    WallEffects e = worstShear();
    return new Given(Math.abs(e.shear()), source(e, "V_E"));
  }

  /** The greatest pressure on the exposed wall, Pa. */
  public Given pressure() {
    WallEffects e = worstPressure();
    return new Given(
        Math.max(0, e.spanPressure()), method(e, "greatest net pressure on the exposed wall"));
  }

  /** The greatest support force, N/m; nil without a support. */
  public Given supportForce() {
    return worstSupport()
        .map(e -> new Given(e.supportForce().getAsDouble(), method(e, "support force")))
        .orElse(new Given(0, new Source.Layout("no support")));
  }

  private static Source source(WallEffects effects, String what) {
    return new Source.Line(
        effects.check().id(), effects.check().title() + ", stage " + effects.stage(), what);
  }

  private static Source method(WallEffects effects, String what) {
    return new Source.Method(what + ", stage " + effects.stage());
  }

  /** The subject of a check that a stage decides. */
  public Subject subject(WallEffects effects) {
    return Subject.run(run.id()).stage("stage " + effects.stage()).combination(combination);
  }
}
