package pilefolio.checks.sequence;

import static pilefolio.units.Units.D;
import static pilefolio.units.Units.MPA;

import java.util.List;
import pilefolio.checks.CheckResult;
import pilefolio.checks.Family;
import pilefolio.checks.From;
import pilefolio.checks.Job;
import pilefolio.checks.RunCheck;
import pilefolio.checks.Subject;
import pilefolio.model.Pile;
import pilefolio.model.PileLayout;
import pilefolio.model.WallRun;
import pilefolio.trace.Binding;
import pilefolio.trace.Binding.Row;
import pilefolio.trace.CalcSheet;
import pilefolio.trace.CalcTable;
import pilefolio.trace.Choice;
import pilefolio.trace.Reference;

/** Strength of both primaries of every secondary at its planned start. */
public final class StrengthAtCutting extends RunCheck {
  private static final CalcSheet EUROPEAN =
      finish(
          Hardening.european("Strength of the primaries when they are cut, EN 1992-1-1"),
          "f_28·exp(s_c·(1 − √(28[d]/((t_y − t_r)·k_T))))",
          "f_28·exp(s_c·(1 − √(28[d]/((t_o − t_r)·k_T))))",
          Hardening.EN);

  private static final CalcSheet AMERICAN =
      finish(
          Hardening.american("Strength of the primaries when they are cut, ACI 209"),
          "f_28·(t_y − t_r)·k_T/(a_c + b_c·(t_y − t_r)·k_T)",
          "f_28·(t_o − t_r)·k_T/(a_c + b_c·(t_o − t_r)·k_T)",
          Hardening.ACI);

  /** The check. */
  public StrengthAtCutting() {
    super(
        "strength-at-cutting",
        "Strength of the primaries when they are cut",
        Family.SEQUENCE,
        EUROPEAN,
        AMERICAN);
  }

  private static CalcSheet finish(
      CalcSheet sheet, String younger, String older, Reference reference) {
    return sheet
        .table(
            CalcTable.of("secondaries", "Primaries at the planned start of each secondary", "pile")
                .given("t_y", D, "age of the younger primary")
                .given("t_o", D, "age of the older primary")
                .choose(
                    "f_y",
                    MPA,
                    "strength of the younger",
                    reference,
                    Choice.when("t_y ≤ t_r", "0").otherwise(younger))
                .choose(
                    "f_o",
                    MPA,
                    "strength of the older",
                    reference,
                    Choice.when("t_o ≤ t_r", "0").otherwise(older))
                .smallest("f_min", "f_y", "least strength")
                .largest("f_max", "f_o", "greatest strength"))
        .require("f_min ≥ f_s", "every primary stands beside the drill", Reference.PRACTICE)
        .require("f_max ≤ f_c", "every primary can be cut", Reference.PRACTICE);
  }

  @Override
  protected List<CheckResult> check(Job job, WallRun run) {
    Programmes programmes = Programmes.of(job);
    programmes.needed();
    CalcSheet sheet = Hardening.american(job) ? AMERICAN : EUROPEAN;
    Binding binding = Hardening.mix(sheet.bind(), job, run);
    PileLayout layout = run.layout();
    for (Pile secondary : layout.secondaries()) {
      double[] ages =
          layout.neighbours(secondary).stream()
              .mapToDouble(p -> programmes.age(p.mark(), secondary.mark()))
              .sorted()
              .toArray();
      binding.row(
          "secondaries",
          Row.of(secondary.mark())
              .set("t_y", From.layout(D.toSi(ages[0]), "programme"))
              .set("t_o", From.layout(D.toSi(ages[ages.length - 1]), "programme")));
    }
    return List.of(
        CheckResult.of(this, Subject.run(run.id()).piles("all secondaries"), binding.calculate()));
  }
}
