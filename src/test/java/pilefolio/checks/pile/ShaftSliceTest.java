package pilefolio.checks.pile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import pilefolio.findings.CellRef;
import pilefolio.model.Drainage;
import pilefolio.model.GroundProfile;
import pilefolio.model.Layer;
import pilefolio.model.LayerState;
import pilefolio.model.SoilKind;
import pilefolio.model.Value;
import pilefolio.units.Unit;
import pilefolio.units.Units;

/** How the shaft is cut into slices, and which of them count. */
class ShaftSliceTest {
  private static final CellRef CELL = new CellRef("test", 1, 1);

  private static Value value(double number, Unit unit) {
    return Value.entered(number, unit, CELL, "test");
  }

  private static Layer layer(String name, SoilKind kind, double top) {
    boolean clay = kind == SoilKind.CLAY;
    return new Layer(
        CELL,
        name,
        "",
        kind,
        value(top, Units.M),
        value(18, Units.KN_M3),
        value(20, Units.KN_M3),
        clay ? Drainage.UNDRAINED : Drainage.DRAINED,
        clay ? Optional.empty() : Optional.of(value(32, Units.DEG)),
        Optional.empty(),
        clay ? Optional.of(value(80, Units.KPA)) : Optional.empty(),
        clay ? Optional.of(value(5, Units.of("kPa/m"))) : Optional.empty(),
        value(0, Units.ONE),
        value(0, Units.ONE),
        value(0, Units.ONE),
        Optional.of(value(20, Units.ONE)),
        "",
        new LayerState(
            Optional.empty(),
            value(1, Units.ONE),
            Optional.empty(),
            Optional.empty(),
            Optional.empty()));
  }

  private static List<ShaftSlice> cut(List<Layer> layers, double water) {
    GroundProfile profile =
        new GroundProfile(
            CELL, "G", "", value(70, Units.M), Optional.empty(), value(12, Units.CELSIUS), layers);
    return ShaftSlice.cut(profile, new ShaftSlice.Place(94, 85, 90, water, 0.6));
  }

  private static double counted(List<ShaftSlice> slices) {
    return slices.stream().mapToDouble(ShaftSlice::counted).sum();
  }

  /** 9 m of clay: the top 1.5 m and the lowest diameter of 0.6 m do not count. */
  @Test
  void clayLosesItsTopAndItsFoot() {
    List<ShaftSlice> slices = cut(List.of(layer("clay", SoilKind.CLAY, 100)), 80);
    assertEquals(9.0, slices.stream().mapToDouble(ShaftSlice::thickness).sum(), 1e-9);
    assertEquals(9.0 - 1.5 - 0.6, counted(slices), 1e-9);
    assertFalse(slices.get(0).counts());
    assertFalse(slices.get(slices.size() - 1).counts());
    assertTrue(slices.stream().allMatch(s -> s.thickness() <= 1.5 + 1e-9));
    for (int i = 1; i < slices.size(); i++) {
      assertEquals(slices.get(i - 1).bottom(), slices.get(i).top(), 1e-12);
    }
  }

  @Test
  void sandCountsInFullAndFillNotAtAll() {
    assertEquals(9.0, counted(cut(List.of(layer("sand", SoilKind.SAND, 100)), 80)), 1e-9);
    List<Layer> filled =
        List.of(layer("fill", SoilKind.FILL, 100), layer("sand", SoilKind.SAND, 92.5));
    assertEquals(7.5, counted(cut(filled, 80)), 1e-9);
  }

  @Test
  void slicesEndAtTheToeOfThePrimariesAndAtTheWater() {
    List<ShaftSlice> slices = cut(List.of(layer("sand", SoilKind.SAND, 100)), 91.2);
    for (ShaftSlice slice : slices) {
      assertEquals(slice.bottom() >= 90 - 1e-9, slice.besidePrimaries());
      assertEquals(slice.top() <= 91.2 + 1e-9 ? 20e3 : 18e3, slice.unitWeight().si(), 1e-6);
    }
  }

  /** 80 kPa at 100 m and 5 kPa more every metre. */
  @Test
  void undrainedStrengthGrowsFromTheTopOfItsLayer() {
    Layer clay = layer("clay", SoilKind.CLAY, 100);
    assertEquals(80e3, ShaftSlice.shearStrength(clay, 100), 1e-6);
    assertEquals(130e3, ShaftSlice.shearStrength(clay, 90), 1e-6);
  }
}
