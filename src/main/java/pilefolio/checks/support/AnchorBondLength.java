package pilefolio.checks.support;

import java.util.List;
import pilefolio.checks.CheckResult;
import pilefolio.checks.From;
import pilefolio.checks.Job;
import pilefolio.checks.RunCheck.MissingInput;
import pilefolio.model.Support;
import pilefolio.standards.PresumptiveBond;
import pilefolio.trace.Binding;
import pilefolio.trace.CalcSheet;
import pilefolio.trace.Calculation;
import pilefolio.trace.Given;
import pilefolio.trace.Source;
import pilefolio.units.Units;

/** Bond length of ground anchors. */
final class AnchorBondLength extends SupportCheck {
  AnchorBondLength() {
    super(
        "anchor-bond-length",
        "Bond length of an anchor",
        AnchorSheets.BOND_TRANSFER,
        AnchorSheets.BOND_STRESS,
        AnchorSheets.BOND_TRANSFER_EN,
        AnchorSheets.BOND_STRESS_EN,
        AnchorSheets.BOND_TRANSFER_LRFD,
        AnchorSheets.BOND_STRESS_LRFD);
  }

  @Override
  List<CheckResult> examine(Job job, Support support) {
    return members(job)
        .anchor(support)
        .map(
            member -> {
              Anchor anchor = new Anchor(job, support, member);
              return eachCombination(
                  job,
                  support,
                  demand -> List.of(calculate(anchor, demand, anchor.bondLength())),
                  Anchor.OUTSIDE);
            })
        .orElse(List.of());
  }

  /** The sheet for a force and a bond length. */
  static Calculation calculate(Anchor anchor, Demand demand, Given length) {
    PresumptiveBond bond = anchor.bond();
    boolean byStress = anchor.member().bondStress().isPresent();
    Binding binding = sheet(anchor, byStress).bind();
    anchor.bind(binding, demand);
    if (byStress) {
      binding
          .set("d_b", From.cell(anchor.member().bore()))
          .set("τ_u", From.cell(anchor.member().bondStress().get()))
          .set(
              "τ_max",
              From.table(
                  Units.KPA.toSi(bond.high()),
                  AnchorSheets.MANUAL + " Table 7",
                  bond.ground().label()));
    } else {
      binding.set("Q_u", transfer(anchor, bond));
    }
    factors(binding, anchor, demand.combination());
    return binding
        .set("L_b", length)
        .set("L_1", limit(anchor.leastBond(), anchor))
        .set("L_2", limit(anchor.greatestBond(), anchor))
        .calculate();
  }

  private static Given limit(double length, Anchor anchor) {
    return From.table(length, "after " + AnchorSheets.MANUAL, anchor.rock() ? "rock" : "soil");
  }

  private static Given transfer(Anchor anchor, PresumptiveBond bond) {
    if (anchor.member().loadTransfer().isPresent()) {
      return From.cell(anchor.member().loadTransfer().get());
    }
    if (bond.transfer() == 0) {
      throw new MissingInput(
          "The tables have no load transfer for this ground; the workbook must give the bond"
              + " stress.");
    }
    return new Given(
        Units.KN_M.toSi(bond.transfer()),
        new Source.TableRow(AnchorSheets.MANUAL + " " + bond.table(), bond.ground().label()));
  }

  private static CalcSheet sheet(Anchor anchor, boolean byStress) {
    return switch (anchor.format()) {
      case ALLOWABLE_STRESS -> byStress ? AnchorSheets.BOND_STRESS : AnchorSheets.BOND_TRANSFER;
      case PARTIAL_FACTORS ->
          byStress ? AnchorSheets.BOND_STRESS_EN : AnchorSheets.BOND_TRANSFER_EN;
      case LOAD_AND_RESISTANCE ->
          byStress ? AnchorSheets.BOND_STRESS_LRFD : AnchorSheets.BOND_TRANSFER_LRFD;
    };
  }

  private static void factors(Binding binding, Anchor anchor, String combination) {
    Job job = anchor.job();
    switch (anchor.format()) {
      case ALLOWABLE_STRESS ->
          binding.set(
              "F_b",
              anchor.rock()
                  ? From.factor(job, "anchor.bond.rock", combination)
                  : From.factor(job, "anchor.bond.soil", combination));
      case PARTIAL_FACTORS ->
          binding
              .set("γ_a", From.factor(job, "anchor.resistance", combination))
              .set("γ_m", From.factor(job, "anchor.model", combination));
      case LOAD_AND_RESISTANCE ->
          binding.set(
              "φ_b",
              switch (anchor.bond().medium()) {
                case COHESIONLESS -> From.factor(job, "anchor.pullout.sand", combination);
                case COHESIVE -> From.factor(job, "anchor.pullout.clay", combination);
                case ROCK -> From.factor(job, "anchor.pullout.rock", combination);
              });
    }
  }
}
