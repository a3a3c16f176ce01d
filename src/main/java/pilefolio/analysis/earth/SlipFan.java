package pilefolio.analysis.earth;

/**
 * Intermediate values of the closed-form procedure of EN 1997-1 Annex C.2.
 *
 * @param mTRad angle m_t from the direction of the surface load, rad
 * @param mWRad angle m_w from the wall normal, rad
 * @param vRad rotation v of the slip line between surface and wall, rad; zero or more
 * @param kN coefficient for load normal to the surface, K_n; for φ = 0 it is 1
 */
public record SlipFan(double mTRad, double mWRad, double vRad, double kN) {}
