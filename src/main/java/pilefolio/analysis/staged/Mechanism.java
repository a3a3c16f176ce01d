package pilefolio.analysis.staged;

/** How a wall fails that has no equilibrium. */
public enum Mechanism {
  /** It turns about a support: the ground in front of its foot gives way. */
  ROTATION_ABOUT_SUPPORT,
  /** It turns about a point in the ground below the excavation: a cantilever tips over. */
  ROTATION_ABOUT_FOOT,
  /** It turns about a point above the excavation: its foot slides out without support. */
  FOOT_SLIDES_OUT,
  /** It slides as a whole. */
  TRANSLATION,
  /** It moves away from a support that cannot pull it back. */
  SUPPORT_LOST,
  /** It has an equilibrium, but displaced beyond the limit. */
  DISPLACEMENT_BEYOND_LIMIT,
  /** No equilibrium was found within the allowed number of steps, and no mechanism either. */
  NOT_FOUND
}
