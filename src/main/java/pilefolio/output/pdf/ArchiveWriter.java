package pilefolio.output.pdf;

import com.lowagie.text.pdf.PdfArray;
import com.lowagie.text.pdf.PdfDate;
import com.lowagie.text.pdf.PdfDictionary;
import com.lowagie.text.pdf.PdfEncryption;
import com.lowagie.text.pdf.PdfFileSpecification;
import com.lowagie.text.pdf.PdfName;
import com.lowagie.text.pdf.PdfNumber;
import com.lowagie.text.pdf.PdfObject;
import com.lowagie.text.pdf.PdfStream;
import com.lowagie.text.pdf.PdfString;
import com.lowagie.text.pdf.PdfWriter;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.ZoneOffset;
import java.util.GregorianCalendar;
import java.util.List;
import java.util.TimeZone;
import org.xhtmlrenderer.pdf.DefaultPDFCreationListener;
import org.xhtmlrenderer.pdf.ITextRenderer;

/**
 * Turns the file into one for the archive (PDF/A-3u, ISO 19005-3): metadata, colour profile, file
 * id, fixed dates, associated files.
 */
final class ArchiveWriter extends DefaultPDFCreationListener {
  private final DocumentInfo info;
  private final List<Attachment> attachments;
  private final byte[] fileId;

  ArchiveWriter(DocumentInfo info, List<Attachment> attachments, byte[] fileId) {
    this.info = info;
    this.attachments = attachments;
    this.fileId = fileId;
  }

  @Override
  public void preOpen(ITextRenderer renderer) {
    PdfWriter writer = renderer.getWriter();
    writer.setPdfVersion(PdfWriter.VERSION_1_7);
    writer.setCompressionLevel(9);
    writer.setViewerPreferences(PdfWriter.DisplayDocTitle);
  }

  @Override
  public void onClose(ITextRenderer renderer) {
    PdfWriter writer = renderer.getWriter();
    PdfDictionary about = writer.getInfo();
    put(about, PdfName.TITLE, info.title());
    put(about, PdfName.AUTHOR, info.author());
    put(about, PdfName.SUBJECT, info.subject());
    put(about, PdfName.KEYWORDS, info.keywords());
    put(about, PdfName.CREATOR, Xmp.CREATOR);
    PdfDate date = date();
    about.put(PdfName.CREATIONDATE, date);
    about.put(PdfName.MODDATE, date);
    about.put(PdfName.FILEID, PdfEncryption.createInfoId(fileId, fileId));
    String producer = about.getAsString(PdfName.PRODUCER).toUnicodeString();
    writer.setXmpMetadata(Xmp.packet(info, producer));
    writer
        .getExtraCatalog()
        .put(PdfName.LANG, new PdfString(info.language(), PdfObject.TEXT_UNICODE));
    try {
      nameColours(writer);
      attach(writer);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static void nameColours(PdfWriter writer) throws IOException {
    PdfStream profile = new PdfStream(SrgbProfile.bytes());
    profile.put(PdfName.N, new PdfNumber(3));
    profile.flateCompress(9);
    PdfDictionary intent = new PdfDictionary(PdfName.OUTPUTINTENT);
    intent.put(PdfName.S, PdfName.GTS_PDFA1);
    intent.put(PdfName.OUTPUTCONDITIONIDENTIFIER, new PdfString("sRGB IEC61966-2.1"));
    intent.put(PdfName.INFO, new PdfString("sRGB IEC61966-2.1"));
    intent.put(PdfName.DESTOUTPUTPROFILE, writer.addToBody(profile).getIndirectReference());
    writer.getExtraCatalog().put(PdfName.OUTPUTINTENTS, new PdfArray(intent));
  }

  private void attach(PdfWriter writer) throws IOException {
    PdfArray associated = new PdfArray();
    for (Attachment attachment : attachments) {
      PdfDictionary parameters = new PdfDictionary();
      parameters.put(PdfName.MODDATE, date());
      PdfFileSpecification file =
          PdfFileSpecification.fileEmbedded(
              writer,
              attachment.name(),
              attachment.name(),
              attachment.content(),
              attachment.mediaType(),
              parameters,
              9);
      file.put(new PdfName("AFRelationship"), new PdfName(attachment.relationship().pdfName()));
      file.put(PdfName.DESC, new PdfString(attachment.description(), PdfObject.TEXT_UNICODE));
      writer.addFileAttachment(attachment.description(), file);
      associated.add(file.getReference());
    }
    if (!associated.isEmpty()) {
      writer.getExtraCatalog().put(new PdfName("AF"), associated);
    }
  }

  private PdfDate date() {
    GregorianCalendar calendar = GregorianCalendar.from(info.date().atZone(ZoneOffset.UTC));
    calendar.setTimeZone(TimeZone.getTimeZone("UTC"));
    return new PdfDate(calendar);
  }

  private static void put(PdfDictionary about, PdfName name, String text) {
    if (text.isEmpty()) {
      about.remove(name);
    } else {
      about.put(name, new PdfString(text, PdfObject.TEXT_UNICODE));
    }
  }
}
