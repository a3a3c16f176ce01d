package pilefolio.checks.support;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pilefolio.checks.CheckResult;
import pilefolio.checks.From;
import pilefolio.checks.Job;
import pilefolio.checks.situation.AnchorFreeLength;
import pilefolio.model.GroundAnchor;
import pilefolio.model.Support;
import pilefolio.trace.Calculation;

/** Free length of ground anchors, and the place of their bond length in the ground. */
final class AnchorFreeLengthCheck extends SupportCheck {
  AnchorFreeLengthCheck() {
    super(
        "anchor-free-length",
        "Free length of an anchor",
        AnchorFreeLength.SHEET,
        AnchorSheets.PLACE);
  }

  @Override
  List<CheckResult> examine(Job job, Support support) {
    Optional<GroundAnchor> member = members(job).anchor(support);
    if (member.isEmpty()) {
      return List.of();
    }
    List<CheckResult> results = new ArrayList<>();
    Anchor anchor = new Anchor(job, support, member.get());
    for (AnchorFreeLength one : AnchorFreeLength.of(job, support, member.get())) {
      results.add(
          answered(
              one.subject(), () -> List.of(one.calculation(), place(anchor, one)), Anchor.OUTSIDE));
    }
    return results;
  }

  private static Calculation place(Anchor anchor, AnchorFreeLength free) {
    return AnchorSheets.PLACE
        .bind()
        .set("z_G", From.cell(free.run().levels().retained()))
        .set("z_A", From.cell(anchor.support().level()))
        .set("i", From.cell(anchor.support().inclination()))
        .set("L_f", anchor.freeLength())
        .set("L_b", anchor.bondLength())
        .set("s", From.cell(anchor.support().spacing()))
        .calculate();
  }
}
