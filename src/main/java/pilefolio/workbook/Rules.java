package pilefolio.workbook;

import java.util.List;

/** The rules between cells, in the order in which they are asked. */
final class Rules {
  static final List<Rule> ALL =
      List.of(
          new IdRule(),
          new KnownNamesRule(),
          new ControlRule(),
          new GroundRule(),
          new RunRule(),
          new PileRule(),
          new InfillRule(),
          new StageRule(),
          new SupportRule(),
          new MemberRule(),
          new PlantRule(),
          new MixRule(),
          new WorksRule());

  private Rules() {}
}
