package pilefolio.submittal.method;

import java.util.Map;

/**
 * One row of the workbook or one part of the works with its facts.
 *
 * @param id name by which the documents call it
 * @param text what it is, in words; may be empty
 * @param words further words by name, such as a kind; an absent one has no entry
 * @param facts numbers by name; a value that nobody gave has no entry, and the template says so
 */
public record Item(String id, String text, Map<String, String> words, Map<String, Fact> facts) {}
