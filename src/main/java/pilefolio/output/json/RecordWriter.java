package pilefolio.output.json;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.OptionalDouble;
import pilefolio.model.Project;
import pilefolio.output.json.RecordLine.Side;
import pilefolio.standards.Combination;
import pilefolio.standards.DesignBasis;
import pilefolio.submittal.Answer;
import pilefolio.submittal.InputLine;
import pilefolio.submittal.Submittal;
import pilefolio.trace.Verdict.Result;
import pilefolio.units.Unit;

/**
 * Writes {@code record.json}: every input, every line of every check and every verdict, for scripts
 * and for comparing two issues of a job.
 *
 * <p>Each line's {@code substituted} is plain text that a general expression parser evaluates to
 * {@code si}; {@code formula} does the same with the values of the check's other lines. The same
 * submittal gives the same bytes.
 */
public final class RecordWriter {
  /** How the input echo marks a default taken for an empty cell. */
  private static final String DEFAULT = " (default)";

  private static final MathContext TWELVE = new MathContext(12, RoundingMode.HALF_UP);

  private final Submittal submittal;
  private final Map<String, Integer> pages;
  private final JsonGenerator json;

  private RecordWriter(Submittal submittal, Map<String, Integer> pages, JsonGenerator json) {
    this.submittal = submittal;
    this.pages = pages;
    this.json = json;
  }

  /**
   * The record as UTF-8 JSON.
   *
   * @param submittal the content
   * @param pages page of the calculation package for each answer's anchor; may be empty
   */
  public static byte[] write(Submittal submittal, Map<String, Integer> pages) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    DefaultIndenter indenter = new DefaultIndenter("  ", "\n");
    DefaultPrettyPrinter printer = new DefaultPrettyPrinter();
    printer.indentObjectsWith(indenter);
    printer.indentArraysWith(indenter);
    try (JsonGenerator json = new JsonFactory().createGenerator(bytes)) {
      json.setPrettyPrinter(printer);
      new RecordWriter(submittal, pages, json).write();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    bytes.writeBytes("\n".getBytes(StandardCharsets.UTF_8));
    return bytes.toByteArray();
  }

