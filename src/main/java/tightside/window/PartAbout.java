package tightside.window;

import java.util.List;
import javafx.scene.layout.VBox;
import tightside.drive.Plan;
import tightside.drive.Shaft;
import tightside.session.PlanPart;

/** What the chosen part of a drawn drive is: its form, and what can be done to it. */
final class PartAbout extends VBox {

  private final Desk desk;
  private PartForm form;
  private List<Object> formOf = List.of();

  PartAbout(Desk desk) {
    this.desk = desk;
    getStyleClass().add("sentences");
  }

  void show(Plan plan, PlanPart chosen) {
    List<Object> now =
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
      getChildren()
          .setAll(
              Controls.label(chosen.words(plan), "chain-name"),
              form,
              new PartActions(desk, plan, chosen).all());
    }
    form.fill(plan);
  }

  /** Whether the fields stay, so that the one that is typed in keeps the focus. */
  private boolean sameForm(List<Object> now) {
    return formOf.size() == now.size() && formOf.subList(0, 2).equals(now.subList(0, 2));
  }
}
