/**
 * Gathers what was checked into the documents' content: answers in order, chapters, the method
 * statement's facts. Everything a document prints comes from here; nothing is computed later.
 */
package pilefolio.submittal;
