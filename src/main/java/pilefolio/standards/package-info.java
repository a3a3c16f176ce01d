/**
 * Design bases, partial and safety factors, steel sections, materials, tolerance sets and other
 * tables, kept as data files with loaders that refuse what they do not understand.
 *
 * <p>Lengths in m, stresses in Pa, forces in N, masses in kg unless a name says otherwise.
 */
package pilefolio.standards;
