package pilefolio.workbook;

import java.util.List;
import java.util.function.Consumer;
import pilefolio.findings.Finding;
import pilefolio.model.Pile;
import pilefolio.model.Submission;
import pilefolio.model.WallRun;

/** Piles of different runs do not stand in one place. */
final class LayoutRule {
  /** Nearer than this share of the spacing, two piles are taken to be one. */
  private static final double SAME_PLACE = 0.5;

  private LayoutRule() {}

  static void check(Submission described, Consumer<Finding> findings) {
    List<WallRun> runs = described.runs();
    for (int i = 0; i < runs.size(); i++) {
      for (int j = i + 1; j < runs.size(); j++) {
        check(runs.get(i), runs.get(j), findings);
      }
    }
  }

  private static void check(WallRun one, WallRun other, Consumer<Finding> findings) {
    double near = SAME_PLACE * Math.min(one.line().spacing().si(), other.line().spacing().si());
    List<Pile> others = other.layout().piles();
    for (Pile pile : one.layout().piles()) {
      for (Pile candidate : others) {
        if (pile.distanceTo(candidate) < near) {
          findings.accept(
              FindingKind.RUNS_COLLIDE.at(
                  other.at(),
                  "piles " + pile.mark() + " and " + candidate.mark() + " stand in one place",
                  "move the start of one run; where runs meet, one pile belongs to one of them"));
          return;
        }
      }
    }
  }
}
