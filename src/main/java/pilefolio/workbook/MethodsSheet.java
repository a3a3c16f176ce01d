package pilefolio.workbook;

import static pilefolio.workbook.ChoiceColumn.choice;
import static pilefolio.workbook.NumberColumn.number;
import static pilefolio.workbook.TextColumn.words;

import java.util.List;
import pilefolio.model.AllowableMargin;
import pilefolio.model.ApparentBeam;
import pilefolio.model.ApparentDiagram;
import pilefolio.model.ApparentFoot;
import pilefolio.model.ApparentMethod;
import pilefolio.model.AtRestRule;
import pilefolio.model.BasisChoice;
import pilefolio.model.CantileverMethod;
import pilefolio.model.EarthPressureMethod;
import pilefolio.model.FactorOverride;
import pilefolio.model.GroundChoices;
import pilefolio.model.LoadForm;
import pilefolio.model.Methods;
import pilefolio.model.ProppedMethod;
import pilefolio.model.SigmaConvention;
import pilefolio.model.StrengthModel;
import pilefolio.model.TensionCrack;
import pilefolio.model.WaterRegime;

/** The form of the design basis and the choices of method. */
final class MethodsSheet {
  static final TextColumn BASIS =
      words(
              "Design basis",
              "Id of the design basis: ec7-da1, ec7-da2 and ec7-da3 are EN 1997-1 Design Approaches"
                  + " 1, 2 and 3, us-asd is US allowable stress, aashto-lrfd is AASHTO LRFD.",
              "ec7-da1")
          .required();
  static final ChoiceColumn<EarthPressureMethod> EARTH_PRESSURE =
      choice(
              "Earth pressure coefficients",
              EarthPressureMethod.class,
              "How active and passive coefficients are found. Rankine leaves wall friction out.")
          .standard(EarthPressureMethod.RANKINE);
  static final ChoiceColumn<CantileverMethod> CANTILEVER =
      choice("Cantilever method", CantileverMethod.class, "Equilibrium of walls without support.")
          .standard(CantileverMethod.FOUR_FORCE);
  static final ChoiceColumn<ProppedMethod> PROPPED =
      choice("Propped method", ProppedMethod.class, "Equilibrium of walls with one support.")
          .standard(ProppedMethod.FREE_EARTH);
  static final ChoiceColumn<AllowableMargin> MARGIN =
      choice(
              "Margin on embedment",
              AllowableMargin.class,
              "Where the margin stands on an allowable-stress basis; without effect on a basis with"
                  + " partial factors.")
          .standard(AllowableMargin.FACTOR_ON_PASSIVE);
  static final ChoiceColumn<TensionCrack> CRACK =
      choice(
              "Tension crack",
              TensionCrack.class,
              "What is assumed where active pressure is tension.")
          .standard(TensionCrack.DRY);
  static final NumberColumn MINIMUM_FLUID =
      number(
              "Minimum fluid weight",
              "kN/m3",
              "Least active pressure, as a fluid of this weight; 0 for none.")
          .hard(0, 15)
          .usual(0, 10)
          .standard(5);
  static final ChoiceColumn<WaterRegime> WATER =
      choice("Water regime", WaterRegime.class, "Pore pressures on the two faces of the wall.")
          .standard(WaterRegime.HYDROSTATIC);
  static final TextColumn TOLERANCES =
      words("Tolerance set", "Id of the set of installation tolerances.", "secant-cased-cfa")
          .required();
  static final NumberColumn POSITION =
      number("Position tolerance", "mm", "Position at guide wall level, in place of the set's.")
          .hard(1, 300)
          .usual(10, 100)
          .such("25");
  static final NumberColumn VERTICALITY =
      number("Verticality tolerance, 1 in", "", "n of 1 in n, in place of the set's.")
          .hard(20, 1000)
          .usual(75, 300)
          .such("150");
  static final ChoiceColumn<SigmaConvention> SIGMA =
      choice(
              "Meaning of tolerance",
              SigmaConvention.class,
              "What share of piles keeps a tolerance.")
          .standard(SigmaConvention.TWO_SIDED_95);
  static final NumberColumn OPEN_JOINT =
      number("Limit on open joints", "%", "Largest probability that one joint opens.")
          .hard(0.0001, 50)
          .usual(0.01, 5)
          .standard(1);
  static final NumberColumn OVERLAP =
      number("Overlap required", "mm", "Least overlap that must remain at depth.")
          .hard(0, 500)
          .usual(0, 100)
          .standard(25);
  static final NumberColumn CUT_OFF_MARGIN =
      number(
              "Overlap below excavation",
              "m",
              "Depth below the last excavation down to which that overlap must remain.")
          .hard(0, 20)
          .usual(0.5, 5)
          .standard(1);
  static final NumberColumn FRESH_FACTOR =
      number("Fresh pile distance", "", "Distance to a fresh pile in diameters, centre to centre.")
          .hard(0, 20)
          .usual(2, 8)
          .standard(3);
  static final NumberColumn FRESH_TIME =
      number("Fresh pile time", "h", "Time after which a pile is no longer fresh.")
          .hard(1, 240)
          .usual(4, 72)
          .standard(24);
  static final ChoiceColumn<StrengthModel> STRENGTH =
      choice(
              "Strength model",
              StrengthModel.class,
              "How concrete gains strength in its first days.")
          .standard(StrengthModel.EN);
  static final NumberColumn AGE_DIFFERENCE =
      number(
              "Age difference of primaries",
              "d",
              "Largest difference in age of the two primaries beside a secondary.")
          .hard(0.1, 60)
          .usual(0.5, 10)
          .standard(2);
  static final NumberColumn RESERVE =
      number("Share of rated capacity", "", "Share of a rated value of plant that may be used.")
          .hard(0.3, 1)
          .usual(0.7, 0.9)
          .standard(0.8);

