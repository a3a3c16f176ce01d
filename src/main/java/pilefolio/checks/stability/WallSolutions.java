package pilefolio.checks.stability;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import pilefolio.analysis.apparent.SupportReactions;
import pilefolio.analysis.wall.Equilibrium;
import pilefolio.analysis.wall.NetSegment;
import pilefolio.checks.Job;
import pilefolio.checks.WallEffects;
import pilefolio.checks.apparent.ApparentBeams;
import pilefolio.checks.situation.ApparentDesign;
import pilefolio.checks.situation.RunDesign;
import pilefolio.checks.situation.WallSolution;
import pilefolio.model.WallRun;
import pilefolio.trace.Calculation;

/** What the stability of a wall run hands on to the checks of its structure. */
public final class WallSolutions {
  private static final double KILO = 1000;

  private record Key(String run) {}

  private record Effects(List<WallEffects> list) {}

  private WallSolutions() {}

  /**
   * The effects in each stage and combination that has an equilibrium with one support or none, and
   * those of the staged analysis beside them, coherent SI. The values are those that the check
   * named with each prints.
   */
  public static List<WallEffects> effects(Job job, WallRun run) {
    return job.shared(new Key(run.id()), Effects.class, j -> make(j, run)).list();
  }

  /**
   * Toe level of a wall run, m: the user's, or the least deep one that every stage and combination
   * allows; empty if there is none.
   */
  public static OptionalDouble toe(Job job, WallRun run) {
    return RunDesign.of(job, run).toe();
  }

  private static Effects make(Job job, WallRun run) {
    WallEffectsCheck check = new WallEffectsCheck();
    List<WallEffects> all = new ArrayList<>();
    for (WallSolution s : RunDesign.of(job, run).solutions()) {
      if (s.equilibrium().isEmpty()) {
        continue;
      }
      Equilibrium e = s.equilibrium().get();
      Calculation sheet = WallEffectsCheck.calculate(e);
      all.add(
          new WallEffects(
              run.id(),
              s.situation().stage().number(),
              s.situation().combination().id(),
              sheet.value("M_E"),
              e.statics().governing().level(),
              sheet.value("V_E"),
              e.supportForce().isPresent() && s.situation().support().isPresent()
                  ? OptionalDouble.of(KILO * e.supportForce().getAsDouble())
                  : OptionalDouble.empty(),
              KILO * spanPressure(e),
              check));
    }
    all.addAll(StagedEffects.of(job, run));
    all.addAll(apparent(job, run));
    return new Effects(List.copyOf(all));
  }

  /** Effects under apparent pressure; tributary areas take the moment at the first support. */
  private static List<WallEffects> apparent(Job job, WallRun run) {
    List<WallEffects> all = new ArrayList<>();
    for (ApparentDesign design : ApparentDesign.of(job, run)) {
      if (design.solved().isEmpty()) {
        continue;
      }
      SupportReactions r = design.solved().get().routes().get(design.chosen());
      double greatest = 0;
      for (NetSegment s : design.solved().get().design().segments()) {
        greatest = Math.max(greatest, Math.max(s.topPressure(), s.bottomPressure()));
      }
      double support = 0;
      for (int i = 0; i < r.supports().size(); i++) {
        support = Math.max(support, design.force(i));
      }
      all.add(
          new WallEffects(
              run.id(),
              design.situation().stage().number(),
              design.situation().combination().id(),
              KILO * r.greatestMoment(),
              r.statics().map(s -> s.governing().level()).orElse(r.supports().get(0)),
              KILO * r.greatestShear(),
              OptionalDouble.of(KILO * support),
              KILO * greatest,
              ApparentBeams.of(design.chosen())));
    }
    return all;
  }

  private static double spanPressure(Equilibrium e) {
    double greatest = 0;
    for (NetSegment s : e.statics().pressure().segments()) {
      if (s.topLevel() > e.excavationLevel() + 1e-9) {
        greatest = Math.max(greatest, Math.max(s.topPressure(), s.bottomPressure()));
      }
    }
    return greatest;
  }
}
