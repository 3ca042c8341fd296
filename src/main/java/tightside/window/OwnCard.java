package tightside.window;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import tightside.drive.Role;
import tightside.files.Catalogue;
import tightside.geometry.Rotation;
import tightside.session.CountingWay;
import tightside.session.OwnAnswers;
import tightside.session.OwnEdits;
import tightside.session.OwnForm;
import tightside.session.OwnReading;
import tightside.session.OwnReading.What;
import tightside.session.OwnRow;
import tightside.session.SessionView;

/**
 * The card on which a person enters a drive of their own by what can be counted: teeth, links, and
 * the links between the marks. Every entry is judged at once, and as soon as they make a drive it
 * lies on the bench.
 */
final class OwnCard extends Card {

  private static final int FEWEST = 2;

  private final Desk desk;
  private final PlanSaving saving;
  private final OwnTyping typing;
  private final Segments<CountingWay> way;
  private final Segments<Rotation> rotation;
  private final TextField name;
  private final TextField links;
  private final TextField pitch;
  private final Label linksRefusal = Controls.label("", "refusal");
  private final Label pitchRefusal = Controls.label("", "refusal");
  private final VBox rows = Controls.stack("own-rows");
  private final VBox runs = Controls.stack("sentences");
  private final VBox verdict = Controls.stack("sentences");
  private final List<OwnLine> lines = new ArrayList<>();
  private final Map<Integer, TextField> straights = new LinkedHashMap<>();
  private Object laid;
  private Object judged;

  OwnCard(Desk desk, PlanSaving saving) {
    this.desk = desk;
    this.saving = saving;
    getStyleClass().add("own");
    typing = new OwnTyping(desk, this::showing, this::next);
    Map<CountingWay, String> ways = new LinkedHashMap<>();
    ways.put(CountingWay.MARK_TO_MARK, "Mark to mark");
    ways.put(CountingWay.BETWEEN, "Plain between");
    way = new Segments<>("Counting", ways, w -> desk.look(look -> look.counting(w)));
    Map<Rotation, String> turns = new LinkedHashMap<>();
    turns.put(Rotation.CLOCKWISE, "clockwise");
    turns.put(Rotation.COUNTERCLOCKWISE, "counterclockwise");
    rotation =
        new Segments<>("Crankshaft turns", turns, r -> desk.act(now -> OwnEdits.turning(now, r)));
    name = typing.field("Name of the drive", 12, t -> OwnEdits.call(desk.now(), t));
    name.setId("own-name");
    links = typing.field("Links of the whole chain", 4, t -> OwnEdits.links(desk.now(), t));
    links.setId("own-links");
    pitch = typing.field("Pitch of the chain in mm", 4, t -> OwnEdits.pitch(desk.now(), t));
    pitch.setId("own-pitch");
    saving.button().setId("own-save");
  }

  @Override
  void layOut(SessionView view) {
    if (!getChildren().isEmpty()) {
      return;
    }
    List<Button> adding = new ArrayList<>();
    for (Role role : List.of(Role.CAMSHAFT, Role.IDLER, Role.PUMP, Role.BALANCER)) {
      String word = role.name().toLowerCase(java.util.Locale.ROOT);
      Button add =
          Controls.button(word, "Add a " + word, () -> desk.act(now -> OwnEdits.add(now, role)));
      add.setId("own-add-" + word);
      adding.add(add);
    }
    FlowPane more = Controls.flow(Controls.tag("Add"));
    more.getChildren().addAll(adding);
    more.setAlignment(Pos.CENTER_LEFT);
    Button afresh =
        Controls.button("Start afresh", "Start the form afresh", () -> desk.act(OwnEdits::afresh));
    afresh.setId("own-afresh");
    getChildren()
        .setAll(
            Controls.label("Your own drive, counted only: no geometry", "card-title"),
            Controls.label("In the order in which the chain travels. Enter goes on.", "note"),
            way,
            Controls.flow(links, Controls.tag("links in the whole chain")),
            linksRefusal,
            verdict,
            rows,
            more,
            Controls.label("Crankshaft turns, seen from the front", "chain-name"),
            rotation,
            Controls.flow(name, saving.button(), afresh),
            saving.said(),
            Controls.label("For wear, by ruler", "chain-name"),
            Controls.label(
                "The free length of each tight run, along the chain, from where it leaves one"
                    + " sprocket to where it meets the next.",
                "note"),
            Controls.flow(Controls.tag("pitch"), pitch, Controls.tag("mm")),
            pitchRefusal,
            runs);
  }

