package pilefolio.model;

import java.util.Optional;
import pilefolio.findings.CellRef;

/**
 * A steel beam.
 *
 * @param at the first cell of the row
 * @param id name by which piles call it
 * @param section designation in the section tables; empty until it is sized
 * @param grade name of the steel
 * @param yieldStrength yield strength, a pressure
 * @param orientation how it stands in the bore
 * @param splice splice, in words
 * @param family family or depth class from which the lightest section that suffices is taken;
 *     absent if the section is given
 */
public record Beam(
    CellRef at,
    String id,
    String section,
    String grade,
    Value yieldStrength,
    BeamOrientation orientation,
    Optional<String> splice,
    Optional<String> family) {

  /** A beam of a given section. */
  public Beam(
      CellRef at,
      String id,
      String section,
      String grade,
      Value yieldStrength,
      BeamOrientation orientation,
      Optional<String> splice) {
    this(at, id, section, grade, yieldStrength, orientation, splice, Optional.empty());
  }

  /** The same beam with another section. */
  public Beam with(String designation) {
    return new Beam(at, id, designation, grade, yieldStrength, orientation, splice, family);
  }
}
