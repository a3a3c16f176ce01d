package pilefolio.workbook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import pilefolio.findings.Finding;
import pilefolio.model.Technique;

/** Rig and tool suit the technique, and the tool bores the diameter. */
final class PlantRule implements Rule {
  /** Wear and weld on a cutting edge, share of the diameter. */
  private static final double WEAR = 0.03;

  @Override
  public void check(Book book, KnownNames names, Consumer<Finding> findings) {
    book.rows(PlantSheet.TOOLS).forEach(tool -> sizes(tool, findings));
    for (Row run : book.rows(WallSheet.RUNS)) {
      Optional<Technique> technique = run.find(WallSheet.TECHNIQUE);
      if (technique.isPresent()) {
        rig(run, technique.get(), book, findings);
        book.first(PlantSheet.TOOLS, PlantSheet.TOOL_ID, run.find(WallSheet.TOOL))
            .ifPresent(tool -> tool(run, tool, technique.get(), book, findings));
      }
    }
  }

  private static void rig(Row run, Technique technique, Book book, Consumer<Finding> findings) {
    book.first(PlantSheet.RIGS, PlantSheet.RIG_ID, run.find(WallSheet.RIG))
        .flatMap(rig -> rig.find(PlantSheet.TECHNIQUE))
        // A rig with two heads can also bore without casing.
        .filter(can -> can == Technique.UNCASED_AUGER && technique == Technique.CASED_AUGER)
        .ifPresent(
            can ->
                findings.accept(
                    FindingKind.TECHNIQUE_DIFFERS.at(
                        run.place(WallSheet.RIG),
                        "the run is bored with casing, and the rig has no casing head",
                        "name a rig that can, or change the technique")));
  }

  private static void tool(
      Row run, Row tool, Technique technique, Book book, Consumer<Finding> findings) {
    boolean cased = technique == Technique.CASED_AUGER;
    if (cased
        && (tool.find(PlantSheet.CASING_OUTER).isEmpty()
            || tool.find(PlantSheet.CASING_INNER).isEmpty())) {
      findings.accept(
          FindingKind.TECHNIQUE_DIFFERS.at(
              run.place(WallSheet.TOOL),
              "the run is bored with casing, and the tool has none",
              "give the diameters of the casing on the sheet Tools"));
      return;
    }
    Optional<Double> bore = tool.si(cased ? PlantSheet.CASING_OUTER : PlantSheet.AUGER);
    Optional<String> id = run.find(WallSheet.RUN_ID);
    if (bore.isEmpty() || id.isEmpty()) {
      return;
    }
    for (Row piles : book.where(WallSheet.PILES, WallSheet.RUN, id.get())) {
      piles
          .si(WallSheet.DIAMETER)
          .filter(diameter -> Math.abs(bore.get() - diameter) > WEAR * diameter)
          .ifPresent(
              diameter ->
                  findings.accept(
                      FindingKind.TOOL_DOES_NOT_FIT.at(
                          piles.place(WallSheet.DIAMETER),
                          "the tool of run " + id.get() + " bores another diameter",
                          cased
                              ? "the casing's outer diameter is the pile's"
                              : "the auger's diameter is the pile's")));
    }
  }

  private static void sizes(Row tool, Consumer<Finding> findings) {
    List<NumberColumn> outwards = new ArrayList<>();
    for (NumberColumn column :
        List.of(
            PlantSheet.STEM, PlantSheet.AUGER, PlantSheet.CASING_INNER, PlantSheet.CASING_OUTER)) {
      if (tool.find(column).isPresent()) {
        outwards.add(column);
      }
    }
    for (int i = 1; i < outwards.size(); i++) {
      double inner = tool.si(outwards.get(i - 1)).orElseThrow();
      double outer = tool.si(outwards.get(i)).orElseThrow();
      if (inner >= outer) {
        findings.accept(
            FindingKind.TOOL_SIZES_WRONG.at(
                tool.place(outwards.get(i)),
                outwards.get(i).name()
                    + " is not larger than "
                    + outwards.get(i - 1).name().toLowerCase(java.util.Locale.ROOT),
                "stem, auger, inside and outside of the casing grow in this order"));
      }
    }
  }
}
