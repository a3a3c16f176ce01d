package pilefolio.output.pdf;

import java.nio.charset.StandardCharsets;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;

/** The metadata packet; it must say the same as the information dictionary. */
final class Xmp {
  /** Name of the program as readers show it. */
  static final String CREATOR = "Pilefolio";

  private Xmp() {}

  /** The packet, declaring PDF/A-3u (ISO 19005-3). */
  static byte[] packet(DocumentInfo info, String producer) {
    String date =
        info.date()
            .truncatedTo(ChronoUnit.SECONDS)
            .atOffset(ZoneOffset.UTC)
            .format(DateTimeFormatter.ofPattern("yyyy-MM-dd'T'HH:mm:ssxxx"));
    StringBuilder body = new StringBuilder();
    body.append(alternative("dc:title", info.title()));
    if (!info.author().isEmpty()) {
      body.append("<dc:creator><rdf:Seq><rdf:li>")
          .append(escape(info.author()))
          .append("</rdf:li></rdf:Seq></dc:creator>\n");
    }
    if (!info.subject().isEmpty()) {
      body.append(alternative("dc:description", info.subject()));
    }
    body.append("<dc:language><rdf:Bag><rdf:li>")
        .append(escape(info.language()))
        .append("</rdf:li></rdf:Bag></dc:language>\n");
    if (!info.keywords().isEmpty()) {
      body.append("<pdf:Keywords>").append(escape(info.keywords())).append("</pdf:Keywords>\n");
    }
    String packet =
        """
        <?xpacket begin="\uFEFF" id="W5M0MpCehiHzreSzNTczkc9d"?>
        <x:xmpmeta xmlns:x="adobe:ns:meta/">
        <rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#">
        <rdf:Description rdf:about=""
         xmlns:dc="http://purl.org/dc/elements/1.1/"
         xmlns:xmp="http://ns.adobe.com/xap/1.0/"
         xmlns:pdf="http://ns.adobe.com/pdf/1.3/"
         xmlns:pdfaid="http://www.aiim.org/pdfa/ns/id/">
        <pdfaid:part>3</pdfaid:part>
        <pdfaid:conformance>U</pdfaid:conformance>
        <dc:format>application/pdf</dc:format>
        %s<pdf:Producer>%s</pdf:Producer>
        <xmp:CreatorTool>%s</xmp:CreatorTool>
        <xmp:CreateDate>%s</xmp:CreateDate>
        <xmp:ModifyDate>%s</xmp:ModifyDate>
        </rdf:Description>
        </rdf:RDF>
        </x:xmpmeta>
        <?xpacket end="w"?>
        """
            .formatted(body, escape(producer), CREATOR, date, date);
    return packet.getBytes(StandardCharsets.UTF_8);
  }

  private static String alternative(String name, String text) {
    return "<%s><rdf:Alt><rdf:li xml:lang=\"x-default\">%s</rdf:li></rdf:Alt></%s>\n"
        .formatted(name, escape(text), name);
  }

  private static String escape(String text) {
    return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
  }
}
