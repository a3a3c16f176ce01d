package pilefolio.submittal.method;

import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import pilefolio.trace.Reference;
import pilefolio.units.DisplaySystem;

/**
 * Rules of the trade that a method statement states and no check works out. Each is given in SI and
 * in rounded US units, as the trade writes it there. The source of its fact is a mark, explained in
 * {@link #marks}.
 */
enum Practice {
  /** Clear gap of the guide wall over the diameter. */
  GUIDE_GAP("D + 25 mm to D + 50 mm", "D + 1 in to D + 2 in", Known.ICE),
  /** Line of the inner face of the guide wall. */
  GUIDE_LINE("15 mm in 3 m", "5/8 in in 10 ft", Known.ICE),
  /** Verticality of the inner face of the guide wall. */
  GUIDE_VERTICAL("1 in 200", "1 in 200", Known.ICE),
  /** Depth of the guide wall. */
  GUIDE_DEPTH("0.8 m to 1.5 m", "2.5 ft to 5 ft", Known.PRACTICE),
  /** Thickness of each leg of the guide wall. */
  GUIDE_LEG("0.3 m to 0.5 m", "12 in to 20 in", Known.PRACTICE),
  /** Concrete of the guide wall. */
  GUIDE_CONCRETE("C20/25 to C25/30", "3000 psi to 3600 psi", Known.PRACTICE),
  /** Top of the guide wall above the platform. */
  GUIDE_TOP("50 mm to 100 mm", "2 in to 4 in", Known.PRACTICE),
  /** Least strength or age of the guide wall before piles are bored through it. */
  GUIDE_AGE("1 to 3 days, or 5 MPa", "1 to 3 days, or 700 psi", Known.PRACTICE),
  /** Depth beyond which a trench for the guide wall is supported. */
  TRENCH_DEPTH("1.2 m", "5 ft", Known.PRACTICE),
  /** Setting out of a pile centre. */
  SETTING_OUT("5 mm to 10 mm", "1/4 in to 3/8 in", Known.PRACTICE),
  /** Mast or leader before boring starts. */
  MAST_PLUMB("1 in 200", "1 in 200", Known.PRACTICE),
  /** Where verticality is read in the first metres. */
  READINGS(
      "2 m, 4 m and 6 m, then every 5 m, and at the toe",
      "6 ft, 12 ft and 20 ft, then every 15 ft, and at the toe",
      Known.PRACTICE),
  /** Depth in which a deviation can still be corrected. */
  CORRECTION_DEPTH("6 m", "20 ft", Known.PRACTICE),
  /** Rise of the auger before the first concrete. */
  FIRST_LIFT("150 mm to 300 mm", "6 in to 12 in", Known.UFGS),
  /** Level to which a doubtful length is bored again. */
  REBORE("1.5 m to 2 m", "5 ft to 6.5 ft", Known.PRACTICE),
  /** Time by which a beam follows the auger. */
  BEAM_START("10 minutes", "10 minutes", Known.PRACTICE),
  /** Stop of the pump that can be waited out. */
  SHORT_STOP("15 minutes", "15 minutes", Known.PRACTICE),
  /** Stop after which the bore is given up. */
  LONG_STOP(
      "30 to 45 minutes, by the retarder", "30 to 45 minutes, by the retarder", Known.PRACTICE),
  /** Vibration of a stalled beam. */
  BEAM_VIBRATION("5 minutes", "5 minutes", Known.PRACTICE),
  /** Height above level at which a stalled beam is drawn again. */
  BEAM_SHORT("0.5 m", "20 in", Known.PRACTICE),
  /** Height to which heads are broken by machine above cut-off. */
  HEAD_HAND("50 mm to 75 mm", "2 in to 3 in", Known.PRACTICE),
  /** Age or strength before heads are broken. */
  HEAD_AGE("7 days, or 10 MPa to 15 MPa", "7 days, or 1500 psi to 2200 psi", Known.PRACTICE),
  /** Height to which rotating parts are guarded. */
  GUARD_HEIGHT("0.5 m to 2 m above ground", "20 in to 6.5 ft above ground", Known.PRACTICE),
  /** Distance kept from a turning auger. */
  AUGER_DISTANCE("3 m", "10 ft", Known.PRACTICE),
  /** Zone below the spoil ejection point of a cased auger. */
  SPOIL_ZONE("3 m to 5 m", "10 ft to 16 ft", Known.PRACTICE),
  /** Distance kept while a blocked concrete line is cleared. */
  LINE_CLEARING("5 m to 10 m", "16 ft to 33 ft", Known.PRACTICE),
  /** Mast fall zone. */
  MAST_FALL("the mast height and a tenth", "the mast height and a tenth", Known.PRACTICE),
  /** Wind at which lifting stops unless the manual says less. */
  WIND("9 m/s to 10 m/s", "20 mph to 22 mph", Known.PRACTICE),
  /** Extent of an excavation stage open at one time. */
  FRESH_TRAFFIC("24 to 48 hours", "24 to 48 hours", Known.PRACTICE),
  /** Readings before the works as a baseline. */
  BASELINE("three readings", "three readings", Known.PRACTICE),
  /** Time within which pile records are handed in. */
  RECORD_TIME("24 hours", "24 hours", Known.PRACTICE),
  /** Validity of calibration. */
  CALIBRATION("12 months", "12 months", Known.PRACTICE),
  /** Accuracy of the depth instrument. */
  DEPTH_ACCURACY("0.1 m or 1 %", "4 in or 1 %", Known.PRACTICE),
  /** Accuracy of the volume instrument after calibration. */
  VOLUME_ACCURACY("3 % to 5 %", "3 % to 5 %", Known.PRACTICE),
  /** Length of lost signal that is reported. */
  LOST_SIGNAL("1 m", "3 ft", Known.PRACTICE),
  /** Concrete sampling. */
  SAMPLING("one set for 50 m³ or a day", "one set for 65 yd³ or a day", Known.PRACTICE),
  /** Ages at which samples are tested. */
  TEST_AGES("7 and 28 days", "7 and 28 days", Known.PRACTICE),
  /** Extra ages for primaries. */
  EARLY_AGES("1, 2 and 3 days", "1, 2 and 3 days", Known.PRACTICE),
  /** Review of an amber trigger. */
  AMBER_REVIEW("24 hours", "24 hours", Known.PRACTICE),
  /** Rotation without advance that counts as mining. */
  IDLE_ROTATION("1 minute", "1 minute", Known.PRACTICE),
  /** Wait before a collapsed bore is bored again. */
  COLLAPSE_WAIT("24 hours", "24 hours", Known.PRACTICE),
  /** Access to the bottom of an excavation. */
  EGRESS(
      "within 25 ft of travel where it is 4 ft deep or more",
      "within 25 ft of travel where it is 4 ft deep or more",
      Known.OSHA_651),
  /** Spoil kept back from an edge. */
  SPOIL_BACK("2 ft back from the edge", "2 ft back from the edge", Known.OSHA_651),
  /** Clearance to lines up to 50 kV. */
  LINE_50("10 ft up to 50 kV", "10 ft up to 50 kV", Known.OSHA_1408),
  /** Clearance to lines above 50 kV. */
  LINE_200(
      "15 ft above 50 kV to 200 kV; 20 ft to 350 kV; 25 ft to 500 kV; 35 ft to 750 kV; 45 ft to 1000 kV",
      "15 ft above 50 kV to 200 kV; 20 ft to 350 kV; 25 ft to 500 kV; 35 ft to 750 kV; 45 ft to 1000 kV",
      Known.OSHA_1408);

