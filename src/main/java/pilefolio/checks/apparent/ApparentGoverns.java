package pilefolio.checks.apparent;

import static pilefolio.units.Units.KNM_M;
import static pilefolio.units.Units.KN_M;
import static pilefolio.units.Units.ONE;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import pilefolio.analysis.apparent.Idealisation;
import pilefolio.analysis.apparent.SupportReactions;
import pilefolio.checks.Job;
import pilefolio.checks.situation.ApparentDesign;
import pilefolio.checks.situation.DesignSituation;
import pilefolio.checks.situation.StagedDesign;
import pilefolio.checks.situation.StagedSolution;
import pilefolio.checks.situation.StagedStep;
import pilefolio.model.ApparentBeam;
import pilefolio.model.Support;
import pilefolio.trace.Binding;
import pilefolio.trace.Binding.Row;
import pilefolio.trace.CalcSheet;
import pilefolio.trace.CalcTable;
import pilefolio.trace.Calculation;
import pilefolio.trace.Choice;
import pilefolio.trace.Reference;
import pilefolio.trace.Source;

/** The staged analysis beside the envelope: which of the two governs each support and the wall. */
public final class ApparentGoverns extends ApparentCheck {
  static final String SUPPORTS = "supports";

  private static final Map<String, CalcSheet> SHEETS = make();

  /** The check. */
  public ApparentGoverns() {
    super("apparent-governs", "Envelope beside staged analysis", List.copyOf(SHEETS.values()));
  }

  @Override
  public boolean derivation() {
    return true;
  }

  private static Map<String, CalcSheet> make() {
    Map<String, CalcSheet> sheets = new LinkedHashMap<>();
    for (ApparentBeam beam : ApparentBeam.values()) {
      for (boolean staged : new boolean[] {true, false}) {
        sheets.put(key(beam, staged), sheet(beam, staged));
      }
    }
    return sheets;
  }

  private static String key(ApparentBeam beam, boolean staged) {
    return beam + (staged ? " staged" : "");
  }

  private static CalcSheet sheet(ApparentBeam beam, boolean staged) {
    String taken =
        switch (beam) {
          case HINGES -> "T_h";
          case TRIBUTARY -> "T_t";
          case CONTINUOUS -> "T_c";
          case GREATEST -> "max(T_h, T_t, T_c)";
        };
    String moment =
        switch (beam) {
          case HINGES -> "M_h";
          case TRIBUTARY -> "M_t";
          case CONTINUOUS -> "M_c";
          case GREATEST -> "max(M_h, M_t, M_c)";
        };
    CalcTable table =
        CalcTable.of(SUPPORTS, "Horizontal support forces", "support")
            .given("T_h", KN_M, "hinges")
            .given("T_t", KN_M, "tributary areas")
            .given("T_c", KN_M, "continuous beam")
            .line("T_a = " + taken, KN_M, "envelope, as chosen", Reference.DERIVED)
            .line(
                "x = max(T_h, T_t, T_c)/T_a",
                ONE,
                "greatest of the three over the one chosen",
                Reference.DERIVED);
    if (staged) {
      table =
          table
              .given("T_s", KN_M, "staged analysis")
              .choose(
                  "T_g",
                  KN_M,
                  "governs",
                  Reference.DERIVED,
                  Choice.when("T_a ≥ T_s", "T_a").otherwise("T_s"));
    }
    CalcSheet sheet =
        CalcSheet.named(
                (staged ? "Envelope beside staged analysis, " : "Envelope alone, ")
                    + beam.label().toLowerCase(java.util.Locale.ROOT))
            .given("M_h", KNM_M, "moment, hinges")
            .given("M_t", KNM_M, "moment, tributary areas")
            .given("M_c", KNM_M, "moment, continuous beam")
            .note(
                staged
                    ? "Two independent routes; supports and wall are designed for the greater."
                    : "No staged analysis of this stage is at hand, so the envelope stands alone.")
            .table(table)
            .line("M_a = " + moment, KNM_M, "moment of the envelope, as chosen", Reference.DERIVED)
            .line(
                "x_M = max(M_h, M_t, M_c)/M_a",
                ONE,
                "greatest of the three over the one chosen",
                Reference.DERIVED);
    return staged
        ? sheet
            .given("M_s", KNM_M, "moment of the staged analysis")
            .choose(
                "M_g",
                KNM_M,
                "moment that governs",
                Reference.DERIVED,
                Choice.when("M_a ≥ M_s", "M_a").otherwise("M_s"))
        : sheet;
  }

