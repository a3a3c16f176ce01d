package pilefolio.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * Times the whole command from a cold start and compares it with a bare run of the renderer on the
 * same pages in a process of its own. Prints medians and their ratio; it is no test. See
 * "Benchmark" in DEVELOPERS.md.
 */
public final class PackageBenchmark {
  private static final int RUNS = 5;

  private PackageBenchmark() {}

  /** Runs the benchmark on the good samples. */
  public static void main(String[] args) throws IOException, InterruptedException {
    Path work = Files.createTempDirectory("pilefolio-bench");
    System.out.printf(
        Locale.ROOT,
        "%-28s %8s %10s %10s %8s%n",
        "workbook",
        "pages",
        "whole s",
        "bare s",
        "ratio");
    for (String name : List.of("ten-piles", "river-street-pump-station", "car-park-basement")) {
      String workbook = "sample-input/" + name + ".xlsx";
      List<String> whole =
          List.of(
              "java",
              "-jar",
              "target/pilefolio.jar",
              "produce",
              workbook,
              "--out",
              work.toString());
      List<String> bare =
          List.of(
              "java",
              "-cp",
              System.getProperty("java.class.path"),
              BareRenderer.class.getName(),
              workbook);
      double wholeSeconds = median(whole, work.resolve("whole.txt"));
      double bareSeconds = medianInside(bare, work.resolve("bare.txt"));
      System.out.printf(
          Locale.ROOT,
          "%-28s %8d %10.2f %10.2f %8.2f%n",
          name,
          pages(work.resolve("bare.txt")),
          wholeSeconds,
          bareSeconds,
          wholeSeconds / bareSeconds);
    }
  }

  private static double median(List<String> command, Path output)
      throws IOException, InterruptedException {
    double[] seconds = new double[RUNS];
    for (int i = 0; i < RUNS; i++) {
      long start = System.nanoTime();
      run(command, output);
      seconds[i] = (System.nanoTime() - start) / 1e9;
    }
    Arrays.sort(seconds);
    return seconds[RUNS / 2];
  }

  /** The bare run tells its own time, since making the pages is not part of it. */
  private static double medianInside(List<String> command, Path output)
      throws IOException, InterruptedException {
    double[] seconds = new double[RUNS];
    for (int i = 0; i < RUNS; i++) {
      run(command, output);
      seconds[i] = Double.parseDouble(Files.readAllLines(output).get(0));
    }
    Arrays.sort(seconds);
    return seconds[RUNS / 2];
  }

  private static int pages(Path output) throws IOException {
    return Integer.parseInt(Files.readAllLines(output).get(1));
  }

  private static void run(List<String> command, Path output)
      throws IOException, InterruptedException {
    Process process =
        new ProcessBuilder(new ArrayList<>(command))
            .redirectErrorStream(true)
            .redirectOutput(output.toFile())
            .start();
    int code = process.waitFor();
    if (code > 1) {
      throw new IOException(command + " ended with " + code + ": " + Files.readString(output));
    }
  }
}
