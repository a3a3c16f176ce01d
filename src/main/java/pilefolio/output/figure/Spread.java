package pilefolio.output.figure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** Moves labels apart along one direction so that none covers another. */
final class Spread {
  private Spread() {}

  /**
   * Places as near to the wanted ones as the gap allows, in the same order.
   *
   * @param wanted wanted places
   * @param gap least distance between neighbours
   * @param low least place
   * @param high greatest place; given up first when there are too many labels
   */
  static List<Double> apart(List<Double> wanted, double gap, double low, double high) {
    int n = wanted.size();
    List<Integer> order =
        IntStream.range(0, n).boxed().sorted(Comparator.comparing(wanted::get)).toList();
    // Labels that touch form a block, which sits where its members want to be on average.
    List<double[]> blocks = new ArrayList<>();
    for (int index : order) {
      blocks.add(new double[] {wanted.get(index), 1});
      while (blocks.size() > 1 && touch(blocks, gap)) {
        double[] last = blocks.remove(blocks.size() - 1);
        double[] before = blocks.get(blocks.size() - 1);
        double all = before[1] + last[1];
        // Both centres as the members would have it when stacked.
        before[0] = (before[0] * before[1] + last[0] * last[1]) / all;
        before[1] = all;
      }
    }
    double[] places = new double[n];
    int next = 0;
    for (double[] block : blocks) {
      double start = block[0] - (block[1] - 1) * gap / 2;
      for (int k = 0; k < block[1]; k++) {
        places[next++] = start + k * gap;
      }
    }
    for (int i = n - 1; i >= 0; i--) {
      double most = i == n - 1 ? high : places[i + 1] - gap;
      places[i] = Math.min(places[i], most);
    }
    for (int i = 0; i < n; i++) {
      double least = i == 0 ? low : places[i - 1] + gap;
      places[i] = Math.max(places[i], least);
    }
    Double[] result = new Double[n];
    for (int i = 0; i < n; i++) {
      result[order.get(i)] = places[i];
    }
    return List.of(result);
  }

  private static boolean touch(List<double[]> blocks, double gap) {
    double[] last = blocks.get(blocks.size() - 1);
    double[] before = blocks.get(blocks.size() - 2);
    return last[0] - before[0] < gap * (last[1] + before[1]) / 2;
  }
}
