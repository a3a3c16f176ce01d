package pilefolio.workbook;

import java.util.List;
import java.util.function.Function;
import pilefolio.model.BasisChoice;
import pilefolio.model.ConcreteSupply;
import pilefolio.model.GroundProfile;
import pilefolio.model.Methods;
import pilefolio.model.Project;
import pilefolio.model.Submission;
import pilefolio.model.SupportMembers;
import pilefolio.model.WallRun;
import pilefolio.model.WorkCalendar;

/** Turns rows without errors into what the user described. */
final class SubmissionBuilder {
  private final Book book;
  private final Defaults defaults;

  SubmissionBuilder(Book book, Defaults defaults) {
    this.book = book;
    this.defaults = defaults;
  }

  Submission build() {
    Project project = ProjectSheet.read(form(ProjectSheet.SPEC));
    BasisChoice basis =
        MethodsSheet.basis(form(MethodsSheet.SPEC), book.rows(MethodsSheet.FACTORS));
    Methods methods = MethodsSheet.read(form(MethodsSheet.SPEC));
    List<Row> layers = book.rows(GroundSheet.LAYERS);
    List<GroundProfile> profiles = all(GroundSheet.PROFILES, row -> GroundSheet.read(row, layers));
    List<Row> piles = book.rows(WallSheet.PILES);
    List<Row> sheets = book.rows(InfillSheet.SHEETS);
    List<Row> lagging = book.rows(InfillSheet.LAGGING);
    List<WallRun> runs = all(WallSheet.RUNS, row -> WallSheet.read(row, piles, sheets, lagging));
    ConcreteSupply supply = WorksSheet.supply(form(WorksSheet.SUPPLY));
    WorkCalendar calendar =
        WorksSheet.calendar(form(WorksSheet.CALENDAR), book.rows(WorksSheet.DAYS_OFF));
    return new Submission(
        project,
        basis,
        methods,
        profiles,
        runs,
        all(StageSheet.STAGES, StageSheet::stage),
        all(StageSheet.SUPPORTS, StageSheet::support),
        all(MaterialSheet.BEAMS, MaterialSheet::beam),
        all(MaterialSheet.MIXES, MaterialSheet::mix),
        all(PlantSheet.RIGS, PlantSheet::rig),
        all(PlantSheet.TOOLS, PlantSheet::tool),
        supply,
        all(WorksSheet.CREWS, WorksSheet::crew),
        calendar,
        all(SurroundingsSheet.NEIGHBOURS, SurroundingsSheet::neighbour),
        all(SurroundingsSheet.MONITORING, SurroundingsSheet::monitoring),
        all(SurroundingsSheet.PEOPLE, SurroundingsSheet::person),
        all(SurroundingsSheet.REVISIONS, SurroundingsSheet::revision),
        defaults.assumptions(project.documentUnits()),
        all(LoadSheet.SPEC, LoadSheet::read),
        new SupportMembers(
            all(MemberSheet.STRUTS, MemberSheet::strut),
            all(MemberSheet.WALERS, MemberSheet::waler),
            all(MemberSheet.ANCHORS, MemberSheet::anchor),
            all(MemberSheet.FOOTINGS, MemberSheet::footing),
            all(MemberSheet.BLOCKS, MemberSheet::block)));
  }

  private Row form(SheetSpec spec) {
    return book.form(spec).orElseThrow();
  }

  private <T> List<T> all(SheetSpec spec, Function<Row, T> read) {
    return book.rows(spec).stream().map(read).toList();
  }
}
