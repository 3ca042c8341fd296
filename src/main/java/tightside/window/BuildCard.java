package tightside.window;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import tightside.drive.Chain;
import tightside.drive.Finding;
import tightside.drive.Plan;
import tightside.drive.Role;
import tightside.drive.Shaft;
import tightside.files.Catalogue;
import tightside.geometry.Rotation;
import tightside.session.Handle;
import tightside.session.PartKind;
import tightside.session.PlanCheck;
import tightside.session.PlanEdits;
import tightside.session.PlanPart;
import tightside.session.SessionView;

/** The card on which a drive is drawn: its parts, what each is, and what is wrong with it. */
final class BuildCard extends Card {

  /** Title, buttons, what they say, and why there is nothing to draw. */
  private static final int ALWAYS_SHOWN = 4;

  private final Desk desk;
  private final PlanBoard board;
  private final PlanSaving saving;
  private final TextField name;
  private final Segments<Rotation> rotation;
  private final VBox parts = Controls.stack("sentences");
  private final VBox about = Controls.stack("sentences");
  private final VBox problems = Controls.stack("sentences");
  private final Label countedOnly =
      Controls.label(
          "This drive is counted only: no geometry. There is nothing to draw until every shaft has"
              + " a place. Begin a new drive here, or go on counting on the other cards.",
          "strong");
  private PlanPart chosen;
  private Handle.Kind point = Handle.Kind.CENTRE;
  private PartForm form;
  private Object formOf;
  private Object listed;
  private Plan checked;
  private PlanCheck check;

  BuildCard(Desk desk, PlanSaving saving) {
    this.desk = desk;
    this.saving = saving;
    board = new PlanBoard(desk, this::take);
    name =
        Controls.field(
            "Name of the drive",
            18,
            text -> {
              if (!showing() && !text.isBlank()) {
                desk.act(now -> PlanEdits.call(now, text.strip()));
              }
            });
    name.setId("build-drive-name");
    Map<Rotation, String> ways = new LinkedHashMap<>();
    ways.put(Rotation.CLOCKWISE, "clockwise");
    ways.put(Rotation.COUNTERCLOCKWISE, "counterclockwise");
    rotation =
        new Segments<>(
            "Crankshaft turns", ways, way -> desk.act(now -> PlanEdits.turning(now, way)));
  }

  @Override
  Optional<Stage> stage() {
    return Optional.of(new Stage(board, false));
  }

  @Override
  void layOut(SessionView view) {
    if (!getChildren().isEmpty()) {
      return;
    }
    Button begin = button("build-new", "New drive", "Begin a drive from nothing", PlanEdits::begin);
    getChildren()
        .setAll(
            Controls.label("Draw the drive", "card-title"),
            Controls.flow(begin, saving.button()),
            saving.said(),
            countedOnly,
            problems,
            parts,
            about,
            Controls.label("Add a shaft", "chain-name"),
            Controls.flow(newShafts()),
            Controls.label("The drive as a whole", "chain-name"),
            Controls.flow(name, rotation),
            Controls.label(
                "Drag a point in the picture, or choose it with N and P and move it with the arrow"
                    + " keys: a millimetre or a degree, a tenth with Shift. The points of an arm or"
                    + " shoe are where it stands fully pushed back, drawn dashed.",
                "note"));
  }

  private Button button(
      String id,
      String words,
      String spoken,
      java.util.function.Function<tightside.session.Snapshot, tightside.session.Edit> edit) {
    Button button = Controls.button(words, spoken, () -> desk.act(edit));
    button.setId(id);
    return button;
  }

  private void take(Handle handle) {
    point = handle.kind();
    choose(handle.part());
  }

  private void choose(PlanPart part) {
    chosen = part;
    show(desk.view());
  }

  @Override
  void fill(SessionView view) {
    Plan plan = view.snapshot().plan();
    boolean drawable = plan.shafts().stream().allMatch(s -> s.place().isPresent());
    getChildren().stream().skip(ALWAYS_SHOWN).forEach(n -> Controls.visible(n, drawable));
    Controls.visible(countedOnly, !drawable);
    board.setVisible(drawable);
    if (!drawable) {
      return;
    }
    if (!plan.equals(checked)) {
      checked = plan;
      check = PlanCheck.of(plan);
    }
    if (chosen == null || !chosen.in(plan)) {
      chosen = PlanPart.all(plan).get(0);
    }
    if (!name.getText().strip().equals(plan.name())) {
      name.setText(plan.name());
    }
    rotation.show(plan.rotation());
    list(plan);
    form(plan);
    problems(plan);
    board.show(view, check, handle(plan));
  }

  private Optional<Handle> handle(Plan plan) {
    List<Handle> own = Handle.all(plan).stream().filter(h -> h.part().equals(chosen)).toList();
    return own.stream()
        .filter(h -> h.kind() == point)
        .findFirst()
        .or(() -> own.stream().findFirst());
  }

  private void list(Plan plan) {
    List<String> words = new ArrayList<>();
    PlanPart.all(plan).forEach(p -> words.add(p.words(plan)));
    Object now = List.of(words, chosen);
    if (now.equals(listed)) {
      return;
    }
    listed = now;
    FlowPane shafts = Controls.flow(Controls.tag("Shafts", "note"));
    plan.shafts().forEach(s -> shafts.getChildren().add(pick(plan, PlanPart.shaft(s.name()))));
    parts.getChildren().setAll(shafts);
    for (Chain chain : plan.chains()) {
      FlowPane route =
          Controls.flow(
              Controls.tag("Chain", "note"),
              pick(plan, PlanPart.chain(chain.name())),
              Controls.tag("and its route", "note"));
      for (int place = 0; place < chain.route().size(); place++) {
        route.getChildren().add(pick(plan, PlanPart.entry(chain.name(), place)));
      }
      parts.getChildren().add(route);
    }
  }

