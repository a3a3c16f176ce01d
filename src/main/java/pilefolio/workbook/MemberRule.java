package pilefolio.workbook;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import pilefolio.findings.Finding;
import pilefolio.model.SupportKind;

/** What supports consist of suits their kind, is said once, and is said whole. */
final class MemberRule implements Rule {
  private static final Map<SheetSpec, Set<SupportKind>> KINDS = new LinkedHashMap<>();

  static {
    KINDS.put(MemberSheet.STRUTS, Set.of(SupportKind.PROP, SupportKind.RAKER));
    KINDS.put(
        MemberSheet.WALERS,
        Set.of(SupportKind.PROP, SupportKind.RAKER, SupportKind.ANCHOR, SupportKind.DEADMAN));
    KINDS.put(MemberSheet.ANCHORS, Set.of(SupportKind.ANCHOR));
    KINDS.put(MemberSheet.FOOTINGS, Set.of(SupportKind.RAKER));
    KINDS.put(MemberSheet.BLOCKS, Set.of(SupportKind.DEADMAN));
  }

  @Override
  public void check(Book book, KnownNames names, Consumer<Finding> findings) {
    KINDS.forEach(
        (spec, kinds) -> {
          Set<String> met = new HashSet<>();
          for (Row row : book.rows(spec)) {
            support(row, (TextColumn) spec.columns().get(0), kinds, met, book, findings);
          }
        });
    book.rows(MemberSheet.STRUTS).forEach(row -> section(row, findings));
    book.rows(MemberSheet.ANCHORS).forEach(row -> bond(row, findings));
  }

  private static void support(
      Row row,
      TextColumn column,
      Set<SupportKind> kinds,
      Set<String> met,
      Book book,
      Consumer<Finding> findings) {
    Optional<String> id = row.find(column);
    if (id.isPresent() && !met.add(id.get())) {
      findings.accept(
          FindingKind.MEMBER_TWICE.at(
              row.place(column),
              "the support " + id.get() + " has a row here already",
              "say once what a support consists of"));
    }
    book.first(StageSheet.SUPPORTS, StageSheet.SUPPORT_ID, id)
        .flatMap(support -> support.find(StageSheet.KIND))
        .filter(kind -> !kinds.contains(kind))
        .ifPresent(
            kind ->
                findings.accept(
                    FindingKind.MEMBER_NOT_OF_KIND.at(
                        row.place(column),
                        "the support "
                            + id.orElse("")
                            + " is of the kind "
                            + kind.label().toLowerCase(Locale.ROOT),
                        "use the sheet for its kind, or change the kind on the sheet Supports")));
  }

  private static void section(Row row, Consumer<Finding> findings) {
    boolean beam = row.find(MemberSheet.STRUT_BEAM).isPresent();
    Optional<Double> diameter = row.si(MemberSheet.TUBE_DIAMETER);
    Optional<Double> wall = row.si(MemberSheet.TUBE_WALL);
    boolean yield = row.find(MemberSheet.TUBE_YIELD).isPresent();
    boolean whole = diameter.isPresent() && wall.isPresent() && yield;
    boolean part = diameter.isPresent() || wall.isPresent() || yield;
    boolean thick = whole && 2 * wall.get() >= diameter.get();
    if (beam ? part : !whole || thick) {
      findings.accept(
          FindingKind.STRUT_SECTION_UNCLEAR.at(
              row.place(MemberSheet.STRUT_BEAM),
              thick
                  ? "the wall of the tube is thicker than its radius"
                  : "the strut is not one of: a beam, or a tube with diameter, wall and strength",
              "name a beam of the sheet Beams, or fill in the three columns of the tube"));
    }
  }

  private static void bond(Row row, Consumer<Finding> findings) {
    if (row.find(MemberSheet.TRANSFER).isPresent()
        && row.find(MemberSheet.BOND_STRESS).isPresent()) {
      findings.accept(
          FindingKind.BOND_GIVEN_TWICE.at(
              row.place(MemberSheet.BOND_STRESS),
              "both a load transfer and a bond stress are given",
              "give one of them, or neither for the value of the tables"));
    }
  }
}
