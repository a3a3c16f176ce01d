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
 * @param run id of the run whose displacement is measured
 * @param neighbour name of the neighbour whose settlement is measured
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
    Optional<String> run,
    Optional<String> neighbour,
    String frequency,
    String responsible) {}
