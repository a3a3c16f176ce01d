package pilefolio.workbook;

import static pilefolio.workbook.ChoiceColumn.choice;
import static pilefolio.workbook.NumberColumn.number;
import static pilefolio.workbook.TextColumn.id;
import static pilefolio.workbook.TextColumn.reference;
import static pilefolio.workbook.TextColumn.words;

import java.util.List;
import java.util.Optional;
import pilefolio.model.Drainage;
import pilefolio.model.GroundProfile;
import pilefolio.model.Layer;
import pilefolio.model.LayerState;
import pilefolio.model.SoilKind;

/** The tables of ground profiles and of their layers. */
final class GroundSheet {
  static final TextColumn PROFILE_ID = id("Profile", "Name of the profile.", "G1");
  static final TextColumn INVESTIGATION =
      words("Investigation", "Boreholes and soundings it rests on.", "BH1, BH3, CPT2").required();
  static final NumberColumn BASE =
      Levels.level("Known to level", "Level to which the ground is known.")
          .required()
          .such("-12.0");
  static final NumberColumn GROUNDWATER =
      Levels.level("Groundwater level", "Water level while piles are bored; empty if none was met.")
          .such("1.5");
  static final NumberColumn TEMPERATURE =
      number("Ground temperature", "°C", "Mean over the depth of the piles.")
          .us("°F")
          .hard(-5, 45)
          .usual(5, 25)
          .standard(12);

  static final SheetSpec PROFILES =
      SheetSpec.table(
          "Profiles",
          true,
          "Ground profiles: one row each; their layers stand on the sheet Ground.",
          PROFILE_ID,
          INVESTIGATION,
          BASE,
          GROUNDWATER,
          TEMPERATURE);

  static final TextColumn PROFILE =
      reference("Profile", "Profiles", "Profile the layer belongs to.", "G1").required();
  static final TextColumn LAYER = words("Layer", "Short name.", "Upper sand").required();
  static final TextColumn DESCRIPTION =
      words("Description", "As on the log.", "Medium dense fine to medium SAND");
  static final ChoiceColumn<SoilKind> KIND =
      choice("Kind", SoilKind.class, "Decides the hatch and the rules for drilling.")
          .required()
          .such(SoilKind.SAND);
  static final NumberColumn TOP =
      Levels.level("Top level", "Level of the top; the layer reaches down to the next.")
          .required()
          .such("4.2");
  static final NumberColumn UNIT_WEIGHT =
      number("Unit weight", "kN/m3", "Above the water level.")
          .hard(8, 28)
          .usual(15, 23)
          .required()
          .such("18.5");
  static final NumberColumn UNIT_WEIGHT_BELOW =
      number("Unit weight below water", "kN/m3", "Saturated, not buoyant.")
          .hard(10.5, 28)
          .usual(17, 23)
          .required()
          .such("20");
  static final ChoiceColumn<Drainage> DRAINAGE =
      choice("Drainage", Drainage.class, "Which strength governs.").required();
  static final NumberColumn FRICTION =
      number(
              "Friction angle",
              "°",
              "Effective angle of friction; needed if drained; of an undrained layer, its long-term strength.")
          .hard(0, 50)
          .usual(22, 42)
          .such("33");
  static final NumberColumn COHESION =
      number("Cohesion", "kPa", "Effective cohesion; used if drained.")
          .hard(0, 300)
          .usual(0, 10)
          .standard(0);
  static final NumberColumn SHEAR_STRENGTH =
      number("Undrained strength", "kPa", "At the top of the layer; needed if undrained.")
          .hard(1, 1000)
          .usual(10, 300)
          .such("60");
  static final NumberColumn STRENGTH_INCREASE =
      number("Strength increase", "kPa/m", "Increase of the undrained strength with depth.")
          .hard(0, 50)
          .usual(0, 10)
          .standard(0);
  static final NumberColumn FRICTION_ACTIVE =
      number("Wall friction active", "", "Wall friction over friction angle, active side.")
          .hard(0, 1)
          .usual(0, 0.67)
          .standard(0);
  static final NumberColumn FRICTION_PASSIVE =
      number("Wall friction passive", "", "Wall friction over friction angle, passive side.")
          .hard(0, 1)
          .usual(0, 0.67)
          .standard(0);
  static final NumberColumn ADHESION =
      number("Wall adhesion", "", "Wall adhesion over cohesion or undrained strength.")
          .hard(0, 1)
          .usual(0, 0.67)
          .standard(0);
  static final NumberColumn N60 =
      number("N60", "", "Corrected blow count of the penetration test.")
          .hard(0, 100)
          .usual(2, 50)
          .such("18");
  static final NumberColumn AT_REST =
      number("At-rest coefficient", "", "Empty means from strength and overconsolidation.")
          .hard(0.2, 3)
          .usual(0.35, 1.5)
          .such("0.5");
  static final NumberColumn OVERCONSOLIDATION =
      number("Overconsolidation", "", "Greatest past over present vertical effective stress.")
          .hard(1, 50)
          .usual(1, 10)
          .standard(1);
  static final NumberColumn SUBGRADE_MODULUS =
      number(
              "Subgrade modulus",
              "kN/m3",
              "Horizontal, of one side of a wall; the staged analysis needs it.")
          .hard(100, 1e6)
          .usual(1000, 150000)
          .such("20000");
  static final NumberColumn PERMEABILITY =
      number("Permeability", "m/s", "The flow net needs it.").hard(1e-13, 1).such("0.00002");
  static final NumberColumn PIEZOMETRIC =
      Levels.level(
              "Piezometric level",
              "Water level in the layer behind the wall if not that of the stage: artesian, perched.")
          .such("4.5");
  static final TextColumn SOURCE =
      words(
              "Source of parameters",
              "Tests or correlation they come from.",
              "CPT2, friction by correlation")
          .required();

