package pilefolio.output;

import static pilefolio.units.Units.DEG;
import static pilefolio.units.Units.KN;
import static pilefolio.units.Units.KN_M;
import static pilefolio.units.Units.KN_M3;
import static pilefolio.units.Units.KPA;
import static pilefolio.units.Units.M;
import static pilefolio.units.Units.M2;
import static pilefolio.units.Units.MM;
import static pilefolio.units.Units.MPA;
import static pilefolio.units.Units.ONE;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import pilefolio.checks.Check;
import pilefolio.checks.CheckResult;
import pilefolio.checks.Family;
import pilefolio.checks.Job;
import pilefolio.checks.Subject;
import pilefolio.model.Project;
import pilefolio.model.Submission;
import pilefolio.standards.DesignBases;
import pilefolio.submittal.Answer;
import pilefolio.submittal.Engine;
import pilefolio.submittal.InputLine;
import pilefolio.submittal.Submittal;
import pilefolio.trace.Binding;
import pilefolio.trace.Binding.Row;
import pilefolio.trace.CalcSheet;
import pilefolio.trace.CalcTable;
import pilefolio.trace.Calculation;
import pilefolio.trace.Choice;
import pilefolio.trace.Reference;
import pilefolio.trace.Source;
import pilefolio.units.DisplaySystem;
import pilefolio.workbook.ReadResult;
import pilefolio.workbook.WorkbookReader;

/**
 * The small sample with every answer its checks give, and beside them answers made by hand that
 * hold every kind of element, so that writers are tested whatever the checks use.
 */
public final class SampleSubmittal {
  private static final Source TEST = new Source.Layout("made for a test");

  /** Every kind of element on one sheet. */
  static final CalcSheet EVERYTHING =
      CalcSheet.named("Every kind of element")
          .given("q", KPA, "surcharge")
          .given("φ'_k", DEG, "friction angle")
          .given("s_u", KPA, "undrained strength")
          .given("D", MM, "diameter")
          .given("V_t", M2, "what one load covers")
          .found("d_0", M, "depth of the pivot", "root of a polynomial")
          .note("A sentence between the lines.")
          .line("K_a = tan(45[°] − φ'_k/2)²", ONE, "coefficient", Reference.DERIVED)
          .choose(
              "α",
              ONE,
              "adhesion factor",
              Reference.PRACTICE,
              Choice.when("s_u ≤ 50[kPa] and D < 2[m]", "0.55")
                  .or("s_u ≤ 150[kPa]", "0.55 − 0.1·(s_u/101.325[kPa] − 0.5)")
                  .otherwise("0.45"))
          .table(
              CalcTable.of("layers", "Pressure behind the wall", "layer")
                  .given("h", M, "thickness")
                  .given("γ", KN_M3, "unit weight")
                  .carried("σ_{v,0}", KPA, "stress at the top", "σ_v", "q")
                  .line("σ_v = σ_{v,0} + γ·h", MPA, "stress at the bottom", Reference.DERIVED)
                  .choose(
                      "p",
                      KPA,
                      "pressure at mid-height, not below a fluid of 5 kN/m³",
                      Reference.PRACTICE,
                      Choice.when("K_a·(σ_{v,0} + σ_v)/2 ≤ 5[kN/m³]·h", "5[kN/m³]·h")
                          .otherwise("K_a·(σ_{v,0} + σ_v)/2"))
                  .line("P = p·h", KN_M, "force", Reference.DERIVED)
                  .sum("P_a", "P", "total force")
                  .largest("p_m", "p", "greatest pressure")
                  .smallest("h_m", "h", "thinnest layer"))
          .line("N = ceil(D·d_0/V_t)", ONE, "loads", Reference.DERIVED)
          .line(
              "R = α·s_u·π·D·d_0/2 + 0.65[kip]",
              KN,
              "resistance",
              Reference.memory("A handbook", "6.2"))
          .line("E = P_a·1[m] + N·p_m·h_m·0[m]", KN, "demand", Reference.DERIVED)
          .require("E ≤ R", "the shaft carries the thrust", Reference.PRACTICE)
          .require("D/2 + 100[mm] ≥ 0.25[m]", "wide enough", Reference.DERIVED);

  /** Goes on with a value of the sheet before it. */
  static final CalcSheet AFTER =
      CalcSheet.named("What follows")
          .given("E", KN, "demand from above")
          .given("ΔE", KN, "capacity left")
          .line("E_2 = 2·E", KN, "twice the demand", Reference.DERIVED)
          .require("E_2 ≤ ΔE", "something is left", Reference.DERIVED);

