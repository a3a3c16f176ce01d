package pilefolio.checks.movement;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pilefolio.analysis.movement.BuildingPart;
import pilefolio.analysis.movement.DamageCategory;
import pilefolio.analysis.movement.DeepBeam.Bending;
import pilefolio.analysis.movement.TroughShape;
import pilefolio.checks.Check;
import pilefolio.checks.CheckResult;
import pilefolio.checks.Family;
import pilefolio.checks.From;
import pilefolio.checks.Job;
import pilefolio.checks.Subject;
import pilefolio.checks.movement.NeighbourMovement.AtStage;
import pilefolio.checks.movement.NeighbourMovement.Building;
import pilefolio.model.AllowedDamage;
import pilefolio.model.Neighbour;
import pilefolio.trace.Binding;
import pilefolio.trace.CalcSheet;
import pilefolio.trace.Calculation;
import pilefolio.trace.Given;

/** Category of damage of each building beside the works against the greatest one allowed. */
public final class NeighbourDamage implements Check {

  @Override
  public String id() {
    return "neighbour-damage";
  }

  @Override
  public String title() {
    return "Damage to buildings beside the works";
  }

  @Override
  public Family family() {
    return Family.MOVEMENT;
  }

  @Override
  public List<CalcSheet> sheets() {
    return List.of(
        TroughFormula.all(
            DamageSheets.FIRST_LOOK,
            DamageSheets.SLOPE,
            DamageSheets.SAGGING,
            DamageSheets.HOGGING));
  }

  @Override
  public List<CheckResult> run(Job job) {
    List<CheckResult> results = new ArrayList<>();
    for (NeighbourMovement m : NeighbourMovement.all(job)) {
      if (m.neighbour().building()) {
        results.add(result(m));
      }
    }
    return results;
  }

  private CheckResult result(NeighbourMovement m) {
    Neighbour n = m.neighbour();
    Subject subject = Subject.run(m.run().id()).piles(n.name());
    if (!m.known()) {
      return CheckResult.notChecked(this, subject, m.missing());
    }
    Optional<Building> building = m.building();
    if (building.isEmpty()) {
      return CheckResult.notChecked(
          this,
          subject,
          "Settlement or slope is too large for the first look, and the workbook does not give the"
              + " extent and the height of "
              + n.name()
              + " (Neighbours, Extent and Height).");
    }
    Building b = building.get();
    Subject at = subject.stage("stage " + b.at().stage().stage().number());
    if (b.screened()) {
      return CheckResult.of(this, at, firstLook(m, b.at()));
    }
    if (n.form().allowed().isEmpty()) {
      return CheckResult.notChecked(
          this,
          subject,
          "The workbook does not give the greatest category of damage allowed at "
              + n.name()
              + " (Neighbours, Damage allowed).");
    }
    return CheckResult.of(this, at, calculate(m, b));
  }

  private static Calculation firstLook(NeighbourMovement m, AtStage at) {
    return ground(DamageSheets.FIRST_LOOK.get(at.trough().shape()), m, at)
        .set("d_n", From.cell(m.neighbour().distance()))
        .calculate();
  }

  static List<Calculation> calculate(NeighbourMovement m, Building b) {
    Neighbour n = m.neighbour();
    TroughShape shape = b.at().trough().shape();
    Given limit = limit(n.form().allowed().orElseThrow());
    List<Calculation> calculations = new ArrayList<>();
    calculations.add(
        ground(DamageSheets.SLOPE.get(shape), m, b.at())
            .set("d_n", From.cell(n.distance()))
            .set("B", From.cell(n.form().extent().orElseThrow()))
            .set("ε_lim", limit)
            .calculate());
    for (BuildingPart part : b.parts()) {
      boolean sagging = part.bending() == Bending.SAGGING;
      calculations.add(
          ground((sagging ? DamageSheets.SAGGING : DamageSheets.HOGGING).get(shape), m, b.at())
              .set("x_1", end(n, part.from(), n.distance().si()))
              .set("x_2", end(n, part.to(), n.farSide()))
              .set("x_Δ", From.method(part.place(), "search along the part"))
              .set("H_b", From.cell(n.form().height().orElseThrow()))
              .set("e", From.cell(n.form().stiffnessRatio()))
              .set("ε_lim", limit)
              .calculate());
    }
    return calculations;
  }

  private static Given end(Neighbour n, double at, double side) {
    if (at != side) {
      return From.layout(at, "between the bends of the ground, at the middle");
    }
    return at == n.distance().si() ? From.cell(n.distance()) : From.layout(at, "far side");
  }

  private static Given limit(AllowedDamage allowed) {
    DamageCategory category =
        switch (allowed) {
          case NEGLIGIBLE -> DamageCategory.NEGLIGIBLE;
          case VERY_SLIGHT -> DamageCategory.VERY_SLIGHT;
          case SLIGHT -> DamageCategory.SLIGHT;
          case MODERATE -> DamageCategory.MODERATE;
        };
    return From.table(category.limit(), "categories of damage", category.title());
  }

  private static Binding ground(CalcSheet sheet, NeighbourMovement m, AtStage at) {
    return sheet
        .bind()
        .set(
            "H",
            From.layout(
                at.trough().height(), "retained height of stage " + at.stage().stage().number()))
        .set("δ_h", at.stage().soFar(), GroundSettlement.displacement(at.stage()))
        .set("R_v", From.cell(m.run().analysis().settlement().ratio()));
  }
}
