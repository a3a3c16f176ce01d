package pilefolio.model;

import java.util.Optional;
import pilefolio.findings.CellRef;

/**
 * A steel beam.
 *
 * @param at the first cell of the row
 * @param id name by which piles call it
 * @param section designation in the section tables
 * @param grade name of the steel
 * @param yieldStrength yield strength, a pressure
 * @param orientation how it stands in the bore
 * @param splice splice, in words
 */
public record Beam(
    CellRef at,
    String id,
    String section,
    String grade,
    Value yieldStrength,
    BeamOrientation orientation,
    Optional<String> splice) {}
