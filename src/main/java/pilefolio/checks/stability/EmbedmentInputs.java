package pilefolio.checks.stability;

import java.util.Optional;
import pilefolio.trace.Given;

/**
 * What an embedment sheet is given besides the pressures, each with its source.
 *
 * @param excavation design excavation level, m
 * @param toe toe level of the wall, m
 * @param increase multiplier of the embedment by the margin of the basis
 * @param support level of the lowest support, m; empty for a cantilever
 */
public record EmbedmentInputs(
    Given excavation, Given toe, Given increase, Optional<Given> support) {}
