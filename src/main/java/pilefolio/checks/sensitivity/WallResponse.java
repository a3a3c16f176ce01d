package pilefolio.checks.sensitivity;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import pilefolio.analysis.staged.StageState;
import pilefolio.analysis.staged.SupportForce;
import pilefolio.checks.Check;
import pilefolio.checks.CheckResult;
import pilefolio.checks.Checks;
import pilefolio.checks.Family;
import pilefolio.checks.Job;
import pilefolio.checks.WallEffects;
import pilefolio.checks.situation.RunDesign;
import pilefolio.checks.situation.StagedDesign;
import pilefolio.checks.situation.StagedSolution;
import pilefolio.checks.situation.WallSolution;
import pilefolio.checks.stability.WallSolutions;
import pilefolio.model.Support;
import pilefolio.model.WallRun;
import pilefolio.trace.Verdict.Result;

/**
 * What decides about a wall run, the worst of its stages and combinations, coherent SI.
 *
 * @param moment greatest bending moment, N·m/m
 * @param shear greatest shear force, N/m
 * @param supports greatest horizontal force of each support by its id, N/m
 * @param displacement greatest displacement in service, m; empty without a staged analysis
 * @param requiredToe deepest toe that limit equilibrium requires, m
 * @param passive utilisation of the passive reserve
 * @param answers worst answer of each question that the changes may turn
 */
record WallResponse(
    double moment,
    double shear,
    Map<String, Double> supports,
    OptionalDouble displacement,
    double requiredToe,
    double passive,
    Map<Question, CheckResult> answers) {
  private static final double KILO = 1000;

  /** Checks that search or solve a field of their own, too dear to be repeated for every change. */
  private static final Set<String> LEFT_OUT =
      Set.of("overall-stability", "hydraulic-heave", "piping");

  private static final List<Check> ASKED =
      Checks.ALL.stream()
          .filter(c -> c.family() == Family.STABILITY || c.family() == Family.STRUCTURE)
          .filter(c -> !c.derivation() && !LEFT_OUT.contains(c.id()))
          .toList();

  /** A check in a combination. */
  record Question(String id, String title, String combination) {}

  /** The number of the stage without equilibrium, or the response of the wall. */
  record Outcome(Optional<WallResponse> response, int failedStage) {}

  private static Outcome failed(int stage) {
    return new Outcome(Optional.empty(), stage);
  }

  /** The response of a run in a job of its own. */
  static Outcome of(Job job, WallRun run) {
    RunDesign design = RunDesign.of(job, run);
    for (WallSolution s : design.solutions()) {
      if (s.equilibrium().isEmpty()) {
        return failed(s.situation().stage().number());
      }
    }
    if (design.solutions().isEmpty()) {
      return failed(0);
    }
    StagedDesign staged = StagedDesign.of(job, run);
    for (StagedSolution s : staged.solutions()) {
      if (!s.converged()) {
        return failed(s.failedStage().map(x -> x.number()).orElse(0));
      }
    }
    double moment = 0;
    double shear = 0;
    Map<String, Double> supports = new LinkedHashMap<>();
    job.submission().supports(run).forEach(s -> supports.put(s.id(), 0.0));
    if (staged.solutions().isEmpty()) {
      for (WallEffects e : WallSolutions.effects(job, run)) {
        moment = Math.max(moment, Math.abs(e.moment()));
        shear = Math.max(shear, Math.abs(e.shear()));
        if (e.supportForce().isPresent()) {
          List<Support> active =
              job.submission().supports(run).stream()
                  .filter(s -> acts(job, run, s, e.stage()))
                  .toList();
          active.forEach(s -> supports.merge(s.id(), e.supportForce().getAsDouble(), Math::max));
        }
      }
    }
    for (StagedSolution s : staged.solutions()) {
      for (StageState state : s.states()) {
        double k = KILO * s.effectFactor();
        moment = Math.max(moment, k * Math.abs(state.governingMoment().value()));
        shear = Math.max(shear, k * Math.abs(state.greatestShear().value()));
        for (SupportForce f : state.supports()) {
          supports.merge(f.support().id(), k * f.force(), Math::max);
        }
      }
    }
    Map<Question, CheckResult> answers = answers(job);
    return new Outcome(
        Optional.of(
            new WallResponse(
                moment,
                shear,
                supports,
                displacement(staged),
                design.deepest().orElseThrow().requiredToe(),
                passive(answers),
                answers)),
        0);
  }

  private static boolean acts(Job job, WallRun run, Support support, int stage) {
    return job.submission().stages(run).stream()
        .anyMatch(s -> s.number() == stage && s.supports().contains(support.id()));
  }

  private static OptionalDouble displacement(StagedDesign staged) {
    return staged.service().stream()
        .filter(StagedSolution::converged)
        .flatMap(s -> s.states().stream())
        .mapToDouble(state -> Math.abs(state.greatestDisplacement().value()))
        .max();
  }

  private static double passive(Map<Question, CheckResult> answers) {
    return answers.entrySet().stream()
        .filter(e -> e.getKey().id().equals("passive-reserve"))
        .mapToDouble(e -> e.getValue().verdict().utilisation().orElse(0))
        .max()
        .orElse(0);
  }

  private static Map<Question, CheckResult> answers(Job job) {
    Map<Question, CheckResult> worst = new LinkedHashMap<>();
    for (Check check : ASKED) {
      for (CheckResult result : check.run(job)) {
        worst.merge(
            new Question(check.id(), check.title(), result.subject().combination()),
            result,
            (a, b) -> a.verdict().severity() >= b.verdict().severity() ? a : b);
      }
    }
    return worst;
  }

  /** The questions that were satisfied as designed and are not any more. */
  Map<Question, CheckResult> turned(WallResponse asDesigned) {
    Map<Question, CheckResult> turned = new LinkedHashMap<>();
    answers.forEach(
        (question, result) -> {
          CheckResult before = asDesigned.answers().get(question);
          if (result.verdict().result() == Result.NOT_SATISFIED
              && before != null
              && before.verdict().satisfied()) {
            turned.put(question, result);
          }
        });
    return turned;
  }

  /** Greatest force in any support, N/m; nil without supports. */
  double greatestSupport() {
    return supports.values().stream().mapToDouble(v -> v).max().orElse(0);
  }
}
