package pilefolio.checks.structure;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import pilefolio.checks.CheckResult;
import pilefolio.checks.From;
import pilefolio.checks.Job;
import pilefolio.checks.Subject;
import pilefolio.model.Lagging;
import pilefolio.model.LaggingGround;
import pilefolio.model.WallType;
import pilefolio.standards.LaggingTable;
import pilefolio.trace.CalcSheet;

/** The thickness of timber boards against the usual table. */
final class LaggingThickness extends LaggingCheck {

  LaggingThickness() {
    super(WallType.SOLDIER_TIMBER);
  }

  @Override
  public String id() {
    return "lagging-thickness";
  }

  @Override
  public String title() {
    return "Thickness of timber lagging";
  }

  @Override
  public List<CalcSheet> sheets() {
    return List.of(LaggingSheets.THICKNESS);
  }

  @Override
  List<CheckResult> examine(Job job, WallBeam beam, Lagging lagging) {
    if (lagging.ground().isEmpty()) {
      return List.of(
          notChecked(beam.run(), "the workbook does not give the class of ground for the table"));
    }
    double lowest =
        job.submission().stages(beam.run()).stream()
            .map(stage -> stage.excavation().si())
            .min(Comparator.naturalOrder())
            .orElseThrow();
    double depth = beam.run().levels().retained().si() - lowest;
    double span = beam.spacing().si() - beam.section().width();
    Optional<LaggingTable.Entry> entry =
        LaggingTable.table().at(ground(lagging.ground().get()), depth, span);
    if (entry.isEmpty()) {
      return List.of(
          notChecked(
              beam.run(), "the table has no thickness for this ground, depth and clear span"));
    }
    return List.of(
        CheckResult.of(
            this,
            Subject.run(beam.run().id()),
            span(LaggingSheets.THICKNESS.bind(), beam)
                .set(
                    "t_t",
                    From.table(
                        entry.get().thickness(),
                        LaggingTable.table().document(),
                        lagging.ground().get().label().toLowerCase(java.util.Locale.ROOT)
                            + " ground, "
                            + entry.get().row()))
                .set("t", From.cell(lagging.thickness()))
                .calculate()));
  }

  private static LaggingTable.Ground ground(LaggingGround ground) {
    return switch (ground) {
      case COMPETENT -> LaggingTable.Ground.COMPETENT;
      case DIFFICULT -> LaggingTable.Ground.DIFFICULT;
      case DANGEROUS -> LaggingTable.Ground.DANGEROUS;
    };
  }
}
