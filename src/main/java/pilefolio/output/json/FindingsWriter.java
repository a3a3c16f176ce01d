package pilefolio.output.json;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import pilefolio.findings.Finding;

/** Writes findings as JSON for scripts. */
public final class FindingsWriter {
  private FindingsWriter() {}

  /**
   * The findings of a workbook: {@code {workbook, findings:[{severity, code, sheet, cell, found,
   * expected}]}}.
   */
  public static byte[] write(String workbook, List<Finding> findings) {
    ObjectMapper mapper = new ObjectMapper().enable(SerializationFeature.INDENT_OUTPUT);
    ObjectNode root = mapper.createObjectNode();
    root.put("workbook", workbook);
    ArrayNode list = root.putArray("findings");
    for (Finding finding : findings) {
      ObjectNode node = list.addObject();
      node.put("severity", finding.severity().name().toLowerCase(Locale.ROOT));
      node.put("code", finding.code());
      node.put("sheet", finding.where().sheet());
      String address = finding.where().address();
      node.put("cell", address.substring(address.indexOf('!') + 1));
      node.put("found", finding.found());
      node.put("expected", finding.expected());
    }
    try {
      return (mapper.writeValueAsString(root).replace("\r\n", "\n") + "\n")
          .getBytes(StandardCharsets.UTF_8);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException(e);
    }
  }
}
