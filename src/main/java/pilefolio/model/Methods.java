package pilefolio.model;

import java.util.Optional;
import pilefolio.findings.CellRef;

/**
 * Choices of method that the user answers for.
 *
 * @param at the first cell of the form
 * @param earthPressure how earth pressure coefficients are found
 * @param cantilever how a wall without support is brought into equilibrium
 * @param propped how a supported wall is brought into equilibrium
 * @param allowableMargin where the margin stands on an allowable-stress basis
 * @param tensionCrack what is assumed where active pressure would be tension
 * @param minimumFluidWeight least active pressure as an equivalent fluid, weight per volume
 * @param waterRegime pore pressures on the two faces
 * @param toleranceSet id of the set of tolerances
 * @param positionTolerance position at the guide wall in place of the set's, a length
 * @param verticalityTolerance n of 1 in n in place of the set's
 * @param sigmaConvention what share of piles a tolerance stands for
 * @param openJointLimit largest probability that one joint opens, a share
 * @param overlapRequired least overlap that must remain, a length
 * @param cutOffMargin depth below excavation level down to which the overlap must remain, a length
 * @param freshPileFactor distance to a fresh pile in diameters, centre to centre
 * @param freshPileTime time after which a pile is no longer fresh, a time
 * @param strengthModel how concrete gains strength
 * @param largestAgeDifference of the two primaries beside a secondary, a time
 * @param capacityReserve share of a rated value of plant that may be used
 * @param ground choices about the ground that few jobs need
 * @param apparent apparent pressure of walls with several supports
 */
public record Methods(
    CellRef at,
    EarthPressureMethod earthPressure,
    CantileverMethod cantilever,
    ProppedMethod propped,
    AllowableMargin allowableMargin,
    TensionCrack tensionCrack,
    Value minimumFluidWeight,
    WaterRegime waterRegime,
    String toleranceSet,
    Optional<Value> positionTolerance,
    Optional<Value> verticalityTolerance,
    SigmaConvention sigmaConvention,
    Value openJointLimit,
    Value overlapRequired,
    Value cutOffMargin,
    Value freshPileFactor,
    Value freshPileTime,
    StrengthModel strengthModel,
    Value largestAgeDifference,
    Value capacityReserve,
    GroundChoices ground,
    ApparentMethod apparent) {}
