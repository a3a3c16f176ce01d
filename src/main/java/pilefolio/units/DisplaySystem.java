package pilefolio.units;

import java.util.HashMap;
import java.util.Map;

/** The system of units in which documents are written; computing is in SI throughout. */
public enum DisplaySystem {
  /** Metres, kilonewtons, kilopascals. */
  SI,
  /** Feet, kips, pounds per square foot. */
  US;

  private static final Map<Unit, Unit> TO_US = new HashMap<>();

  static {
    pair(Units.M, "ft");
    pair(Units.MM, "in");
    pair(Units.M2, "ft²");
    pair(Units.M3, "yd³");
    pair(Units.MM2, "in²");
    pair(Units.CM2, "in²");
    pair(Units.CM3, "in³");
    pair(Units.CM4, "in⁴");
    pair(Units.CM6, "in⁶");
    pair(Units.KN, "kip");
    pair(Units.KN_M, "kip/ft");
    pair(Units.KNM, "kip·ft");
    pair(Units.KNM_M, "kip·ft/ft");
    pair(Units.KPA, "psf");
    pair(Units.MPA, "psi");
    pair(Units.N_MM2, "ksi");
    pair(Units.GPA, "ksi");
    pair(Units.KN_M3, "pcf");
    pair(Units.M_MIN, "ft/min");
    pair(Units.M3_H, "yd³/h");
    pair(Units.M3_MIN, "yd³/min");
    pair(Units.L, "ft³");
    pair(Units.PA, "psf");
    pair(Units.PA_S, "psf/s");
    pair(Units.MM_M, "in/ft");
    pair(Units.PER_M, "1/ft");
    pair(Units.of("m/s"), "ft/s");
    pair(Units.of("m³/m"), "ft³/ft");
    pair(Units.of("m²/m"), "ft²/ft");
    pair(Units.of("cm²/m"), "in²/ft");
    pair(Units.of("cm³/m"), "in³/ft");
    pair(Units.of("cm⁴/m"), "in⁴/ft");
    pair(Units.of("kPa/m"), "psf/ft");
    pair(Units.of("kN·m²"), "kip·ft²");
    pair(Units.of("kN·m²/m"), "kip·ft²/ft");
    pair(Units.of("mm/min"), "in/min");
    pair(Units.of("mm/s"), "in/s");
  }

  private static void pair(Unit si, String us) {
    TO_US.put(si, Units.of(us));
  }

  /** The unit in which a value declared in an SI unit is printed in this system. */
  public Unit of(Unit declared) {
    return this == SI ? declared : TO_US.getOrDefault(declared, declared);
  }
}
