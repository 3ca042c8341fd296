package tightside.window;

import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import tightside.reasoning.Answer;
import tightside.reasoning.Group;
import tightside.reasoning.NextCheck;
import tightside.reasoning.Weighed;
import tightside.why.WhyPicture;
import tightside.words.CheckWords;
import tightside.words.ExplainWords;
import tightside.words.Numbers;
import tightside.words.Sentences;

/** The answer, large: what explains the readings, why, and what would settle it. */
final class WhyStage extends StackPane {

  private static final double SHOWN = 0.005;
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

  void show(Answer answer) {
    page.getChildren().setAll(Controls.sentences(ExplainWords.verdict(answer), "rule"));
    page.getChildren().add(Controls.label(ExplainWords.stability(answer.stability()), "note"));
    worth(answer.checks()).stream()
        .findFirst()
        .ifPresent(c -> page.getChildren().add(Controls.label("Next: " + asked(c), "strong")));
    ExplainWords.jumpCaution(answer)
        .ifPresent(words -> page.getChildren().add(Controls.label(words, "refusal")));
    title("What could explain it");
    double rest = 0;
    for (Group group : answer.groups()) {
      if (group.probability() < SHOWN) {
        rest += group.probability();
      } else {
        page.getChildren().add(bar(group));
      }
    }
    page.getChildren()
        .add(Controls.label("Everything else together: %s.".formatted(ExplainWords.percent(rest))));
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
                          "note"));
            });
    checks(answer.checks());
    figures(answer);
    page.getChildren()
        .addAll(
            Controls.label(ExplainWords.leftOut(), "note"),
            Controls.label(Sentences.caution(), "note"));
  }

  private void title(String words) {
    page.getChildren().add(Controls.label(words, "chain-name"));
  }

  /** A share as a bar, as a number, and in words. */
  private static Node bar(Group group) {
    VBox box = new VBox();
    List<Weighed> likely = ExplainWords.likely(group);
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
                            "or alike: " + ExplainWords.clauseWithAmount(m) + ".", "note")));
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
          .forEach(e -> box.getChildren().add(Controls.label(CheckWords.expect(e), "note")));
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
    for (Group group : answer.groups()) {
      if (group.probability() >= SHOWN) {
        Weighed first = group.first();
        StringBuilder words =
            new StringBuilder(ExplainWords.brief(first.what()))
                .append(": ")
                .append(Numbers.fixed(100 * first.prior(), 1))
                .append(" % before");
        first.factors().forEach(f -> words.append(", x ").append(factor(f)));
        words.append(", now ").append(Numbers.fixed(100 * first.probability(), 1)).append(" %");
        page.getChildren().add(Controls.label(words.toString(), "note"));
      }
    }
    page.getChildren()
        .add(Controls.label("One factor for each reading, in the order of the form.", "note"));
  }

  private static String factor(double factor) {
    return factor < 0.001 ? "under 0.001" : Numbers.fixed(factor, factor < 10 ? 3 : 0);
  }
}