  @Override
  void fill(SessionView view) {
    OwnForm form = view.snapshot().own();
    Object structure =
        List.of(
            form.slackRow(), form.rows().stream().map(r -> r.role() == Role.CRANKSHAFT).toList());
    if (!structure.equals(laid)) {
      laid = structure;
      lines(form);
    }
    OwnReading reading = OwnReading.of(form);
    way.show(view.snapshot().look().counting());
    rotation.show(form.rotation());
    OwnTyping.show(name, form.name());
    OwnTyping.show(links, form.links());
    OwnTyping.show(pitch, form.pitch());
    lines.forEach(line -> line.fill(form, reading));
    straights.forEach((row, field) -> OwnTyping.show(field, form.rows().get(row).straight()));
    refuse(linksRefusal, Optional.ofNullable(reading.refusals().get(field(What.LINKS, -1))));
    refuse(
        pitchRefusal,
        reading.refusals().entrySet().stream()
            .filter(e -> e.getKey().what() == What.PITCH || e.getKey().what() == What.STRAIGHT)
            .map(Map.Entry::getValue)
            .findFirst());
    saving.button().setDisable(!reading.drive().equals(Optional.of(view.snapshot().drive())));
    judge(view, form, reading);
  }

  private static OwnReading.Field field(What what, int row) {
    return new OwnReading.Field(what, row);
  }

  private static void refuse(Label label, Optional<String> why) {
    label.setText(why.orElse(""));
    Controls.visible(label, why.isPresent());
  }

  private void lines(OwnForm form) {
    lines.clear();
    straights.clear();
    rows.getChildren().clear();
    runs.getChildren().clear();
    for (int i = 0; i < form.rows().size(); i++) {
      OwnRow row = form.rows().get(i);
      OwnLine line = new OwnLine(desk, i, row, i > 0 && form.rows().size() > FEWEST, typing);
      lines.add(line);
      rows.getChildren().add(line);
      if (i != form.slackRow()) {
        runs.getChildren().add(run(i));
      }
    }
  }

  private FlowPane run(int row) {
    TextField field =
        typing.field(
            "Free length of the run that leaves sprocket %d, in mm".formatted(row + 1),
            4,
            t -> OwnEdits.straight(desk.now(), row, t));
    field.setId("own-straight-" + row);
    straights.put(row, field);
    return Controls.flow(Controls.tag("run from sprocket " + (row + 1)), field, Controls.tag("mm"));
  }

  /** What is missing, what is wrong with the whole, or what the drive answers. */
  private void judge(SessionView view, OwnForm form, OwnReading reading) {
    Object now = List.of(reading, view.snapshot().drive());
    if (now.equals(judged)) {
      return;
    }
    judged = now;
    verdict.getChildren().clear();
    reading
        .tally()
        .ifPresent(
            t ->
                verdict
                    .getChildren()
                    .add(Controls.label(t, reading.drive().isPresent() ? "verdict" : "strong")));
    for (var problem : reading.problems()) {
      verdict.getChildren().add(Controls.caution(Catalogue.sentence(problem) + "."));
    }
    if (reading.drive().isPresent()) {
      verdict
          .getChildren()
          .addAll(Controls.sentences(OwnAnswers.of(reading.drive().get()), "answer"));
    } else if (!reading.missing().isEmpty() && reading.refusals().isEmpty()) {
      verdict.getChildren().add(Controls.label("Next: " + reading.missing().get(0) + ".", "note"));
    }
  }

  /** Where typing begins: the first number that is missing. */
  @Override
  void turned() {
    List<TextField> all = numbers();
    all.stream()
        .filter(f -> f.getText().isBlank())
        .findFirst()
        .or(() -> all.stream().findFirst())
        .ifPresent(TextField::requestFocus);
  }

  private List<TextField> numbers() {
    List<TextField> all = new ArrayList<>(List.of(links));
    lines.forEach(line -> all.addAll(line.numbers()));
    return all;
  }

  /** Enter leads on to the next number. */
  private void next(TextField from) {
    List<TextField> all = numbers();
    int at = all.indexOf(lines.stream().flatMap(l -> l.before(from)).findFirst().orElse(from));
    if (at >= 0 && at + 1 < all.size()) {
      all.get(at + 1).requestFocus();
      all.get(at + 1).selectAll();
    }
  }
}
