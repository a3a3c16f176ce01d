package pilefolio.workbook;

import java.util.List;

/**
 * Cells of one sheet as text, to be written into a workbook.
 *
 * <p>A text becomes a number or a date where its column wants one. After an apostrophe it stays
 * text; after an equals sign it is a formula, followed by {@code ->} and its saved value if it has
 * one.
 *
 * @param head names of the columns; of a form: item, value and unit
 * @param units units of the columns; empty means the usual ones
 * @param rows rows, each as long as the head or shorter
 */
record SheetText(List<String> head, List<String> units, List<List<String>> rows) {}