  private SampleSubmittal() {}

  /** The small sample in a system of units. */
  public static Submittal in(DisplaySystem system) {
    return of("ten-piles", system);
  }

  /** A sample in a system of units, with the answers made by hand at the end. */
  public static Submittal of(String sample, DisplaySystem system) {
    try {
      ReadResult read = WorkbookReader.read(Path.of("sample-input", sample + ".xlsx"));
      Submission submission = in(read.submission().orElseThrow(), system);
      Job job = new Job(submission, DesignBases.find(submission.basis().basis()).orElseThrow());
      List<InputLine> inputs =
          read.inputs().stream()
              .map(i -> new InputLine(i.cell(), i.name(), i.text(), i.unit(), i.si()))
              .toList();
      Submittal submittal =
          Submittal.of(job, inputs, new Engine("0.1.0", sample + ".xlsx", "0".repeat(64)));
      List<Answer> answers = new ArrayList<>(submittal.answers());
      answers.addAll(handMade());
      return new Submittal(job, answers, inputs, submittal.engine());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Submission in(Submission s, DisplaySystem system) {
    UnaryOperator<Project> units =
        p ->
            new Project(
                p.at(),
                p.title(),
                p.projectNumber(),
                p.documentNumber(),
                p.client(),
                p.site(),
                p.contractor(),
                p.revision(),
                p.status(),
                p.date(),
                p.preparedBy(),
                p.checkedBy(),
                p.approvedBy(),
                system,
                p.paper(),
                p.datum(),
                p.emergencyContact(),
                p.hospital(),
                p.localRules());
    return new Submission(
        units.apply(s.project()),
        s.basis(),
        s.methods(),
        s.profiles(),
        s.runs(),
        s.stages(),
        s.supports(),
        s.beams(),
        s.mixes(),
        s.rigs(),
        s.tools(),
        s.supply(),
        s.crews(),
        s.calendar(),
        s.neighbours(),
        s.monitoring(),
        s.people(),
        s.revisions(),
        s.assumptions(),
        s.localLoads());
  }

  /** Answers made by hand: satisfied, without capacity, not checked, derived. */
  public static List<Answer> handMade() {
    Check question = new HandMade("made-question", false);
    Check values = new HandMade("made-values", true);
    Calculation soft = everything(42e3, 0.8);
    Calculation stiff = everything(180e3, 0.9);
    return List.of(
        new Answer(
            "made-question-1",
            "90.1",
            CheckResult.of(
                question, Subject.run("A").stage("stage 1"), stiff, after(question, stiff, 0)),
            true),
        new Answer(
            "made-question-2",
            "90.1",
            CheckResult.of(
                question,
                Subject.run("A").stage("stage 2"),
                soft,
                after(question, soft, 3 * soft.value("E"))),
            false),
        new Answer(
            "made-question-3",
            "90.1",
            CheckResult.notChecked(question, Subject.run("B"), "There is no rating of the rig."),
            false),
        new Answer("made-values-1", "90.2", CheckResult.of(values, Subject.JOB, soft), true));
  }

  private static Calculation everything(double strength, double diameter) {
    Binding binding =
        EVERYTHING
            .bind()
            .set("q", 10e3, TEST)
            .set("φ'_k", Math.toRadians(29), TEST)
            .set("s_u", strength, TEST)
            .set("D", diameter, TEST)
            .set("V_t", 0.07, TEST)
            .set("d_0", 7 / 3.0, new Source.Method("root of a polynomial"));
    binding.row("layers", Row.of("fill").set("h", 0.35, TEST).set("γ", 1e3, TEST));
    binding.row("layers", Row.of("sand").set("h", 1.23456789, TEST).set("γ", 18.3e3, TEST));
    binding.row("layers", Row.of("clay").set("h", 2.3456789, TEST).set("γ", 19.7e3, TEST));
    return binding.calculate();
  }

  private static Calculation after(Check check, Calculation before, double capacity) {
    return AFTER
        .bind()
        .set("E", before.value("E"), new Source.Line(check.id(), check.title(), "E"))
        .set("ΔE", capacity, TEST)
        .calculate();
  }

  private record HandMade(String id, boolean derivation) implements Check {
    @Override
    public String title() {
      return "Made by hand: " + id.replace('-', ' ');
    }

    @Override
    public Family family() {
      return Family.RIG;
    }

    @Override
    public List<CalcSheet> sheets() {
      return List.of(EVERYTHING, AFTER);
    }

    @Override
    public List<CheckResult> run(Job job) {
      return List.of();
    }
  }
}
