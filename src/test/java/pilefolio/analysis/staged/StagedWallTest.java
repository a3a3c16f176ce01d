package pilefolio.analysis.staged;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Walls through stages, against exact solutions of their own equations. */
class StagedWallTest {
  private static final DrySand SAND = new DrySand(0, 18, 0.5, 1.0 / 3, 3, 15_000, 0);

  private static void near(double expected, double actual, double share) {
    assertEquals(expected, actual, Math.abs(expected) * share);
  }

  private static WallStage stage(
      String name, SoilSide behind, SoilSide front, double dig, ElasticSupport... supports) {
    return new WallStage(name, behind, front, dig, 60_000, List.of(supports), List.of());
  }

  private static List<StageState> converged(StagedWall wall) {
    List<StageState> states =
        assertInstanceOf(StagedOutcome.Converged.class, StagedAnalysis.of(wall)).stages();
    for (StageState s : states) {
      assertTrue(s.balance().forceRatio() < 1e-6, s.stage().name());
      assertTrue(s.balance().momentRatio() < 1e-6, s.stage().name());
      WallNode toe = s.nodes().get(s.nodes().size() - 1);
      if (wall.toe() == ToeCondition.FREE) {
        assertEquals(0, toe.shearBelow() / s.balance().appliedForce(), 1e-6);
        assertEquals(0, toe.moment() / s.balance().appliedMoment(), 1e-6);
      }
    }
    return states;
  }

  /** X²/(2γ)·(1/(K0−Ka) + 1/(Kp−K0)) − X·(L+D) + K0·γ·(L²−D²)/2 = 0 with X = k·y; exact. */
  @Test
  void rigidWallThatOnlySlides() {
    WallStage dug = new WallStage("dig", SAND, SAND.dugTo(-4), -4, 1e12, List.of(), List.of());
    StageState s =
        converged(
                new StagedWall(
                    0, -12, 0.5, ToeCondition.GUIDED, GroundMemory.NONE, 1, List.of(dug)))
            .get(0);
    double k0 = 0.5;
    double b = 20;
    double a = (1 / (k0 - 1.0 / 3) + 1 / (3 - k0)) / 36;
    double c = k0 * 18 * (144 - 64) / 2;
    double x = (b - Math.sqrt(b * b - 4 * a * c)) / (2 * a);
    near(22.5, x, 1e-9);
    near(1.5e-3, s.nodes().get(0).displacement(), 1e-3);
    double active = 0;
    double passive = 0;
    for (WallSlice slice : s.slices()) {
      double h = slice.upper() - slice.lower();
      active += slice.behind().top().state() == SoilState.ACTIVE ? h : 0;
      passive += slice.front().bottom().state() == SoilState.PASSIVE ? h : 0;
    }
    assertEquals(7.5, active, 0.51);
    assertEquals(0.5, passive, 0.51);
  }

  private static StagedWall proppedCantilever(boolean placedUnloaded) {
    ElasticSupport prop = new ElasticSupport("P", 0, 20_000, 0, ElasticSupport.Action.ONE_WAY);
    double first = placedUnloaded ? 0 : 12;
    WallStage one = loaded("one", first);
    WallStage two = loaded("place", first, prop);
    WallStage three = loaded("more", 42, prop);
    return new StagedWall(
        0, -6, 0.1, ToeCondition.FIXED, GroundMemory.NONE, 1, List.of(one, two, three));
  }

  private static WallStage loaded(String name, double w, ElasticSupport... supports) {
    return new WallStage(
        name,
        SoilSide.nothing(),
        SoilSide.nothing(),
        0,
        40_000,
        List.of(supports),
        List.of(new DirectLoad.Pressure(0, -6, w, w)));
  }

