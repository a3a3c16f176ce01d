package pilefolio.checks.structure;

import java.util.List;
import pilefolio.checks.Job;
import pilefolio.model.WallRun;
import pilefolio.trace.Binding;
import pilefolio.trace.CalcSheet;
import pilefolio.trace.Calculation;

/** The primary as an arch between its secondaries, against the usual limits of weak mixes. */
final class PrimaryArch extends PrimaryCheck {

  @Override
  public String id() {
    return "primary-arch";
  }

  @Override
  public String title() {
    return "Primary between secondaries";
  }

  @Override
  public List<CalcSheet> sheets() {
    return List.of(PrimarySheets.PRACTICE);
  }

  @Override
  boolean applies(Job job, WallRun run) {
    return true;
  }

  @Override
  Calculation calculation(Job job, WallRun run, Effects effects) {
    Binding binding = PrimarySheets.PRACTICE.bind();
    PrimarySpan.bind(binding, job, run, effects);
    return binding.calculate();
  }
}