  @Override
  Calculation calculate(Job job, ApparentDesign design) {
    DesignSituation s = design.situation();
    Map<Idealisation, SupportReactions> routes = design.solved().orElseThrow().routes();
    List<StagedStep> steps = steps(job, s);
    Binding b = bind(design.beams(), !steps.isEmpty(), routes);
    double factor = effectFactor(job, s);
    if (!steps.isEmpty()) {
      double moment =
          steps.stream()
              .mapToDouble(x -> Math.abs(x.state().governingMoment().value()))
              .max()
              .orElseThrow();
      b.set("M_s", KILO * factor * moment, staged());
    }
    List<Support> supports = s.supports();
    for (int i = 0; i < supports.size(); i++) {
      Row row = row(supports.get(i).id(), routes, i);
      if (!steps.isEmpty()) {
        row = row.set("T_s", KILO * factor * force(steps, supports.get(i).id()), staged());
      }
      b.row(SUPPORTS, row);
    }
    return b.calculate();
  }

  private static Source staged() {
    return new Source.Method("staged analysis, this stage");
  }

  static Binding bind(
      ApparentBeam beam, boolean staged, Map<Idealisation, SupportReactions> routes) {
    Binding b = SHEETS.get(key(beam, staged)).bind();
    return b.set("M_h", moment(routes, Idealisation.HINGE))
        .set("M_t", moment(routes, Idealisation.TRIBUTARY))
        .set("M_c", moment(routes, Idealisation.CONTINUOUS));
  }

  private static pilefolio.trace.Given moment(
      Map<Idealisation, SupportReactions> routes, Idealisation i) {
    return new pilefolio.trace.Given(KILO * routes.get(i).greatestMoment(), line(i, "M_E"));
  }

  static Row row(String support, Map<Idealisation, SupportReactions> routes, int i) {
    return Row.of(support)
        .set("T_h", force(routes, Idealisation.HINGE, i), line(Idealisation.HINGE, "T"))
        .set("T_t", force(routes, Idealisation.TRIBUTARY, i), line(Idealisation.TRIBUTARY, "T"))
        .set("T_c", force(routes, Idealisation.CONTINUOUS, i), line(Idealisation.CONTINUOUS, "T"));
  }

  private static double force(
      Map<Idealisation, SupportReactions> routes, Idealisation idealisation, int i) {
    return KILO * routes.get(idealisation).reactions().get(i);
  }

  private static Source line(Idealisation i, String symbol) {
    ApparentBeams check = ApparentBeams.of(i);
    return new Source.Line(check.id(), check.title(), symbol);
  }

  /** Steps of the staged analysis in a situation; none if it was not made or has failed there. */
  private static List<StagedStep> steps(Job job, DesignSituation s) {
    return StagedDesign.of(job, s.run()).solutions().stream()
        .filter(x -> x.combination().id().equals(s.combination().id()))
        .flatMap(x -> x.complete().stream())
        .filter(x -> x.stage().number() == s.stage().number())
        .toList();
  }

  private static double effectFactor(Job job, DesignSituation s) {
    return StagedDesign.of(job, s.run()).solutions().stream()
        .filter(x -> x.combination().id().equals(s.combination().id()))
        .mapToDouble(StagedSolution::effectFactor)
        .findFirst()
        .orElse(1);
  }

  private static double force(List<StagedStep> steps, String support) {
    OptionalDouble force =
        steps.stream()
            .flatMap(x -> x.state().supports().stream())
            .filter(f -> f.support().id().equals(support))
            .mapToDouble(pilefolio.analysis.staged.SupportForce::force)
            .max();
    return force.orElse(0);
  }
}
