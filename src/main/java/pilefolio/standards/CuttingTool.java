package pilefolio.standards;

import com.fasterxml.jackson.core.type.TypeReference;
import java.util.List;
import pilefolio.trace.Reference;

/**
 * Strength of primary concrete that a kind of tool cuts in practice.
 *
 * @param id stable name
 * @param title as printed
 * @param least lower end of the usual limit, MPa
 * @param most upper end of the usual limit, MPa
 * @param reference where it comes from
 */
public record CuttingTool(String id, String title, double least, double most, Reference reference) {

  private static final List<CuttingTool> ALL =
      DataFile.read("installation/cutting-tools.json", new TypeReference<List<CuttingTool>>() {});

  /** Every kind of tool. */
  public static List<CuttingTool> all() {
    return ALL;
  }
}
