package pilefolio.submittal.method;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import pilefolio.analysis.sequence.SequenceOutcome;
import pilefolio.checks.sequence.Programmes;
import pilefolio.model.DocumentStatus;
import pilefolio.model.Methods;
import pilefolio.model.Project;
import pilefolio.model.Submission;
import pilefolio.submittal.Answer;
import pilefolio.submittal.Engine;
import pilefolio.submittal.Submittal;
import pilefolio.submittal.calculations.Control;
import pilefolio.submittal.schedule.PileSchedule;
import pilefolio.submittal.schedule.QuantityLine;
import pilefolio.units.Units;

/**
 * Everything the method statement prints, as final texts.
 *
 * @param control document control
 * @param draft true if the document is a draft
 * @param open what the calculations leave open; empty only if every answer is satisfied
 * @param assumptions count of defaults taken, as text
 * @param basis title of the design basis
 * @param references documents of the design basis: reference and use
 * @param calculations the calculations in their order: number and title
 * @param applies what this job has
 * @param runs wall runs
 * @param facts facts of all runs by name, runs with the same text told together
 * @param techniques the techniques in use
 * @param grounds ground profiles in use
 * @param neighbours what stands beside the works
 * @param people named roles
 * @param programme the programme, or an empty list if it was not worked out
 * @param programmeMissing what is missing for a programme, as a sentence, or empty
 * @param piles the pile schedule in the order in which piles are made
 * @param pileUnits units of its columns
 * @param quantities quantities by wall run and kind of pile
 * @param rigs rigs in use
 * @param tools augers and casings in use
 * @param crews crews
 * @param mixes mixes in use
 * @param beams beams in piles
 * @param supply concrete supply
 * @param limits the governing requirement of each check in each wall run, in the order of the
 *     calculations
 * @param monitoring measurements
 * @param methods facts of the method choices
 * @param practice rules of the trade by name; their source is a mark
 * @param marks what the marks stand for: mark and reference
 * @param emergency facts {@code contact} and {@code hospital}
 * @param engine what made the document
 */
public record MethodStatement(
    Control control,
    boolean draft,
    List<OpenPoint> open,
    String assumptions,
    String basis,
    List<List<String>> references,
    List<List<String>> calculations,
    Applies applies,
    List<RunWork> runs,
    Map<String, List<RunFact>> facts,
    List<TechniqueWork> techniques,
    List<Ground> grounds,
    List<Item> neighbours,
    List<Item> people,
    List<ProgrammeSummary> programme,
    String programmeMissing,
    List<List<String>> piles,
    List<String> pileUnits,
    List<Item> quantities,
    List<Item> rigs,
    List<Item> tools,
    List<Item> crews,
    List<Item> mixes,
    List<Item> beams,
    Item supply,
    List<Limit> limits,
    List<Item> monitoring,
    Item methods,
    Map<String, Fact> practice,
    List<List<String>> marks,
    Map<String, Fact> emergency,
    Engine engine) {

  /** Id of the check that prints the programme. */
  static final String PROGRAMME = "programme";

  /** Prepares the content from the answers. */
  public static MethodStatement of(Submittal submittal) {
    Programmes programmes = Programmes.of(submittal.job());
    Submission s = submittal.job().submission();
    FactWriter writer = new FactWriter(submittal);
    List<RunWork> runs = RunWork.all(submittal, writer);
    return new MethodStatement(
        Control.of(s),
        s.project().status() == DocumentStatus.DRAFT,
        OpenPoint.all(submittal),
        String.valueOf(s.assumptions().size()),
        submittal.job().basis().title(),
        submittal.job().basis().references().stream()
            .map(use -> List.of(use.reference().text(), use.use()))
            .toList(),
        calculations(submittal),
        Applies.to(submittal, runs),
        runs,
        RunFact.byName(runs),
        TechniqueWork.all(runs),
        Ground.all(s, writer),
        Surroundings.neighbours(s, writer),
        Surroundings.people(s, writer),
        programmes.outcome().stream().map(o -> summary(o, submittal, writer)).toList(),
        programmes.missing(),
        ScheduleItems.piles(PileSchedule.of(submittal), writer),
        ScheduleItems.units(writer),
        ScheduleItems.quantities(QuantityLine.all(submittal), writer),
        PlantItems.rigs(s, writer),
        PlantItems.tools(s, writer),
        PlantItems.crews(s, writer),
        MaterialItems.mixes(s, writer),
        MaterialItems.beams(s, writer),
        MaterialItems.supply(s.supply(), writer),
        Limit.all(submittal),
        Surroundings.monitoring(s, writer),
        methods(s.methods(), writer),
        Practice.facts(submittal.system()),
        Practice.marks(),
        emergency(s.project()),
        submittal.engine());
  }

  private static ProgrammeSummary summary(
      SequenceOutcome outcome, Submittal submittal, FactWriter writer) {
    String source =
        submittal.governing(PROGRAMME).map(FactWriter::source).orElse("programme of this run");
    return ProgrammeSummary.of(outcome, source, submittal.job().submission().calendar(), writer);
  }

  private static List<List<String>> calculations(Submittal submittal) {
    Map<String, String> titles = new LinkedHashMap<>();
    for (Answer answer : submittal.answers()) {
      titles.putIfAbsent(answer.number(), answer.title());
    }
    List<List<String>> rows = new ArrayList<>();
    titles.forEach((number, title) -> rows.add(List.of(number, title)));
    return rows;
  }

  private static Item methods(Methods m, FactWriter writer) {
    return new ItemBuilder(writer, "methods", "")
        .words("toleranceSet", m.toleranceSet())
        .words("strengthModel", m.strengthModel().label())
        .value("overlapRequired", m.overlapRequired(), Units.MM)
        .value("cutOffMargin", m.cutOffMargin(), Units.M)
        .value("freshPileFactor", m.freshPileFactor(), Units.ONE)
        .value("freshPileTime", m.freshPileTime(), Units.H)
        .value("largestAgeDifference", m.largestAgeDifference(), Units.D)
        .value("capacityReserve", m.capacityReserve(), Units.PERCENT)
        .value("openJointLimit", m.openJointLimit(), Units.PERCENT)
        .build();
  }

  private static Map<String, Fact> emergency(Project project) {
    Map<String, Fact> facts = new LinkedHashMap<>();
    if (!project.emergencyContact().isEmpty()) {
      facts.put("contact", new Fact(project.emergencyContact(), project.at().address()));
    }
    if (!project.hospital().isEmpty()) {
      facts.put("hospital", new Fact(project.hospital(), project.at().address()));
    }
    return java.util.Collections.unmodifiableMap(facts);
  }
}
