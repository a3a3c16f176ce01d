package pilefolio.workbook;

import static pilefolio.workbook.ChoiceColumn.choice;
import static pilefolio.workbook.NumberColumn.number;
import static pilefolio.workbook.TextColumn.reference;

import pilefolio.model.AnchorBlock;
import pilefolio.model.BondGround;
import pilefolio.model.BucklingCurve;
import pilefolio.model.FarEnd;
import pilefolio.model.GroundAnchor;
import pilefolio.model.RakerFooting;
import pilefolio.model.StrutMember;
import pilefolio.model.TendonKind;
import pilefolio.model.Waler;
import pilefolio.model.WalerSetting;

/** The tables of what supports consist of: struts, walers, anchors, footings and blocks. */
final class MemberSheet {
  static final TextColumn STRUT_SUPPORT =
      reference("Support", "Supports", "Props or rakers that are made so.", "S1").required();
  static final TextColumn STRUT_BEAM =
      reference("Beam", "Beams", "Rolled section, its web upright; empty for a tube.", "B1");
  static final NumberColumn TUBE_DIAMETER =
      number("Tube diameter", "mm", "Outside diameter of a round tube.")
          .hard(50, 2000)
          .usual(150, 1100)
          .such("508");
  static final NumberColumn TUBE_WALL =
      number("Tube wall", "mm", "Wall thickness of the tube, less what the standard takes off.")
          .hard(3, 60)
          .usual(5, 25)
          .such("12.5");
  static final NumberColumn TUBE_YIELD =
      number("Tube yield strength", "MPa", "Of the steel of the tube.")
          .us("ksi")
          .hard(200, 550)
          .usual(235, 460)
          .such("355");
  static final ChoiceColumn<BucklingCurve> CURVE =
      choice(
              "Buckling curve",
              BucklingCurve.class,
              "Of a tube after EN 1993-1-1: a finished hot, c formed cold.")
          .standard(BucklingCurve.C);
  static final NumberColumn STRUT_LENGTH =
      number("Length", "m", "Between its ends, or between props that hold it both ways.")
          .hard(0.5, 60)
          .usual(2, 25)
          .required()
          .such("12");
  static final NumberColumn EFFECTIVE =
      number("Effective length factor", "", "1 for pinned ends.").hard(0.5, 2.5).standard(1);
  static final NumberColumn STRUT_ECCENTRICITY =
      number(
              "Eccentricity",
              "mm",
              "Of the force, up or down; empty means a tenth of the depth of the strut.")
          .hard(0, 1000)
          .usual(0, 200)
          .such("50");
  static final NumberColumn STRUT_LOAD =
      number("Load on strut", "kN/m", "Beside its own weight.").hard(0, 50).usual(0, 5).standard(0);
  static final NumberColumn TEMPERATURE =
      number("Temperature rise", "K", "Above the temperature at installation.")
          .hard(0, 80)
          .usual(5, 45)
          .standard(20);
  static final NumberColumn RESTRAINT =
      number("Restraint", "", "Share of the lengthening that wall and ground prevent.")
          .hard(0, 1)
          .usual(0.2, 0.8)
          .standard(0.6);
  static final NumberColumn WALL_STIFFNESS =
      number(
              "Wall stiffness",
              "kN/m2",
              "Instead of the restraint: force of a metre of wall that moves the wall a metre back.")
          .hard(100, 1e6)
          .such("20000");
  static final ChoiceColumn<FarEnd> FAR_END =
      choice("Far end", FarEnd.class, "What the strut stands against.").standard(FarEnd.WALL);

  static final SheetSpec STRUTS =
      SheetSpec.table(
          "Struts",
          false,
          "What props and rakers are made of. Without a row others design them.",
          STRUT_SUPPORT,
          STRUT_BEAM,
          TUBE_DIAMETER,
          TUBE_WALL,
          TUBE_YIELD,
          CURVE,
          STRUT_LENGTH,
          EFFECTIVE,
          STRUT_ECCENTRICITY,
          STRUT_LOAD,
          TEMPERATURE,
          RESTRAINT,
          WALL_STIFFNESS,
          FAR_END);

  static final TextColumn WALER_SUPPORT =
      reference("Support", "Supports", "Level that the waler is part of.", "S1").required();
  static final TextColumn WALER_BEAM =
      reference("Beam", "Beams", "Rolled section, its web level.", "B1").required();
  static final NumberColumn BEAMS =
      number("Beams", "", "Side by side.").hard(1, 4).count().standard(1);
  static final NumberColumn SPANS =
      number("Spans", "", "From joint to joint of the waler.").hard(1, 20).count().standard(3);
  static final NumberColumn OVERHANG =
      number("Overhang", "m", "Beyond the last support.").hard(0, 5).usual(0, 2).standard(0);
  static final ChoiceColumn<WalerSetting> SETTING =
      choice("Setting", WalerSetting.class, "How it stands to inclined supports.")
          .standard(WalerSetting.LEVEL);

