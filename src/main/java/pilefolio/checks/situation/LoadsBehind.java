package pilefolio.checks.situation;

import java.util.List;
import java.util.Optional;
import pilefolio.analysis.earth.OutsideRange;
import pilefolio.analysis.load.AreaLoad;
import pilefolio.analysis.load.DesignLineLoad;
import pilefolio.analysis.load.DesignPointLoad;
import pilefolio.analysis.load.ElasticLineLoad;
import pilefolio.analysis.load.ElasticPointLoad;
import pilefolio.analysis.load.PressurePolyline;
import pilefolio.analysis.load.StripLoad;
import pilefolio.model.LoadForm;
import pilefolio.model.LoadKind;
import pilefolio.model.LocalLoad;
import pilefolio.model.Value;
import pilefolio.units.Units;

/** Local loads behind the wall in one situation as pressures on it. */
public final class LoadsBehind {
  private static final double LEAST_HEIGHT = 0.05;

  private LoadsBehind() {}

  /**
   * Pressure of the loads that act in a situation, kPa, down to a level; without factors.
   *
   * @param variable true for the variable loads, false for the permanent ones
   * @throws OutsideRange if a load lacks a dimension or lies where its form does not hold
   */
  static PressurePolyline pressure(DesignSituation s, boolean variable, double bottom) {
    List<LocalLoad> loads = acting(s).stream().filter(l -> l.variable() == variable).toList();
    if (loads.isEmpty()) {
      return PressurePolyline.NONE;
    }
    List<Placed> placed = loads.stream().map(l -> new Placed(l.level().si(), load(s, l))).toList();
    double top = placed.stream().mapToDouble(Placed::level).max().orElseThrow();
    return PressurePolyline.of(
        level -> placed.stream().mapToDouble(p -> p.load().pressure(p.level() - level)).sum(),
        Math.min(top, s.run().levels().retained().si()),
        bottom);
  }

  private record Placed(double level, pilefolio.analysis.load.LocalLoad load) {}

  /** The loads that act in a situation. */
  public static List<LocalLoad> acting(DesignSituation s) {
    return s.submission().localLoads(s.stage());
  }

  /**
   * True if a line or point load takes the adjusted form: it does where it stands above the
   * excavation.
   */
  public static boolean adjusted(DesignSituation s, LocalLoad load) {
    return (load.kind() == LoadKind.LINE || load.kind() == LoadKind.POINT)
        && s.submission().methods().ground().loadForm() == LoadForm.ADJUSTED
        && height(s, load) > LEAST_HEIGHT;
  }

  /** Height from the design excavation to the level of a load, m. */
  public static double height(DesignSituation s, LocalLoad load) {
    return load.level().si() - s.designExcavation();
  }

  /**
   * A load as the analysis takes it.
   *
   * @throws OutsideRange if it lacks a dimension or lies where its form does not hold
   */
  public static pilefolio.analysis.load.LocalLoad load(DesignSituation s, LocalLoad l) {
    double x = l.distance().si();
    double y = l.offset().map(Value::si).orElse(0.0);
    try {
      return switch (l.kind()) {
        case STRIP ->
            new StripLoad(
                x,
                need(l, l.width(), "a width").si(),
                need(l, l.pressure(), "a pressure").in(Units.KPA));
        case LINE -> {
          double q = need(l, l.lineLoad(), "a line load").si() / 1000;
          yield adjusted(s, l) ? new DesignLineLoad(x, height(s, l), q) : new ElasticLineLoad(x, q);
        }
        case POINT -> {
          double q = need(l, l.force(), "a force").si() / 1000;
          yield adjusted(s, l)
              ? new DesignPointLoad(x, y, height(s, l), q)
              : new ElasticPointLoad(x, y, q);
        }
        case FOOTING ->
            new AreaLoad(
                x,
                need(l, l.width(), "a width").si(),
                need(l, l.length(), "a length").si(),
                y,
                need(l, l.pressure(), "a pressure").in(Units.KPA));
      };
    } catch (OutsideRange e) {
      throw e;
    } catch (IllegalArgumentException e) {
      throw new OutsideRange("local load " + l.id() + ": " + e.getMessage());
    }
  }

  private static Value need(LocalLoad load, Optional<Value> value, String what) {
    return value.orElseThrow(() -> new OutsideRange("local load " + load.id() + " needs " + what));
  }
}
