package tightside.window;

import java.io.File;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import java.util.function.Function;
import javafx.application.Platform;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import javafx.stage.FileChooser;
import tightside.files.LessonMemory;
import tightside.session.SessionView;

/** The bench beside the picture. One card lies on it at a time; the others are a key away. */
public final class Bench extends VBox {

  /** The cards. */
  public enum Card {
    COUNT("Count"),
    RESEAT("Reseat"),
    WEAR("Wear"),
    TABLE("Table"),
    SLACK("Slack"),
    BUILD("Build"),
    LESSON("Lesson"),
    VALVES("Valves"),
    COMPARE("Compare"),
    JOB("Job"),
    OWN("Own"),
    WHY("Why"),
    MEASURE("Measure");

    private final String words;

    Card(String words) {
      this.words = words;
    }

    String words() {
      return words;
    }
  }

  /** One for all cards: each closure more makes the start longer. */
  private final Function<Card, tightside.window.Card> makers;

  private final Map<Card, tightside.window.Card> cards = new EnumMap<>(Card.class);
  private final Segments<Card> choice;
  private final ScrollPane scroll = new ScrollPane();
  private final ProblemPanel problems = new ProblemPanel();
  private Consumer<Optional<tightside.window.Card.Stage>> turned = stage -> {};
  private Function<String, Optional<Path>> saveAs = this::ask;
  private Optional<tightside.window.Card.Stage> laid = Optional.empty();
  private final JobOpening jobs;
  private Card lying = Card.COUNT;
  private SessionView view;
  private boolean sealed;

  /**
   * @param worker does what takes long
   * @param player turns the engine where a lesson lets it
   * @param keeper keeps the job on the desk
   */
  Bench(Desk desk, Executor worker, Player player, JobKeeper keeper) {
    jobs = new JobOpening(keeper, problems, worker, Platform::runLater, () -> turnTo(Card.JOB));
    getStyleClass().add("bench");
    makers =
        which ->
            switch (which) {
              case COUNT -> new CountCard(desk);
              case RESEAT -> new ReseatCard(desk);
              case WEAR -> new WearCard(desk);
              case TABLE -> new TableCard();
              case SLACK -> new SlackCard(desk, worker);
              case BUILD -> new BuildCard(desk, new PlanSaving(desk, worker, this::file));
              case LESSON ->
                  new LessonCard(desk, worker, player, LessonMemory.in(keeper.setting().folder()));
              case VALVES -> new ValvesCard(desk);
              case COMPARE -> new CompareCard(desk);
              case JOB -> new JobCard(desk, keeper, jobs, worker);
              case OWN -> new OwnCard(desk, new PlanSaving(desk, worker, this::file));
              case MEASURE ->
                  new MeasureCard(desk, worker, new PlanSaving(desk, worker, this::file));
              case WHY -> new WhyCard(desk, worker, this::file);
            };
    Map<Card, String> words = new LinkedHashMap<>();
    for (Card card : Card.values()) {
      words.put(card, card.words());
    }
    choice = new Segments<>("Card", words, this::turnTo).wrapping();
    scroll.setFitToWidth(true);
    scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
    scroll.setFocusTraversable(false);
    VBox.setVgrow(scroll, Priority.ALWAYS);
    getChildren().addAll(problems, choice, scroll);
    turnTo(lying);
  }

  /** Asks a person where to save. */
  private Optional<Path> ask(String suggested) {
    FileChooser chooser = new FileChooser();
    chooser.setTitle("Save as");
    chooser.setInitialFileName(suggested);
    return Optional.ofNullable(chooser.showSaveDialog(getScene().getWindow())).map(File::toPath);
  }

  /** Answers in place of a person where to save. */
  void saveAs(Function<String, Optional<Path>> answer) {
    saveAs = answer;
  }

  /** Where to save, by whoever answers that now. */
  private Optional<Path> file(String suggested) {
    return saveAs.apply(suggested);
  }

  /** What lies there. */
  Card lying() {
    return lying;
  }

  ProblemPanel problems() {
    return problems;
  }

  JobOpening jobs() {
    return jobs;
  }

  /** Shows a stop card, whatever lies on the bench. */
  void stop(String card) {
    turnTo(Card.JOB);
    ((JobCard) card()).stop(card);
  }

  /** Lays a card on the bench; while a lesson hides what is wrong, only its own is shown. */
  public void turnTo(Card card) {
    boolean other = card != lying;
    lying = card;
    choice.show(card);
    lay();
    if (other) {
      scroll.setVvalue(0);
    }
    if (!sealed) {
      card().turned();
    }
  }

  private void lay() {
    sealed = hidden();
    if (sealed) {
      scroll.setContent(Controls.stack("card", Controls.label(view.sentences().get(0).text())));
      large(Optional.empty());
      return;
    }
    scroll.setContent(card());
    if (view != null) {
      card().show(view);
    }
    large(card().stage());
  }

  /** Tells what is shown large, if that is another thing now. */
  private void large(Optional<tightside.window.Card.Stage> stage) {
    if (!stage.equals(laid)) {
      laid = stage;
      turned.accept(stage);
    }
  }

  private boolean hidden() {
    return lying != Card.LESSON && view != null && view.snapshot().sealed();
  }

  /** The card that lies there; it is made when it is first turned to. */
  private tightside.window.Card card() {
    return cards.computeIfAbsent(lying, makers);
  }

  /** Calls back with what a card shows large whenever one is turned to. */
  void whenTurned(Consumer<Optional<tightside.window.Card.Stage>> what) {
    turned = what;
  }

  /** Shows a view on the card that lies there; the others follow when they are turned to. */
  void show(SessionView next) {
    view = next;
    if (hidden() != sealed) {
      lay();
    } else if (!sealed) {
      card().show(view);
      large(card().stage());
    }
  }
}
