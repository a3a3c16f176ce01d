package pilefolio.cli;

import java.io.PrintWriter;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** The command line. */
@Command(
    name = "pilefolio",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    description =
        "Turns a workbook with ground, secant walls, beams, mixes and rigs into a calculation"
            + " package and a method statement.",
    subcommands = {BlankCommand.class, ValidateCommand.class, ProduceCommand.class},
    exitCodeListHeading = "%nExit codes:%n",
    exitCodeList = {
      "0:every check is satisfied",
      "1:produced, but something is not satisfied or not checked",
      "2:the command line is wrong",
      "3:a workbook has findings; nothing was produced from it",
      "70:a fault of the program; details are in a file"
    },
    footer = {"", "A batch ends with its worst code and finishes the other workbooks."})
public final class Main implements Runnable {
  @Spec private CommandSpec spec;

  @Override
  public void run() {
    throw new CommandLine.ParameterException(
        spec.commandLine(), "Say what to do: blank, validate or produce.");
  }

  /**
   * Runs one command.
   *
   * @param args the command and its options
   * @return the exit code
   */
  public static int execute(String... args) {
    return execute(null, null, args);
  }

  /** Runs one command with its words going somewhere else than to the console. */
  static int execute(PrintWriter out, PrintWriter err, String... args) {
    // Without a provider the spreadsheet library's logger complains on the console.
    System.setProperty(
        "log4j2.loggerContextFactory",
        "org.apache.logging.log4j.simple.SimpleLoggerContextFactory");
    System.setProperty("java.awt.headless", "true");
    CommandLine commandLine = new CommandLine(new Main());
    if (out != null) {
      commandLine.setOut(out).setErr(err);
    }
    return commandLine
        .setCaseInsensitiveEnumValuesAllowed(true)
        .setParameterExceptionHandler(Main::explain)
        .setExecutionExceptionHandler(
            (fault, line, parsed) -> {
              if (fault instanceof Refusal) {
                line.getErr().println(fault.getMessage());
                return ExitCode.COMMAND_LINE;
              }
              line.getErr().println(FaultFile.write(fault));
              return ExitCode.FAULT;
            })
        .execute(args);
  }

  private static int explain(CommandLine.ParameterException e, String[] args) {
    CommandLine commandLine = e.getCommandLine();
    commandLine.getErr().println(e.getMessage());
    CommandLine.UnmatchedArgumentException.printSuggestions(e, commandLine.getErr());
    commandLine
        .getErr()
        .println(
            "Try \""
                + commandLine.getCommandSpec().qualifiedName()
                + " --help\" for what it takes.");
    return ExitCode.COMMAND_LINE;
  }
}
