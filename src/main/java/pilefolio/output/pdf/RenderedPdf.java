package pilefolio.output.pdf;

/**
 * A finished document.
 *
 * @param content the file
 * @param pages where everything stands
 */
// The bytes are copied in and out; such records are never compared.
@SuppressWarnings("ArrayRecordComponent")
public record RenderedPdf(byte[] content, PageIndex pages) {
  /** Copies the bytes. */
  public RenderedPdf {
    content = content.clone();
  }

  @Override
  public byte[] content() {
    return content.clone();
  }
}
