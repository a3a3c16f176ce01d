package pilefolio.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import pilefolio.checks.sizing.Sizing;
import pilefolio.findings.CellRef;
import pilefolio.model.AxialLoad;
import pilefolio.model.Beam;
import pilefolio.model.BeamInPile;
import pilefolio.model.GroundProfile;
import pilefolio.model.Layer;
import pilefolio.model.Mix;
import pilefolio.model.PileSpec;
import pilefolio.model.Stage;
import pilefolio.model.Submission;
import pilefolio.model.Support;
import pilefolio.model.SupportKind;
import pilefolio.model.Value;
import pilefolio.model.WallRun;
import pilefolio.model.WallType;
import pilefolio.standards.DesignBases;
import pilefolio.trace.Calculation;
import pilefolio.trace.Printer;
import pilefolio.trace.Verdict.Result;
import pilefolio.units.DisplaySystem;
import pilefolio.units.Unit;
import pilefolio.units.Units;
import pilefolio.workbook.WorkbookReader;

/** Checks of structure and capacity on the small sample and on what users may make of it. */
class StructureOnSampleTest {
  private static final CellRef CELL = new CellRef("test", 1, 1);
  private static Submission sample;

  @BeforeAll
  static void read() throws IOException {
    sample =
        WorkbookReader.read(Path.of("sample-input", "ten-piles.xlsx")).submission().orElseThrow();
  }

  private static Value value(double number, Unit unit) {
    return Value.entered(number, unit, CELL, "test");
  }

  /** The sample with its first run alone, changed. */
  private static Submission with(UnaryOperator<WallRun> change, Support... supports) {
    WallRun run = change.apply(sample.runs().get(0));
    List<Stage> stages = new ArrayList<>();
    for (Stage s : sample.stages(sample.runs().get(0))) {
      stages.add(
          new Stage(
              s.at(),
              s.run(),
              s.number(),
              s.description(),
              s.excavation(),
              s.waterBehind(),
              s.waterFront(),
              s.permanentSurcharge(),
              s.variableSurcharge(),
              Arrays.stream(supports).map(Support::id).toList(),
              s.conditions()));
    }
    return copy(
        List.of(run), stages, List.of(supports), sample.beams(), sample.profiles(), sample.mixes());
  }

  private static Submission copy(
      List<WallRun> runs,
      List<Stage> stages,
      List<Support> supports,
      List<Beam> beams,
      List<GroundProfile> profiles,
      List<Mix> mixes) {
    return new Submission(
        sample.project(),
        sample.basis(),
        sample.methods(),
        profiles,
        runs,
        stages,
        supports,
        beams,
        mixes,
        sample.rigs(),
        sample.tools(),
        sample.supply(),
        sample.crews(),
        sample.calendar(),
        sample.neighbours(),
        sample.monitoring(),
        sample.people(),
        sample.revisions(),
        sample.assumptions(),
        sample.localLoads());
  }

  private static WallRun run(WallRun r, WallType type, PileSpec secondary) {
    return new WallRun(
        r.at(),
        r.id(),
        r.description(),
        type,
        r.technique(),
        r.permanent(),
        r.line(),
        r.levels(),
        r.profile(),
        r.guideWall(),
        r.batter(),
        List.of(r.primary(), secondary),
        r.sheets(),
        r.unplannedExcavation(),
        r.rig(),
        r.tool(),
        r.analysis());
  }

  private static PileSpec piles(PileSpec p, Optional<BeamInPile> beam, Optional<AxialLoad> load) {
    return new PileSpec(p.at(), p.kind(), p.diameter(), p.toe(), p.mix(), beam, load);
  }

  private static WallRun loaded(WallRun r, double permanent) {
    AxialLoad load =
        new AxialLoad(value(permanent, Units.KN), value(40, Units.KN), value(50, Units.MM));
    return run(r, r.type(), piles(r.secondary(), r.secondary().beam(), Optional.of(load)));
  }

  private static List<CheckResult> results(Submission submission, String basis, String check) {
    Job job = new Job(submission, DesignBases.find(basis).orElseThrow());
    List<CheckResult> results =
        Checks.ALL.stream()
            .filter(c -> c.id().equals(check))
            .flatMap(c -> c.run(job).stream())
            .toList();
    for (CheckResult result : results) {
      for (Calculation calculation : result.calculations()) {
        new Printer(DisplaySystem.SI).print(calculation);
        new Printer(DisplaySystem.US).print(calculation);
      }
    }
    return results;
  }

