package pilefolio.model;

import java.time.LocalDate;
import pilefolio.findings.CellRef;
import pilefolio.units.DisplaySystem;

/**
 * Document control of one job. Texts that were left empty are empty texts.
 *
 * @param at the first cell of the form
 * @param title title of the works
 * @param projectNumber number of the project
 * @param documentNumber number of the documents to be produced
 * @param client for whom
 * @param site where; address or description
 * @param contractor who builds
 * @param revision mark of the revision, such as {@code P02}
 * @param status what the documents may be used for
 * @param date date of issue
 * @param preparedBy who prepared the job
 * @param checkedBy who checks
 * @param approvedBy who approves
 * @param documentUnits units in which documents are written
 * @param paper paper of the documents
 * @param datum the level datum and the grid, in words
 * @param emergencyContact whom to call on site
 * @param hospital nearest hospital with emergency department
 * @param localRules local rules and permits that apply, in the user's words
 */
public record Project(
    CellRef at,
    String title,
    String projectNumber,
    String documentNumber,
    String client,
    String site,
    String contractor,
    String revision,
    DocumentStatus status,
    LocalDate date,
    String preparedBy,
    String checkedBy,
    String approvedBy,
    DisplaySystem documentUnits,
    PaperSize paper,
    String datum,
    String emergencyContact,
    String hospital,
    String localRules) {}