  static final ChoiceColumn<LoadForm> LOAD_FORM =
      choice("Local load form", LoadForm.class, "Pressure of line and point loads behind a wall.")
          .standard(LoadForm.ADJUSTED);
  static final ChoiceColumn<AtRestRule> AT_REST =
      choice(
              "At-rest rule",
              AtRestRule.class,
              "At-rest coefficient of layers that give none, from friction and overconsolidation.")
          .standard(AtRestRule.POWER);
  static final NumberColumn SEISMIC_HORIZONTAL =
      number(
              "Seismic coefficient horizontal",
              "",
              "Share of gravity, in stages in which the earthquake acts.")
          .hard(0.001, 0.6)
          .usual(0.02, 0.3)
          .such("0.1");
  static final NumberColumn SEISMIC_VERTICAL =
      number("Seismic coefficient vertical", "", "Share of gravity, positive upward.")
          .hard(-0.4, 0.4)
          .usual(-0.15, 0.15)
          .standard(0);
  static final NumberColumn SOFTENED_DEPTH =
      number(
              "Softened depth",
              "m",
              "Below the excavation, over which undrained ground has softened; 0 for none.")
          .hard(0, 5)
          .usual(0, 2)
          .standard(0);
  static final NumberColumn SOFTENED_SHARE =
      number(
              "Softened strength",
              "",
              "Share of the undrained strength left at the excavation; it grows to all of it over the"
                  + " softened depth.")
          .hard(0, 1)
          .standard(0);
  static final ChoiceColumn<ApparentDiagram> APPARENT =
      choice(
          "Apparent pressure",
          ApparentDiagram.class,
          "Envelope for walls with two or more levels of support. Empty: by the ground, that is by"
              + " drainage, stability number and kind of supports. A diagram by support levels"
              + " is used for single levels too.");
  static final ChoiceColumn<ApparentBeam> APPARENT_BEAM =
      choice(
          "Apparent pressure beams",
          ApparentBeam.class,
          "What turns the envelope into the forces and moments that are designed for. Empty:"
              + " hinges.");
  static final ChoiceColumn<ApparentFoot> APPARENT_FOOT =
      choice(
          "Foot under apparent pressure",
          ApparentFoot.class,
          "What holds the wall below its lowest support. Empty: a reaction of the ground at the"
              + " design excavation level.");
  static final NumberColumn STIFF_SHARE =
      number(
              "Stiff clay diagram",
              "",
              "Ordinate in stiff clay over unit weight times height; total load over unit weight times"
                  + " height squared by support levels.")
          .hard(0.2, 0.4)
          .usual(0.2, 0.4)
          .standard(0.3);

