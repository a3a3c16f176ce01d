package pilefolio.output.pdf;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/**
 * Where style sheets and templates come from: a folder of the user's first, then those shipped with
 * the program. Names are relative paths below that folder; nothing outside is ever read.
 */
public final class TemplateSource {
  private static final String SHIPPED = "/templates/";

  private final Path folder;

  private TemplateSource(Path folder) {
    this.folder = folder;
  }

  /** Only the templates shipped with the program. */
  public static TemplateSource shipped() {
    return new TemplateSource(null);
  }

  /** A folder first, then the shipped templates for whatever the folder does not hold. */
  public static TemplateSource folder(Path folder) {
    return new TemplateSource(folder.toAbsolutePath().normalize());
  }

  /** The user's folder, when there is one. */
  public Optional<Path> folder() {
    return Optional.ofNullable(folder);
  }

  /**
   * Reads one file.
   *
   * @param name relative path with forward slashes
   * @return empty when there is no such file, or when the name leads out of the folder
   */
  public Optional<byte[]> read(String name) {
    if (!isPlain(name)) {
      return Optional.empty();
    }
    try {
      if (folder != null) {
        Path path = folder.resolve(name).normalize();
        if (path.startsWith(folder)
            && Files.isRegularFile(path)
            && path.toRealPath().startsWith(folder.toRealPath())) {
          return Optional.of(Files.readAllBytes(path));
        }
      }
      try (InputStream in = TemplateSource.class.getResourceAsStream(SHIPPED + name)) {
        return in == null ? Optional.empty() : Optional.of(in.readAllBytes());
      }
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read template " + name, e);
    }
  }

  private static boolean isPlain(String name) {
    return !name.isEmpty()
        && !name.startsWith("/")
        && !name.contains("..")
        && !name.contains(":")
        && !name.contains("\\");
  }
}
