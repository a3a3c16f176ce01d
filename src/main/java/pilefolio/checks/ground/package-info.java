/** Design values of the ground, earth-pressure coefficients and pressures on the wall. */
package pilefolio.checks.ground;