  private static void allAre(Result expected, List<CheckResult> results, int count) {
    assertEquals(count, results.size());
    for (CheckResult result : results) {
      assertEquals(
          expected, result.verdict().result(), result.subject().label() + result.verdict());
    }
  }

  @Test
  void theSampleHolds() {
    for (String check :
        List.of(
            "beam-bending", "beam-shear", "beam-lateral-restraint", "beam-foot", "primary-arch")) {
      allAre(Result.SATISFIED, results(with(r -> r), "ec7-da1", check), 2);
      allAre(Result.SATISFIED, results(with(r -> r), "us-asd", check), 1);
    }
    for (String check : List.of("beam-cover", "beam-top-level", "beam-yield-strength")) {
      allAre(Result.SATISFIED, results(with(r -> r), "ec7-da1", check), 1);
    }
    for (String check :
        List.of(
            "beam-free-length",
            "beam-axial-bending",
            "pile-axial-capacity",
            "primary-plain-concrete")) {
      assertEquals(List.of(), results(with(r -> r), "ec7-da1", check), check);
    }
  }

  @Test
  void aLoadOnThePilesIsChecked() {
    Submission light = with(r -> loaded(r, 60));
    allAre(Result.SATISFIED, results(light, "ec7-da1", "pile-axial-capacity"), 2);
    allAre(Result.SATISFIED, results(light, "us-asd", "pile-axial-capacity"), 1);
    allAre(Result.SATISFIED, results(light, "ec7-da1", "beam-axial-bending"), 2);
    allAre(Result.SATISFIED, results(light, "us-asd", "beam-axial-bending"), 1);
    Submission heavy = with(r -> loaded(r, 6000));
    allAre(Result.NOT_SATISFIED, results(heavy, "ec7-da1", "pile-axial-capacity"), 2);
    allAre(Result.NOT_SATISFIED, results(heavy, "us-asd", "pile-axial-capacity"), 1);
    allAre(Result.NOT_SATISFIED, results(heavy, "ec7-da1", "beam-axial-bending"), 2);
    allAre(Result.NOT_SATISFIED, results(heavy, "us-asd", "beam-axial-bending"), 1);
  }

  /**
   * The slices add up to the embedment, and the shaft beside primaries has the smaller perimeter.
   */
  @Test
  void theShaftIsCutAtTheToeOfThePrimaries() {
    CheckResult result = results(with(r -> loaded(r, 60)), "us-asd", "pile-axial-capacity").get(0);
    double thickness = 0;
    for (var row : result.calculations().get(0).table("slices").rows()) {
      thickness += row.values().get("z_1") - row.values().get("z_2");
    }
    assertEquals(7.4 - 2.8, thickness, 1e-9);
    var rows = result.calculations().get(1).table("sand").rows();
    assertEquals(2, rows.get(0).values().get("j_t"));
    assertEquals(0, rows.get(rows.size() - 1).values().get("j_t"));
    // Half angle in one primary of equal size: acos(s/D) = acos(0.8).
    double beside = Math.PI * 0.75 - 2 * Math.acos(0.8) * 0.75;
    assertEquals(beside, rows.get(0).values().get("p_t"), 1e-9);
    assertEquals(Math.PI * 0.75, rows.get(rows.size() - 1).values().get("p_t"), 1e-9);
  }

  private static WallRun unsized(WallRun r, double permanent) {
    WallRun loaded = loaded(r, permanent);
    PileSpec p = loaded.secondary();
    return run(
        loaded,
        loaded.type(),
        new PileSpec(
            p.at(), p.kind(), p.diameter(), Optional.empty(), p.mix(), p.beam(), p.load()));
  }

  /** A toe left to the engine goes as deep as the load asks for, and not below what is known. */
  @Test
  void toesAreSizedForTheLoad() {
    double light = sizedToe(with(r -> unsized(r, 60)), Result.SATISFIED);
    double heavy = sizedToe(with(r -> unsized(r, 480)), Result.SATISFIED);
    assertTrue(heavy < light, heavy + " and " + light);
    assertEquals(light, sizedToe(with(r -> unsized(r, 6000)), Result.NOT_SATISFIED), 1e-9);
  }

  private static double sizedToe(Submission submission, Result expected) {
    Job sized = Sizing.sized(new Job(submission, DesignBases.find("us-asd").orElseThrow()));
    allAre(expected, results(sized.submission(), "us-asd", "pile-axial-capacity"), 1);
    return sized.submission().runs().get(0).secondary().toe().orElseThrow().si();
  }

