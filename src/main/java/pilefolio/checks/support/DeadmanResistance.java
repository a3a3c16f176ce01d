package pilefolio.checks.support;

import java.util.List;
import pilefolio.checks.CheckResult;
import pilefolio.checks.From;
import pilefolio.checks.Job;
import pilefolio.model.Stage;
import pilefolio.model.Support;
import pilefolio.trace.Calculation;
import pilefolio.trace.Given;

/** Resistance of the block or buried wall to which ties are anchored. */
final class DeadmanResistance extends SupportCheck {
  DeadmanResistance() {
    super("deadman-resistance", "Resistance of an anchor block", BlockSheets.RESISTANCE);
  }

  @Override
  List<CheckResult> examine(Job job, Support support) {
    return members(job)
        .block(support)
        .map(
            block ->
                eachCombination(
                    job,
                    support,
                    demand ->
                        List.of(
                            calculate(job, AnchorBlocks.of(job, support, block, demand), demand)),
                    Anchor.OUTSIDE))
        .orElse(List.of());
  }

  private static Calculation calculate(Job job, AnchorBlocks block, Demand demand) {
    BlockGround ground = BlockGround.of(block.situation(), block.foot());
    Stage stage = block.situation().stage();
    Given spacing = From.cell(block.support().spacing());
    return BlockSheets.RESISTANCE
        .bind()
        .set("T", demand.force())
        .set("s", spacing)
        .set(
            "l",
            block
                .member()
                .length()
                .map(From::cell)
                .orElse(From.layout(spacing.si(), "the block is continuous")))
        .set("z_t", From.cell(block.member().top()))
        .set("h", From.cell(block.member().height()))
        .set("γ", From.layout(ground.weight(), "mean down to the foot of the block"))
        .set("φ", From.layout(ground.friction(), "least of the layers before the block"))
        .set(
            "q",
            From.layout(
                stage.permanentSurcharge().si() + stage.variableSurcharge().si(),
                "surcharge of stage " + stage.number()))
        .set("F_R", divisor(job, demand.combination()))
        .calculate();
  }

  private static Given divisor(Job job, String combination) {
    return job.basis().has("anchor.block")
        ? From.factor(job, "anchor.block", combination)
        : From.factor(job, "passive.safety", combination);
  }
}
