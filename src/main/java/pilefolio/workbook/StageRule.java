package pilefolio.workbook;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import pilefolio.findings.Finding;
import pilefolio.model.Value;

/** Stages are counted, go down, and have water where water can be. */
final class StageRule implements Rule {
  @Override
  public void check(Book book, KnownNames names, Consumer<Finding> findings) {
    for (Row run : book.rows(WallSheet.RUNS)) {
      run.find(WallSheet.RUN_ID).ifPresent(id -> run(run, id, book, findings));
    }
  }

  private static void run(Row run, String id, Book book, Consumer<Finding> findings) {
    List<Row> stages = book.where(StageSheet.STAGES, StageSheet.RUN, id);
    if (stages.isEmpty()) {
      findings.accept(
          FindingKind.RUN_WITHOUT_STAGES.at(
              run.place(WallSheet.RUN_ID),
              "run " + id + " has no stages",
              "add at least one on the sheet Stages"));
      return;
    }
    Optional<Double> base =
        book.first(GroundSheet.PROFILES, GroundSheet.PROFILE_ID, run.find(WallSheet.PROFILE))
            .flatMap(row -> row.si(GroundSheet.BASE));
    int wanted = 1;
    double before = Double.POSITIVE_INFINITY;
    for (Row stage : stages) {
      number(stage, wanted, findings);
      wanted++;
      excavation(run, stage, before, findings);
      before = stage.si(StageSheet.EXCAVATION).orElse(before);
      water(run, stage, base, findings);
    }
  }

  private static void number(Row stage, int wanted, Consumer<Finding> findings) {
    stage
        .find(StageSheet.NUMBER)
        .map(Value::si)
        .filter(number -> number != wanted)
        .ifPresent(
            number ->
                findings.accept(
                    FindingKind.STAGES_NOT_COUNTED.at(
                        stage.place(StageSheet.NUMBER),
                        "stage " + Math.round(number) + " stands where " + wanted + " is due",
                        "number the stages of each run 1, 2, 3 in the order of the works")));
  }

  private static void excavation(Row run, Row stage, double before, Consumer<Finding> findings) {
    Optional<Double> level = stage.si(StageSheet.EXCAVATION);
    if (level.isEmpty()) {
      return;
    }
    if (level.get() > before) {
      findings.accept(
          FindingKind.EXCAVATION_RISES.at(
              stage.place(StageSheet.EXCAVATION),
              "the excavation is higher than in the stage before",
              "this is right only if the ground is filled up again"));
    }
    run.si(WallSheet.RETAINED)
        .filter(retained -> level.get() > retained)
        .ifPresent(
            retained ->
                findings.accept(
                    FindingKind.EXCAVATION_ABOVE_GROUND.at(
                        stage.place(StageSheet.EXCAVATION),
                        "the excavation level is above the ground behind the wall",
                        "give a level, not a depth")));
  }

  private static void water(Row run, Row stage, Optional<Double> base, Consumer<Finding> findings) {
    Optional<Double> retained = run.si(WallSheet.RETAINED);
    Optional<Double> behind = stage.si(StageSheet.WATER_BEHIND);
    Optional<Double> front = stage.si(StageSheet.WATER_FRONT);
    for (NumberColumn column : List.of(StageSheet.WATER_BEHIND, StageSheet.WATER_FRONT)) {
      Optional<Double> level = stage.si(column);
      boolean above =
          level.isPresent()
              && retained.isPresent()
              && level.get() > retained.get() + GroundRule.FLOOD;
      boolean below = level.isPresent() && base.isPresent() && level.get() < base.get();
      if (above || below) {
        findings.accept(
            FindingKind.WATER_LEVEL_ODD.at(
                stage.place(column),
                above
                    ? "the water stands more than 1 m above the ground behind the wall"
                    : "the water stands below the known base of the ground",
                "give a level, not a depth; leave it empty if there is no water"));
      }
    }
    if (behind.isPresent() && front.isPresent() && front.get() > behind.get()) {
      findings.accept(
          FindingKind.WATER_HIGHER_IN_FRONT.at(
              stage.place(StageSheet.WATER_FRONT),
              "the water stands higher in front of the wall than behind",
              "make sure that the two were not taken for each other"));
    }
  }
}
