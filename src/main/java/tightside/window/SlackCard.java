package tightside.window;

import java.util.List;
import java.util.concurrent.Executor;
import javafx.application.Platform;
import javafx.scene.layout.VBox;
import tightside.session.SessionView;
import tightside.session.SlackPage;
import tightside.session.Snapshot;

/**
 * The card on which it is read what can go wrong while the chain is slack. What it says is worked
 * out by the worker; until then the old page stays.
 */
final class SlackCard extends Card {

  private final Executor worker;
  private final SlackFields fields;
  private final VBox page = Controls.stack("card");
  private Object asked = List.of();

  SlackCard(Desk desk, Executor worker) {
    this.worker = worker;
    fields = new SlackFields(desk, this::showing);
  }

  @Override
  void layOut(SessionView view) {
    fields.forget();
    page.getChildren().setAll(Controls.label("Working it out.", "note"));
    getChildren()
        .setAll(
            Controls.label("What can go wrong while the chain is slack?", "card-title"),
            Controls.label(
                "Every shaft locked at the reference position, plungers back or held as on the card"
                    + " Wear. Figures from memory until you type your own.",
                "note"),
            fields,
            page);
  }

  @Override
  void fill(SessionView view) {
    Snapshot now = view.snapshot();
    fields.show(now.slack());
    Object inputs = SlackPage.inputs(now);
    if (inputs.equals(asked)) {
      return;
    }
    asked = inputs;
    worker.execute(
        () -> {
          SlackPage made = SlackPage.of(now);
          Platform.runLater(
              () -> {
                if (asked.equals(inputs)) {
                  show(now, made);
                }
              });
        });
  }

  private void show(Snapshot now, SlackPage made) {
    page.getChildren().clear();
    for (SlackPage.ChainPage chain : made.chains()) {
      page.getChildren().add(Controls.label(chain.chain(), "chain-name"));
      if (!chain.line().isEmpty()) {
        double held = now.heldMm().getOrDefault(chain.chain(), 0.0);
        page.getChildren().add(new SlackDiagram(chain, held));
      }
      for (SlackPage.Section section : chain.sections()) {
        page.getChildren().add(Controls.label(section.title(), "strong"));
        String style = section.rule() ? "rule" : "note";
        page.getChildren().addAll(Controls.sentences(section.sentences(), style));
      }
    }
  }
}
