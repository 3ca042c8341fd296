package tightside.window;

import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.Executor;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import tightside.session.SessionView;

/** The bench beside the picture. One card lies on it at a time; the others are a key away. */
public final class Bench extends VBox {

  /** The cards. */
  public enum Card {
    COUNT("Count"),
    RESEAT("Reseat"),
    WEAR("Wear"),
    TABLE("Table"),
    SLACK("Slack");

    private final String words;

    Card(String words) {
      this.words = words;
    }

    String words() {
      return words;
    }
  }

  private final Map<Card, tightside.window.Card> cards = new EnumMap<>(Card.class);
  private final Segments<Card> choice;
  private final ScrollPane scroll = new ScrollPane();
  private final ProblemPanel problems = new ProblemPanel();
  private Card lying = Card.COUNT;
  private SessionView view;

  /**
   * @param worker does what takes long
   */
  Bench(Desk desk, Executor worker) {
    getStyleClass().add("bench");
    cards.put(Card.COUNT, new CountCard(desk));
    cards.put(Card.RESEAT, new ReseatCard(desk));
    cards.put(Card.WEAR, new WearCard(desk));
    cards.put(Card.TABLE, new TableCard());
    cards.put(Card.SLACK, new SlackCard(desk, worker));
    Map<Card, String> words = new LinkedHashMap<>();
    for (Card card : Card.values()) {
      words.put(card, card.words());
    }
    choice = new Segments<>("Card", words, this::turnTo);
    scroll.setFitToWidth(true);
    scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
    scroll.setFocusTraversable(false);
    VBox.setVgrow(scroll, Priority.ALWAYS);
    getChildren().addAll(problems, choice, scroll);
    turnTo(lying);
  }

  ProblemPanel problems() {
    return problems;
  }

  /** Lays a card on the bench. */
  public void turnTo(Card card) {
    lying = card;
    choice.show(card);
    scroll.setContent(cards.get(card));
    if (view != null) {
      cards.get(card).show(view);
    }
  }

  /** Shows a view on the card that lies there; the others follow when they are turned to. */
  void show(SessionView next) {
    view = next;
    cards.get(lying).show(view);
  }
}
