package pilefolio.workbook;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;

/** The known word a misspelt one was probably meant to be. */
final class Nearest {
  private Nearest() {}

  /** The nearest of the words, if at most a third of its letters differ. */
  static Optional<String> to(String typed, Collection<String> words) {
    String lower = typed.strip().toLowerCase(Locale.ROOT);
    if (lower.isEmpty() || lower.length() > 60) {
      return Optional.empty();
    }
    return words.stream()
        .min(Comparator.comparingInt(word -> distance(lower, word.toLowerCase(Locale.ROOT))))
        .filter(
            word ->
                distance(lower, word.toLowerCase(Locale.ROOT)) <= Math.max(1, word.length() / 3)
                    || word.toLowerCase(Locale.ROOT).startsWith(lower));
  }

  /** Least count of letters to insert, drop or change. */
  private static int distance(String a, String b) {
    int[] row = new int[b.length() + 1];
    for (int j = 0; j <= b.length(); j++) {
      row[j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      int diagonal = row[0];
      row[0] = i;
      for (int j = 1; j <= b.length(); j++) {
        int changed = diagonal + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
        diagonal = row[j];
        row[j] = Math.min(changed, Math.min(row[j], row[j - 1]) + 1);
      }
    }
    return row[b.length()];
  }
}