  /** R = (w2·H⁴/(8·EI))/(H³/(3·EI) + 1/k_p); exact. */
  @Test
  void propPlacedOnABentCantilever() {
    List<StageState> states = converged(proppedCantilever(false));
    near(48.600e-3, states.get(0).nodes().get(0).displacement(), 1e-4);
    near(0.0486, states.get(1).nodes().get(0).displacement(), 1e-4);
    assertEquals(0, states.get(1).supports().get(0).force(), 1e-9);
    StageState last = states.get(2);
    near(65.676, last.supports().get(0).force(), 1e-4);
    near(51.884e-3, last.nodes().get(0).displacement(), 1e-4);
    near(361.946, last.nodes().get(last.nodes().size() - 1).moment(), 1e-4);
    near(42 * 6 - 65.676, -last.balance().toeForce(), 1e-4);
    near(361.946, -last.balance().toeMoment(), 1e-4);
  }

  /** The same prop placed on the straight wall takes 91.946 kN/m: the offset must not be lost. */
  @Test
  void propPlacedBeforeAnyLoadTakesMore() {
    near(91.946, converged(proppedCantilever(true)).get(2).supports().get(0).force(), 1e-4);
  }

  static StagedWall strutted(GroundMemory memory, double element) {
    DrySand behind = new DrySand(0, 18, 0.5, 1.0 / 3, 3, 15_000, 10);
    ElasticSupport strut = new ElasticSupport("S1", -1.5, 20_000, 0, ElasticSupport.Action.ONE_WAY);
    return new StagedWall(
        0,
        -12,
        element,
        ToeCondition.FREE,
        memory,
        1.2,
        List.of(
            stage("dig 2 m", behind, SAND.dugTo(-2), -2),
            stage("strut", behind, SAND.dugTo(-2), -2, strut),
            stage("dig 6 m", behind, SAND.dugTo(-6), -6, strut)));
  }

  /** Values of another program of our own with 120, 240 and 480 elements, which agree. */
  @Test
  void struttedFlexibleWall() {
    List<StageState> states = converged(strutted(GroundMemory.NONE, 0.1));
    StageState one = states.get(0);
    near(7.942e-3, one.nodes().get(0).displacement(), 5e-3);
    near(5.033e-3, one.displacementAt(-1.5), 5e-3);
    near(0.790e-3, one.displacementAt(-12), 5e-3);
    near(35.52, one.greatestMoment().value(), 5e-3);
    assertEquals(-3.50, one.greatestMoment().level(), 0.02);
    near(-1.37, one.leastMoment().value(), 1e-2);
    assertEquals(-8.95, one.leastMoment().level(), 0.05);
    near(5.033e-3, states.get(1).displacementAt(-1.5), 5e-3);
    StageState three = states.get(2);
    near(76.81, three.supports().get(0).force(), 5e-3);
    near(4.373e-3, three.nodes().get(0).displacement(), 5e-3);
    near(8.873e-3, three.displacementAt(-1.5), 5e-3);
    near(14.560e-3, three.greatestDisplacement().value(), 5e-3);
    assertEquals(-4.38, three.greatestDisplacement().level(), 0.05);
    near(0.907e-3, three.displacementAt(-12), 5e-3);
    near(-105.58, three.leastMoment().value(), 5e-3);
    assertEquals(-4.53, three.leastMoment().level(), 0.02);
    near(58.56, three.greatestMoment().value(), 5e-3);
    assertEquals(-8.73, three.greatestMoment().level(), 0.02);
    assertTrue(three.passiveMobilisation() > 0.2 && three.passiveMobilisation() < 1);
  }

  @Test
  void halfTheElementsGiveNearlyTheSame() {
    StageState fine = converged(strutted(GroundMemory.NONE, 0.05)).get(2);
    StageState coarse = converged(strutted(GroundMemory.NONE, 0.4)).get(2);
    near(fine.supports().get(0).force(), coarse.supports().get(0).force(), 2e-3);
    near(fine.leastMoment().value(), coarse.leastMoment().value(), 5e-3);
  }

  // Free earth support knows no passive pressure behind, so the ground there has none.
  private static StagedOutcome tiedWall(double toe, double modulus, boolean passiveBehind) {
    DrySand sand = new DrySand(0, 18, 0.5, 1.0 / 3, 3, modulus, 0);
    DrySand behind = new DrySand(0, 18, 0.5, 1.0 / 3, passiveBehind ? 3 : 1.0 / 3, modulus, 0);
    ElasticSupport tie = new ElasticSupport("T", -1.5, 1e7, 0, ElasticSupport.Action.ONE_WAY);
    return StagedAnalysis.of(
        StagedWall.of(
            0,
            toe,
            GroundMemory.NONE,
            List.of(
                stage("place", behind, sand.dugTo(-1.5), -1.5, tie),
                stage("dig", behind, sand.dugTo(-8), -8, tie))));
  }

