package pilefolio.checks.support;

import pilefolio.checks.Job;
import pilefolio.checks.RunCheck.MissingInput;
import pilefolio.checks.situation.DesignSituation;
import pilefolio.model.AnchorBlock;
import pilefolio.model.Support;
import pilefolio.model.WallRun;

/**
 * The anchor blocks of a support in the situation that loads them most.
 *
 * @param support the support
 * @param member the blocks
 * @param situation the situation
 */
record AnchorBlocks(Support support, AnchorBlock member, DesignSituation situation) {

  /** The blocks under a force. */
  static AnchorBlocks of(Job job, Support support, AnchorBlock member, Demand demand) {
    WallRun run =
        job.submission().runs().stream()
            .filter(r -> r.id().equals(demand.found().run()))
            .findFirst()
            .orElseThrow();
    return DesignSituation.of(job.submission(), job.basis(), run).stream()
        .filter(s -> s.combination().id().equals(demand.combination()))
        .filter(s -> s.stage().number() == demand.found().stage())
        .map(s -> new AnchorBlocks(support, member, s))
        .findFirst()
        .orElseThrow(() -> new MissingInput("The stage that loads the block is not known."));
  }

  /** Level of the foot of the block, m. */
  double foot() {
    return situation.run().levels().retained().si() - member.top().si() - member.height().si();
  }
}
