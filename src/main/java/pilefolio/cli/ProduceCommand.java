package pilefolio.cli;

import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import pilefolio.output.pdf.TemplateFaultException;
import pilefolio.output.pdf.TemplateSource;

/** Produces the whole package for one workbook, for many, or for a folder. */
@Command(
    name = "produce",
    mixinStandardHelpOptions = true,
    description = {
      "Produces, for each workbook, a folder of its name with calculations.pdf,"
          + " method-statement.pdf, schedules.xlsx, checker.xlsx and record.json."
    },
    exitCodeListHeading = "%nExit codes:%n",
    exitCodeList = {
      "0:every check is satisfied",
      "1:produced, but something is not satisfied or not checked",
      "2:the command line is wrong",
      "3:a workbook has findings; nothing was produced from it",
      "70:a fault of the program; details are in a file"
    })
final class ProduceCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Parameters(
      paramLabel = "FILE",
      arity = "1..*",
      description = "Workbooks, or folders with workbooks in them.")
  private List<Path> files;

  @Option(
      names = "--out",
      required = true,
      paramLabel = "DIR",
      description = "Folder for the packages; made if it is not there.")
  private Path out;

  @Option(
      names = "--templates",
      paramLabel = "DIR",
      description = "Folder with templates of your own; what it lacks is taken as shipped.")
  private Path templates;

  @Option(
      names = "--jobs",
      paramLabel = "N",
      description = "Workbooks worked on at a time; default one a processor.")
  private Integer jobs;

  @Override
  public Integer call() throws InterruptedException {
    List<Path> workbooks = Workbooks.of(files);
    if (templates != null && !Files.isDirectory(templates)) {
      throw new Refusal("There is no folder of templates " + templates + ".");
    }
    if (jobs != null && jobs < 1) {
      throw new Refusal("--jobs must be 1 or more, not " + jobs + ".");
    }
    if (Files.exists(out) && !Files.isDirectory(out)) {
      throw new Refusal(out + " is a file; --out must name a folder.");
    }
    TemplateSource source =
        templates == null ? TemplateSource.shipped() : TemplateSource.folder(templates);
    int most = jobs == null ? Runtime.getRuntime().availableProcessors() : jobs;
    PrintWriter console = spec.commandLine().getOut();
    Progress progress = Progress.on(console, workbooks.size());
    List<Outcome> outcomes = run(workbooks, new Production(out, source), progress, most);
    progress.finish();
    int worst = ExitCode.SATISFIED;
    for (Outcome outcome : outcomes) {
      outcome.print(console);
      worst = Math.max(worst, outcome.code());
    }
    console.flush();
    return worst;
  }

  private Outcome fault(Path workbook, Throwable cause) {
    if (cause instanceof TemplateFaultException && templates != null) {
      // The firm's own template is wrong, which the user can put right.
      return new Outcome(
          workbook,
          ExitCode.COMMAND_LINE,
          "nothing produced; " + cause.getMessage(),
          null,
          List.of(),
          List.of());
    }
    return Outcome.fault(workbook, FaultFile.write(cause));
  }

  private List<Outcome> run(
      List<Path> workbooks, Production production, Progress progress, int most)
      throws InterruptedException {
    ExecutorService workers =
        Executors.newFixedThreadPool(Math.max(1, Math.min(most, workbooks.size())));
    try {
      List<Future<Outcome>> futures = new ArrayList<>();
      for (Path workbook : workbooks) {
        futures.add(
            workers.submit(
                () -> {
                  progress.started(workbook);
                  Outcome outcome = production.of(workbook);
                  progress.done(workbook, outcome);
                  return outcome;
                }));
      }
      List<Outcome> outcomes = new ArrayList<>();
      for (int i = 0; i < futures.size(); i++) {
        try {
          outcomes.add(futures.get(i).get());
        } catch (ExecutionException e) {
          // One workbook's fault must not stop the others.
          outcomes.add(fault(workbooks.get(i), e.getCause()));
        }
      }
      return outcomes;
    } finally {
      workers.shutdown();
    }
  }
}
