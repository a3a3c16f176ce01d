package pilefolio.submittal.method;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import pilefolio.model.Beam;
import pilefolio.model.BeamInPile;
import pilefolio.model.ConcreteSupply;
import pilefolio.model.Mix;
import pilefolio.model.PileKind;
import pilefolio.model.PileSpec;
import pilefolio.model.Submission;
import pilefolio.model.WallRun;
import pilefolio.units.Units;

/** Mixes, beams and the supply of concrete. */
final class MaterialItems {
  private MaterialItems() {}

  /**
   * Mixes that piles of this job are cast of, and mixes for other work; words {@code use}, {@code
   * piles}, {@code specimen}, {@code cement}.
   */
  static List<Item> mixes(Submission submission, FactWriter writer) {
    List<Item> items = new ArrayList<>();
    for (Mix mix : submission.mixes()) {
      Set<String> piles = new TreeSet<>();
      boolean primaries = false;
      for (WallRun run : submission.secantRuns()) {
        for (PileKind kind : PileKind.secant()) {
          if (run.piles(kind).mix().equals(mix.id())) {
            piles.add(kind.label() + " of run " + run.id());
            primaries |= kind == PileKind.PRIMARY;
          }
        }
      }
      if (!piles.isEmpty()) {
        items.add(mix(mix, String.join(", ", piles), primaries, writer));
      }
    }
    return items;
  }

  private static Item mix(Mix mix, String piles, boolean primaries, FactWriter writer) {
    ItemBuilder item =
        new ItemBuilder(writer, mix.id(), "")
            .words("use", mix.use().label())
            .words("piles", piles)
            .words("specimen", mix.specimen().label())
            .words("cement", mix.cement().label())
            .value("strength", mix.strength(), Units.MPA)
            .value("slump", mix.slump(), Units.MM)
            .value("retardation", mix.retardation(), Units.H)
            .value("workabilityLife", mix.workabilityLife(), Units.MIN)
            .value("unitWeight", mix.unitWeight(), Units.KN_M3)
            .value("largestAggregate", mix.largestAggregate(), Units.MM)
            .fact(
                "deliveredTemperature",
                mix.deliveredTemperature().map(v -> writer.entered(v, Units.CELSIUS)));
    if (primaries) {
      item.words("primaries", "yes")
          .value("cuttingLimit", mix.cuttingLimit(), Units.MPA)
          .value("standingLimit", mix.standingLimit(), Units.MPA);
    }
    return item.build();
  }

  /** Beams by wall run and kind of pile; facts {@code top}, {@code toe}, {@code cover}. */
  static List<Item> beams(Submission submission, FactWriter writer) {
    List<Item> items = new ArrayList<>();
    for (WallRun run : submission.secantRuns()) {
      for (PileKind kind : PileKind.secant()) {
        PileSpec spec = run.piles(kind);
        spec.beam().ifPresent(in -> items.add(beam(submission, run, spec, in, writer)));
      }
    }
    return items;
  }

  private static Item beam(
      Submission submission, WallRun run, PileSpec spec, BeamInPile in, FactWriter writer) {
    Beam beam = submission.beam(spec).orElseThrow();
    return new ItemBuilder(writer, in.beam(), "")
        .words("run", run.id())
        .words("kind", spec.kind().label())
        .words("orientation", beam.orientation().label())
        .words("splice", beam.splice().orElse(""))
        .cell("section", beam.section(), beam.at())
        .cell("grade", beam.grade(), beam.at())
        .value("yieldStrength", beam.yieldStrength(), Units.N_MM2)
        .level("top", in.top())
        .level("toe", in.toe())
        .value("cover", in.minimumCover(), Units.MM)
        .build();
  }

  /** How concrete comes to the piles. */
  static Item supply(ConcreteSupply supply, FactWriter writer) {
    return new ItemBuilder(writer, "supply", "")
        .value("pumpRate", supply.pumpRate(), Units.M3_H)
        .value("strokeVolume", supply.strokeVolume(), Units.L)
        .value("pumpEfficiency", supply.pumpEfficiency(), Units.PERCENT)
        .value("overbreakPrimary", supply.overbreakPrimary(), Units.ONE)
        .value("overbreakSecondary", supply.overbreakSecondary(), Units.ONE)
        .value("truckVolume", supply.truckVolume(), Units.M3)
        .value("roundTrip", supply.roundTrip(), Units.MIN)
        .value("dailyCap", supply.dailyCap(), Units.M3)
        .value("liftRate", supply.liftRate(), Units.M_MIN)
        .value("logIncrement", supply.logIncrement(), Units.M)
        .value("initialHead", supply.initialHead(), Units.M)
        .value("casingHead", supply.casingHead(), Units.M)
        .value("overcast", supply.overcast(), Units.M)
        .build();
  }
}
