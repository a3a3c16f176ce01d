package pilefolio.submittal;

/**
 * What made the package, and from what.
 *
 * @param version version of the engine
 * @param workbook file name of the workbook
 * @param sha256 hash of the workbook, in hexadecimal
 */
public record Engine(String version, String workbook, String sha256) {}
