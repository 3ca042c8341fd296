package tightside.window;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import tightside.drive.Role;
import tightside.session.CountingWay;
import tightside.session.OwnEdits;
import tightside.session.OwnForm;
import tightside.session.OwnReading;
import tightside.session.OwnReading.What;
import tightside.session.OwnRow;

/** One sprocket on the form for a drive of one's own, and the strand that leaves it. */
final class OwnLine extends VBox {

  private static final List<Role> ROLES =
      List.of(Role.CAMSHAFT, Role.IDLER, Role.BALANCER, Role.PUMP);

  private final Desk desk;
  private final int row;
  private final TextField name;
  private final TextField teeth;
  private final TextField count;
  private final Button role;
  private final ToggleButton mark;
  private final ToggleButton tensioner;
  private final Label to = Controls.tag("");
  private final Label both = Controls.label("", "note");
  private final Label refusal = Controls.label("", "refusal");
  private final FlowPane strand;

  OwnLine(Desk desk, int row, OwnRow first, boolean canGo, OwnTyping typing) {
    this.desk = desk;
    this.row = row;
    getStyleClass().add("own-line");
    name = typing.field("Name of shaft " + (row + 1), 6, t -> OwnEdits.callShaft(now(), row, t));
    name.setId("own-shaft-" + row);
    teeth = typing.field("Teeth of sprocket " + (row + 1), 3, t -> OwnEdits.teeth(now(), row, t));
    teeth.setId("own-teeth-" + row);
    teeth.setPromptText("teeth");
    count = typing.field("Count from sprocket " + (row + 1), 3, t -> OwnEdits.count(now(), row, t));
    count.setId("own-count-" + row);
    role = Controls.button("", "", this::nextRole);
    role.setId("own-role-" + row);
    mark = new ToggleButton("mark");
    mark.setId("own-mark-" + row);
    mark.setOnAction(e -> desk.act(s -> OwnEdits.marked(s, row, mark.isSelected())));
    tensioner = new ToggleButton("tensioner");
    tensioner.setId("own-tensioner-" + row);
    tensioner.setOnAction(e -> desk.act(s -> OwnEdits.tensioner(s, row)));
    Button off =
        Controls.button("\u00d7", "Take sprocket %d off".formatted(row + 1), this::takeOff);
    off.setId("own-off-" + row);
    FlowPane sprocket = Controls.flow(teeth, Controls.tag("teeth"), name, role, mark);
    if (canGo) {
      sprocket.getChildren().add(off);
    }
    role.setDisable(first.role() == Role.CRANKSHAFT);
    role.setFocusTraversable(first.role() != Role.CRANKSHAFT);
    sprocket.setAlignment(Pos.CENTER_LEFT);
    strand = Controls.flow(to, count, tensioner);
    strand.setAlignment(Pos.CENTER_LEFT);
    Controls.visible(refusal, false);
    getChildren().addAll(sprocket, strand, both, refusal);
  }

  /** The number that a name stands behind, if the field is this line's name. */
  Stream<TextField> before(TextField field) {
    return field == name ? Stream.of(teeth) : Stream.empty();
  }

  private tightside.session.Snapshot now() {
    return desk.now();
  }

  private void nextRole() {
    Role is = desk.now().own().rows().get(row).role();
    Role next = ROLES.get((ROLES.indexOf(is) + 1) % ROLES.size());
    desk.act(s -> OwnEdits.role(s, row, next));
  }

  private void takeOff() {
    desk.act(s -> OwnEdits.takeOff(s, row));
  }

  /** The fields for numbers, in the order in which they are typed. */
  List<TextField> numbers() {
    return count.isManaged() && strand.isManaged() ? List.of(teeth, count) : List.of(teeth);
  }

  void fill(OwnForm form, OwnReading reading) {
    OwnRow shown = form.rows().get(row);
    OwnTyping.show(name, shown.shaft());
    OwnTyping.show(teeth, shown.teeth());
    OwnTyping.show(count, shown.count().text());
    String word = shown.role().name().toLowerCase(java.util.Locale.ROOT);
    role.setText(word);
    role.setAccessibleText(
        "Role of %s: %s; press for the next role".formatted(shown.shaft(), word));
    mark.setSelected(shown.marked());
    mark.setAccessibleText(
        "%s bears %s mark".formatted(shown.shaft(), shown.marked() ? "a" : "no"));
    tensioner.setSelected(shown.tensionerFollows());
    OwnRow next = form.rows().get((row + 1) % form.rows().size());
    tensioner.setAccessibleText(
        "The tensioner presses on the run from %s to %s: %s"
            .formatted(shown.shaft(), next.shaft(), shown.tensionerFollows() ? "yes" : "no"));
    strand(form, shown);
    Optional<String> wrong =
        List.of(What.SHAFT, What.TEETH, What.COUNT).stream()
            .map(what -> reading.refusals().get(new OwnReading.Field(what, row)))
            .filter(s -> s != null)
            .findFirst();
    refusal.setText(wrong.orElse(""));
    Controls.visible(refusal, wrong.isPresent());
  }

  private void strand(OwnForm form, OwnRow shown) {
    String end = form.rows().get(form.nextMarked(row)).shaft();
    to.setText(
        shown.marked()
            ? "\u2193 to %s%s".formatted(end, count(shown.count().way(), shown.count().text()))
            : "\u2193 no mark, no count");
    Controls.visible(count, shown.marked());
    Optional<Long> links = OwnReading.links(shown.count());
    boolean says = shown.marked() && links.isPresent();
    Controls.visible(both, says);
    if (says) {
      both.setText(
          "%d links from mark to mark = %d plain links between them"
              .formatted(links.get(), links.get() - 1));
    }
    count.setAccessibleText("Links counted from %s to %s".formatted(shown.shaft(), end));
  }

  /** How the number in the field is meant. */
  private String count(CountingWay way, String text) {
    CountingWay means = text.isBlank() ? desk.now().look().counting() : way;
    return means == CountingWay.BETWEEN ? ", plain links" : ", links";
  }

  /** All that can be reached by Tab. */
  List<Node> order() {
    return List.of(teeth, name, role, mark, count, tensioner);
  }
}
