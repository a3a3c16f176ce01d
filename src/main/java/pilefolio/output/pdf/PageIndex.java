package pilefolio.output.pdf;

import java.util.Map;
import java.util.OptionalInt;

/**
 * On which page each element with an id begins.
 *
 * @param pageCount pages of the document
 * @param pageOfId page by id, from 1
 */
public record PageIndex(int pageCount, Map<String, Integer> pageOfId) {
  /** Copies the map. */
  public PageIndex {
    pageOfId = Map.copyOf(pageOfId);
  }

  /** Page of an id, from 1; empty when the document has no such id. */
  public OptionalInt pageOf(String id) {
    Integer page = pageOfId.get(id);
    return page == null ? OptionalInt.empty() : OptionalInt.of(page);
  }
}
