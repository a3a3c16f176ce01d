package pilefolio.output.pdf;

import java.awt.Point;
import java.awt.Rectangle;
import java.awt.geom.Point2D;
import org.xhtmlrenderer.layout.LayoutContext;
import org.xhtmlrenderer.pdf.ITextOutputDevice;
import org.xhtmlrenderer.pdf.ITextReplacedElement;
import org.xhtmlrenderer.render.BlockBox;
import org.xhtmlrenderer.render.RenderingContext;

/** An element that is drawn instead of being laid out as text. Sizes are renderer dots. */
abstract class DrawnElement implements ITextReplacedElement {
  private final int width;
  private final int height;
  private final int baseline;
  private Point location = new Point(0, 0);

  DrawnElement(int width, int height, int baseline) {
    this.width = width;
    this.height = height;
    this.baseline = baseline;
  }

  /**
   * Top left corner on the page in points, y from the bottom of the page.
   *
   * @param x from the left
   * @param y from the bottom
   */
  record Corner(double x, double y) {}

  static Corner corner(RenderingContext c, ITextOutputDevice device, BlockBox box) {
    Rectangle area = box.getContentAreaEdge(box.getAbsX(), box.getAbsY(), c);
    Point2D at = new Point2D.Double(area.x, area.y);
    device.getTransform().transform(at, at);
    double pageHeight = c.getPage().getHeight(c) / device.getDotsPerPoint();
    return new Corner(at.getX(), pageHeight - at.getY());
  }

  @Override
  public int getIntrinsicWidth() {
    return width;
  }

  @Override
  public int getIntrinsicHeight() {
    return height;
  }

  @Override
  public Point getLocation() {
    return location;
  }

  @Override
  public void setLocation(int x, int y) {
    location = new Point(x, y);
  }

  @Override
  public void detach(LayoutContext c) {
    // Holds nothing of the layout.
  }

  @Override
  public boolean isRequiresInteractivePaint() {
    return false;
  }

  @Override
  public boolean hasBaseline() {
    return true;
  }

  @Override
  public int getBaseline() {
    return baseline;
  }
}
