package pilefolio.checks.stability;

import java.util.List;
import java.util.stream.Stream;
import pilefolio.checks.Check;

/** The checks of stability, in the order of the calculation package. */
public final class StabilityChecks {
  /** Embedment, one check for each method. */
  static final List<EmbedmentCheck> EMBEDMENT =
      List.of(
          new FullCantileverEmbedment(),
          new SimplifiedCantileverEmbedment(),
          new FreeEarthEmbedment(),
          new FixedEarthEmbedment(),
          new LowestSpanEmbedment());

  /** Every check of the family. */
  public static final List<Check> ALL =
      Stream.<Stream<? extends Check>>of(
              Stream.of(new DesignExcavation()),
              EMBEDMENT.stream(),
              Stream.of(new PassiveReserveCheck(), new WallEffectsCheck(), new SupportForceCheck()),
              Stream.of(new StagedEquilibrium(), new StagedEffects()),
              Stream.of(
                  new OverallStability(),
                  new BasalHeaveCheck(),
                  new HydraulicHeave(),
                  new Piping(),
                  new ClayPlugUplift(),
                  new VerticalEquilibrium(),
                  new ToeBearing()))
          .flatMap(s -> s)
          .<Check>map(c -> c)
          .toList();

  private StabilityChecks() {}
}