  private Button pick(Plan plan, PlanPart part) {
    String words = part.words(plan);
    Button button = Controls.button(words, "Choose " + words, () -> choose(part));
    button.setId(
        "part-"
            + part.shaft()
                .orElseGet(
                    () ->
                        part.chain().orElseThrow()
                            + (part.place().isPresent() ? "-" + part.place().getAsInt() : "")));
    button.getStyleClass().add("pick");
    if (part.equals(chosen)) {
      button.getStyleClass().add("taken");
    }
    return button;
  }

  private static Node adding(String words, List<Button> buttons) {
    FlowPane flow = Controls.flow(Controls.tag(words, "note"));
    flow.getChildren().addAll(buttons);
    return flow;
  }

  private Button[] newShafts() {
    List<Button> buttons = new ArrayList<>();
    for (Role role : Role.values()) {
      String word = role.name().toLowerCase(java.util.Locale.ROOT);
      buttons.add(
          button("add-" + word, word, "Add a " + word, now -> PlanEdits.addShaft(now, role)));
    }
    return buttons.toArray(Button[]::new);
  }

  private void form(Plan plan) {
    Object now =
        List.of(
            chosen,
            PartForms.sort(plan, chosen),
            plan.shafts().stream().map(Shaft::name).toList(),
            chosen.chain().flatMap(plan::chain).map(c -> c.sprockets().toString()).orElse(""));
    if (!now.equals(formOf)) {
      if (form == null || !sameForm(now)) {
        form = new PartForms(desk, chosen).of(plan);
      }
      formOf = now;
      about
          .getChildren()
          .setAll(Controls.label(chosen.words(plan), "chain-name"), form, actions(plan));
    }
    form.fill(plan);
  }

  /** Whether the fields stay, so that the one that is typed in keeps the focus. */
  private boolean sameForm(Object now) {
    List<?> a = (List<?>) now;
    return formOf instanceof List<?> b && a.get(0).equals(b.get(0)) && a.get(1).equals(b.get(1));
  }

  private Node actions(Plan plan) {
    VBox box = Controls.stack("sentences");
    chosen.shaft().ifPresent(shaft -> shaftActions(box, shaft));
    chosen.chain().ifPresent(chain -> chainActions(plan, box, chain));
    return box;
  }

  private void shaftActions(VBox box, String shaft) {
    box.getChildren()
        .add(
            Controls.flow(
                button(
                    "add-chain",
                    "Chain driven by it",
                    "Add a chain driven by " + shaft,
                    now -> PlanEdits.addChain(now, shaft)),
                button(
                    "delete",
                    "Delete the shaft",
                    "Delete %s and its sprockets".formatted(shaft),
                    now -> PlanEdits.deleteShaft(now, shaft))));
  }

  private void chainActions(Plan plan, VBox box, String chain) {
    Chain on = plan.chain(chain).orElseThrow();
    int place = chosen.place().orElse(on.route().size() - 1);
    if (chosen.place().isPresent()) {
      box.getChildren()
          .add(
              Controls.flow(
                  button(
                      "earlier",
                      "Earlier",
                      "Earlier on the route",
                      now -> PlanEdits.reorder(now, chain, place, -1)),
                  button(
                      "later",
                      "Later",
                      "Later on the route",
                      now -> PlanEdits.reorder(now, chain, place, 1)),
                  button(
                      "delete",
                      "Take it off",
                      "Take it off the route",
                      now -> PlanEdits.deleteEntry(now, chain, place))));
    } else {
      box.getChildren()
          .add(
              Controls.flow(
                  button(
                      "delete",
                      "Delete the chain",
                      "Delete the chain " + chain,
                      now -> PlanEdits.deleteChain(now, chain))));
    }
    List<Button> buttons = new ArrayList<>();
    for (Shaft shaft : plan.shafts()) {
      if (on.sprocketOn(shaft.name()).isEmpty()) {
        buttons.add(
            button(
                "put-" + shaft.name(),
                "sprocket of " + shaft.name(),
                "Put a sprocket of %s behind it".formatted(shaft.name()),
                now -> PlanEdits.addSprocket(now, chain, place + 1, shaft.name())));
      }
    }
    for (PartKind kind : List.of(PartKind.GUIDE, PartKind.ARM, PartKind.SHOE)) {
      buttons.add(
          button(
              "put-" + kind.word(),
              kind.word(),
              "Put a %s behind it".formatted(kind.word()),
              now -> PlanEdits.addFace(now, chain, place + 1, kind)));
    }
    String where = chosen.place().isPresent() ? "Add behind it:" : "Add at the end:";
    box.getChildren().add(adding(where, buttons));
  }

  private void problems(Plan plan) {
    problems.getChildren().clear();
    if (check.findings().isEmpty()) {
      problems.getChildren().add(Controls.label("It makes a drive; the other cards show it."));
      return;
    }
    boolean makes = check.drive().isPresent();
    problems
        .getChildren()
        .add(
            Controls.label(
                makes
                    ? "It makes a drive; have a look at this all the same."
                    : "It makes no drive yet: the other cards show the last one that did.",
                makes ? "strong" : "refusal"));
    int number = 0;
    for (Finding finding : check.findings()) {
      number++;
      String where =
          PlanPart.of(finding.part())
              .filter(p -> p.in(plan))
              .map(p -> p.words(plan) + ": ")
              .orElse("");
      problems
          .getChildren()
          .add(Controls.label(number + ". " + where + Catalogue.sentence(finding) + ".", "note"));
    }
  }
}
