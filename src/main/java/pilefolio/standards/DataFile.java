package pilefolio.standards;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.MapperFeature;
import com.fasterxml.jackson.databind.cfg.CoercionAction;
import com.fasterxml.jackson.databind.cfg.CoercionInputShape;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.type.LogicalType;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;

/** Strict reader of the data files: nothing unknown, nothing missing, nothing converted. */
final class DataFile {
  private static final JsonMapper MAPPER =
      JsonMapper.builder()
          .enable(JsonParser.Feature.STRICT_DUPLICATE_DETECTION)
          .enable(
              DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES,
              DeserializationFeature.FAIL_ON_MISSING_CREATOR_PROPERTIES,
              DeserializationFeature.FAIL_ON_NULL_CREATOR_PROPERTIES,
              DeserializationFeature.FAIL_ON_NULL_FOR_PRIMITIVES,
              DeserializationFeature.FAIL_ON_NUMBERS_FOR_ENUMS,
              DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
          .disable(MapperFeature.ALLOW_COERCION_OF_SCALARS)
          .withCoercionConfig(
              LogicalType.Textual,
              config -> {
                config.setCoercion(CoercionInputShape.Integer, CoercionAction.Fail);
                config.setCoercion(CoercionInputShape.Float, CoercionAction.Fail);
                config.setCoercion(CoercionInputShape.Boolean, CoercionAction.Fail);
              })
          .build();

  private DataFile() {}

  /**
   * Reads a file that ships with the program.
   *
   * @param name path below {@code standards/}
   * @throws IllegalStateException if the file is missing or not as declared
   */
  static <T> T read(String name, TypeReference<T> type) {
    String path = "/standards/" + name;
    try (InputStream in = DataFile.class.getResourceAsStream(path)) {
      if (in == null) {
        throw new IllegalStateException("missing " + path);
      }
      return parse(new String(in.readAllBytes(), java.nio.charset.StandardCharsets.UTF_8), type);
    } catch (IOException e) {
      throw new UncheckedIOException(path, e);
    }
  }

  /** Reads a text as strictly as a file. */
  static <T> T parse(String json, TypeReference<T> type) throws IOException {
    return MAPPER.readValue(json, type);
  }
}
