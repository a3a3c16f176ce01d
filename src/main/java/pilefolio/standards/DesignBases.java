package pilefolio.standards;

import com.fasterxml.jackson.core.type.TypeReference;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The design bases that ship with the program. */
public final class DesignBases {
  private static final List<DesignBasis> ALL =
      Stream.of("us-asd", "aashto-lrfd", "ec7-da1", "ec7-da2", "ec7-da3")
          .map(DesignBases::read)
          .toList();

  private DesignBases() {}

  /** Every basis. */
  public static List<DesignBasis> all() {
    return ALL;
  }

  /** The basis with an id, or empty. */
  public static Optional<DesignBasis> find(String id) {
    return ALL.stream().filter(basis -> basis.id().equals(id)).findFirst();
  }

  /** A basis as it stands in its file: nothing is overridden there. */
  record Published(
      String id,
      String title,
      DesignBasis.Format format,
      DesignBasis.SteelCode steel,
      DesignBasis.ConcreteCode concrete,
      List<Combination> combinations,
      List<Factor> factors,
      List<Factor> further,
      List<DesignBasis.Use> references) {

    DesignBasis basis() {
      return new DesignBasis(
          id,
          title,
          format,
          steel,
          concrete,
          combinations,
          factors,
          further,
          references,
          List.of());
    }
  }

  private static DesignBasis read(String id) {
    Published published = DataFile.read("bases/" + id + ".json", new TypeReference<Published>() {});
    if (!published.id().equals(id)) {
      throw new IllegalStateException("file " + id + " holds basis " + published.id());
    }
    return published.basis();
  }
}
