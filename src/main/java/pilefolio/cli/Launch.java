package pilefolio.cli;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Starts the program. Producing documents is a short run in which the JVM's second compiler costs
 * more than it gains, and a jar cannot ask for JVM options, so that command goes on in a JVM that
 * has it off. Whoever gives JVM options of their own keeps them: then nothing is started anew.
 */
public final class Launch {
  private static final String STARTED = "pilefolio.started";

  private Launch() {}

  /**
   * Runs one command and exits with its code.
   *
   * @param args the command and its options
   */
  public static void main(String[] args) throws InterruptedException {
    Optional<Path> jar = anew(args) ? jar() : Optional.empty();
    if (jar.isPresent()) {
      Optional<Integer> code = start(jar.get(), args);
      if (code.isPresent()) {
        System.exit(code.get());
      }
    }
    System.exit(Main.execute(args));
  }

  private static boolean anew(String[] args) {
    return args.length > 0
        && args[0].equals("produce")
        && System.getProperty(STARTED) == null
        && ManagementFactory.getRuntimeMXBean().getInputArguments().isEmpty();
  }

  /** The jar this runs from, if it runs from one. */
  private static Optional<Path> jar() {
    try {
      Path path = Path.of(Launch.class.getProtectionDomain().getCodeSource().getLocation().toURI());
      return Files.isRegularFile(path) ? Optional.of(path) : Optional.empty();
    } catch (URISyntaxException | IllegalArgumentException e) {
      return Optional.empty();
    }
  }

  /** The exit code of the new JVM; empty if it cannot be started, and this one must do. */
  private static Optional<Integer> start(Path jar, String[] args) throws InterruptedException {
    Optional<String> java = ProcessHandle.current().info().command();
    if (java.isEmpty()) {
      return Optional.empty();
    }
    List<String> command = new ArrayList<>();
    command.add(java.get());
    command.add("-XX:+IgnoreUnrecognizedVMOptions");
    command.add("-XX:TieredStopAtLevel=1");
    command.add("-D" + STARTED + "=true");
    command.add("-jar");
    command.add(jar.toString());
    command.addAll(List.of(args));
    try {
      Process process = new ProcessBuilder(command).inheritIO().start();
      Runtime.getRuntime().addShutdownHook(new Thread(process::destroy));
      return Optional.of(process.waitFor());
    } catch (IOException e) {
      return Optional.empty();
    }
  }
}
