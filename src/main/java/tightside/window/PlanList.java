package tightside.window;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import javafx.scene.control.Button;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import tightside.drive.Chain;
import tightside.drive.Plan;
import tightside.session.PlanPart;

/** Every part of a drawn drive, to be chosen: the shafts, then each chain with its route. */
final class PlanList extends VBox {

  private final Consumer<PlanPart> choose;
  private Object listed;

  PlanList(Consumer<PlanPart> choose) {
    this.choose = choose;
    getStyleClass().add("sentences");
  }

  void show(Plan plan, PlanPart chosen) {
    List<String> words = new ArrayList<>();
    PlanPart.all(plan).forEach(part -> words.add(part.words(plan)));
    Object now = List.of(words, chosen);
    if (now.equals(listed)) {
      return;
    }
    listed = now;
    FlowPane shafts = Controls.flow(Controls.tag("Shafts", "note"));
    plan.shafts()
        .forEach(s -> shafts.getChildren().add(pick(plan, PlanPart.shaft(s.name()), chosen)));
    getChildren().setAll(shafts);
    plan.chains().forEach(chain -> getChildren().add(route(plan, chain, chosen)));
  }

  private FlowPane route(Plan plan, Chain chain, PlanPart chosen) {
    FlowPane route =
        Controls.flow(
            Controls.tag("Chain", "note"),
            pick(plan, PlanPart.chain(chain.name()), chosen),
            Controls.tag("and its route", "note"));
    for (int place = 0; place < chain.route().size(); place++) {
      route.getChildren().add(pick(plan, PlanPart.entry(chain.name(), place), chosen));
    }
    return route;
  }

  private Button pick(Plan plan, PlanPart part, PlanPart chosen) {
    String words = part.words(plan);
    Button button = Controls.button(words, "Choose " + words, () -> choose.accept(part));
    button.setId("part-" + part.shaft().orElseGet(() -> onChain(part)));
    button.getStyleClass().add("pick");
    if (part.equals(chosen)) {
      button.getStyleClass().add("taken");
    }
    return button;
  }

  private static String onChain(PlanPart part) {
    String place = part.place().isPresent() ? "-" + part.place().getAsInt() : "";
    return part.chain().orElseThrow() + place;
  }
}