  /** Free-earth embedment below 8 m with the tie 1.5 m down is 3.0561 m. */
  @ParameterizedTest
  @ValueSource(doubles = {3.0565, 3.06, 3.07, 3.2, 4})
  void deeperThanFreeEarthItStands(double embedment) {
    StagedOutcome outcome = tiedWall(-8 - embedment, 1e7, false);
    assertInstanceOf(StagedOutcome.Converged.class, outcome, outcome.toString());
  }

  @ParameterizedTest
  @ValueSource(doubles = {3.0555, 3.05, 3.0, 2.5, 1})
  void shallowerThanFreeEarthItTurnsAboutTheTie(double embedment) {
    StagedOutcome.Collapsed c =
        assertInstanceOf(StagedOutcome.Collapsed.class, tiedWall(-8 - embedment, 1e7, false));
    assertEquals(1, c.index());
    assertEquals("dig", c.stage());
    assertEquals(Mechanism.ROTATION_ABOUT_SUPPORT, c.mechanism());
    assertTrue(c.reason().contains("support T"), c.reason());
    assertEquals(1, c.stages().size());
  }

  /** At the free-earth depth force and moment are those of free earth support. */
  @Test
  void nearTheLimitItIsFreeEarthSupport() {
    StageState s = tiedWall(-8 - 3.0565, 1e7, false).stages().get(1);
    near(114.542, s.supports().get(0).force(), 2e-3);
    near(-300.03, s.leastMoment().value(), 2e-3);
    assertTrue(s.passiveMobilisation() > 0.99);
  }

  /**
   * Passive pressure behind the wall above the tie holds a little more: ½·γ·a²·(K_p − K_a)·⅔·a of
   * moment about the tie, so the least depth D solves ½·γ·[(K_p − K_a)·D²·(6.5 + ⅔·D) − …] = 0 with
   * that moment taken off.
   */
  @Test
  void passivePressureAboveTheTieHelps() {
    double low = 2.5;
    double high = 3.0561;
    for (int i = 0; i < 60; i++) {
      double d = (low + high) / 2;
      double h = 8 + d;
      double drive = 9.0 / 3 * h * h * (2 * h / 3 - 1.5) - 27 * d * d * (6.5 + 2 * d / 3);
      double helped = drive - 9 * 1.5 * 1.5 * (3 - 1.0 / 3) * 1.5 / 3;
      if (helped > 0) {
        low = d;
      } else {
        high = d;
      }
    }
    assertInstanceOf(StagedOutcome.Converged.class, tiedWall(-8 - low - 0.01, 1e6, true));
    assertInstanceOf(StagedOutcome.Collapsed.class, tiedWall(-8 - low + 0.002, 1e6, true));
  }

  @Test
  void cantileverTipsOver() {
    StagedOutcome.Collapsed c =
        assertInstanceOf(
            StagedOutcome.Collapsed.class,
            StagedAnalysis.of(
                StagedWall.of(
                    0,
                    -6,
                    GroundMemory.NONE,
                    List.of(
                        stage("dig 2 m", SAND, SAND.dugTo(-2), -2),
                        stage("dig 4.5 m", SAND, SAND.dugTo(-4.5), -4.5)))));
    assertEquals(1, c.index());
    assertEquals(Mechanism.ROTATION_ABOUT_FOOT, c.mechanism());
  }