  static final SheetSpec SPEC =
      SheetSpec.form(
          "Methods",
          true,
          "Design basis and choices of method.",
          BASIS,
          EARTH_PRESSURE,
          CANTILEVER,
          PROPPED,
          MARGIN,
          CRACK,
          MINIMUM_FLUID,
          WATER,
          TOLERANCES,
          POSITION,
          VERTICALITY,
          SIGMA,
          OPEN_JOINT,
          OVERLAP,
          CUT_OFF_MARGIN,
          FRESH_FACTOR,
          FRESH_TIME,
          STRENGTH,
          AGE_DIFFERENCE,
          RESERVE,
          LOAD_FORM,
          AT_REST,
          SEISMIC_HORIZONTAL,
          SEISMIC_VERTICAL,
          SOFTENED_DEPTH,
          SOFTENED_SHARE,
          APPARENT,
          APPARENT_BEAM,
          APPARENT_FOOT,
          STIFF_SHARE);

  static final TextColumn FACTOR =
      words(
              "Factor",
              "Key of the factor in the design basis; with @ and a combination for that one only.",
              "ground.friction@DA1-2")
          .required();
  static final NumberColumn FACTOR_VALUE =
      number("Value", "", "The factor in place of the basis's.")
          .hard(0.01, 100)
          .required()
          .such("1.3");
  static final TextColumn FACTOR_REASON =
      words("Reason", "Why; printed in the design basis chapter.", "National annex").required();

  static final SheetSpec FACTORS =
      SheetSpec.table(
          "Factors",
          false,
          "Factors of the design basis set by the user; leave empty to take the basis as it is.",
          FACTOR,
          FACTOR_VALUE,
          FACTOR_REASON);

  private MethodsSheet() {}

  static BasisChoice basis(Row form, List<Row> factors) {
    return new BasisChoice(
        form.place(BASIS),
        form.get(BASIS),
        factors.stream()
            .map(
                row ->
                    new FactorOverride(
                        row.at(), row.get(FACTOR), row.get(FACTOR_VALUE), row.get(FACTOR_REASON)))
            .toList());
  }

  static Methods read(Row form) {
    return new Methods(
        form.at(),
        form.get(EARTH_PRESSURE),
        form.get(CANTILEVER),
        form.get(PROPPED),
        form.get(MARGIN),
        form.get(CRACK),
        form.get(MINIMUM_FLUID),
        form.get(WATER),
        form.get(TOLERANCES),
        form.find(POSITION),
        form.find(VERTICALITY),
        form.get(SIGMA),
        form.get(OPEN_JOINT),
        form.get(OVERLAP),
        form.get(CUT_OFF_MARGIN),
        form.get(FRESH_FACTOR),
        form.get(FRESH_TIME),
        form.get(STRENGTH),
        form.get(AGE_DIFFERENCE),
        form.get(RESERVE),
        new GroundChoices(
            form.quiet(LOAD_FORM),
            form.quiet(AT_REST),
            form.find(SEISMIC_HORIZONTAL),
            form.quiet(SEISMIC_VERTICAL),
            form.quiet(SOFTENED_DEPTH),
            form.quiet(SOFTENED_SHARE)),
        new ApparentMethod(
            form.find(APPARENT).orElse(ApparentDiagram.BY_GROUND),
            form.find(APPARENT_BEAM).orElse(ApparentBeam.HINGES),
            form.find(APPARENT_FOOT).orElse(ApparentFoot.REACTION),
            form.quiet(STIFF_SHARE)));
  }
}