  private final String si;
  private final String us;
  private final Known known;

  Practice(String si, String us, Known known) {
    this.si = si;
    this.us = us;
    this.known = known;
  }

  /** How a rule is known. */
  private enum Known {
    PRACTICE("P", Reference.PRACTICE),
    ICE(
        "G",
        Reference.read(
            "ICE Specification for Piling and Embedded Retaining Walls, 1st ed. (1996)", "15.8")),
    UFGS("U", Reference.read("UFGS 02465", "3.2.3")),
    OSHA_651("E", Reference.quoted("29 CFR 1926.651", "")),
    OSHA_1408("L", Reference.quoted("29 CFR 1926.1408", "Table A"));

    private final String mark;
    private final Reference reference;

    Known(String mark, Reference reference) {
      this.mark = mark;
      this.reference = reference;
    }
  }

  /** Every rule by its name in lower case. */
  static Map<String, Fact> facts(DisplaySystem system) {
    Map<String, Fact> facts = new LinkedHashMap<>();
    for (Practice rule : values()) {
      facts.put(
          rule.name().toLowerCase(java.util.Locale.ROOT),
          new Fact(system == DisplaySystem.SI ? rule.si : rule.us, rule.known.mark));
    }
    return Collections.unmodifiableMap(facts);
  }

  /** What the marks of the rules stand for: mark and reference. */
  static List<List<String>> marks() {
    return Arrays.stream(Known.values()).map(k -> List.of(k.mark, k.reference.text())).toList();
  }
}
