package tightside.window;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Supplier;
import javafx.application.Platform;
import javafx.geometry.Pos;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import javafx.scene.paint.Color;
import tightside.picture.Styles;
import tightside.session.Look;
import tightside.session.SessionView;
import tightside.session.Snapshot;
import tightside.window.Headline.Tone;

/**
 * All of the window: the picture, the sentence under it, the bench beside it, the ruler below.
 * Whatever changes on the desk is shown before the next frame.
 */
public final class BenchWindow {

  /** Size of the type at 100 %, pixels, as in bench.css; every other size hangs on it. */
  static final double TYPE = 14;

  /** The bare ground: it is there before anything is drawn, and quicker than any node's. */
  private static final Color PAPER =
      Color.rgb(Styles.PAPER.red(), Styles.PAPER.green(), Styles.PAPER.blue());

  private final Desk desk;
  private final JobKeeper keeper;
  private final Player player;
  private final TopBar top;
  private final TurnBar turns;
  private final PictureCanvas picture;
  private final GhostCanvas ghost;
  private final StackPane drive;
  private final PictureCanvas kept = new PictureCanvas();
  private final StackPane keptDrive = new StackPane(kept, letter("A"));
  private final Label now = letter("B");
  private final HBox large;
  private final BorderPane pane = new BorderPane();
  private Optional<Projected> projected = Optional.empty();
  private Optional<Card.Stage> laid = Optional.empty();
  private boolean sideBySide;
  private final Label sentence = Controls.label("", "sentence");

  /** What is said of the drive as it is drawn. */
  private final StackPane room = new StackPane(sentence);

  private final Bench bench;
  private final Runnable open;
  private Optional<Keys> keys = Optional.empty();
  private Optional<KeyCard> keyCard = Optional.empty();
  private final StackPane root = new StackPane();
  private final Scene scene;
  private boolean stale = true;

  /**
   * @param worker does what takes long
   * @param chooser asks the person for a file
   */
  public BenchWindow(Snapshot first, Executor worker, Supplier<Optional<Path>> chooser) {
    this(
        ground(1280, 800),
        new PictureCanvas(),
        SessionView.of(first),
        worker,
        chooser,
        JobSetting.passing(worker));
  }

  /**
   * @param scene is filled with all of the window
   * @param picture draws the drive, and may have drawn it already
   * @param jobs what the keeping of jobs hangs on
   */
  public BenchWindow(
      Scene scene,
      PictureCanvas picture,
      SessionView first,
      Executor worker,
      Supplier<Optional<Path>> chooser,
      JobSetting jobs) {
    this.picture = picture;
    ghost = new GhostCanvas(picture);
    drive = new StackPane(picture, ghost);
    large = new HBox(drive);
    desk = new Desk(first);
    keeper = new JobKeeper(desk, jobs, Platform::runLater);
    player = new Player(desk);
    turns = new TurnBar(desk, player);
    bench = new Bench(desk, worker, player, keeper);
    Opening opening = new Opening(desk, bench.problems(), keeper, worker, Platform::runLater);
    open = () -> chooser.get().ifPresent(opening::open);
    top = new TopBar(desk, open, this::toggleKeys);
    new PictureHand(picture, desk);
    this.scene = scene;
    furnish();
    scene.addEventFilter(KeyEvent.KEY_PRESSED, this::press);
    desk.watch(this::changed);
    bench.whenTurned(this::lay);
    picture.requestFocus();
    JobsFound.tellOfHurry(jobs, bench.jobs(), bench.problems(), worker, Platform::runLater);
  }

  /**
   * A scene with nothing in it.
   *
   * @param width pixels
   * @param height pixels
   */
  static Scene ground(double width, double height) {
    return new Scene(new StackPane(), width, height, PAPER);
  }

  private void furnish() {
    room.getStyleClass().add("sentence-room");
    VBox left = new VBox(large, room);
    VBox.setVgrow(large, Priority.ALWAYS);
    large.setPrefHeight(0);
    large.setMinHeight(0);
    widen(drive);
    widen(keptDrive);
    pane.setCenter(left);
    pane.setTop(top);
    pane.setRight(bench);
    pane.setBottom(turns);
    pane.getStyleClass().add("bench-window");
    left.getStyleClass().add("drive-room");
    root.getChildren().add(new LeastRoom(pane));
    root.getStyleClass().add("window");
    scene.setRoot(root);
    scene.getStylesheets().add("/tightside/window/bench.css");
    scene.addPreLayoutPulseListener(this::refresh);
  }

  /** Gives the drive its room, and what a card shows large. */
  private void lay(Optional<Card.Stage> stage) {
    laid = stage;
    large.getChildren().clear();
    if (stage.isEmpty() && sideBySide) {
      large.getChildren().add(keptDrive);
    }
    if (stage.map(Card.Stage::besidePicture).orElse(true)) {
      large.getChildren().add(drive);
    }
    // What the drawn drive does says nothing of the engine that is worked on or was read.
    boolean engine =
        stage
            .map(Card.Stage::region)
            .filter(r -> r instanceof JobStage || r instanceof WhyStage)
            .isPresent();
    Controls.visible(room, !engine);
    Controls.visible(turns, !engine && !drawing());
    stage.map(Card.Stage::region).ifPresent(large.getChildren()::add);
    stage.map(Card.Stage::region).ifPresent(BenchWindow::widen);
    changed();
  }

