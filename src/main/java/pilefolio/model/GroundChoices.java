package pilefolio.model;

import java.util.Optional;

/**
 * Choices about the ground that few jobs need.
 *
 * @param loadForm how pressures of line and point loads are found
 * @param atRest how the at-rest coefficient is found where a layer gives none
 * @param seismicHorizontal horizontal coefficient of the earthquake, a share of gravity
 * @param seismicVertical vertical coefficient, positive upward
 * @param softenedDepth depth below the excavation over which undrained ground has softened, a
 *     length; 0 for none
 * @param softenedShare share of the undrained strength left at the excavation, 0 to 1
 */
public record GroundChoices(
    LoadForm loadForm,
    AtRestRule atRest,
    Optional<Value> seismicHorizontal,
    Value seismicVertical,
    Value softenedDepth,
    Value softenedShare) {}
