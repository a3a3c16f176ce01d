package pilefolio.cli;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import pilefolio.standards.DesignBases;
import pilefolio.standards.DesignBasis;
import pilefolio.standards.Factor;
import pilefolio.standards.SectionTable;
import pilefolio.standards.ToleranceSet;
import pilefolio.workbook.KnownNames;

/** Tells the reader of workbooks which names the standards data know. */
final class StandardNames {
  private StandardNames() {}

  static KnownNames all() {
    Map<String, Set<String>> factors = new LinkedHashMap<>();
    for (DesignBasis basis : DesignBases.all()) {
      factors.put(
          basis.id(), basis.factors().stream().map(Factor::key).collect(Collectors.toSet()));
    }
    TreeSet<String> tolerances =
        ToleranceSet.all().stream()
            .map(ToleranceSet::id)
            .collect(Collectors.toCollection(TreeSet::new));
    SectionTable sections = SectionTable.all();
    KnownNames.SectionNames names =
        new KnownNames.SectionNames() {
          @Override
          public boolean knows(String designation) {
            return sections.find(designation).isPresent();
          }

          @Override
          public boolean knowsFamily(String family) {
            return !sections.family(family).isEmpty();
          }

          @Override
          public List<String> near(String designation) {
            return sections.suggestions(designation, 3);
          }
        };
    return new KnownNames(factors, tolerances, Optional.of(names));
  }
}
