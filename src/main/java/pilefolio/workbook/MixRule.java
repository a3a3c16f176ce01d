package pilefolio.workbook;

import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import pilefolio.findings.Finding;
import pilefolio.model.MixUse;
import pilefolio.model.PileKind;
import pilefolio.model.StrengthModel;

/** Mixes are used for what they are meant for and have a strength window. */
final class MixRule implements Rule {
  @Override
  public void check(Book book, KnownNames names, Consumer<Finding> findings) {
    boolean aci =
        book.form(MethodsSheet.SPEC)
            .flatMap(form -> form.effective(MethodsSheet.STRENGTH))
            .filter(model -> model == StrengthModel.ACI)
            .isPresent();
    Set<Row> forPrimaries = new HashSet<>();
    Set<Row> used = new HashSet<>();
    for (Row piles : book.rows(WallSheet.PILES)) {
      Optional<PileKind> kind = piles.find(WallSheet.PILE_KIND);
      Optional<Row> mix =
          book.first(MaterialSheet.MIXES, MaterialSheet.MIX_ID, piles.find(WallSheet.MIX));
      if (kind.isPresent() && mix.isPresent()) {
        use(piles, kind.get(), mix.get(), findings);
        used.add(mix.get());
        if (kind.get() == PileKind.PRIMARY) {
          forPrimaries.add(mix.get());
        }
      }
    }
    for (Row mix : book.rows(MaterialSheet.MIXES)) {
      window(mix, forPrimaries.contains(mix), findings);
      if (aci && used.contains(mix)) {
        constants(mix, findings);
      }
    }
  }

  private static void use(Row piles, PileKind kind, Row mix, Consumer<Finding> findings) {
    MixUse wanted = kind == PileKind.PRIMARY ? MixUse.PRIMARY : MixUse.SECONDARY;
    mix.find(MaterialSheet.USE)
        .filter(use -> use != wanted && use != MixUse.BOTH)
        .ifPresent(
            use ->
                findings.accept(
                    FindingKind.MIX_USED_WRONGLY.at(
                        piles.place(WallSheet.MIX),
                        "the mix " + mix.subject() + " is not meant for " + RunRule.plural(kind),
                        "name another mix, or change its use on the sheet Mixes")));
  }

  private static void window(Row mix, boolean forPrimaries, Consumer<Finding> findings) {
    Optional<Double> cutting = mix.si(MaterialSheet.CUTTING_LIMIT);
    Optional<Double> standing = mix.si(MaterialSheet.STANDING_LIMIT);
    if (cutting.isPresent() && standing.isPresent()) {
      if (standing.get() >= cutting.get()) {
        findings.accept(
            FindingKind.STRENGTH_WINDOW_EMPTY.at(
                mix.place(MaterialSheet.STANDING_LIMIT),
                "the standing limit is not below the cutting limit",
                "a primary is cut between the two"));
      }
    } else if (forPrimaries) {
      findings.accept(
          FindingKind.STRENGTH_WINDOW_OPEN.at(
              mix.place(
                  cutting.isEmpty() ? MaterialSheet.CUTTING_LIMIT : MaterialSheet.STANDING_LIMIT),
              "the mix of primaries lacks its cutting or its standing limit",
              "without both the time between primary and secondary is not checked"));
    }
  }

  private static void constants(Row mix, Consumer<Finding> findings) {
    for (NumberColumn column : java.util.List.of(MaterialSheet.ACI_A, MaterialSheet.ACI_B)) {
      if (mix.find(column).isEmpty()) {
        findings.accept(
            FindingKind.STRENGTH_CONSTANTS_MISSING.at(
                mix.place(column),
                column.name() + " is empty, and the strength model is ACI 209",
                column.expected(column.unit())));
      }
    }
  }
}
