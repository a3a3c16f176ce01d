package pilefolio.checks.sizing;

import java.util.Collection;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import pilefolio.checks.Check;
import pilefolio.checks.CheckResult;
import pilefolio.checks.Checks;
import pilefolio.checks.Job;
import pilefolio.trace.Verdict.Result;

/**
 * Questions about some runs that have no good answer: not satisfied, or not to be answered.
 *
 * @param worst the worst result of each question; a question is a check of a run in a combination
 */
record Shortfalls(Map<Question, CheckResult> worst) {

  /** A check of a run in a combination. */
  record Question(Check check, String run, String combination) {}

  /** Copies the map, in its order. */
  Shortfalls {
    worst = new LinkedHashMap<>(worst);
  }

  /** What falls short in a job, about some runs. */
  static Shortfalls of(Job job, Set<String> runs, Predicate<Check> asked) {
    return of(job, runs, Checks.ALL.stream().filter(c -> !c.derivation()).filter(asked).toList());
  }

  /** What falls short in a job, about some runs. */
  static Shortfalls of(Job job, Set<String> runs, Collection<Check> checks) {
    Map<Question, CheckResult> worst = new LinkedHashMap<>();
    for (Check check : checks) {
      for (CheckResult result : check.run(job)) {
        boolean good = result.verdict().result() == Result.SATISFIED;
        if (!good && runs.contains(result.subject().run())) {
          worst.merge(
              new Question(check, result.subject().run(), result.subject().combination()),
              result,
              (a, b) -> a.verdict().severity() >= b.verdict().severity() ? a : b);
        }
      }
    }
    return new Shortfalls(worst);
  }

  boolean isEmpty() {
    return worst.isEmpty();
  }

  /** The questions. */
  Set<Question> questions() {
    return worst.keySet();
  }

  /** The same without some questions. */
  Shortfalls without(Set<Question> others) {
    Map<Question, CheckResult> rest = new LinkedHashMap<>(worst);
    rest.keySet().removeAll(others);
    return new Shortfalls(rest);
  }

  /** Only those that are not satisfied: a question without an answer is left out. */
  Shortfalls notSatisfied() {
    Map<Question, CheckResult> rest = new LinkedHashMap<>(worst);
    rest.values().removeIf(r -> r.verdict().result() != Result.NOT_SATISFIED);
    return new Shortfalls(rest);
  }

  /**
   * The candidate to take where none is without shortfall: the first that falls short only where
   * all do, which then is not a matter of the candidates; else the one that comes nearest.
   */
  static int best(List<Shortfalls> candidates) {
    Set<Question> always = new HashSet<>(candidates.get(0).questions());
    candidates.forEach(candidate -> always.retainAll(candidate.questions()));
    int best = 0;
    for (int i = 0; i < candidates.size(); i++) {
      if (candidates.get(i).without(always).isEmpty()) {
        return i;
      }
      if (candidates.get(i).severity() < candidates.get(best).severity()) {
        best = i;
      }
    }
    return best;
  }

  /** The worst of all. */
  Optional<CheckResult> governing() {
    return worst.values().stream().max(Comparator.comparingDouble(r -> r.verdict().severity()));
  }

  /** How bad it is, for choosing among candidates of which none is good. */
  double severity() {
    return governing().map(r -> r.verdict().severity()).orElse(0.0);
  }
}
