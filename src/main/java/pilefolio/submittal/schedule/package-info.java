/**
 * The schedules of the works: piles, quantities. Numbers are coherent SI and unrounded, picked from
 * the model and from the results of the checks; documents and spreadsheets print them.
 */
package pilefolio.submittal.schedule;
