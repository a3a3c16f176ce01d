package pilefolio.checks.movement;

import java.util.ArrayList;
import java.util.List;
import pilefolio.analysis.movement.TroughShape;
import pilefolio.checks.Check;
import pilefolio.checks.CheckResult;
import pilefolio.checks.Family;
import pilefolio.checks.From;
import pilefolio.checks.Job;
import pilefolio.checks.Subject;
import pilefolio.checks.movement.NeighbourMovement.AtStage;
import pilefolio.model.Neighbour;
import pilefolio.trace.Binding;
import pilefolio.trace.Binding.Row;
import pilefolio.trace.CalcSheet;
import pilefolio.trace.Calculation;

/** Settlement of each neighbour against what its owner allows. */
public final class NeighbourSettlement implements Check {

  @Override
  public String id() {
    return "neighbour-settlement";
  }

  @Override
  public String title() {
    return "Settlement of neighbours";
  }

  @Override
  public Family family() {
    return Family.MOVEMENT;
  }

  @Override
  public List<CalcSheet> sheets() {
    return List.of(TroughFormula.all(MovementSheets.NEIGHBOUR));
  }

  @Override
  public List<CheckResult> run(Job job) {
    List<CheckResult> results = new ArrayList<>();
    for (NeighbourMovement m : NeighbourMovement.all(job)) {
      Neighbour n = m.neighbour();
      Subject subject = Subject.run(m.run().id()).piles(n.name());
      if (n.settlementLimit().isEmpty()) {
        // A building may be judged by its damage alone.
        if (!n.building() || n.form().allowed().isEmpty()) {
          results.add(
              CheckResult.notChecked(
                  this,
                  subject,
                  "The workbook does not give the settlement allowed of "
                      + n.name()
                      + " (Neighbours, Settlement limit)."));
        }
      } else if (!m.known()) {
        results.add(CheckResult.notChecked(this, subject, m.missing()));
      } else {
        results.add(CheckResult.of(this, subject, calculate(m)));
      }
    }
    return results;
  }

  static Calculation calculate(NeighbourMovement m) {
    Neighbour n = m.neighbour();
    TroughShape shape = m.worst().trough().shape();
    Binding binding =
        MovementSheets.NEIGHBOUR
            .get(shape)
            .bind()
            .set("d_n", From.cell(n.distance()))
            .set(
                "B",
                n.form()
                    .extent()
                    .map(From::cell)
                    .orElseGet(() -> From.layout(0, "no extent given")))
            .set("R_v", From.cell(m.run().analysis().settlement().ratio()))
            .set("δ_lim", From.cell(n.settlementLimit().orElseThrow()));
    for (AtStage at : m.stages()) {
      binding.row(
          MovementSheets.STAGES,
          Row.of(at.stage().label())
              .set("H", From.layout(at.trough().height(), "ground behind less excavation"))
              .set("δ_h", at.stage().soFar(), GroundSettlement.displacement(at.stage())));
    }
    return binding.calculate();
  }
}
