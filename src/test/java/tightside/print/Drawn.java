package tightside.print;

import java.awt.geom.GeneralPath;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;

/** Finds what a page of a PDF fills, as upright rectangles round each filled shape, mm. */
final class Drawn extends PDFGraphicsStreamEngine {

  private static final double MM = 25.4 / 72;

  private final List<Rectangle2D> filled = new ArrayList<>();
  private GeneralPath path = new GeneralPath();

  private Drawn(PDPage page) {
    super(page);
  }

  /** Of one page, counted from 0. */
  static List<Rectangle2D> on(byte[] pdf, int page) {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      Drawn drawn = new Drawn(document.getPage(page));
      drawn.processPage(document.getPage(page));
      return drawn.filled;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private void fill() {
    Rectangle2D r = path.getBounds2D();
    filled.add(
        new Rectangle2D.Double(
            r.getX() * MM, r.getY() * MM, r.getWidth() * MM, r.getHeight() * MM));
    path = new GeneralPath();
  }

  @Override
  public void appendRectangle(Point2D a, Point2D b, Point2D c, Point2D d) {
    moveTo((float) a.getX(), (float) a.getY());
    lineTo((float) b.getX(), (float) b.getY());
    lineTo((float) c.getX(), (float) c.getY());
    lineTo((float) d.getX(), (float) d.getY());
  }

  @Override
  public void moveTo(float x, float y) {
    path.moveTo(x, y);
  }

  @Override
  public void lineTo(float x, float y) {
    path.lineTo(x, y);
  }

  @Override
  public void curveTo(float ax, float ay, float bx, float by, float cx, float cy) {
    path.curveTo(ax, ay, bx, by, cx, cy);
  }

  @Override
  public Point2D getCurrentPoint() {
    return path.getCurrentPoint();
  }

  @Override
  public void closePath() {
    if (path.getCurrentPoint() != null) {
      path.closePath();
    }
  }

  @Override
  public void fillPath(int rule) {
    fill();
  }

  @Override
  public void fillAndStrokePath(int rule) {
    fill();
  }

  @Override
  public void strokePath() {
    path = new GeneralPath();
  }

  @Override
  public void endPath() {
    path = new GeneralPath();
  }

  @Override
  public void clip(int rule) {
    // What is cut off is no concern here.
  }

  @Override
  public void drawImage(PDImage image) {
    throw new AssertionError("a sheet has no pixels");
  }

  @Override
  public void shadingFill(COSName name) {
    throw new AssertionError("a sheet has no shading");
  }
}
