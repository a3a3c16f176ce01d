package pilefolio.workbook;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import pilefolio.findings.Finding;
import pilefolio.model.SupportKind;

/** Supports stand where they can be built and act in some stage. */
final class SupportRule implements Rule {
  /** A capping beam may carry the support this much above cut-off, m. */
  private static final double CAPPING_BEAM = 1.0;

  @Override
  public void check(Book book, KnownNames names, Consumer<Finding> findings) {
    for (Row run : book.rows(WallSheet.RUNS)) {
      run.find(WallSheet.RUN_ID).ifPresent(id -> run(run, id, book, findings));
    }
    book.rows(StageSheet.SUPPORTS).forEach(row -> inclination(row, findings));
  }

  private static void run(Row run, String id, Book book, Consumer<Finding> findings) {
    List<Row> stages = book.where(StageSheet.STAGES, StageSheet.RUN, id);
    boolean supported = run.find(WallSheet.SUPPORT).isPresent();
    boolean active = false;
    for (Row stage : stages) {
      boolean here = stage.effective(StageSheet.SUPPORT_ACTIVE).orElse(false);
      active |= here;
      if (here && !supported) {
        findings.accept(
            FindingKind.SUPPORT_UNKNOWN_IN_STAGE.at(
                stage.place(StageSheet.SUPPORT_ACTIVE),
                "a support is in place, but run " + id + " has none",
                "name the support on the sheet Wall runs"));
      }
    }
    if (supported && !active && !stages.isEmpty()) {
      findings.accept(
          FindingKind.SUPPORT_NOT_IN_PLACE.at(
              run.place(WallSheet.SUPPORT),
              "the support of run " + id + " is in place in no stage",
              "answer Yes in the stages in which it acts"));
    }
    book.first(StageSheet.SUPPORTS, StageSheet.SUPPORT_ID, run.find(WallSheet.SUPPORT))
        .ifPresent(support -> level(run, support, stages, findings));
  }

  private static void level(Row run, Row support, List<Row> stages, Consumer<Finding> findings) {
    Optional<Double> level = support.si(StageSheet.LEVEL);
    Optional<Double> cutOff = run.si(WallSheet.CUT_OFF);
    if (level.isEmpty()) {
      return;
    }
    if (cutOff.isPresent() && level.get() > cutOff.get() + CAPPING_BEAM) {
      wrong(support, "the support is more than 1 m above cut-off level", findings);
      return;
    }
    for (Row stage : stages) {
      Optional<Double> excavation = stage.si(StageSheet.EXCAVATION);
      if (stage.effective(StageSheet.SUPPORT_ACTIVE).orElse(false)
          && excavation.isPresent()
          && excavation.get() > level.get()) {
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
    if (level == (kind.get() == SupportKind.ANCHOR)) {
      findings.accept(
          FindingKind.PROP_INCLINED.at(
              support.place(StageSheet.INCLINATION),
              level ? "the anchor is level" : "the prop is inclined",
              "anchors usually dip 10° to 45°, props are usually level"));
    }
  }
}
