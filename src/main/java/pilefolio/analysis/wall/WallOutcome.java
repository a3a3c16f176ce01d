package pilefolio.analysis.wall;

/** What a search for embedment ends with. */
public sealed interface WallOutcome permits Equilibrium, NoEquilibrium {}