  @Test
  void takingTheOnlyStrutAwayIsNamed() {
    StagedWall wall = strutted(GroundMemory.PLASTIC_MOVEMENT, 0.1);
    List<WallStage> stages = new java.util.ArrayList<>(wall.stages());
    DrySand behind = (DrySand) stages.get(0).behind();
    stages.add(stage("take S1 out", behind, SAND.dugTo(-9), -9));
    StagedOutcome.Collapsed c =
        assertInstanceOf(
            StagedOutcome.Collapsed.class,
            StagedAnalysis.of(StagedWall.of(0, -12, wall.memory(), stages)));
    assertEquals("take S1 out", c.stage());
    assertTrue(c.reason().endsWith("removed in this stage: S1"), c.reason());
  }

  @Test
  void wallWithoutGroundInFrontSlides() {
    StagedOutcome.Collapsed c =
        assertInstanceOf(
            StagedOutcome.Collapsed.class,
            StagedAnalysis.of(
                new StagedWall(
                    0,
                    -6,
                    0.1,
                    ToeCondition.GUIDED,
                    GroundMemory.NONE,
                    1,
                    List.of(stage("dig", SAND, SoilSide.nothing(), -6)))));
    assertEquals(Mechanism.TRANSLATION, c.mechanism());
  }

  @Test
  void pulledOffItsStrutTheWallIsLost() {
    // A pull toward the ground above a strut that cannot pull.
    ElasticSupport strut = new ElasticSupport("S", -2, 20_000, 0, ElasticSupport.Action.ONE_WAY);
    WallStage place =
        new WallStage(
            "place", SoilSide.nothing(), SoilSide.nothing(), -3, 60_000, List.of(strut), List.of());
    WallStage pull =
        new WallStage(
            "pull",
            SoilSide.nothing(),
            SoilSide.nothing(),
            -3,
            60_000,
            List.of(strut),
            List.of(new DirectLoad.Force(0, -50)));
    StagedOutcome.Collapsed c =
        assertInstanceOf(
            StagedOutcome.Collapsed.class,
            StagedAnalysis.of(
                new StagedWall(
                    0, -4, 0.1, ToeCondition.PINNED, GroundMemory.NONE, 1, List.of(place, pull))));
    assertEquals(Mechanism.SUPPORT_LOST, c.mechanism());
  }

  @Test
  void softGroundThatMovesTooFarIsToldApart() {
    DrySand soft = new DrySand(0, 18, 0.5, 1.0 / 3, 3, 20, 0);
    StagedOutcome.Collapsed c =
        assertInstanceOf(
            StagedOutcome.Collapsed.class,
            StagedAnalysis.of(
                StagedWall.of(
                    0, -14, GroundMemory.NONE, List.of(stage("dig", soft, soft.dugTo(-4), -4)))));
    assertEquals(Mechanism.DISPLACEMENT_BEYOND_LIMIT, c.mechanism());
  }

  @ParameterizedTest
  @EnumSource(GroundMemory.class)
  void anchorIsStressedToItsForceAndPullsTheWallBack(GroundMemory memory) {
    StagedWall wall = strutted(memory, 0.1);
    DrySand behind = (DrySand) wall.stages().get(0).behind();
    ElasticSupport anchor =
        ElasticSupport.inclined(
            "A", -1.5, 30_000, Math.toRadians(15), 2.4, 200, ElasticSupport.Action.ONE_WAY);
    near(30_000 * Math.pow(Math.cos(Math.toRadians(15)), 2) / 2.4, anchor.stiffness(), 1e-12);
    List<StageState> s =
        converged(
            StagedWall.of(
                0,
                -12,
                memory,
                List.of(
                    wall.stages().get(0),
                    stage("stress", behind, SAND.dugTo(-2), -2, anchor),
                    stage("dig", behind, SAND.dugTo(-6), -6, anchor))));
    double lockOff = 200 * Math.cos(Math.toRadians(15)) / 2.4;
    near(lockOff, s.get(1).supports().get(0).force(), 1e-9);
    assertTrue(s.get(1).displacementAt(-1.5) < s.get(0).displacementAt(-1.5));
    SupportForce last = s.get(2).supports().get(0);
    near(
        lockOff + anchor.stiffness() * (last.displacement() - s.get(1).displacementAt(-1.5)),
        last.force(),
        1e-9);
  }

