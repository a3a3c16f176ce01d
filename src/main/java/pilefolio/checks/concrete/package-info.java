/** Volumes, supply, rates and heads while concreting, and revolutions while boring. */
package pilefolio.checks.concrete;
