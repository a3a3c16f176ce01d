package pilefolio.checks;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import pilefolio.analysis.apparent.Idealisation;
import pilefolio.analysis.sequence.Crew;
import pilefolio.analysis.sequence.FreshPileRule;
import pilefolio.analysis.sequence.SequenceJob;
import pilefolio.analysis.sequence.SequenceRules;
import pilefolio.analysis.sequence.SiteCalendar;
import pilefolio.analysis.sequence.StrengthWindow;
import pilefolio.analysis.sequence.WallPile;
import pilefolio.checks.apparent.BeamCaseSolver;
import pilefolio.checks.geometry.JointOpenings;
import pilefolio.checks.ground.PressureCaseSolver;
import pilefolio.checks.sequence.ProgrammeFound;
import pilefolio.checks.stability.StabilityCaseSolver;
import pilefolio.checks.stability.StagedCaseSolver;
import pilefolio.checks.stability.WallCaseSolver;
import pilefolio.trace.Calculation;
import pilefolio.trace.Given;
import pilefolio.trace.Source;

/**
 * For checks whose sheet verifies a numerical method: states the problem, solves it, binds the
 * sheet.
 */
final class CaseSolvers {
  private static final Map<String, Function<JsonNode, Calculation>> BY_CHECK =
      new LinkedHashMap<>();

  static {
    BY_CHECK.put("joint-opening", CaseSolvers::jointOpening);
    BY_CHECK.put("programme", CaseSolvers::programme);
    BY_CHECK.put("pressure-active", PressureCaseSolver::active);
    BY_CHECK.put("pressure-passive", PressureCaseSolver::passive);
    BY_CHECK.put("embedment-cantilever", WallCaseSolver::fourForces);
    BY_CHECK.put("embedment-cantilever-simplified", WallCaseSolver::simplified);
    BY_CHECK.put("embedment-free-earth", WallCaseSolver::freeEarth);
    BY_CHECK.put("embedment-fixed-earth", WallCaseSolver::fixedEarth);
    BY_CHECK.put("embedment-lowest-span", WallCaseSolver::lowestSpan);
    BY_CHECK.put("passive-reserve", WallCaseSolver::reserve);
    BY_CHECK.put("hydraulic-heave", StabilityCaseSolver::heave);
    BY_CHECK.put("piping", StabilityCaseSolver::piping);
    BY_CHECK.put("overall-stability", StabilityCaseSolver::slip);
    BY_CHECK.put("wall-effects", WallCaseSolver::effects);
    BY_CHECK.put("support-force", WallCaseSolver::supportForce);
    BY_CHECK.put("staged-equilibrium", StagedCaseSolver::equilibrium);
    BY_CHECK.put("staged-effects", StagedCaseSolver::effects);
  }

  static {
    BY_CHECK.put("apparent-hinge", p -> BeamCaseSolver.solve(p, Idealisation.HINGE));
    BY_CHECK.put("apparent-tributary", p -> BeamCaseSolver.solve(p, Idealisation.TRIBUTARY));
    BY_CHECK.put("apparent-continuous", p -> BeamCaseSolver.solve(p, Idealisation.CONTINUOUS));
  }

  private CaseSolvers() {}

  private static Calculation jointOpening(JsonNode p) {
    return JointOpenings.solve(
        new JointOpenings.Problem(
            given(p, "D_p"),
            given(p, "D_s"),
            given(p, "s"),
            given(p, "e_0"),
            given(p, "n"),
            given(p, "k_σ"),
            given(p, "z"),
            given(p, "N"),
            given(p, "P_lim")));
  }

  /** A straight wall worked on every day, so many piles a day. */
  private static Calculation programme(JsonNode p) {
    double spacing = CaseFile.si(p.path("spacing").asText());
    double diameter = CaseFile.si(p.path("diameter").asText());
    int primaries = p.path("primaries").asInt();
    double day = 86400;
    StrengthWindow window =
        new StrengthWindow(
            CaseFile.si(p.path("from").asText()) / day, CaseFile.si(p.path("to").asText()) / day);
    List<WallPile> piles = new ArrayList<>();
    for (int i = 0; i < 2 * primaries - 1; i++) {
      piles.add(
          i % 2 == 0
              ? WallPile.primary("P" + i, "A", spacing * i, 0, diameter, 1, 5, window)
              : WallPile.secondary(
                  "S" + i,
                  "A",
                  spacing * i,
                  0,
                  diameter,
                  1,
                  5,
                  List.of("P" + (i - 1), "P" + (i + 1))));
    }
    return ProgrammeFound.solve(
            new SequenceJob(
                piles,
                List.of(new Crew("rig", p.path("perDay").asInt(), Set.of())),
                new SiteCalendar(
                    LocalDate.of(2027, 3, 1), EnumSet.allOf(DayOfWeek.class), Set.of()),
                new SequenceRules(
                    new FreshPileRule(p.path("k").asDouble(), 0, 24),
                    10,
                    0,
                    Double.POSITIVE_INFINITY,
                    p.path("days").asInt() - 1)))
        .get(0);
  }

  private static Given given(JsonNode problem, String name) {
    return new Given(CaseFile.si(problem.path(name).asText()), new Source.Layout("case"));
  }

  static Calculation solve(String checkId, JsonNode problem) {
    Function<JsonNode, Calculation> solver = BY_CHECK.get(checkId);
    if (solver == null) {
      throw new IllegalArgumentException("no case solver for " + checkId);
    }
    return solver.apply(problem);
  }
}
