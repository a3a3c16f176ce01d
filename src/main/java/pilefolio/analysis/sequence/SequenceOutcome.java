package pilefolio.analysis.sequence;

/** Either a programme that keeps every rule or an account of what stands in the way. */
public sealed interface SequenceOutcome permits Programme, Infeasible {}
