package pilefolio.workbook;

import static pilefolio.workbook.ChoiceColumn.choice;
import static pilefolio.workbook.NumberColumn.number;
import static pilefolio.workbook.TextColumn.id;
import static pilefolio.workbook.TextColumn.words;

import java.util.Optional;
import pilefolio.model.Beam;
import pilefolio.model.BeamOrientation;
import pilefolio.model.CementClass;
import pilefolio.model.Mix;
import pilefolio.model.MixUse;
import pilefolio.model.StrengthSpecimen;

/** The tables of steel beams and of concrete mixes. */
final class MaterialSheet {
  static final TextColumn BEAM_ID = id("Beam", "Name of the beam.", "B1");
  static final TextColumn SECTION =
      words(
          "Section",
          "Designation in the section tables; empty means the engine sizes it.",
          "HEB 400");
  static final TextColumn SECTION_FAMILY =
      words(
          "Section family",
          "Where the section is left empty: family or depth class from which the lightest section"
              + " that passes every check of the beam is taken, such as HEB, W14 or UC 305.",
          "HEB");
  static final TextColumn GRADE = words("Steel grade", "Name of the grade.", "S355").required();
  static final NumberColumn YIELD =
      number("Yield strength", "MPa", "Of the grade at this thickness.")
          .us("ksi")
          .hard(200, 550)
          .usual(235, 460)
          .required()
          .such("345");
  static final ChoiceColumn<BeamOrientation> ORIENTATION =
      choice("Bending about", BeamOrientation.class, "How the beam stands in the bore.")
          .standard(BeamOrientation.STRONG);
  static final TextColumn SPLICE = words("Splice", "Splice, if any.", "None");

  static final SheetSpec BEAMS =
      SheetSpec.table(
          "Beams",
          false,
          "Steel beams for the piles.",
          BEAM_ID,
          SECTION,
          GRADE,
          YIELD,
          ORIENTATION,
          SPLICE,
          SECTION_FAMILY);

  static final TextColumn MIX_ID = id("Mix", "Name of the mix.", "C1");
  static final ChoiceColumn<MixUse> USE =
      choice("Use", MixUse.class, "Which piles it is for.").required();
  static final NumberColumn STRENGTH =
      number(
              "Strength at 28 days",
              "MPa",
              "Specified for secondaries; for primaries the mean expected, because too strong is as"
                  + " bad as too weak.")
          .hard(0.3, 100)
          .usual(0.5, 60)
          .required()
          .such("30");
  static final ChoiceColumn<StrengthSpecimen> SPECIMEN =
      choice("Specimen", StrengthSpecimen.class, "On which the strength is stated.")
          .standard(StrengthSpecimen.CYLINDER);
  static final ChoiceColumn<CementClass> CEMENT =
      choice("Cement class", CementClass.class, "Decides how fast strength comes.")
          .required()
          .such(CementClass.N);
  static final NumberColumn ACI_A =
      number("ACI constant a", "", "Constant a in days; needed with the ACI 209 strength model.")
          .hard(0.1, 20)
          .usual(0.7, 4)
          .such("4");
  static final NumberColumn ACI_B =
      number("ACI constant b", "", "Constant b; needed with the ACI 209 strength model.")
          .hard(0.3, 1.2)
          .usual(0.85, 0.98)
          .such("0.85");
  static final NumberColumn SLUMP =
      number("Slump", "mm", "On delivery.").hard(0, 280).usual(150, 230).such("200");
  static final NumberColumn RETARDATION =
      number("Retardation", "h", "Time by which strength gain starts later; from trial mixes.")
          .hard(0, 120)
          .usual(0, 48)
          .standard(0);
  static final NumberColumn UNIT_WEIGHT =
      number("Unit weight", "kN/m3", "Of the fresh concrete.")
          .hard(14, 27)
          .usual(20, 25)
          .standard(23.5);
  static final NumberColumn AGGREGATE =
      number("Largest aggregate", "mm", "Largest grain.").hard(1, 40).usual(8, 20).such("16");
  static final NumberColumn WORKABILITY =
      number(
              "Workability life",
              "h",
              "Time from batching during which it can be placed and a beam be set.")
          .hard(0.5, 48)
          .usual(1.5, 12)
          .standard(3);
  static final NumberColumn YIELD_STRESS =
      number("Yield stress at rest", "Pa", "Of the fresh concrete when it comes to rest.")
          .hard(1, 5000)
          .usual(30, 600)
          .such("150");
  static final NumberColumn THIXOTROPY =
      number("Thixotropy", "Pa/s", "Growth of that yield stress at rest.")
          .hard(0, 5)
          .usual(0.05, 1)
          .such("0.3");
  static final NumberColumn CUTTING_LIMIT =
      number("Cutting limit", "MPa", "Largest strength the tool can cut; for primaries.")
          .hard(0.5, 60)
          .usual(5, 40)
          .such("8");
  static final NumberColumn STANDING_LIMIT =
      number("Standing limit", "MPa", "Least strength beside the drill; for primaries.")
          .hard(0.1, 20)
          .usual(0.5, 2)
          .such("1");
  static final NumberColumn DELIVERED =
      number("Delivered temperature", "°C", "On delivery.")
          .us("°F")
          .hard(0, 45)
          .usual(5, 32)
          .such("18");

  static final SheetSpec MIXES =
      SheetSpec.table(
          "Mixes",
          true,
          "Concrete mixes with their early-age strength.",
          MIX_ID,
          USE,
          STRENGTH,
          SPECIMEN,
          CEMENT,
          ACI_A,
          ACI_B,
          SLUMP,
          RETARDATION,
          UNIT_WEIGHT,
          AGGREGATE,
          WORKABILITY,
          YIELD_STRESS,
          THIXOTROPY,
          CUTTING_LIMIT,
          STANDING_LIMIT,
          DELIVERED);

  private MaterialSheet() {}

  static Beam beam(Row row) {
    return new Beam(
        row.at(),
        row.get(BEAM_ID),
        row.textOr(SECTION),
        row.get(GRADE),
        row.get(YIELD),
        row.get(ORIENTATION),
        row.find(SPLICE),
        row.find(SECTION).isPresent() ? Optional.empty() : row.find(SECTION_FAMILY));
  }

  static Mix mix(Row row) {
    return new Mix(
        row.at(),
        row.get(MIX_ID),
        row.get(USE),
        row.get(STRENGTH),
        row.get(SPECIMEN),
        row.get(CEMENT),
        row.find(ACI_A),
        row.find(ACI_B),
        row.find(SLUMP),
        row.get(RETARDATION),
        row.get(UNIT_WEIGHT),
        row.find(AGGREGATE),
        row.get(WORKABILITY),
        row.find(YIELD_STRESS),
        row.find(THIXOTROPY),
        row.find(CUTTING_LIMIT),
        row.find(STANDING_LIMIT),
        row.find(DELIVERED));
  }
}
