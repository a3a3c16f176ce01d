package pilefolio.submittal.calculations;

import java.util.List;
import pilefolio.model.Project;
import pilefolio.model.Submission;

/**
 * Document control, for cover, head and foot of every page.
 *
 * @param paper {@code A4} or {@code Letter}
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
    String date,
    String preparedBy,
    String checkedBy,
    String approvedBy,
    String datum,
    String localRules,
    String paper,
    List<List<String>> revisions) {

  /** Takes it from the submission. */
  public static Control of(Submission submission) {
    Project p = submission.project();
    return new Control(
        p.title(),
        p.projectNumber(),
        p.documentNumber(),
        p.client(),
        p.site(),
        p.contractor(),
        p.revision(),
        p.status().label(),
        p.date().toString(),
        p.preparedBy(),
        p.checkedBy(),
        p.approvedBy(),
        p.datum(),
        p.localRules(),
        p.paper().label(),
        submission.revisions().stream()
            .map(r -> List.of(r.mark(), r.date().toString(), r.description(), r.by()))
            .toList());
  }
}
