package pilefolio.output.pdf;

/**
 * A file that travels inside the document.
 *
 * @param name file name
 * @param mediaType such as {@code application/json}
 * @param content the bytes
 * @param description one line for the reader
 * @param relationship what the file is to the document
 */
// The bytes are copied in and out; such records are never compared.
@SuppressWarnings("ArrayRecordComponent")
public record Attachment(
    String name, String mediaType, byte[] content, String description, Relationship relationship) {

  /** What an attached file is to the document (ISO 32000-2, associated files). */
  public enum Relationship {
    /** The document was made from it. */
    SOURCE("Source"),
    /** Holds the data that the document shows. */
    DATA("Data"),
    /** Adds to the document. */
    SUPPLEMENT("Supplement");

    private final String pdfName;

    Relationship(String pdfName) {
      this.pdfName = pdfName;
    }

    String pdfName() {
      return pdfName;
    }
  }

  /** Copies the bytes. */
  public Attachment {
    content = content.clone();
  }

  @Override
  public byte[] content() {
    return content.clone();
  }
}
