package pilefolio.submittal.figure;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pilefolio.analysis.sequence.Programme;
import pilefolio.checks.sequence.Programmes;
import pilefolio.model.WallRun;
import pilefolio.submittal.Submittal;

/**
 * What every figure of a package shows, and where figures stand. A figure whose results are missing
 * is left out.
 *
 * @param plans plan of each run, {@code plan-<run>}
 * @param sections section through each run, {@code section-<run>}
 * @param effects shear and moment of each run, {@code moments-<run>}, and its apparent pressure,
 *     {@code apparent-<run>}
 * @param overlaps overlap of the joints of each run, {@code overlap-<run>}
 * @param windows strength of the primaries with age, {@code window-<run>} after the first of the
 *     runs that share it
 * @param programmes day by day, under the id "programme"; at most one
 * @param heads levels while cased secondaries are filled, {@code head-<run>}
 * @param slips critical slip circle of each run, {@code slip-<run>}
 * @param troughs settlement behind each run whose movement is known, {@code trough-<run>}
 * @param stages of each run analysed in stages its curves, {@code stages-<run>}, and the forces of
 *     its supports, {@code support-forces-<run>}
 * @param placement ids of the figures of the calculation package, by check id, {@code run:<id>} or
 *     {@code neighbours}
 * @param methodStatement ids of the figures of the method statement, in order
 */
public record FigureContent(
    List<SitePlanData> plans,
    List<SectionData> sections,
    List<DepthPlotData> effects,
    List<JointOverlapData> overlaps,
    List<StrengthWindowData> windows,
    List<ProgrammeData> programmes,
    List<ConcreteHeadData> heads,
    List<SlipCircleData> slips,
    List<TroughData> troughs,
    List<DepthPlotData> stages,
    Map<String, List<String>> placement,
    List<String> methodStatement) {

  /** Copies the collections. */
  public FigureContent {
    plans = List.copyOf(plans);
    sections = List.copyOf(sections);
    effects = List.copyOf(effects);
    overlaps = List.copyOf(overlaps);
    windows = List.copyOf(windows);
    programmes = List.copyOf(programmes);
    heads = List.copyOf(heads);
    slips = List.copyOf(slips);
    troughs = List.copyOf(troughs);
    stages = List.copyOf(stages);
    placement = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(placement));
    methodStatement = List.copyOf(methodStatement);
  }

  /** Fills the figures of a package. */
  public static FigureContent of(Submittal submittal) {
    Optional<Programme> programme =
        Programmes.of(submittal.job()).programme().filter(p -> !p.piles().isEmpty());
    List<SitePlanData> plans = new ArrayList<>();
    List<SectionData> sections = new ArrayList<>();
    List<DepthPlotData> effects = new ArrayList<>();
    List<DepthPlotData> stages = new ArrayList<>();
    List<SlipCircleData> slips = new ArrayList<>();
    List<JointOverlapData> overlaps = new ArrayList<>();
    List<TroughData> troughs = new ArrayList<>();
    Placement placement = new Placement(submittal);
    for (WallRun run : submittal.job().submission().runs()) {
      String chapter = Placement.run(run.id());
      if (run.type().bored()) {
        SitePlanData plan = SitePlans.of(submittal, run, programme);
        plans.add(plan);
        placement.put(chapter, plan.id());
      }
      WallSections.of(submittal, run)
          .ifPresent(
              section -> {
                sections.add(section);
                placement.put(chapter, section.id());
              });
      WallEffectPlots.of(submittal, run)
          .ifPresent(
              plot -> {
                effects.add(plot);
                placement.atCheck(WallEffectPlots.CHECK, chapter, plot.id());
              });
      ApparentPlots.of(submittal, run)
          .ifPresent(
              plot -> {
                effects.add(plot);
                placement.atCheck(ApparentPlots.CHECK, chapter, plot.id());
              });
      for (DepthPlotData plot : StagePlots.of(submittal, run)) {
        stages.add(plot);
        placement.atCheck(StagePlots.CHECK, chapter, plot.id());
      }
      SlipCircles.of(submittal, run)
          .ifPresent(
              slip -> {
                slips.add(slip);
                placement.atCheck(SlipCircles.CHECK, chapter, slip.id());
              });
      JointOverlaps.of(submittal, run)
          .ifPresent(
              overlap -> {
                overlaps.add(overlap);
                placement.atCheck(JointOverlaps.CHECK, chapter, overlap.id());
              });
      Troughs.of(submittal, run)
          .ifPresent(
              trough -> {
                troughs.add(trough);
                placement.put(Placement.NEIGHBOURS, trough.id());
              });
    }
    List<ConcreteHeadData> heads =
        submittal.job().submission().runs().stream()
            .flatMap(run -> CasingHeads.of(submittal, run).stream())
            .toList();
    heads.forEach(h -> placement.put(CasingHeads.CHECK, h.id()));
    List<ProgrammeData> programmes =
        programme.stream().map(p -> ProgrammeBars.of(submittal, p)).toList();
    programmes.forEach(p -> placement.put(ProgrammeBars.CHECK, p.id()));
    List<StrengthWindowData> windows = StrengthWindows.of(submittal);
    windows.forEach(w -> placement.put(StrengthWindows.CHECK, w.id()));
    List<String> statement = new ArrayList<>();
    programmes.forEach(p -> statement.add(p.id()));
    plans.forEach(plan -> statement.add(plan.id()));
    windows.forEach(w -> statement.add(w.id()));
    troughs.forEach(t -> statement.add(t.id()));
    heads.forEach(h -> statement.add(h.id()));
    return new FigureContent(
        plans,
        sections,
        effects,
        overlaps,
        windows,
        programmes,
        heads,
        slips,
        troughs,
        stages,
        placement.ids(),
        statement);
  }
}
