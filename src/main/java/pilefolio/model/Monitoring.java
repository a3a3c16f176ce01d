package pilefolio.model;

import java.util.Optional;
import pilefolio.findings.CellRef;

/**
 * One kind of measurement.
 *
 * @param at the first cell of the row
 * @param instrument what measures
 * @param location where
 * @param quantity what is measured, in words
 * @param amber first trigger, in the unit of the cell
 * @param red second trigger, in the unit of the cell
 * @param frequency how often, in words
 * @param responsible who reads it
 */
public record Monitoring(
    CellRef at,
    String instrument,
    String location,
    String quantity,
    Optional<Value> amber,
    Optional<Value> red,
    String frequency,
    String responsible) {}
