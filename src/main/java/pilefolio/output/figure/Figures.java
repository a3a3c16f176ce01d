package pilefolio.output.figure;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import pilefolio.submittal.calculations.CheckView.FigureRef;
import pilefolio.submittal.figure.FigureContent;

/** All figures of a package and the references by which documents place them. */
public final class Figures {
  private final FigureContent content;
  private final Map<String, List<? extends Figure>> byData = new LinkedHashMap<>();

  private Figures(FigureContent content) {
    this.content = content;
    content.plans().forEach(data -> byData.put(data.id(), SitePlanFigure.sheets(data)));
    content.sections().forEach(data -> byData.put(data.id(), List.of(new SectionFigure(data))));
    content.stages().forEach(data -> byData.put(data.id(), List.of(new DepthPlotFigure(data))));
    content.effects().forEach(data -> byData.put(data.id(), List.of(new DepthPlotFigure(data))));
    content
        .overlaps()
        .forEach(data -> byData.put(data.id(), List.of(new JointOverlapFigure(data))));
    content
        .windows()
        .forEach(data -> byData.put(data.id(), List.of(new StrengthWindowFigure(data))));
    content.programmes().forEach(data -> byData.put(data.id(), ProgrammeFigure.sheets(data)));
    content.slips().forEach(data -> byData.put(data.id(), List.of(new SlipCircleFigure(data))));
    content.heads().forEach(data -> byData.put(data.id(), List.of(new ConcreteHeadFigure(data))));
    content.troughs().forEach(data -> byData.put(data.id(), List.of(new TroughFigure(data))));
  }

  /** The figures of some content. */
  public static Figures of(FigureContent content) {
    return new Figures(content);
  }

  /** Every figure; one that goes on over several sheets is several. */
  public List<Figure> all() {
    return byData.values().stream().<Figure>flatMap(List::stream).toList();
  }

  /** References of the calculation package, by check id or {@code run:<id>}. */
  public Map<String, List<FigureRef>> placed() {
    Map<String, List<FigureRef>> placed = new LinkedHashMap<>();
    content.placement().forEach((place, ids) -> placed.put(place, references(ids)));
    return placed;
  }

  /** References of the method statement, in order. */
  public List<FigureRef> inMethodStatement() {
    return references(content.methodStatement());
  }

  private List<FigureRef> references(List<String> ids) {
    return ids.stream().flatMap(this::sheets).map(Figures::reference).toList();
  }

  private Stream<? extends Figure> sheets(String id) {
    return byData.get(id).stream();
  }

  private static FigureRef reference(Figure figure) {
    return new FigureRef(
        figure.id(), figure.caption(), mm(figure.widthMm()), mm(figure.heightMm()));
  }

  private static String mm(double length) {
    return String.format(Locale.ROOT, "%.2fmm", length);
  }
}
