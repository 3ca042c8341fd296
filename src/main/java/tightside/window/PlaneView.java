package tightside.window;

import javafx.geometry.Orientation;
import javafx.scene.AccessibleRole;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.layout.Region;
import tightside.picture.Picture;

/** A picture that fills its room and turns no more. */
final class PlaneView extends Region {

  private final Canvas canvas = new Canvas();
  private final Picture picture;

  PlaneView(Picture picture) {
    this.picture = picture;
    getChildren().add(canvas);
    getStyleClass().add("picture");
    setFocusTraversable(true);
    setAccessibleRole(AccessibleRole.IMAGE_VIEW);
    setAccessibleText(picture.title() + ". " + picture.description());
  }

  private double ratio() {
    return picture.bounds().height() / picture.bounds().width();
  }

  @Override
  public Orientation getContentBias() {
    return Orientation.HORIZONTAL;
  }

  @Override
  protected double computePrefHeight(double width) {
    return width > 0 ? Math.ceil(width * ratio()) : 300;
  }

  @Override
  protected double computeMinHeight(double width) {
    return computePrefHeight(width);
  }

  @Override
  protected void layoutChildren() {
    canvas.setWidth(getWidth());
    canvas.setHeight(getHeight());
    GraphicsContext g = canvas.getGraphicsContext2D();
    g.clearRect(0, 0, getWidth(), getHeight());
    double scale =
        Math.min(getWidth() / picture.bounds().width(), getHeight() / picture.bounds().height());
    if (scale > 0) {
      Fit fit = Fit.of(picture.bounds(), getWidth(), getHeight());
      new Painter(g, fit, picture.lineMm()).paint(picture.shapes());
    }
  }
}
