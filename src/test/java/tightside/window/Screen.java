package tightside.window;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Executor;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.Consumer;
import java.util.function.Function;
import javafx.application.Platform;
import javafx.event.Event;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.Labeled;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.stage.Stage;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.testfx.api.FxToolkit;
import tightside.session.SessionView;
import tightside.session.Snapshot;

/**
 * The window on a screen in memory. What is done to it is done by firing its controls and keys;
 * afterwards it is laid out at once, without waiting for a frame.
 */
final class Screen {

  private final List<Runnable> waiting = new ArrayList<>();
  private final Stage stage;
  private BenchWindow window;
  private Optional<Path> chosen = Optional.empty();

  Screen(Snapshot first) {
    this(first, Optional.empty());
  }

  /**
   * @param jobs made from what the window's work is handed to
   */
  Screen(Snapshot first, Optional<Function<Executor, JobSetting>> jobs) {
    try {
      stage = FxToolkit.registerPrimaryStage();
    } catch (TimeoutException e) {
      throw new AssertionError(e);
    }
    on(
        () -> {
          window =
              jobs.isPresent()
                  ? new BenchWindow(
                      BenchWindow.ground(1280, 800),
                      new PictureCanvas(),
                      SessionView.of(first),
                      waiting::add,
                      () -> chosen,
                      jobs.get().apply(waiting::add))
                  : new BenchWindow(first, waiting::add, () -> chosen);
          stage.setScene(window.sceneOf());
          stage.setX(0);
          stage.setY(0);
          stage.setWidth(1280);
          stage.setHeight(800);
          stage.show();
          settle();
          return null;
        });
  }

  /** Does something on the window's thread and hands back what came of it. */
  static <T> T on(Callable<T> work) {
    if (Platform.isFxApplicationThread()) {
      try {
        return work.call();
      } catch (Exception e) {
        throw new AssertionError(e);
      }
    }
    CompletableFuture<T> done = new CompletableFuture<>();
    Platform.runLater(
        () -> {
          try {
            done.complete(work.call());
          } catch (Throwable e) {
            done.completeExceptionally(e);
          }
        });
    try {
      return done.get(30, TimeUnit.SECONDS);
    } catch (ExecutionException e) {
      throw new AssertionError(e.getCause());
    } catch (InterruptedException | TimeoutException e) {
      throw new AssertionError(e);
    }
  }

  private void settle() {
    for (int i = 0; i < 2; i++) {
      window.refresh();
      window.sceneOf().getRoot().applyCss();
      window.sceneOf().getRoot().layout();
    }
  }

  void act(Consumer<BenchWindow> work) {
    on(
        () -> {
          work.accept(window);
          settle();
          return null;
        });
  }

  void size(double width, double height) {
    act(
        w -> {
          stage.setWidth(width);
          stage.setHeight(height);
        });
    for (int i = 0; i < 50 && !sized(width, height); i++) {
      act(w -> {});
    }
  }

  private boolean sized(double width, double height) {
    return on(() -> window.sceneOf().getWidth() == width && window.sceneOf().getHeight() == height);
  }

  Snapshot now() {
    return on(() -> window.desk().now());
  }

  BenchWindow window() {
    return window;
  }

  Node find(String id) {
    return all().stream()
        .filter(n -> id.equals(n.getId()))
        .findFirst()
        .orElseThrow(() -> new AssertionError("nothing is called " + id));
  }

  void fire(String id) {
    ButtonBase button = (ButtonBase) find(id);
    act(w -> button.fire());
  }

  /** Presses one of a few segments, by its words. */
  void choose(String words) {
    ButtonBase button =
        all().stream()
            .filter(n -> n instanceof ButtonBase b && words.equals(b.getText()))
            .map(ButtonBase.class::cast)
            .findFirst()
            .orElseThrow(() -> new AssertionError("no button says " + words));
    act(w -> button.fire());
  }

  void type(String id, String text) {
    TextField field = (TextField) find(id);
    act(w -> field.setText(text));
  }

  void enter(String id, String text) {
    TextField field = (TextField) find(id);
    act(
        w -> {
          field.setText(text);
          field.fireEvent(new javafx.event.ActionEvent());
        });
  }

  void press(KeyCode code) {
    press(code, false, false);
  }

  void control(KeyCode code) {
    press(code, true, false);
  }

  void press(KeyCode code, boolean control, boolean shift) {
    act(
        w -> {
          Node owner = w.sceneOf().getFocusOwner();
          Event.fireEvent(
              owner == null ? w.picture() : owner,
              new KeyEvent(KeyEvent.KEY_PRESSED, "", "", code, shift, control, false, false));
        });
  }

  /** Takes hold of the picture so far from a shaft's centre and goes round it. */
  void drag(String shaft, double radiusMm, double fromBearing, double toBearing) {
    Vector2D centre = now().drive().shaft(shaft).orElseThrow().at();
    act(w -> Mouse.drag(w.picture(), centre, radiusMm, fromBearing, toBearing));
  }

  void choose(Path file) {
    chosen = Optional.of(file);
  }

  /** Does the work that the window has handed to others. */
  void work() {
    List<Runnable> now = List.copyOf(waiting);
    waiting.clear();
    now.forEach(Runnable::run);
    act(w -> {});
  }

  /** Every node that can be seen or scrolled to. */
  List<Node> all() {
    return on(
        () -> {
          Set<Node> nodes = new LinkedHashSet<>();
          collect(window.sceneOf().getRoot(), nodes);
          return List.copyOf(nodes);
        });
  }

  private static void collect(Node node, Set<Node> nodes) {
    if (!node.isVisible()) {
      return;
    }
    nodes.add(node);
    if (node instanceof ScrollPane pane && pane.getContent() != null) {
      collect(pane.getContent(), nodes);
    }
    if (node instanceof Parent parent) {
      for (Node child : parent.getChildrenUnmodifiable()) {
        if (!nodes.contains(child)) {
          collect(child, nodes);
        }
      }
    }
  }

  /** All words that are to be read outside the picture, one text a line. */
  String words() {
    StringBuilder words = new StringBuilder();
    for (Node node : all()) {
      if (node instanceof Labeled labeled) {
        words.append(labeled.getText()).append('\n');
      }
    }
    return words.toString();
  }

  String sentence() {
    return all().stream()
        .filter(n -> n.getStyleClass().contains("sentence"))
        .map(n -> ((Labeled) n).getText())
        .findFirst()
        .orElseThrow();
  }
}
