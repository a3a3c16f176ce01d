/** Embedment, margin, support force, and the shear and moment of the wall. */
package pilefolio.checks.stability;
