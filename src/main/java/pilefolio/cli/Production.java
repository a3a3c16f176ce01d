package pilefolio.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Stream;
import pilefolio.checks.Job;
import pilefolio.checks.sizing.Sizing;
import pilefolio.findings.Finding;
import pilefolio.model.FactorOverride;
import pilefolio.model.Submission;
import pilefolio.output.PackageFiles;
import pilefolio.output.pdf.TemplateSource;
import pilefolio.standards.DesignBases;
import pilefolio.standards.DesignBasis;
import pilefolio.submittal.Engine;
import pilefolio.submittal.Governing;
import pilefolio.submittal.InputLine;
import pilefolio.submittal.Submittal;
import pilefolio.trace.Verdict.Result;
import pilefolio.workbook.InputEcho;
import pilefolio.workbook.ReadResult;
import pilefolio.workbook.WorkbookReader;

/** Makes the package of one workbook and puts it in its folder as a whole. */
final class Production {
  private final Path out;
  private final TemplateSource templates;

  Production(Path out, TemplateSource templates) {
    this.out = out;
    this.templates = templates;
  }

  /**
   * A workbook that was read and, unless its findings forbid it, checked.
   *
   * @param findings findings of its cells
   * @param submittal the content of its package, or null
   */
  record Checked(List<Finding> findings, Submittal submittal) {}

  Outcome of(Path workbook) throws IOException {
    byte[] bytes = Files.readAllBytes(workbook);
    Checked checked = check(workbook.getFileName().toString(), bytes);
    if (checked.submittal() == null) {
      return refused(workbook, checked.findings());
    }
    Submittal submittal = checked.submittal();
    Map<String, byte[]> files = PackageFiles.of(submittal, bytes, templates);
    Path folder = put(Workbooks.name(workbook), files);
    return new Outcome(
        workbook,
        submittal.allSatisfied() ? ExitCode.SATISFIED : ExitCode.OPEN,
        headline(submittal),
        folder,
        checked.findings(),
        Governing.of(submittal));
  }

  /** Reads and checks a workbook without writing anything. */
  static Checked check(String name, byte[] bytes) throws IOException {
    ReadResult read = WorkbookReader.read(bytes, StandardNames.all());
    List<Finding> findings = new ArrayList<>(read.findings());
    if (read.submission().isEmpty()) {
      return new Checked(findings, null);
    }
    Submission submission = read.submission().get();
    DesignBasis.Changed changed = basis(submission);
    findings.addAll(refusals(submission, changed));
    if (!changed.refused().isEmpty()) {
      return new Checked(findings, null);
    }
    Engine engine = new Engine(Version.number(), name, Hash.sha256(bytes));
    Job job = Sizing.sized(new Job(submission, changed.basis()));
    return new Checked(findings, Submittal.of(job, inputs(read.inputs()), engine));
  }

  private static Outcome refused(Path workbook, List<Finding> findings) {
    return new Outcome(
        workbook,
        ExitCode.FINDINGS,
        "findings, nothing produced",
        null,
        List.copyOf(findings),
        List.of());
  }

  private static DesignBasis.Changed basis(Submission submission) {
    Map<String, Double> entries = new LinkedHashMap<>();
    for (FactorOverride override : submission.basis().overrides()) {
      entries.put(override.factor(), override.value().si());
    }
    return DesignBases.find(submission.basis().basis()).orElseThrow().with(entries);
  }

  private static List<Finding> refusals(Submission submission, DesignBasis.Changed changed) {
    return changed.refused().stream()
        .map(
            refusal ->
                Finding.error(
                    "factor-refused",
                    submission.basis().overrides().stream()
                        .filter(o -> o.factor().equals(refusal.entry()))
                        .findFirst()
                        .orElseThrow()
                        .value()
                        .cell(),
                    "factor " + refusal.entry(),
                    refusal.reason()))
        .toList();
  }

  private static List<InputLine> inputs(List<InputEcho> echoes) {
    return echoes.stream()
        .map(
            echo ->
                new InputLine(
                    echo.cell(),
                    echo.subject().isEmpty() ? echo.name() : echo.name() + ", " + echo.subject(),
                    echo.defaulted() ? echo.text() + " (default)" : echo.text(),
                    echo.unit(),
                    echo.si()))
        .toList();
  }

  private static String headline(Submittal submittal) {
    int bad = submittal.with(Result.NOT_SATISFIED).size();
    int open = submittal.with(Result.NOT_CHECKED).size();
    int ok = submittal.with(Result.SATISFIED).size();
    if (bad == 0 && open == 0) {
      return "produced; all " + ok + " answers satisfied";
    }
    return "produced; " + ok + " satisfied, " + bad + " not satisfied, " + open + " not checked";
  }

  /** Writes beside the place where the package belongs, then moves it there in one step. */
  private Path put(String name, Map<String, byte[]> files) throws IOException {
    Files.createDirectories(out);
    Path target = out.resolve(name);
    Path fresh = Files.createDirectory(out.resolve("." + name + "-" + UUID.randomUUID()));
    try {
      for (Map.Entry<String, byte[]> file : files.entrySet()) {
        Files.write(fresh.resolve(file.getKey()), file.getValue());
      }
      if (Files.exists(target)) {
        Path old = Files.createDirectory(out.resolve(".old-" + UUID.randomUUID()));
        Files.move(target, old.resolve(name), StandardCopyOption.ATOMIC_MOVE);
        Files.move(fresh, target, StandardCopyOption.ATOMIC_MOVE);
        delete(old);
      } else {
        Files.move(fresh, target, StandardCopyOption.ATOMIC_MOVE);
      }
    } catch (IOException | RuntimeException e) {
      delete(fresh);
      throw e;
    }
    return target;
  }

  private static void delete(Path folder) throws IOException {
    if (!Files.exists(folder)) {
      return;
    }
    try (Stream<Path> paths = Files.walk(folder)) {
      for (Path path : paths.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(path);
      }
    }
  }
}
