package pilefolio.model;

import java.util.Optional;

/**
 * What the analysis of a wall run needs beside its geometry.
 *
 * @param stiffness bending stiffness per length of wall, N·m²/m; from the section if empty
 * @param slopeBehind slope of the ground behind, rad, rising away from the wall positive
 * @param excavationWidth width of the excavation in front, m
 * @param excavationLength length of the excavation along the run, m
 * @param displacementLimit greatest horizontal displacement allowed, m
 * @param settlement how the ground behind settles
 */
public record RunAnalysis(
    Optional<Value> stiffness,
    Value slopeBehind,
    Optional<Value> excavationWidth,
    Optional<Value> excavationLength,
    Optional<Value> displacementLimit,
    SettlementForecast settlement) {}
