package tightside.window;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import javafx.scene.control.Button;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import tightside.drive.Chain;
import tightside.drive.Plan;
import tightside.drive.Shaft;
import tightside.session.Edit;
import tightside.session.PartKind;
import tightside.session.PlanEdits;
import tightside.session.PlanPart;
import tightside.session.Snapshot;

/** What can be done to a part of a drawn drive: put others behind it, move it, take it off. */
record PartActions(Desk desk, Plan plan, PlanPart part) {

  VBox all() {
    VBox box = Controls.stack("sentences");
    part.shaft().ifPresent(shaft -> box.getChildren().add(ofShaft(shaft)));
    part.chain().ifPresent(chain -> box.getChildren().addAll(ofRoute(chain), adding(chain)));
    return box;
  }

  private Button button(String id, String words, String spoken, Function<Snapshot, Edit> edit) {
    return button(desk, id, words, spoken, edit);
  }

  static Button button(
      Desk desk, String id, String words, String spoken, Function<Snapshot, Edit> edit) {
    Button button = Controls.button(words, spoken, () -> desk.act(edit));
    button.setId(id);
    return button;
  }

  private FlowPane ofShaft(String shaft) {
    return Controls.flow(
        button(
            "add-chain",
            "Chain driven by it",
            "Add a chain driven by " + shaft,
            now -> PlanEdits.addChain(now, shaft)),
        button(
            "delete",
            "Delete the shaft",
            "Delete %s and its sprockets".formatted(shaft),
            now -> PlanEdits.deleteShaft(now, shaft)));
  }

  private FlowPane ofRoute(String chain) {
    if (part.place().isEmpty()) {
      return Controls.flow(
          button(
              "delete",
              "Delete the chain",
              "Delete the chain " + chain,
              now -> PlanEdits.deleteChain(now, chain)));
    }
    int place = part.place().getAsInt();
    return Controls.flow(
        button(
            "earlier",
            "Earlier",
            "Earlier on the route",
            now -> PlanEdits.reorder(now, chain, place, -1)),
        button(
            "later", "Later", "Later on the route", now -> PlanEdits.reorder(now, chain, place, 1)),
        button(
            "delete",
            "Take it off",
            "Take it off the route",
            now -> PlanEdits.deleteEntry(now, chain, place)));
  }

  private FlowPane adding(String chain) {
    Chain on = plan.chain(chain).orElseThrow();
    int behind = part.place().orElse(on.route().size() - 1) + 1;
    List<Button> buttons = new ArrayList<>();
    for (Shaft shaft : plan.shafts()) {
      if (on.sprocketOn(shaft.name()).isEmpty()) {
        buttons.add(
            button(
                "put-" + shaft.name(),
                "sprocket of " + shaft.name(),
                "Put a sprocket of %s behind it".formatted(shaft.name()),
                now -> PlanEdits.addSprocket(now, chain, behind, shaft.name())));
      }
    }
    for (PartKind kind : List.of(PartKind.GUIDE, PartKind.ARM, PartKind.SHOE)) {
      buttons.add(
          button(
              "put-" + kind.word(),
              kind.word(),
              "Put a %s behind it".formatted(kind.word()),
              now -> PlanEdits.addFace(now, chain, behind, kind)));
    }
    String where = part.place().isPresent() ? "Add behind it:" : "Add at the end:";
    FlowPane flow = Controls.flow(Controls.tag(where, "note"));
    flow.getChildren().addAll(buttons);
    return flow;
  }
}