  private void write() throws IOException {
    json.writeStartObject();
    project(submittal.job().submission().project());
    basis(submittal.job().basis());
    json.writeArrayFieldStart("inputs");
    for (InputLine input : submittal.inputs()) {
      input(input);
    }
    json.writeEndArray();
    json.writeArrayFieldStart("checks");
    for (Answer answer : submittal.answers()) {
      check(answer);
    }
    json.writeEndArray();
    json.writeArrayFieldStart("notChecked");
    for (Answer answer : submittal.with(Result.NOT_CHECKED)) {
      json.writeStartObject();
      json.writeStringField("id", answer.checkId());
      json.writeStringField("subject", answer.result().subject().label());
      json.writeStringField("reason", answer.verdict().reason());
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeObjectFieldStart("engine");
    json.writeStringField("version", submittal.engine().version());
    json.writeStringField("input_sha256", submittal.engine().sha256());
    json.writeStringField("workbook", submittal.engine().workbook());
    json.writeEndObject();
    json.writeEndObject();
  }

  private void project(Project project) throws IOException {
    json.writeObjectFieldStart("project");
    json.writeStringField("title", project.title());
    json.writeStringField("projectNumber", project.projectNumber());
    json.writeStringField("documentNumber", project.documentNumber());
    json.writeStringField("client", project.client());
    json.writeStringField("site", project.site());
    json.writeStringField("contractor", project.contractor());
    json.writeStringField("revision", project.revision());
    json.writeStringField("status", project.status().label());
    json.writeStringField("date", project.date().toString());
    json.writeStringField("units", project.documentUnits().name());
    json.writeEndObject();
  }

  private void basis(DesignBasis basis) throws IOException {
    json.writeObjectFieldStart("basis");
    json.writeStringField("id", basis.id());
    json.writeStringField("title", basis.title());
    json.writeArrayFieldStart("combinations");
    for (Combination combination : basis.combinations()) {
      json.writeString(combination.id());
    }
    json.writeEndArray();
    json.writeArrayFieldStart("overrides");
    for (DesignBasis.Entered entered : basis.overrides()) {
      json.writeStartObject();
      json.writeStringField("factor", entered.key());
      json.writeStringField("combination", entered.combination());
      json.writeStringField("published", entered.published());
      json.writeStringField("entered", entered.entered());
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private void input(InputLine input) throws IOException {
    json.writeStartObject();
    json.writeStringField("sheet", input.cell().sheet());
    String address = input.cell().address();
    json.writeStringField("cell", address.substring(address.indexOf('!') + 1));
    json.writeStringField("name", input.name());
    boolean assumed = input.text().endsWith(DEFAULT);
    String text =
        assumed
            ? input.text().substring(0, input.text().length() - DEFAULT.length())
            : input.text();
    BigDecimal number = input.si().isPresent() ? number(text) : null;
    if (number == null) {
      json.writeStringField("value", text);
    } else {
      json.writeNumberField("value", number);
    }
    json.writeStringField("unit", input.unit());
    optional("si", input.si());
    if (assumed) {
      json.writeBooleanField("default", true);
    }
    json.writeEndObject();
  }

  private static BigDecimal number(String text) {
    try {
      return new BigDecimal(text.strip().replace('−', '-'));
    } catch (NumberFormatException e) {
      return null;
    }
  }

  private void check(Answer answer) throws IOException {
    json.writeStartObject();
    json.writeStringField("id", answer.checkId());
    json.writeStringField("title", answer.title());
    json.writeStringField("subject", answer.result().subject().label());
    json.writeStringField("result", answer.words());
    OptionalDouble utilisation =
        answer.derivation() ? OptionalDouble.empty() : answer.verdict().utilisation();
    optional("utilisation", utilisation);
    Integer page = pages.get(answer.anchor());
    if (page == null) {
      json.writeNullField("page");
    } else {
      json.writeNumberField("page", page);
    }
    json.writeStringField("number", answer.number());
    json.writeStringField("anchor", answer.anchor());
    json.writeBooleanField("governing", answer.governing());
    if (utilisation.isPresent() && Double.isInfinite(utilisation.getAsDouble())) {
      json.writeStringField("note", "There is a demand and no capacity.");
    }
    if (!answer.verdict().reason().isEmpty()) {
      json.writeStringField("reason", answer.verdict().reason());
    }
    json.writeArrayFieldStart("lines");
    for (RecordLine line : RecordLines.of(answer.result().calculations(), submittal.system())) {
      line(line);
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private void line(RecordLine line) throws IOException {
    json.writeStartObject();
    json.writeStringField("symbol", line.symbol());
    json.writeStringField("formula", line.formula());
    json.writeStringField("substituted", line.substituted());
    json.writeNumberField("value", shown(line.si(), line.unit()));
    json.writeStringField("unit", line.unit().symbol());
    json.writeNumberField("si", line.si());
    json.writeStringField("source", line.source());
    json.writeStringField("kind", line.kind());
    text("printed", line.printed());
    text("meaning", line.meaning());
    json.writeStringField("sheet", line.sheet());
    text("row", line.row());
    text("condition", line.condition());
    for (Side side : line.sides()) {
      json.writeObjectFieldStart(side.name());
      json.writeStringField("formula", side.formula());
      json.writeStringField("substituted", side.substituted());
      json.writeNumberField("value", shown(side.si(), line.unit()));
      json.writeNumberField("si", side.si());
      json.writeEndObject();
    }
    if (!line.sides().isEmpty()) {
      json.writeStringField(
          "must", "left " + RecordLines.ascii(line.sides().get(0).sign()) + " right");
      json.writeBooleanField("satisfied", line.sides().get(0).satisfied());
    }
    json.writeEndObject();
  }

  /**
   * The value in the documents' unit, without the noise that converting leaves in the last bits.
   */
  private static BigDecimal shown(double si, Unit unit) {
    BigDecimal value = new BigDecimal(unit.fromSi(si)).round(TWELVE).stripTrailingZeros();
    return value.scale() < 0 ? value.setScale(0) : value;
  }

  private void text(String name, String value) throws IOException {
    if (!value.isEmpty()) {
      json.writeStringField(name, value);
    }
  }

  private void optional(String name, OptionalDouble value) throws IOException {
    if (value.isPresent() && Double.isFinite(value.getAsDouble())) {
      json.writeNumberField(name, value.getAsDouble());
    } else {
      json.writeNullField(name);
    }
  }
}
