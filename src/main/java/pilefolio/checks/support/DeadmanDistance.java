package pilefolio.checks.support;

import java.util.List;
import java.util.OptionalDouble;
import pilefolio.checks.CheckResult;
import pilefolio.checks.From;
import pilefolio.checks.Job;
import pilefolio.checks.RunCheck.MissingInput;
import pilefolio.checks.stability.WallSolutions;
import pilefolio.model.Support;
import pilefolio.model.WallRun;
import pilefolio.trace.Calculation;

/** Distance of an anchor block from the wall: their wedges do not meet. */
final class DeadmanDistance extends SupportCheck {
  DeadmanDistance() {
    super("deadman-distance", "Distance of an anchor block from the wall", BlockSheets.DISTANCE);
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
                    demand -> List.of(calculate(job, AnchorBlocks.of(job, support, block, demand))),
                    Anchor.OUTSIDE))
        .orElse(List.of());
  }

  private static Calculation calculate(Job job, AnchorBlocks block) {
    WallRun run = block.situation().run();
    OptionalDouble toe = WallSolutions.toe(job, run);
    if (toe.isEmpty()) {
      throw new MissingInput("The toe level of the wall is not known.");
    }
    double ground = run.levels().retained().si();
    double lowest = Math.min(toe.getAsDouble(), block.foot());
    return BlockSheets.DISTANCE
        .bind()
        .set("z_W", From.layout(ground - toe.getAsDouble(), "toe of the wall"))
        .set(
            "z_b",
            From.layout(
                block.member().top().si() + block.member().height().si(),
                "top and height of the block"))
        .set(
            "φ",
            From.layout(
                BlockGround.friction(block.situation(), ground, lowest),
                "least of the layers down to the toe"))
        .set("x", From.cell(block.member().distance()))
        .calculate();
  }
}
