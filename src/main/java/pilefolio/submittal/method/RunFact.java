package pilefolio.submittal.method;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * A fact with the wall runs it holds for.
 *
 * @param runs ids of the runs, or empty if it holds for all that are spoken of
 * @param text final text, or empty if nobody gave it and no check works it out
 * @param source where it is from, or empty with the text
 */
public record RunFact(String runs, String text, String source) {

  /** Every fact of some runs by name; runs with the same text are told together. */
  static Map<String, List<RunFact>> byName(List<RunWork> works) {
    Set<String> names = new LinkedHashSet<>();
    works.forEach(work -> names.addAll(work.run().facts().keySet()));
    Map<String, List<RunFact>> all = new LinkedHashMap<>();
    names.forEach(name -> all.put(name, of(asked(works, name), name)));
    return Collections.unmodifiableMap(all);
  }

  // What only secant walls have is not missing in a wall of another kind.
  private static List<RunWork> asked(List<RunWork> works, String name) {
    boolean others = works.stream().anyMatch(w -> !w.secant() && w.run().facts().containsKey(name));
    List<RunWork> secants = works.stream().filter(RunWork::secant).toList();
    return others || secants.isEmpty() ? works : secants;
  }

  private static List<RunFact> of(List<RunWork> works, String name) {
    Map<String, List<RunWork>> byText = new LinkedHashMap<>();
    for (RunWork work : works) {
      Fact fact = work.run().facts().get(name);
      byText.computeIfAbsent(fact == null ? "" : fact.text(), t -> new ArrayList<>()).add(work);
    }
    List<RunFact> facts = new ArrayList<>();
    for (Map.Entry<String, List<RunWork>> group : byText.entrySet()) {
      Set<String> runs = new LinkedHashSet<>();
      Set<String> sources = new LinkedHashSet<>();
      for (RunWork work : group.getValue()) {
        runs.add(work.run().id());
        Fact fact = work.run().facts().get(name);
        if (fact != null) {
          sources.add(fact.source());
        }
      }
      facts.add(
          new RunFact(
              byText.size() == 1 ? "" : String.join(", ", runs),
              group.getKey(),
              String.join(", ", sources)));
    }
    return facts;
  }
}
