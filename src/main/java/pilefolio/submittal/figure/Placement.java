package pilefolio.submittal.figure;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import pilefolio.submittal.Submittal;

/** Gathers which figure stands where in the calculation package. */
final class Placement {
  /** The place at the head of the chapter about movement, where neighbours look. */
  static final String NEIGHBOURS = "neighbours";

  private final Submittal submittal;
  private final Map<String, List<String>> ids = new LinkedHashMap<>();

  Placement(Submittal submittal) {
    this.submittal = submittal;
  }

  /** The place at the head of a run. */
  static String run(String id) {
    return "run:" + id;
  }

  void put(String place, String figure) {
    ids.computeIfAbsent(place, p -> new ArrayList<>()).add(figure);
  }

  /** Puts a figure at a check, or somewhere else if the check has no section. */
  void atCheck(String check, String otherwise, String figure) {
    put(submittal.answers(check).isEmpty() ? otherwise : check, figure);
  }

  Map<String, List<String>> ids() {
    return ids;
  }
}
