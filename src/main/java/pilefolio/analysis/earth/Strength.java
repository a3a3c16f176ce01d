package pilefolio.analysis.earth;

/** Shear strength of a layer as the pressure calculation uses it. */
public sealed interface Strength permits DrainedStrength, UndrainedStrength {}
