package tightside.window;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import javafx.scene.input.KeyCode;
import tightside.session.Comparing;
import tightside.session.Looking;
import tightside.session.Show;
import tightside.session.ValveLook;
import tightside.window.Keys.Key;
import tightside.window.Keys.Stroke;

/** The keys of the window, in the order in which a person reads them. */
record KeyTable(Desk desk, TurnBar turns, Bench bench, Runnable help, Runnable open) {

  List<Key> keys() {
    List<Key> keys = new ArrayList<>();
    turning(keys);
    sprockets(keys);
    large(keys);
    rest(keys);
    return keys;
  }

  private void turning(List<Key> keys) {
    bare(keys, "Right, Up", "one degree on", KeyCode.RIGHT, () -> turns.by(1));
    bare(keys, "", "", KeyCode.UP, () -> turns.by(1));
    bare(keys, "Left, Down", "one degree back", KeyCode.LEFT, () -> turns.by(-1));
    bare(keys, "", "", KeyCode.DOWN, () -> turns.by(-1));
    any(keys, "Page up, Ctrl+Right", "one tooth on", KeyCode.PAGE_UP, () -> turns.teeth(1));
    control(keys, "", "", KeyCode.RIGHT, () -> turns.teeth(1));
    any(keys, "Page down, Ctrl+Left", "one tooth back", KeyCode.PAGE_DOWN, () -> turns.teeth(-1));
    control(keys, "", "", KeyCode.LEFT, () -> turns.teeth(-1));
    any(
        keys,
        "Wheel down, up",
        "over the picture: one degree on, back; with Ctrl one tooth",
        KeyCode.UNDEFINED,
        () -> {});
    bare(keys, "T", "two turns on", KeyCode.T, turns::twoTurns);
    bare(keys, "Home", "jump to the reference position", KeyCode.HOME, turns::reference);
    bare(keys, "Space", "play, pause", KeyCode.SPACE, turns::toggle);
  }

  private void sprockets(List<Key> keys) {
    for (int i = 1; i <= 9; i++) {
      int number = i;
      String words = i == 1 ? "1 to 9" : "";
      String does = i == 1 ? "select a sprocket by its number" : "";
      bare(keys, words, does, KeyCode.getKeyCode("" + i), () -> Keys.select(desk, number));
    }
    String on = "set the selected sprocket over by one tooth, ahead or behind";
    bare(keys, "+ and \u2212", on, KeyCode.PLUS, () -> Keys.reseat(desk, 1));
    bare(keys, "", "", KeyCode.MINUS, () -> Keys.reseat(desk, -1));
  }

  private void large(List<Key> keys) {
    bare(keys, "A", "keep this state as A, to compare with", KeyCode.A, this::keep);
    String lay = "A one on the other with what is there now, or side by side";
    bare(keys, "O", lay, KeyCode.O, () -> show(s -> s.sideBySide(!s.sideBySide())));
    String past = "turn on past a valve that touches, as a drawing only; no longer";
    bare(keys, "G", past, KeyCode.G, this::past);
    bare(keys, "V", "the next valve of the cylinder", KeyCode.V, this::nextValve);
    bare(keys, "C", "the next cylinder", KeyCode.C, this::nextCylinder);
    String drive = "valves: the drive or they, where there is room for one alone";
    bare(keys, "D", drive, KeyCode.D, () -> valves(look -> look.drive(!look.drive())));
    any(keys, "F11", "large, for a class; back to the bench", KeyCode.F11, this::project);
    bare(keys, "N, Shift+N", "large: the next strand or valve, the one before", KeyCode.N, next(1));
    keys.add(new Key("", "", true, new Stroke(KeyCode.N, false, true), next(-1)));
    String answer = "large: hide the number, show it";
    bare(keys, "Q", answer, KeyCode.Q, () -> show(s -> s.answered(!s.answered())));
  }

  private void keep() {
    desk.act(Comparing::keep);
  }

  private void project() {
    if (desk.now().sealed()) {
      return;
    }
    boolean leaves = desk.now().look().show().projected();
    boolean atValves = bench.lying() == Bench.Card.VALVES;
    desk.look(
        look ->
            leaves
                ? look.with(look.show().projected(false))
                : Looking.large(desk.view(), atValves));
  }

  private void past() {
    valves(look -> look.past(!look.past()));
  }

  private void nextValve() {
    int valves = desk.now().engine().map(e -> e.valves().size()).orElse(1);
    ValveLook now = desk.now().look().valves();
    int next = (now.valve() + 1) % valves;
    desk.look(look -> Looking.at(desk.view(), now.cylinder(), next));
  }

  private void nextCylinder() {
    int cylinders = desk.now().engine().map(e -> e.phasesDegrees().size()).orElse(1);
    valves(look -> look.cylinder((look.cylinder() + 1) % cylinders));
  }

  private void valves(UnaryOperator<ValveLook> other) {
    desk.look(look -> look.with(other.apply(look.valves())));
  }

  private Runnable next(int way) {
    return () -> desk.look(look -> Looking.next(desk.view(), way));
  }

  private void show(UnaryOperator<Show> other) {
    desk.look(look -> look.with(other.apply(look.show())));
  }

  private void rest(List<Key> keys) {
    control(keys, "Ctrl+Z", "undo", KeyCode.Z, desk::undo);
    control(keys, "Ctrl+Y, Ctrl+Shift+Z", "redo", KeyCode.Y, desk::redo);
    keys.add(new Key("", "", false, new Stroke(KeyCode.Z, true, true), desk::redo));
    control(keys, "Ctrl+O", "open a model file", KeyCode.O, open);
    int number = 0;
    control(
        keys,
        "Ctrl+N",
        "a drive of your own by its counts: the card " + Bench.Card.OWN.words(),
        KeyCode.N,
        () -> bench.turnTo(Bench.Card.OWN));
    for (Bench.Card card : Bench.Card.values()) {
      number++;
      if (card == Bench.Card.OWN) {
        continue;
      }
      String key = number <= 10 ? "" + number % 10 : card.words().substring(0, 1);
      control(
          keys,
          "Ctrl+" + key,
          "the card " + card.words(),
          KeyCode.getKeyCode(key),
          () -> bench.turnTo(card));
    }
    any(
        keys,
        "F2, F3, F4",
        "stop: hold-back slipped, chain dropped, resistance",
        KeyCode.F2,
        () -> bench.stop("hold-back"));
    any(keys, "", "", KeyCode.F3, () -> bench.stop("dropped"));
    any(keys, "", "", KeyCode.F4, () -> bench.stop("resistance"));
    control(keys, "Ctrl++, Ctrl+\u2212", "larger, smaller text", KeyCode.PLUS, larger(1));
    control(keys, "", "", KeyCode.MINUS, larger(-1));
    any(keys, "Tab, Shift+Tab", "from one control to the next", KeyCode.UNDEFINED, () -> {});
    any(keys, "Esc", "back to the picture; this list away", KeyCode.UNDEFINED, () -> {});
    any(keys, "F1", "show or hide this list", KeyCode.F1, help);
  }

  private Runnable larger(int steps) {
    return () -> TopBar.resize(desk, steps);
  }

  private static void bare(List<Key> keys, String words, String does, KeyCode code, Runnable run) {
    keys.add(new Key(words, does, true, Stroke.of(code), run));
  }

  private static void any(List<Key> keys, String words, String does, KeyCode code, Runnable run) {
    keys.add(new Key(words, does, false, Stroke.of(code), run));
  }

  private static void control(
      List<Key> keys, String words, String does, KeyCode code, Runnable run) {
    keys.add(new Key(words, does, false, Stroke.control(code), run));
  }
}
