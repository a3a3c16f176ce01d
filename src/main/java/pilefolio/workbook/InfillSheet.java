package pilefolio.workbook;

import static pilefolio.workbook.ChoiceColumn.choice;
import static pilefolio.workbook.NumberColumn.number;
import static pilefolio.workbook.TextColumn.reference;
import static pilefolio.workbook.TextColumn.words;

import pilefolio.model.Lagging;
import pilefolio.model.LaggingGround;
import pilefolio.model.SheetForm;
import pilefolio.model.SheetPiling;
import pilefolio.model.SheetShape;

/** The tables of sheet piles and of lagging. */
final class InfillSheet {
  static final TextColumn SHEET_RUN =
      reference("Run", "Wall runs", "Run the sheet piles belong to.", "D").required();
  static final TextColumn SECTION =
      words("Section", "Name of the section, as it is ordered.", "Z 2000").required();
  static final ChoiceColumn<SheetForm> FORM =
      choice("Shape", SheetForm.class, "Shape of one sheet.").required().such(SheetForm.Z);
  static final NumberColumn SHEET_TOE =
      Levels.level("Toe level", "Level of the toe. Empty: the engine sizes it.")
          .sized()
          .such("-7.5");
  static final NumberColumn SHEET_YIELD =
      number("Yield strength", "N/mm²", "Of the sheets.")
          .hard(200, 550)
          .usual(235, 460)
          .required()
          .such("355");
  static final NumberColumn SHEET_WIDTH =
      number("Sheet width", "mm", "Width of one sheet along the wall.")
          .hard(200, 1000)
          .usual(400, 800)
          .required()
          .such("700");
  static final NumberColumn MODULUS =
      number("Section modulus", "cm³/m", "Elastic, per length of wall.")
          .hard(100, 20000)
          .usual(400, 6000)
          .required()
          .such("2000");
  static final NumberColumn PLASTIC =
      number("Plastic modulus", "cm³/m", "Per length of wall; needed on European rules.")
          .hard(100, 25000)
          .usual(450, 7000)
          .such("2330");
  static final NumberColumn INERTIA =
      number("Second moment of area", "cm⁴/m", "Per length of wall.")
          .hard(500, 1e6)
          .usual(4000, 200000)
          .required()
          .such("42000");
  static final NumberColumn AREA =
      number("Steel area", "cm²/m", "Per length of wall.")
          .hard(40, 800)
          .usual(80, 300)
          .required()
          .such("152");
  static final NumberColumn DEPTH =
      number("Section depth", "mm", "Depth of the wall section.")
          .hard(50, 1500)
          .usual(150, 600)
          .such("420");
  static final NumberColumn FLANGE =
      number("Flange thickness", "mm", "Of the sheets.").hard(4, 40).usual(6, 25).such("10");
  static final NumberColumn WEB =
      number("Web thickness", "mm", "Of the sheets.").hard(4, 40).usual(6, 20).such("9");
  static final NumberColumn FLAT =
      number("Flat width of flange", "mm", "Between the rounded corners.")
          .hard(50, 800)
          .usual(150, 500)
          .such("350");
  static final NumberColumn WEB_SLOPE =
      number("Web slope", "°", "Of the webs against the line of the wall.")
          .hard(30, 90)
          .usual(40, 80)
          .such("60");
  static final NumberColumn BENDING_SHARE =
      number(
              "Bending share",
              "",
              "Of the bending resistance that is left where interlocks slip; 1 for Z sheets, less for"
                  + " single or paired U sheets.")
          .hard(0.3, 1)
          .usual(0.6, 1)
          .standard(1);
  static final NumberColumn STIFFNESS_SHARE =
      number(
              "Stiffness share",
              "",
              "Of the stiffness that is left where interlocks slip; 1 for Z sheets, less for single or"
                  + " paired U sheets.")
          .hard(0.2, 1)
          .usual(0.5, 1)
          .standard(1);
  static final NumberColumn CORROSION =
      number("Corrosion", "mm", "Loss of thickness over the life, both faces together.")
          .hard(0, 15)
          .usual(0, 5)
          .standard(0);

  static final SheetSpec SHEETS =
      SheetSpec.table(
          "Sheet piles",
          false,
          "Sheet piles of a run of sheet piles, or between the king piles of a run.",
          SHEET_RUN,
          SECTION,
          FORM,
          SHEET_TOE,
          SHEET_YIELD,
          SHEET_WIDTH,
          MODULUS,
          PLASTIC,
          INERTIA,
          AREA,
          DEPTH,
          FLANGE,
          WEB,
          FLAT,
          WEB_SLOPE,
          BENDING_SHARE,
          STIFFNESS_SHARE,
          CORROSION);

