package tightside.window;

import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import tightside.drive.Finding;
import tightside.drive.Plan;
import tightside.files.Catalogue;
import tightside.session.PlanCheck;
import tightside.session.PlanPart;

/** What keeps a drawn drive from being one, or is to be looked at, numbered as on the board. */
final class PlanProblems extends VBox {

  PlanProblems() {
    getStyleClass().add("sentences");
  }

  void show(Plan plan, PlanCheck check) {
    getChildren().setAll(verdict(check));
    int number = 0;
    for (Finding finding : check.findings()) {
      number++;
      getChildren()
          .add(
              Controls.label(
                  "%d. %s%s.".formatted(number, where(plan, finding), Catalogue.sentence(finding)),
                  "note"));
    }
  }

  private static Label verdict(PlanCheck check) {
    if (check.findings().isEmpty()) {
      return Controls.label("It makes a drive; the other cards show it.");
    }
    return check.drive().isPresent()
        ? Controls.label("It makes a drive; have a look at this all the same.", "strong")
        : Controls.label(
            "It makes no drive yet: the other cards show the last one that did.", "refusal");
  }

  private static String where(Plan plan, Finding finding) {
    return PlanPart.of(finding.part())
        .filter(part -> part.in(plan))
        .map(part -> part.words(plan) + ": ")
        .orElse("");
  }
}