  static final SheetSpec WALERS =
      SheetSpec.table(
          "Walers",
          false,
          "Walers between the wall and a level of supports.",
          WALER_SUPPORT,
          WALER_BEAM,
          BEAMS,
          SPANS,
          OVERHANG,
          SETTING);

  static final TextColumn ANCHOR_SUPPORT =
      reference("Support", "Supports", "Level of anchors that are made so.", "S2").required();
  static final ChoiceColumn<TendonKind> TENDON =
      choice("Tendon", TendonKind.class, "Kind of steel.").standard(TendonKind.STRAND);
  static final NumberColumn COUNT =
      number("Count", "", "Strands or bars in one anchor.")
          .hard(1, 30)
          .count()
          .required()
          .such("3");
  static final NumberColumn AREA =
      number("Area", "mm2", "Of one strand or bar.")
          .hard(50, 6000)
          .usual(90, 3000)
          .required()
          .such("140");
  static final NumberColumn STRENGTH =
      number("Strength", "MPa", "Guaranteed tensile strength of the steel.")
          .us("ksi")
          .hard(400, 2200)
          .usual(500, 1900)
          .required()
          .such("1860");
  static final NumberColumn PROOF =
      number("Proof strength", "MPa", "At 0.1 %; needed on bases with partial factors.")
          .us("ksi")
          .hard(300, 2000)
          .usual(400, 1700)
          .such("1600");
  static final NumberColumn MODULUS =
      number("Modulus", "GPa", "Of elasticity of the tendon.")
          .us("ksi")
          .hard(150, 220)
          .usual(185, 210)
          .standard(195);
  static final NumberColumn FREE_LENGTH =
      number("Free length", "m", "Empty: the engine sizes it.").hard(1, 60).sized().such("7.5");
  static final NumberColumn BOND_LENGTH =
      number("Bond length", "m", "Empty: the engine sizes it.").hard(1, 30).sized().such("6");
  static final NumberColumn BORE =
      number("Bore", "mm", "Diameter of the bore.")
          .hard(50, 600)
          .usual(90, 200)
          .required()
          .such("150");
  static final ChoiceColumn<BondGround> BOND_GROUND =
      choice("Bond ground", BondGround.class, "Ground of the bond length.")
          .required()
          .such(BondGround.SAND_MEDIUM_DENSE);
  static final NumberColumn TRANSFER =
      number(
              "Load transfer",
              "kN/m",
              "Ultimate, of your tests; empty means the value of the tables.")
          .hard(1, 5000)
          .usual(20, 1000)
          .such("145");
  static final NumberColumn BOND_STRESS =
      number("Bond stress", "kPa", "Ultimate, instead of the load transfer.")
          .us("psi")
          .hard(5, 5000)
          .usual(30, 3000)
          .such("120");
  static final NumberColumn JACK =
      number("Jack length", "m", "Tendon between anchor head and grip of the jack.")
          .hard(0, 5)
          .usual(0.3, 2)
          .standard(1);

  static final SheetSpec ANCHORS =
      SheetSpec.table(
          "Anchors",
          false,
          "What ground anchors are made of. Without a row others design them.",
          ANCHOR_SUPPORT,
          TENDON,
          COUNT,
          AREA,
          STRENGTH,
          PROOF,
          MODULUS,
          FREE_LENGTH,
          BOND_LENGTH,
          BORE,
          BOND_GROUND,
          TRANSFER,
          BOND_STRESS,
          JACK);

  static final TextColumn FOOTING_SUPPORT =
      reference("Support", "Supports", "Rakers that stand on it.", "S3").required();
  static final NumberColumn FOOTING_LENGTH =
      number("Length", "m", "Of the base in the direction of the raker.")
          .hard(0.3, 10)
          .usual(0.8, 4)
          .required()
          .such("2.0");
  static final NumberColumn FOOTING_WIDTH =
      number("Width", "m", "Of the base along the wall.")
          .hard(0.3, 20)
          .usual(0.8, 6)
          .required()
          .such("1.5");
  static final NumberColumn FOOTING_THICKNESS =
      number("Thickness", "m", "Mean.").hard(0.1, 5).usual(0.4, 1.5).required().such("0.8");
  static final NumberColumn TILT =
      number("Tilt of base", "°", "Towards the raker; 0 for a level base.").hard(0, 60).standard(0);
  static final NumberColumn FOOTING_ECCENTRICITY =
      number("Eccentricity", "mm", "Of the raker from the middle of the base.")
          .hard(0, 3000)
          .usual(0, 500)
          .standard(0);
  static final NumberColumn BEARING =
      number(
              "Bearing resistance",
              "kPa",
              "Allowable on an allowable-stress basis, design value otherwise.")
          .hard(20, 10000)
          .usual(50, 1000)
          .required()
          .such("200");
  static final NumberColumn FRICTION =
      number("Base friction", "", "Friction coefficient of the base, likewise.")
          .hard(0.05, 1)
          .usual(0.2, 0.7)
          .required()
          .such("0.4");
  static final NumberColumn HORIZONTAL =
      number("Horizontal resistance", "kN", "Before the footing, likewise.")
          .hard(0, 10000)
          .usual(0, 2000)
          .standard(0);

