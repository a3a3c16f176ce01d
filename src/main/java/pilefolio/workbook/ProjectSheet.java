package pilefolio.workbook;

import static pilefolio.workbook.TextColumn.words;

import java.time.LocalDate;
import java.util.List;
import pilefolio.model.Choice;
import pilefolio.model.DocumentStatus;
import pilefolio.model.PaperSize;
import pilefolio.model.Project;
import pilefolio.units.DisplaySystem;

/** The form of document control. */
final class ProjectSheet {
  static final TextColumn TITLE =
      words("Title", "Title of the works, as on the cover.", "Basement at Mill Lane").required();
  static final TextColumn PROJECT_NUMBER =
      words("Project number", "Number of the project.", "2417");
  static final TextColumn DOCUMENT_NUMBER =
      words("Document number", "Number of the documents to be produced.", "2417-TW-001").required();
  static final TextColumn CLIENT = words("Client", "For whom.", "Mill Lane Homes");
  static final TextColumn SITE =
      words("Site", "Address or description of the site.", "Mill Lane 4, Oldford").required();
  static final TextColumn CONTRACTOR = words("Contractor", "Who builds.", "Oldford Piling");
  static final TextColumn REVISION = words("Revision", "Mark of this revision.", "P01").required();
  static final ChoiceColumn<DocumentStatus> STATUS =
      ChoiceColumn.choice("Status", DocumentStatus.class, "What the documents may be used for.")
          .standard(DocumentStatus.DRAFT);
  static final DateColumn DATE =
      new DateColumn("Date", Need.REQUIRED, "Date of issue, printed on every page.", "2027-03-01");
  static final TextColumn PREPARED_BY =
      words("Prepared by", "Who prepares the documents.", "J. Marten").required();
  static final TextColumn CHECKED_BY =
      words("Checked by", "Who checks them; somebody else.", "A. Osei");
  static final TextColumn APPROVED_BY = words("Approved by", "Who approves them.", "R. Lindqvist");
  static final ChoiceColumn<DisplaySystem> UNITS =
      ChoiceColumn.of(
              "Document units",
              List.of(DisplaySystem.SI, DisplaySystem.US),
              DisplaySystem::name,
              "Units in which the documents are written; the workbook may mix them.")
          .standard(DisplaySystem.SI);
  static final ChoiceColumn<PaperSize> PAPER =
      ChoiceColumn.of(
              "Paper", List.of(PaperSize.values()), Choice::label, "Paper of the documents.")
          .standard(PaperSize.A4);
  static final TextColumn DATUM =
      words(
          "Datum and grid",
          "What levels and coordinates are counted from.",
          "Site datum; local grid");
  static final TextColumn EMERGENCY =
      words(
          "Emergency contact",
          "Whom to call on site, with number.",
          "Site office, number on board");
  static final TextColumn HOSPITAL =
      words("Nearest hospital", "With an emergency department; route.", "Oldford General, 3 km");
  static final TextColumn LOCAL_RULES =
      words("Local rules", "Permits and local rules that apply.", "Working hours 08:00 to 18:00");

  static final SheetSpec SPEC =
      SheetSpec.form(
          "Project",
          true,
          "Document control: what the documents are called, who answers for them.",
          TITLE,
          PROJECT_NUMBER,
          DOCUMENT_NUMBER,
          CLIENT,
          SITE,
          CONTRACTOR,
          REVISION,
          STATUS,
          DATE,
          PREPARED_BY,
          CHECKED_BY,
          APPROVED_BY,
          UNITS,
          PAPER,
          DATUM,
          EMERGENCY,
          HOSPITAL,
          LOCAL_RULES);

  private ProjectSheet() {}

  static Project read(Row form) {
    LocalDate date = form.get(DATE);
    return new Project(
        form.at(),
        form.get(TITLE),
        form.textOr(PROJECT_NUMBER),
        form.get(DOCUMENT_NUMBER),
        form.textOr(CLIENT),
        form.get(SITE),
        form.textOr(CONTRACTOR),
        form.get(REVISION),
        form.get(STATUS),
        date,
        form.get(PREPARED_BY),
        form.textOr(CHECKED_BY),
        form.textOr(APPROVED_BY),
        form.get(UNITS),
        form.get(PAPER),
        form.textOr(DATUM),
        form.textOr(EMERGENCY),
        form.textOr(HOSPITAL),
        form.textOr(LOCAL_RULES));
  }
}
