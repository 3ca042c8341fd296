package tightside.window;

import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Slider;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import tightside.session.Edits;
import tightside.session.Look;
import tightside.timing.Seat;

/**
 * What every key does: the one table of it, for the keyboard and for the list that a person reads.
 */
record Keys(List<Key> keys) {

  /**
   * One key.
   *
   * @param words as a person reads it
   * @param does what it does, in words
   * @param bare whether it needs the picture or the ruler to have the focus, as a field would want
   *     it for itself
   */
  record Key(String words, String does, boolean bare, Stroke stroke, Runnable action) {}

  /** A key with what is held down beside it. */
  record Stroke(KeyCode code, boolean control, boolean shift) {

    static Stroke of(KeyCode code) {
      return new Stroke(code, false, false);
    }

    static Stroke control(KeyCode code) {
      return new Stroke(code, true, false);
    }
  }

  Keys {
    keys = List.copyOf(keys);
  }

  static Keys of(Desk desk, TurnBar turns, Bench bench, Runnable help, Runnable open) {
    return new Keys(new KeyTable(desk, turns, bench, help, open).keys());
  }

  /** Does what a key means, if it means something where the focus is. */
  void press(KeyEvent event, Node picture) {
    if (event.getCode() == KeyCode.ESCAPE) {
      picture.requestFocus();
    }
    Node owner = ((Scene) event.getSource()).getFocusOwner();
    boolean free = owner == null || drawn(owner) || owner instanceof TurnRuler;
    Stroke stroke = strokeOf(event);
    Optional<Key> key =
        keys.stream().filter(k -> k.stroke().equals(stroke) && (free || !k.bare())).findFirst();
    if (key.isPresent() && !ownUse(owner, stroke)) {
      key.get().action().run();
      event.consume();
    }
  }

  /** What is only looked at wants no key for itself. */
  private static boolean drawn(Node owner) {
    return owner instanceof PictureCanvas || owner instanceof GapView || owner instanceof Projected;
  }

  /** Keys that a field or slider uses to move about in itself. */
  private static boolean ownUse(Node owner, Stroke stroke) {
    boolean arrow = stroke.code() == KeyCode.LEFT || stroke.code() == KeyCode.RIGHT;
    return arrow && (owner instanceof TextInputControl || owner instanceof Slider);
  }

  private static Stroke strokeOf(KeyEvent event) {
    KeyCode code =
        switch (event.getCode()) {
          case ADD -> KeyCode.PLUS;
          case EQUALS -> KeyCode.PLUS;
          case SUBTRACT -> KeyCode.MINUS;
          default -> event.getCode();
        };
    boolean signs = code == KeyCode.PLUS || code == KeyCode.MINUS;
    return new Stroke(code, event.isShortcutDown(), !signs && event.isShiftDown());
  }

  /** Selects a sprocket by its number, from 1. */
  static void select(Desk desk, int number) {
    List<Wheel> wheels = Wheel.all(desk.now().drive());
    if (number <= wheels.size()) {
      Seat seat = wheels.get(number - 1).seat();
      desk.look(look -> look.selecting(Optional.of(selection(seat))));
    }
  }

  static Look.Selection selection(Seat seat) {
    return new Look.Selection(seat.chain(), Optional.of(seat.shaft()));
  }

  /** The sprocket that is selected. */
  static Optional<Seat> selected(Desk desk) {
    return desk.now()
        .look()
        .selected()
        .flatMap(s -> s.shaft().map(shaft -> new Seat(s.chain(), shaft)));
  }

  static void reseat(Desk desk, int teeth) {
    selected(desk).ifPresent(seat -> desk.act(now -> Edits.reseat(now, seat, teeth)));
  }
}
