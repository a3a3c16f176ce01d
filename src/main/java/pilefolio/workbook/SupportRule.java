package pilefolio.workbook;

import java.util.HashSet;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import pilefolio.findings.Finding;
import pilefolio.model.SupportKind;

/** Supports stand where they can be built and act in some stage. */
final class SupportRule implements Rule {
  /** A capping beam may carry the support this much above cut-off, m. */
  private static final double CAPPING_BEAM = 1.0;

  @Override
  public void check(Book book, KnownNames names, Consumer<Finding> findings) {
    Set<String> inPlace = new HashSet<>();
    for (Row stage : book.rows(StageSheet.STAGES)) {
      for (String id : StageSheet.listed(stage)) {
        inPlace.add(id);
        Optional<Row> support =
            book.first(StageSheet.SUPPORTS, StageSheet.SUPPORT_ID, Optional.of(id));
        if (support.isEmpty()) {
          findings.accept(
              FindingKind.SUPPORT_UNKNOWN_IN_STAGE.at(
                  stage.place(StageSheet.SUPPORTS_IN_PLACE),
                  "no support is called \"" + NumberColumn.shortened(id) + "\"",
                  "add it on the sheet Supports, or name those in place with commas between"));
        }
      }
    }
    for (Row support : book.rows(StageSheet.SUPPORTS)) {
      inclination(support, findings);
      Optional<String> id = support.find(StageSheet.SUPPORT_ID);
      if (id.isPresent() && !inPlace.contains(id.get())) {
        findings.accept(
            FindingKind.SUPPORT_NOT_IN_PLACE.at(
                support.place(StageSheet.SUPPORT_ID),
                "the support " + id.get() + " is in place in no stage",
                "name it on the sheet Stages in those in which it acts"));
      }
      id.ifPresent(name -> level(support, name, book, findings));
    }
  }

  private static void level(Row support, String id, Book book, Consumer<Finding> findings) {
    Optional<Double> level = support.si(StageSheet.LEVEL);
    if (level.isEmpty()) {
      return;
    }
    for (Row stage : book.rows(StageSheet.STAGES)) {
      if (!StageSheet.listed(stage).contains(id)) {
        continue;
      }
      Optional<Double> cutOff =
          book.first(WallSheet.RUNS, WallSheet.RUN_ID, stage.find(StageSheet.RUN))
              .flatMap(run -> run.si(WallSheet.CUT_OFF));
      if (cutOff.isPresent() && level.get() > cutOff.get() + CAPPING_BEAM) {
        wrong(support, "the support is more than 1 m above cut-off level", findings);
        return;
      }
      Optional<Double> excavation = stage.si(StageSheet.EXCAVATION);
      if (excavation.isPresent() && excavation.get() > level.get()) {
        wrong(
            support,
            "the support is below the excavation of a stage in which it is in place",
            findings);
        return;
      }
    }
  }

  private static void wrong(Row support, String found, Consumer<Finding> findings) {
    findings.accept(
        FindingKind.SUPPORT_LEVEL_WRONG.at(
            support.place(StageSheet.LEVEL), found, "give a level, not a depth"));
  }

  private static void inclination(Row support, Consumer<Finding> findings) {
    Optional<SupportKind> kind = support.find(StageSheet.KIND);
    Optional<Double> angle = support.si(StageSheet.INCLINATION);
    if (kind.isEmpty() || angle.isEmpty()) {
      return;
    }
    boolean level = angle.get() == 0;
    if (kind.get() != SupportKind.DEADMAN && level == kind.get().inclined()) {
      findings.accept(
          FindingKind.PROP_INCLINED.at(
              support.place(StageSheet.INCLINATION),
              kind.get().label().toLowerCase(Locale.ROOT)
                  + (level ? " without inclination" : " inclined"),
              "anchors usually dip 10° to 45°, rakers rise from 30° to 45°, props and slabs are level"));
    }
  }
}
