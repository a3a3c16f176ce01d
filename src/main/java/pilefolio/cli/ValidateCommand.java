package pilefolio.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import pilefolio.findings.Finding;
import pilefolio.output.json.FindingsWriter;
import pilefolio.workbook.AnnotatedCopy;
import pilefolio.workbook.ReadResult;
import pilefolio.workbook.WorkbookReader;

/** Reports everything that is wrong or odd in workbooks, and produces nothing. */
@Command(
    name = "validate",
    mixinStandardHelpOptions = true,
    description = "Reports every finding in workbooks, with sheet and cell.")
final class ValidateCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Parameters(
      paramLabel = "FILE",
      arity = "1..*",
      description = "Workbooks, or folders with workbooks in them.")
  private List<Path> files;

  @Option(
      names = "--out",
      paramLabel = "DIR",
      description =
          "Also write the findings as <name>-findings.json and, with findings, a copy of the"
              + " workbook with notes on its cells as <name>-annotated.xlsx into this folder.")
  private Path out;

  @Override
  public Integer call() throws IOException {
    PrintWriter console = spec.commandLine().getOut();
    int worst = ExitCode.SATISFIED;
    for (Path file : Workbooks.of(files)) {
      ReadResult read = WorkbookReader.read(file, StandardNames.all());
      FindingsText.print(console, file, read.findings());
      if (read.hasErrors()) {
        worst = ExitCode.FINDINGS;
      }
      if (out != null) {
        Files.createDirectories(out);
        write(file, read.findings());
      }
    }
    console.flush();
    return worst;
  }

  private void write(Path file, List<Finding> findings) throws IOException {
    String name = Workbooks.name(file);
    Files.write(
        out.resolve(name + "-findings.json"),
        FindingsWriter.write(file.getFileName().toString(), findings));
    if (!findings.isEmpty()) {
      AnnotatedCopy.write(file, findings, out.resolve(name + "-annotated.xlsx"));
    }
  }
}
