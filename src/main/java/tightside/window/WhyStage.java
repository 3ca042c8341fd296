package tightside.window;

import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import tightside.drive.Drive;
import tightside.reasoning.Answer;
import tightside.reasoning.Group;
import tightside.reasoning.NextCheck;
import tightside.reasoning.Weighed;
import tightside.why.WhyPicture;
import tightside.words.CheckWords;
import tightside.words.ExplainWords;
import tightside.words.Sentences;
import tightside.words.WhyWords;

/** The answer, large: what explains the readings, why, and what would settle it. */
final class WhyStage extends StackPane {

  private static final String NOTE = "why-note";
  private static final int CHECKS = 3;

  private final VBox page = Controls.stack("card");

  WhyStage() {
    getStyleClass().add("stage");
    ScrollPane scroll = new ScrollPane(page);
    scroll.setFitToWidth(true);
    scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
    scroll.setFocusTraversable(false);
    getChildren().add(scroll);
    nothingRead();
  }

  /** Before anything was typed. */
  void nothingRead() {
    page.getChildren()
        .setAll(
            Controls.label("Nothing was read yet.", "card-title"),
            Controls.label(
                "Type how far a camshaft reads off its place, where a plunger stands, or what was"
                    + " counted. What could explain it, and what would settle it, then stands"
                    + " here."));
  }

  /**
   * @param read what was read, in sentences
   */
  void show(Drive drive, Answer answer, List<String> read) {
    page.getChildren().setAll(Controls.sentences(ExplainWords.verdict(answer), "rule"));
    page.getChildren().add(Controls.label(ExplainWords.stability(answer.stability()), NOTE));
    worth(answer.checks()).stream()
        .findFirst()
        .ifPresent(c -> page.getChildren().add(Controls.label("Next: " + asked(c), "strong")));
    ExplainWords.jumpCaution(answer)
        .ifPresent(words -> page.getChildren().add(Controls.label(words, "refusal")));
    title("What could explain it");
    double rest = 0;
    List<Group> shown = WhyWords.shown(answer);
    for (Group group : answer.groups()) {
      if (shown.contains(group)) {
        page.getChildren().add(bar(group));
      } else {
        rest += group.probability();
      }
    }
    page.getChildren()
        .add(Controls.label("Everything else together: %s.".formatted(ExplainWords.percent(rest))));
    title("What was read");
    read.forEach(line -> page.getChildren().add(Controls.label(line, NOTE)));
    page.getChildren().add(Controls.label(WhyWords.spreads(drive, answer.evidence()), NOTE));
    WhyPicture.of(answer)
        .ifPresent(
            picture -> {
              title(picture.title());
              PlaneView plane = new PlaneView(picture);
              plane.getStyleClass().add("why-plane");
              page.getChildren().add(plane);
              page.getChildren()
                  .add(
                      Controls.label(
                          "Red dot: what was read; rings: one and two spreads. What passes"
                              + " through the rings explains it. "
                              + ExplainWords.notDrawn(),
                          NOTE));
            });
    checks(answer.checks());
    figures(answer);
    page.getChildren()
        .addAll(
            Controls.label(ExplainWords.leftOut(), NOTE),
            Controls.label(Sentences.caution(), NOTE));
  }

  private void title(String words) {
    page.getChildren().add(Controls.label(words, "chain-name"));
  }

  /** A share as a bar, as a number, and in words. */
  private static Node bar(Group group) {
    VBox box = new VBox();
    List<Weighed> likely = WhyWords.members(group);
    box.getChildren()
        .add(
            Controls.label(
                ExplainWords.percent(group.probability())
                    + "  "
                    + ExplainWords.clauseWithAmount(likely.get(0))
                    + ".",
                "strong"));
    Region full = new Region();
    full.getStyleClass().add("why-bar");
    full.setMaxWidth(Region.USE_PREF_SIZE);
    full.prefWidthProperty().bind(box.widthProperty().multiply(group.probability()));
    box.getChildren().add(full);
    likely.stream()
        .skip(1)
        .forEach(
            m ->
                box.getChildren()
                    .add(
                        Controls.label(
                            "or alike: " + ExplainWords.clauseWithAmount(m) + ".", NOTE)));
    return box;
  }

  private void checks(List<NextCheck> checks) {
    title("What would settle it");
    List<NextCheck> worth = worth(checks);
    if (worth.isEmpty()) {
      page.getChildren().add(Controls.label(CheckWords.nothingWorth()));
    }
    for (NextCheck check : worth) {
      VBox box = new VBox(Controls.label(asked(check), "strong"));
      check
          .expects()
          .forEach(e -> box.getChildren().add(Controls.label(CheckWords.expect(e), NOTE)));
      page.getChildren().add(box);
    }
  }

  private static List<NextCheck> worth(List<NextCheck> checks) {
    return checks.stream().filter(c -> c.bits() > CheckWords.WORTH_BITS).limit(CHECKS).toList();
  }

  private static String asked(NextCheck check) {
    String held = check.held() ? ", only once the engine has been turned by hand" : "";
    return "%s (%s%s)".formatted(CheckWords.doIt(check), CheckWords.cost(check), held);
  }

  /** Prior, factor of each reading, and what comes of them. */
  private void figures(Answer answer) {
    title("How the figures come about");
    page.getChildren()
        .addAll(
            Controls.label(WhyWords.factors(), NOTE),
            Controls.label("For what is in front:", "strong"));
    WhyWords.sums(answer).forEach(line -> page.getChildren().add(Controls.label(line, NOTE)));
    page.getChildren()
        .addAll(
            Controls.label("The same for all that is shown:", "strong"),
            WhyTable.of(answer),
            Controls.label(WhyWords.below(), NOTE));
  }
}