  static final SheetSpec LAYERS =
      SheetSpec.table(
          "Ground",
          true,
          "Layers of the profiles, each profile from the surface downwards. Levels, not depths.",
          PROFILE,
          LAYER,
          DESCRIPTION,
          KIND,
          TOP,
          UNIT_WEIGHT,
          UNIT_WEIGHT_BELOW,
          DRAINAGE,
          FRICTION,
          COHESION,
          SHEAR_STRENGTH,
          STRENGTH_INCREASE,
          FRICTION_ACTIVE,
          FRICTION_PASSIVE,
          ADHESION,
          N60,
          AT_REST,
          OVERCONSOLIDATION,
          SUBGRADE_MODULUS,
          PERMEABILITY,
          PIEZOMETRIC,
          SOURCE);

  private GroundSheet() {}

  static GroundProfile read(Row row, List<Row> layers) {
    String profile = row.get(PROFILE_ID);
    return new GroundProfile(
        row.at(),
        profile,
        row.get(INVESTIGATION),
        row.get(BASE),
        row.find(GROUNDWATER),
        row.get(TEMPERATURE),
        layers.stream()
            .filter(layer -> layer.get(PROFILE).equals(profile))
            .map(GroundSheet::layer)
            .toList());
  }

  private static Layer layer(Row row) {
    boolean drained = row.get(DRAINAGE) == Drainage.DRAINED;
    return new Layer(
        row.at(),
        row.get(LAYER),
        row.textOr(DESCRIPTION),
        row.get(KIND),
        row.get(TOP),
        row.get(UNIT_WEIGHT),
        row.get(UNIT_WEIGHT_BELOW),
        row.get(DRAINAGE),
        row.find(FRICTION),
        drained || row.find(FRICTION).isPresent()
            ? Optional.of(row.get(COHESION))
            : Optional.empty(),
        drained ? Optional.empty() : row.find(SHEAR_STRENGTH),
        drained ? Optional.empty() : Optional.of(row.get(STRENGTH_INCREASE)),
        row.get(FRICTION_ACTIVE),
        row.get(FRICTION_PASSIVE),
        row.get(ADHESION),
        row.find(N60),
        row.get(SOURCE),
        new LayerState(
            row.find(AT_REST),
            row.quiet(OVERCONSOLIDATION),
            row.find(SUBGRADE_MODULUS),
            row.find(PERMEABILITY),
            row.find(PIEZOMETRIC)));
  }
}
