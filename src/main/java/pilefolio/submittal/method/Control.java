package pilefolio.submittal.method;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import pilefolio.model.DocumentStatus;
import pilefolio.model.Project;
import pilefolio.submittal.Submittal;

/**
 * Document control.
 *
 * @param title title of the works
 * @param projectNumber number of the project, or empty
 * @param documentNumber number of the documents
 * @param client client, or empty
 * @param site site
 * @param contractor contractor, or empty
 * @param revision mark of the revision
 * @param status status in words
 * @param draft true if the document is a draft
 * @param date date of issue
 * @param preparedBy who prepared it
 * @param checkedBy who checks, or empty
 * @param approvedBy who approves, or empty
 * @param datum level datum and grid, or empty
 * @param emergencyContact whom to call, or empty
 * @param hospital nearest hospital, or empty
 * @param localRules local rules in the user's words, or empty
 * @param paper paper in words
 * @param revisions earlier and present revisions
 * @param workbook file name of the workbook
 * @param sha256 hash of the workbook
 * @param version version of the engine
 */
public record Control(
    String title,
    String projectNumber,
    String documentNumber,
    String client,
    String site,
    String contractor,
    String revision,
    String status,
    boolean draft,
    String date,
    String preparedBy,
    String checkedBy,
    String approvedBy,
    String datum,
    String emergencyContact,
    String hospital,
    String localRules,
    String paper,
    List<RevisionRow> revisions,
    String workbook,
    String sha256,
    String version) {

  private static final DateTimeFormatter DATE =
      DateTimeFormatter.ofPattern("d MMMM uuuu", Locale.ENGLISH);

  /** Copies the list. */
  public Control {
    revisions = List.copyOf(revisions);
  }

  /** One revision. */
  public record RevisionRow(String mark, String date, String description, String by) {}

  static Control of(Submittal submittal) {
    Project p = submittal.job().submission().project();
    return new Control(
        p.title(),
        p.projectNumber(),
        p.documentNumber(),
        p.client(),
        p.site(),
        p.contractor(),
        p.revision(),
        p.status().label(),
        p.status() == DocumentStatus.DRAFT,
        date(p.date()),
        p.preparedBy(),
        p.checkedBy(),
        p.approvedBy(),
        p.datum(),
        p.emergencyContact(),
        p.hospital(),
        p.localRules(),
        p.paper().label(),
        submittal.job().submission().revisions().stream()
            .map(r -> new RevisionRow(r.mark(), date(r.date()), r.description(), r.by()))
            .toList(),
        submittal.engine().workbook(),
        submittal.engine().sha256(),
        submittal.engine().version());
  }

  /** A date in words. */
  static String date(LocalDate date) {
    return DATE.format(date);
  }
}
