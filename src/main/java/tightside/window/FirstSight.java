package tightside.window;

import javafx.scene.layout.Background;
import javafx.scene.layout.BackgroundFill;
import javafx.scene.layout.Region;
import javafx.scene.paint.Color;
import tightside.session.SessionView;

/**
 * What is seen first: the drive, where it stays, and bare ground where the controls will be. They
 * take longer to make than all else at the start.
 */
final class FirstSight extends Region {

  /** Heights and breadth of what will be there, pixels at the usual size of text. */
  static final double TOP = 44;

  static final double BENCH = 350;
  static final double SENTENCE = 62;
  static final double TURNS = 85;

  /** As in bench.css. */
  private static final Color BAR = Color.rgb(0xF4, 0xF1, 0xE7);

  private static final Color SAID = Color.rgb(0xEC, 0xE8, 0xDC);

  private final PictureCanvas picture = new PictureCanvas();
  private final Region top = bare(BAR);
  private final Region bench = bare(BAR);
  private final Region turns = bare(BAR);
  private final Region sentence = bare(SAID);

  FirstSight() {
    getChildren().addAll(picture, top, bench, turns, sentence);
  }

  void show(SessionView view) {
    picture.show(view);
  }

  /** It may be shown elsewhere, and does not come back then. */
  PictureCanvas picture() {
    return picture;
  }

  private static Region bare(Color colour) {
    Region region = new Region();
    region.setBackground(new Background(new BackgroundFill(colour, null, null)));
    return region;
  }

  @Override
  protected void layoutChildren() {
    double width = getWidth();
    double height = getHeight();
    double left = width - BENCH;
    double below = height - TURNS;
    top.resizeRelocate(0, 0, width, TOP);
    bench.resizeRelocate(left, TOP, BENCH, below - TOP);
    turns.resizeRelocate(0, below, width, TURNS);
    sentence.resizeRelocate(0, below - SENTENCE, left, SENTENCE);
    picture.resizeRelocate(0, TOP, left, below - SENTENCE - TOP);
  }
}
