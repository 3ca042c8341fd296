package tightside.window;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import tightside.drive.Plan;
import tightside.drive.Role;
import tightside.geometry.Rotation;
import tightside.session.Handle;
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
  private final PlanList parts = new PlanList(this::choose);
  private final PartAbout about;
  private final PlanProblems problems = new PlanProblems();
  private final Label countedOnly =
      Controls.label(
          "This drive is counted only: no geometry. There is nothing to draw until every shaft has"
              + " a place. Begin a new drive here, or go on counting on the other cards.",
          "strong");
  private PlanPart chosen;
  private Handle.Kind point = Handle.Kind.CENTRE;
  private Plan checked;
  private PlanCheck check;

  BuildCard(Desk desk, PlanSaving saving) {
    this.desk = desk;
    this.saving = saving;
    board = new PlanBoard(desk, this::take);
    about = new PartAbout(desk);
    name = Controls.field("Name of the drive", 18, this::named);
    name.setId("build-drive-name");
    Map<Rotation, String> ways = new LinkedHashMap<>();
    ways.put(Rotation.CLOCKWISE, "clockwise");
    ways.put(Rotation.COUNTERCLOCKWISE, "counterclockwise");
    rotation =
        new Segments<>(
            "Crankshaft turns", ways, way -> desk.act(now -> PlanEdits.turning(now, way)));
  }

  private void named(String text) {
    if (!showing() && !text.isBlank()) {
      desk.act(now -> PlanEdits.call(now, text.strip()));
    }
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
    Button begin =
        PartActions.button(
            desk, "build-new", "New drive", "Begin a drive from nothing", PlanEdits::begin);
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

  private Button[] newShafts() {
    List<Button> buttons = new ArrayList<>();
    for (Role role : Role.values()) {
      String word = role.name().toLowerCase(Locale.ROOT);
      buttons.add(
          PartActions.button(
              desk, "add-" + word, word, "Add a " + word, now -> PlanEdits.addShaft(now, role)));
    }
    return buttons.toArray(Button[]::new);
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
    if (drawable) {
      fill(view, plan);
    }
  }

  private void fill(SessionView view, Plan plan) {
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
    parts.show(plan, chosen);
    about.show(plan, chosen);
    problems.show(plan, check);
    board.show(view, check, handle(plan));
  }

  private Optional<Handle> handle(Plan plan) {
    List<Handle> own = Handle.all(plan).stream().filter(h -> h.part().equals(chosen)).toList();
    return own.stream()
        .filter(h -> h.kind() == point)
        .findFirst()
        .or(() -> own.stream().findFirst());
  }
}
