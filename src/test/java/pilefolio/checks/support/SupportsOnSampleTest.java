package pilefolio.checks.support;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import pilefolio.checks.CheckResult;
import pilefolio.checks.Checks;
import pilefolio.checks.Job;
import pilefolio.checks.situation.SupportStiffness;
import pilefolio.checks.stability.SupportForces;
import pilefolio.findings.CellRef;
import pilefolio.model.AnchorBlock;
import pilefolio.model.Beam;
import pilefolio.model.BeamOrientation;
import pilefolio.model.BondGround;
import pilefolio.model.BucklingCurve;
import pilefolio.model.FarEnd;
import pilefolio.model.GroundAnchor;
import pilefolio.model.RakerFooting;
import pilefolio.model.Stage;
import pilefolio.model.StageConditions;
import pilefolio.model.StrutMember;
import pilefolio.model.Submission;
import pilefolio.model.Support;
import pilefolio.model.SupportKind;
import pilefolio.model.SupportMembers;
import pilefolio.model.TendonKind;
import pilefolio.model.Value;
import pilefolio.model.Waler;
import pilefolio.model.WalerSetting;
import pilefolio.model.WallRun;
import pilefolio.standards.DesignBases;
import pilefolio.trace.Calculation;
import pilefolio.trace.Printer;
import pilefolio.trace.Verdict.Result;
import pilefolio.units.DisplaySystem;
import pilefolio.units.Units;
import pilefolio.workbook.WorkbookReader;

/** Members of supports on the small sample, whose first run is given a support. */
class SupportsOnSampleTest {
  private static final CellRef CELL = new CellRef("test", 1, 1);
  private static final List<String> BASES =
      List.of("us-asd", "ec7-da1", "ec7-da2", "ec7-da3", "aashto-lrfd");
  private static Submission sample;

  @BeforeAll
  static void read() throws IOException {
    sample =
        WorkbookReader.read(Path.of("sample-input", "ten-piles.xlsx")).submission().orElseThrow();
  }

  private static Value value(double number, String unit) {
    return Value.entered(number, Units.of(unit), CELL, "test");
  }

  private static Support support(SupportKind kind, double inclination) {
    return new Support(
        CELL,
        "S1",
        kind,
        value(9.2, "m"),
        value(2.5, "m"),
        value(inclination, "°"),
        Optional.empty(),
        "",
        Optional.of(value(40, "kN")),
        Optional.empty());
  }

  private static Job job(String basis, Support support, SupportMembers members) {
    WallRun run = sample.runs().get(0);
    List<Stage> stages =
        sample.stages(run).stream()
            .map(
                s ->
                    new Stage(
                        s.at(),
                        s.run(),
                        s.number(),
                        s.description(),
                        s.excavation(),
                        Optional.empty(),
                        Optional.empty(),
                        s.permanentSurcharge(),
                        s.variableSurcharge(),
                        List.of("S1"),
                        StageConditions.USUAL))
            .toList();
    List<Beam> beams =
        Stream.concat(
                sample.beams().stream(),
                Stream.of(
                    new Beam(
                        CELL,
                        "W",
                        "HEB 300",
                        "S355",
                        value(355, "MPa"),
                        BeamOrientation.STRONG,
                        Optional.empty())))
            .toList();
    Submission s =
        new Submission(
            sample.project(),
            sample.basis(),
            sample.methods(),
            sample.profiles(),
            List.of(run),
            stages,
            List.of(support),
            beams,
            sample.mixes(),
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
            sample.localLoads(),
            members);
    return new Job(s, DesignBases.find(basis).orElseThrow());
  }

  private static Map<String, List<CheckResult>> results(Job job) {
    Map<String, List<CheckResult>> results =
        SupportChecks.ALL.stream()
            .flatMap(check -> check.run(job).stream())
            .collect(Collectors.groupingBy(r -> r.check().id()));
    for (List<CheckResult> one : results.values()) {
      for (CheckResult result : one) {
        for (Calculation calculation : result.calculations()) {
          new Printer(DisplaySystem.SI).print(calculation);
          new Printer(DisplaySystem.US).print(calculation);
        }
      }
    }
    return results;
  }

  private static void satisfied(Map<String, List<CheckResult>> results, String check, int count) {
    assertEquals(count, results.getOrDefault(check, List.of()).size(), check);
    for (CheckResult result : results.get(check)) {
      assertEquals(Result.SATISFIED, result.verdict().result(), check + ": " + result.verdict());
    }
  }

  private static StrutMember strut(Optional<String> beam) {
    boolean tube = beam.isEmpty();
    return new StrutMember(
        CELL,
        "S1",
        beam,
        tube ? Optional.of(value(323.9, "mm")) : Optional.empty(),
        tube ? Optional.of(value(10, "mm")) : Optional.empty(),
        tube ? Optional.of(value(355, "MPa")) : Optional.empty(),
        BucklingCurve.C,
        value(8, "m"),
        value(1, ""),
        Optional.empty(),
        value(0.5, "kN/m"),
        value(20, "K"),
        value(0.3, ""),
        tube ? Optional.of(value(4000, "kPa")) : Optional.empty(),
        FarEnd.WALL);
  }

  private static Waler waler(WalerSetting setting) {
    return new Waler(CELL, "S1", "W", value(1, ""), value(3, ""), value(0.5, "m"), setting);
  }

  private static GroundAnchor anchor(
      BondGround ground, Optional<Value> free, Optional<Value> bondStress) {
    return new GroundAnchor(
        CELL,
        "S1",
        TendonKind.STRAND,
        value(3, ""),
        value(140, "mm²"),
        value(1860, "MPa"),
        Optional.of(value(1600, "MPa")),
        value(195, "GPa"),
        free,
        Optional.empty(),
        value(150, "mm"),
        ground,
        Optional.empty(),
        bondStress,
        value(1, "m"));
  }

