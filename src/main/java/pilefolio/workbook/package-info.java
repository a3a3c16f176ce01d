/**
 * The workbook: its sheets and columns declared once as data, and what comes from that declaration:
 * the reader with its findings, the empty workbook, the annotated copy and the guide to the
 * columns.
 *
 * <p>Nothing is computed here beyond comparing cells with each other.
 */
package pilefolio.workbook;