  /** Whether a drive is being drawn: what is seen then is neither turned nor worn. */
  private boolean drawing() {
    return laid.map(Card.Stage::region).filter(PlanBoard.class::isInstance).isPresent();
  }

  /** Half the room where there are two. */
  private static void widen(Region region) {
    region.setMinWidth(0);
    region.setPrefWidth(100);
    HBox.setHgrow(region, Priority.ALWAYS);
  }

  private static Label letter(String letter) {
    Label label = Controls.tag(letter, "letter");
    label.setMouseTransparent(true);
    StackPane.setAlignment(label, Pos.TOP_LEFT);
    return label;
  }

  /** How large the words of the bench are, pixels. */
  static double emPixels(Look look) {
    return TYPE * look.textPercent() / 100;
  }

  private void changed() {
    stale = true;
    Platform.requestNextPulse();
  }

  /** Shows what has changed since it was shown last. */
  public void refresh() {
    if (!stale) {
      return;
    }
    stale = false;
    SessionView view = desk.view();
    Look look = view.snapshot().look();
    // At 100 % the style sheet's own size, or the start would wait for a parser.
    String type = look.textPercent() == 100 ? "" : "-fx-font-size: " + emPixels(look) + "px;";
    if (!type.equals(root.getStyle())) {
      root.setStyle(type);
    }
    Headline headline = drawing() ? Headline.whileDrawing(view) : Headline.of(view);
    sentence.setText(headline.text());
    sentence.pseudoClassStateChanged(Styling.CAUTION, headline.tone() == Tone.CAUTION);
    sentence.pseudoClassStateChanged(Styling.NOTICE, headline.tone() == Tone.NOTICE);
    top.show(view, desk.history());
    turns.show(view);
    bench.show(view);
    project(view);
    if (projected.isEmpty()) {
      picture.show(view);
      compare(view);
    }
  }

  /** What was kept lies under the drive in dashes, or stands beside it where there is room. */
  private void compare(SessionView view) {
    Optional<SessionView> before = view.snapshot().sealed() ? Optional.empty() : view.kept();
    boolean beside = before.isPresent() && view.snapshot().look().show().sideBySide();
    if (beside != sideBySide) {
      sideBySide = beside;
      lay(laid);
      drive.getChildren().remove(now);
    }
    boolean both = beside && laid.isEmpty();
    if (both && !drive.getChildren().contains(now)) {
      drive.getChildren().add(now);
    } else if (!both) {
      drive.getChildren().remove(now);
    }
    ghost.show(both ? Optional.empty() : before);
    before.filter(a -> both).ifPresent(kept::show);
  }

  private void project(SessionView view) {
    boolean wanted = view.snapshot().look().show().projected() && !view.snapshot().sealed();
    if (wanted && projected.isEmpty()) {
      projected = Optional.of(new Projected(desk));
      root.getChildren().add(projected.get());
      projected.get().requestFocus();
    } else if (!wanted && projected.isPresent()) {
      root.getChildren().remove(projected.get());
      projected = Optional.empty();
      pane.setVisible(true);
      picture.requestFocus();
    }
    pane.setVisible(!wanted);
    projected.ifPresent(p -> p.show(view));
  }

  /** The table of the keys, made for the first key: no start waits for it. */
  private Keys keys() {
    if (keys.isEmpty()) {
      keys = Optional.of(Keys.of(desk, turns, bench, this::toggleKeys, open));
    }
    return keys.get();
  }

  /** Escape puts the list of keys away, and nothing else while it lies there. */
  private void press(KeyEvent event) {
    if (event.getCode() == KeyCode.ESCAPE && keyCard.isPresent()) {
      toggleKeys();
      event.consume();
    } else {
      keys().press(event, picture);
    }
  }

  private void toggleKeys() {
    if (keyCard.isPresent()) {
      root.getChildren().remove(keyCard.get());
      keyCard = Optional.empty();
      picture.requestFocus();
    } else {
      keyCard =
          Optional.of(
              new KeyCard(keys(), this::toggleKeys)
                  .within(scene.getWidth(), emPixels(desk.now().look())));
      root.getChildren().add(keyCard.get());
      keyCard.get().requestFocus();
    }
  }

  public Scene sceneOf() {
    return scene;
  }

  public Bench bench() {
    return bench;
  }

  /** Whether all of the job in hand is on the disk. */
  public boolean jobIsSafe() {
    return keeper.safe();
  }

  /** Lays out the job and says why it is not on the disk. */
  public void tellOfUnsavedJob() {
    bench.turnTo(Bench.Card.JOB);
    bench
        .problems()
        .say(
            "This job is not saved yet.",
            List.of("Save it elsewhere first, or close the window again to lose it."));
  }

  /** Lets others write the job. */
  public void leave() {
    keeper.leave();
  }

  JobKeeper keeper() {
    return keeper;
  }

  public Desk desk() {
    return desk;
  }

  Player player() {
    return player;
  }

  PictureCanvas picture() {
    return picture;
  }
}
