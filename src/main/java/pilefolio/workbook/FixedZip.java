package pilefolio.workbook;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.time.LocalDateTime;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;

/** Packs a zip archive again with one fixed time, so that the same parts give the same bytes. */
public final class FixedZip {
  private static final LocalDateTime TIME = LocalDateTime.of(1980, 1, 1, 0, 0);

  private FixedZip() {}

  /**
   * The same archive with fixed times.
   *
   * @throws IOException if the bytes are not a zip archive
   */
  public static byte[] repacked(byte[] archive) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream(archive.length);
    try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(archive));
        ZipOutputStream out = new ZipOutputStream(bytes)) {
      for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
        ZipEntry copy = new ZipEntry(entry.getName());
        copy.setTimeLocal(TIME);
        out.putNextEntry(copy);
        in.transferTo(out);
        out.closeEntry();
      }
    }
    return bytes.toByteArray();
  }
}