  /** A wall loaded and unloaded again: only ground with a memory keeps it bent. */
  @ParameterizedTest
  @EnumSource(GroundMemory.class)
  void loadTakenAway(GroundMemory memory) {
    SoilSide side = SoilSide.uniform(new SpringLaw(0, -60, 60, 20_000, 0));
    List<WallStage> stages =
        IntStream.range(0, 2)
            .mapToObj(
                i ->
                    new WallStage(
                        "stage " + i,
                        SoilSide.nothing(),
                        side,
                        0,
                        50_000,
                        List.of(),
                        i == 0 ? List.of(new DirectLoad.Force(0, 106.7)) : List.of()))
            .toList();
    List<StageState> s =
        StagedAnalysis.of(new StagedWall(0, -20, 0.1, ToeCondition.FREE, memory, 1, stages))
            .stages();
    double left = s.get(1).nodes().get(0).displacement();
    if (memory == GroundMemory.NONE) {
      assertEquals(0, left, 1e-9);
    } else {
      assertTrue(left > 1e-3, "left " + left);
      SidePoint p = s.get(1).slices().get(0).front().top();
      assertEquals(p.law().earth(p.movement() - p.plastic()), p.earth(), 1e-9);
    }
  }

  /** A member added to a bent wall takes only what comes after; a wall that softens relaxes. */
  @Test
  void stiffnessThatChanges() {
    WallStage bent = loaded("bent", 12);
    WallStage stiffer = with(bent, "stiffer", 80_000, 12);
    WallStage more = with(bent, "more", 80_000, 42);
    WallStage softer = with(bent, "softer", 20_000, 42);
    List<StageState> s =
        converged(
            new StagedWall(
                0,
                -6,
                0.1,
                ToeCondition.FIXED,
                GroundMemory.NONE,
                1,
                List.of(bent, stiffer, more, softer)));
    double unit = Math.pow(6, 4) / 8;
    near(12 * unit / 40_000, s.get(0).nodes().get(0).displacement(), 1e-6);
    near(12 * unit / 40_000, s.get(1).nodes().get(0).displacement(), 1e-6);
    double after = 12 * unit / 40_000 + 30 * unit / 80_000;
    near(after, s.get(2).nodes().get(0).displacement(), 1e-6);
    assertTrue(s.get(3).nodes().get(0).displacement() > after);
  }

  private static WallStage with(WallStage o, String name, double ei, double w) {
    return new WallStage(
        name,
        o.behind(),
        o.front(),
        o.excavationLevel(),
        ei,
        o.supports(),
        List.of(new DirectLoad.Pressure(0, -6, w, w)));
  }

  /** Taken-away support: its force comes onto the others, and equilibrium holds again. */
  @Test
  void strutTakenAwayLoadsTheOther() {
    DrySand behind = new DrySand(0, 18, 0.5, 1.0 / 3, 3, 15_000, 10);
    ElasticSupport upper = new ElasticSupport("S1", -1.5, 20_000, 0, ElasticSupport.Action.ONE_WAY);
    ElasticSupport lower =
        new ElasticSupport("S2", -4.5, 20_000, 50, ElasticSupport.Action.ONE_WAY);
    List<StageState> s =
        converged(
            StagedWall.of(
                0,
                -12,
                GroundMemory.PLASTIC_MOVEMENT,
                List.of(
                    stage("dig 2", behind, SAND.dugTo(-2), -2),
                    stage("S1", behind, SAND.dugTo(-2), -2, upper),
                    stage("dig 5", behind, SAND.dugTo(-5), -5, upper),
                    stage("S2", behind, SAND.dugTo(-5), -5, upper, lower),
                    stage("dig 7", behind, SAND.dugTo(-7), -7, upper, lower),
                    stage("S1 out", behind, SAND.dugTo(-7), -7, lower))));
    double before = s.get(4).supports().get(1).force();
    assertTrue(s.get(5).supports().get(0).force() > before);
    Envelope e = Envelope.of(s).get(20);
    assertTrue(e.leastMoment() <= e.greatestMoment());
    assertEquals(
        s.stream().mapToDouble(x -> x.nodes().get(20).moment()).max().orElseThrow(),
        e.greatestMoment(),
        0);
  }
}
