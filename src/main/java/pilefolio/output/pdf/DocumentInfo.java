package pilefolio.output.pdf;

import java.time.Instant;

/**
 * What the file says about itself.
 *
 * @param title title shown by readers
 * @param author person or firm; may be empty
 * @param subject may be empty
 * @param keywords separated by commas; may be empty
 * @param language language of the text, such as {@code en-GB}
 * @param date time printed as creation and modification time; taken from the run, never from the
 *     clock, so that the same run gives the same bytes
 */
public record DocumentInfo(
    String title, String author, String subject, String keywords, String language, Instant date) {}