  static final TextColumn LAGGING_RUN =
      reference("Run", "Wall runs", "Run of soldier beams.", "C").required();
  static final ChoiceColumn<LaggingGround> GROUND =
      choice(
              "Ground class",
              LaggingGround.class,
              "By which the table of timber lagging goes; needed for timber.")
          .such(LaggingGround.COMPETENT);
  static final NumberColumn THICKNESS =
      number("Thickness", "mm", "Nominal, of boards or shotcrete.")
          .hard(25, 400)
          .usual(50, 200)
          .required()
          .such("80");
  static final NumberColumn UNDERSIZE =
      number("Undersize", "mm", "By how much rough-cut boards run under the nominal thickness.")
          .hard(0, 20)
          .usual(0, 10)
          .standard(6);
  static final NumberColumn BENDING =
      number(
              "Bending strength",
              "MPa",
              "Of timber: reference value on an allowable-stress basis, characteristic otherwise.")
          .hard(1, 100)
          .usual(4, 40)
          .such("24");
  static final NumberColumn SHEAR =
      number("Shear strength", "MPa", "Of timber, likewise.").hard(0.2, 20).usual(0.5, 6).such("4");
  static final NumberColumn MODIFICATION =
      number(
              "Modification",
              "",
              "Product of the adjustment factors of timber for duration, wetness and size, or its"
                  + " modification factor.")
          .hard(0.3, 2)
          .usual(0.5, 1.6)
          .standard(1);
  static final NumberColumn CONCRETE =
      number("Shotcrete strength", "MPa", "Of a cylinder, at the age at which it is loaded.")
          .hard(3, 80)
          .usual(10, 40)
          .such("25");
  static final NumberColumn MESH =
      number("Mesh", "cm²/m", "Reinforcement across the span; empty for plain shotcrete.")
          .hard(0.5, 60)
          .usual(1, 20)
          .such("3.35");
  static final NumberColumn MESH_DEPTH =
      number("Mesh depth", "mm", "From the compressed face, which is against the ground.")
          .hard(15, 380)
          .usual(40, 150)
          .such("60");
  static final NumberColumn MESH_YIELD =
      number("Mesh yield strength", "N/mm²", "Of the mesh.")
          .hard(200, 700)
          .usual(400, 600)
          .such("500");
  static final NumberColumn LIFT =
      number("Lift", "m", "Greatest height of face that stands without lagging.")
          .hard(0.3, 3)
          .usual(0.9, 1.5)
          .standard(1.2);

  static final SheetSpec LAGGING =
      SheetSpec.table(
          "Lagging",
          false,
          "Timber boards or shotcrete between the soldier beams of a run.",
          LAGGING_RUN,
          GROUND,
          THICKNESS,
          UNDERSIZE,
          BENDING,
          SHEAR,
          MODIFICATION,
          CONCRETE,
          MESH,
          MESH_DEPTH,
          MESH_YIELD,
          LIFT);

  private InfillSheet() {}

  static SheetPiling sheets(Row row) {
    return new SheetPiling(
        row.at(),
        row.get(SECTION),
        row.get(SHEET_YIELD),
        row.find(SHEET_TOE),
        row.get(SHEET_WIDTH),
        row.get(MODULUS),
        row.get(INERTIA),
        row.get(AREA),
        new SheetShape(
            row.get(FORM),
            row.find(DEPTH),
            row.find(FLANGE),
            row.find(WEB),
            row.find(FLAT),
            row.find(WEB_SLOPE),
            row.find(PLASTIC),
            row.get(BENDING_SHARE),
            row.get(STIFFNESS_SHARE),
            row.get(CORROSION)));
  }

  /** Defaults of timber are noted only where there is timber. */
  static Lagging lagging(Row row, boolean timber) {
    return new Lagging(
        row.at(),
        row.find(GROUND),
        row.get(THICKNESS),
        timber ? row.get(UNDERSIZE) : row.quiet(UNDERSIZE),
        row.find(BENDING),
        row.find(SHEAR),
        timber ? row.get(MODIFICATION) : row.quiet(MODIFICATION),
        row.find(CONCRETE),
        row.find(MESH),
        row.find(MESH_DEPTH),
        row.find(MESH_YIELD),
        row.get(LIFT));
  }
}