  private static SupportMembers of(
      List<StrutMember> struts,
      List<Waler> walers,
      List<GroundAnchor> anchors,
      List<RakerFooting> footings,
      List<AnchorBlock> blocks) {
    return new SupportMembers(struts, walers, anchors, footings, blocks);
  }

  @Test
  void nothingIsAskedOfSupportsThatOthersDesign() {
    assertEquals(
        Map.of(), results(job("us-asd", support(SupportKind.PROP, 0), SupportMembers.NONE)));
    assertTrue(Checks.ALL.containsAll(SupportChecks.ALL));
  }

  @Test
  void strutsOnEveryBasis() {
    for (String basis : BASES) {
      for (Optional<String> beam : List.of(Optional.of("W"), Optional.<String>empty())) {
        Job job =
            job(
                basis,
                support(SupportKind.PROP, 0),
                of(
                    List.of(strut(beam)),
                    List.of(waler(WalerSetting.LEVEL)),
                    List.of(),
                    List.of(),
                    List.of()));
        var results = results(job);
        int combinations = job.combinations().size();
        boolean en = basis.startsWith("ec7");
        satisfied(results, en ? "strut-buckling-en" : "strut-buckling-aisc", combinations);
        assertTrue(!results.containsKey(en ? "strut-buckling-aisc" : "strut-buckling-en"), basis);
        satisfied(results, "waler-bending", combinations);
        satisfied(results, "strut-temperature", 1);
        double stiffness =
            SupportStiffness.perMetre(job, job.submission().supports().get(0)).orElseThrow();
        double area = beam.isPresent() ? 149.08e-4 : Math.PI * 0.3139 * 0.01;
        double modulus = en ? 210e9 : 199.948e9;
        assertEquals(modulus * area / 4 / 2.5, stiffness, 2e-4 * stiffness);
      }
    }
  }

  /** E·A·cos²i/(L·s) of three strands of 140 mm² at 15° over 5.68 m, every 2.5 m. */
  @Test
  void stiffnessOfAnAnchor() {
    Job job =
        job(
            "us-asd",
            support(SupportKind.ANCHOR, 15),
            of(
                List.of(),
                List.of(),
                List.of(
                    anchor(BondGround.SAND_DENSE, Optional.of(value(5.68, "m")), Optional.empty())),
                List.of(),
                List.of()));
    assertEquals(
        5381e3,
        SupportStiffness.perMetre(job, job.submission().supports().get(0)).orElseThrow(),
        1e3);
  }

  @Test
  void anchorsOnEveryBasis() {
    for (String basis : BASES) {
      for (Optional<Value> stress :
          List.of(Optional.<Value>empty(), Optional.of(value(100, "kPa")))) {
        Support support = support(SupportKind.ANCHOR, 25);
        Job job =
            job(
                basis,
                support,
                of(
                    List.of(),
                    List.of(waler(WalerSetting.SQUARE)),
                    List.of(anchor(BondGround.SAND_DENSE, Optional.empty(), stress)),
                    List.of(),
                    List.of()));
        var results = results(job);
        int combinations = job.combinations().size();
        satisfied(results, "anchor-bond-length", combinations);
        satisfied(results, "anchor-tendon", combinations);
        satisfied(results, "anchor-tests", combinations);
        assertEquals(1, results.get("anchor-free-length").size());
        CheckResult free = results.get("anchor-free-length").get(0);
        assertTrue(free.value("L_f") - free.value("L_req") < 0.5);
        assertEquals(0, free.value("L_f") % 0.5, 1e-9);
        CheckResult bond = results.get("anchor-bond-length").get(0);
        assertEquals(
            SupportForces.of(job, support).get(0).perMetre() * 2.5 / Math.cos(Math.toRadians(25)),
            bond.value("N"),
            1e-6);
      }
    }
  }

  @Test
  void groundWithoutLoadTransferNeedsABondStress() {
    var results =
        results(
            job(
                "us-asd",
                support(SupportKind.ANCHOR, 25),
                of(
                    List.of(),
                    List.of(),
                    List.of(anchor(BondGround.CHALK, Optional.empty(), Optional.empty())),
                    List.of(),
                    List.of())));
    CheckResult bond = results.get("anchor-bond-length").get(0);
    assertEquals(Result.NOT_CHECKED, bond.verdict().result());
    assertTrue(bond.verdict().toString().contains("bond stress"), bond.verdict().toString());
  }

  @Test
  void rakersAndBlocks() {
    for (String basis : BASES) {
      RakerFooting footing =
          new RakerFooting(
              CELL,
              "S1",
              value(1.5, "m"),
              value(1.5, "m"),
              value(0.8, "m"),
              value(30, "°"),
              value(0, "mm"),
              value(150, "kPa"),
              value(0.4, ""),
              value(20, "kN"));
      Job raker =
          job(
              basis,
              support(SupportKind.RAKER, 40),
              of(
                  List.of(strut(Optional.of("W"))),
                  List.of(),
                  List.of(),
                  List.of(footing),
                  List.of()));
      satisfied(results(raker), "raker-footing", raker.combinations().size());
      AnchorBlock block =
          new AnchorBlock(
              CELL, "S1", value(0.3, "m"), value(1.5, "m"), Optional.empty(), value(20, "m"));
      Job tied =
          job(
              basis,
              support(SupportKind.DEADMAN, 0),
              of(List.of(), List.of(), List.of(), List.of(), List.of(block)));
      satisfied(results(tied), "deadman-resistance", tied.combinations().size());
      satisfied(results(tied), "deadman-distance", tied.combinations().size());
    }
  }
}