  static final SheetSpec FOOTINGS =
      SheetSpec.table(
          "Raker footings",
          false,
          "Footings on which rakers stand.",
          FOOTING_SUPPORT,
          FOOTING_LENGTH,
          FOOTING_WIDTH,
          FOOTING_THICKNESS,
          TILT,
          FOOTING_ECCENTRICITY,
          BEARING,
          FRICTION,
          HORIZONTAL);

  static final TextColumn BLOCK_SUPPORT =
      reference("Support", "Supports", "Ties that are held by it.", "S4").required();
  static final NumberColumn BLOCK_TOP =
      number("Top depth", "m", "Of the block below the ground behind the wall.")
          .hard(0, 20)
          .usual(0, 4)
          .required()
          .such("0.8");
  static final NumberColumn BLOCK_HEIGHT =
      number("Height", "m", "Of the block.").hard(0.2, 10).usual(0.5, 4).required().such("1.6");
  static final NumberColumn BLOCK_LENGTH =
      number("Block length", "m", "Of block for one tie; empty means that it is continuous.")
          .hard(0.2, 20)
          .such("1.5");
  static final NumberColumn DISTANCE =
      number("Distance", "m", "From the wall.").hard(1, 100).usual(4, 40).required().such("14");

  static final SheetSpec BLOCKS =
      SheetSpec.table(
          "Anchor blocks",
          false,
          "Blocks or buried walls to which ties are anchored.",
          BLOCK_SUPPORT,
          BLOCK_TOP,
          BLOCK_HEIGHT,
          BLOCK_LENGTH,
          DISTANCE);

  private MemberSheet() {}

  static StrutMember strut(Row row) {
    return new StrutMember(
        row.at(),
        row.get(STRUT_SUPPORT),
        row.find(STRUT_BEAM),
        row.find(TUBE_DIAMETER),
        row.find(TUBE_WALL),
        row.find(TUBE_YIELD),
        row.get(CURVE),
        row.get(STRUT_LENGTH),
        row.get(EFFECTIVE),
        row.find(STRUT_ECCENTRICITY),
        row.get(STRUT_LOAD),
        row.get(TEMPERATURE),
        row.get(RESTRAINT),
        row.find(WALL_STIFFNESS),
        row.get(FAR_END));
  }

  static Waler waler(Row row) {
    return new Waler(
        row.at(),
        row.get(WALER_SUPPORT),
        row.get(WALER_BEAM),
        row.get(BEAMS),
        row.get(SPANS),
        row.get(OVERHANG),
        row.get(SETTING));
  }

  static GroundAnchor anchor(Row row) {
    return new GroundAnchor(
        row.at(),
        row.get(ANCHOR_SUPPORT),
        row.get(TENDON),
        row.get(COUNT),
        row.get(AREA),
        row.get(STRENGTH),
        row.find(PROOF),
        row.get(MODULUS),
        row.find(FREE_LENGTH),
        row.find(BOND_LENGTH),
        row.get(BORE),
        row.get(BOND_GROUND),
        row.find(TRANSFER),
        row.find(BOND_STRESS),
        row.get(JACK));
  }

  static RakerFooting footing(Row row) {
    return new RakerFooting(
        row.at(),
        row.get(FOOTING_SUPPORT),
        row.get(FOOTING_LENGTH),
        row.get(FOOTING_WIDTH),
        row.get(FOOTING_THICKNESS),
        row.get(TILT),
        row.get(FOOTING_ECCENTRICITY),
        row.get(BEARING),
        row.get(FRICTION),
        row.get(HORIZONTAL));
  }

  static AnchorBlock block(Row row) {
    return new AnchorBlock(
        row.at(),
        row.get(BLOCK_SUPPORT),
        row.get(BLOCK_TOP),
        row.get(BLOCK_HEIGHT),
        row.find(BLOCK_LENGTH),
        row.get(DISTANCE));
  }
}
