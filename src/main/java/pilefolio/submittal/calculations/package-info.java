/** The calculation package as plain records of final texts, for the template to set. */
package pilefolio.submittal.calculations;