  @Test
  void anInclinedAnchorLoadsThePile() {
    Support anchor =
        new Support(
            CELL,
            "T1",
            SupportKind.ANCHOR,
            value(9.0, Units.M),
            value(2.4, Units.M),
            value(20, Units.DEG),
            Optional.empty(),
            "",
            Optional.empty(),
            Optional.empty());
    Submission anchored = with(r -> loaded(r, 60), anchor);
    CheckResult result = results(anchored, "us-asd", "pile-axial-capacity").get(0);
    double horizontal = result.value("F_h");
    assertTrue(horizontal > 0);
    double above = result.value("W_x");
    assertTrue(above > 0);
    assertEquals(
        100e3 + above + horizontal * Math.tan(Math.toRadians(20)) * 1.2, result.value("N"), 1e-3);
    CheckResult beam = results(anchored, "us-asd", "beam-axial-bending").get(0);
    // The concrete carries itself; the beam carries what stands on it.
    assertEquals(result.value("N") - above, beam.value("P_r"), 1e-3);
  }

  @Test
  void aMissingBlowCountIsNamed() {
    Submission light = with(r -> loaded(r, 60));
    GroundProfile p = light.profiles().get(0);
    List<Layer> layers = new ArrayList<>(p.layers());
    Layer l = layers.get(2);
    layers.set(
        2,
        new Layer(
            l.at(),
            l.name(),
            l.description(),
            l.kind(),
            l.top(),
            l.unitWeight(),
            l.unitWeightBelow(),
            l.drainage(),
            l.frictionAngle(),
            l.cohesion(),
            l.shearStrength(),
            l.shearStrengthIncrease(),
            l.wallFrictionActive(),
            l.wallFrictionPassive(),
            l.wallAdhesion(),
            Optional.empty(),
            l.source(),
            l.state()));
    GroundProfile without =
        new GroundProfile(
            p.at(), p.id(), p.investigation(), p.base(), p.groundwater(), p.temperature(), layers);
    Submission changed =
        copy(
            light.runs(),
            light.stages(),
            List.of(),
            light.beams(),
            List.of(without),
            light.mixes());
    CheckResult result = results(changed, "us-asd", "pile-axial-capacity").get(0);
    assertEquals(Result.NOT_CHECKED, result.verdict().result());
    assertEquals("the blow count of the layer Sandy gravel is needed", result.verdict().reason());
  }

  @Test
  void aBeamAboveTheConcreteIsCheckedForBuckling() {
    Submission high =
        with(
            r -> {
              BeamInPile b = r.secondary().beam().orElseThrow();
              BeamInPile raised =
                  new BeamInPile(b.beam(), value(9.95, Units.M), b.toe(), b.minimumCover());
              return run(
                  r, r.type(), piles(r.secondary(), Optional.of(raised), r.secondary().load()));
            });
    allAre(Result.SATISFIED, results(high, "ec7-da1", "beam-free-length"), 2);
    allAre(Result.SATISFIED, results(high, "us-asd", "beam-free-length"), 1);
    allAre(Result.SATISFIED, results(high, "us-asd", "beam-top-level"), 1);
  }

  @Test
  void secondariesWithoutBeamAreNotPassedOver() {
    Submission bare =
        with(r -> run(r, r.type(), piles(r.secondary(), Optional.empty(), Optional.empty())));
    allAre(Result.NOT_CHECKED, results(bare, "ec7-da1", "beam-bending"), 1);
    assertEquals(List.of(), results(bare, "ec7-da1", "beam-shear"));
  }

  @Test
  void anUnknownSectionIsNotChecked() {
    Beam b = sample.beams().get(0);
    Beam odd =
        new Beam(
            b.at(), b.id(), "HEX 240", b.grade(), b.yieldStrength(), b.orientation(), b.splice());
    Submission changed =
        copy(
            sample.runs(),
            sample.stages(),
            List.of(),
            List.of(odd),
            sample.profiles(),
            sample.mixes());
    allAre(Result.NOT_CHECKED, results(changed, "ec7-da1", "beam-cover"), 2);
  }

  /** A mix of 10 MPa is no structural concrete: the codes do not cover it and the check says so. */
  @Test
  void hardPrimariesOfWeakConcreteAreNotChecked() {
    Submission hard = with(r -> run(r, WallType.HARD_HARD, r.secondary()));
    allAre(Result.NOT_CHECKED, results(hard, "ec7-da1", "primary-plain-concrete"), 2);
    allAre(Result.NOT_CHECKED, results(hard, "us-asd", "primary-plain-concrete"), 1);
  }
}
