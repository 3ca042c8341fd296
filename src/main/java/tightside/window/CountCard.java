package tightside.window;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javafx.scene.layout.VBox;
import tightside.drive.Chain;
import tightside.session.CountingWay;
import tightside.session.Edits;
import tightside.session.Sentence;
import tightside.session.Sentence.Topic;
import tightside.session.SessionView;
import tightside.session.StrandId;
import tightside.timing.Strand;

/** The card on which a person notes what was counted, and reads what it means. */
final class CountCard extends Card {

  private final Desk desk;
  private final Segments<CountingWay> way;
  private final List<CountLine> lines = new ArrayList<>();
  private final Map<String, VBox> verdicts = new LinkedHashMap<>();

  CountCard(Desk desk) {
    this.desk = desk;
    Map<CountingWay, String> words = new LinkedHashMap<>();
    words.put(CountingWay.MARK_TO_MARK, "Mark to mark");
    words.put(CountingWay.BETWEEN, "Plain between");
    way = new Segments<>("Counting", words, w -> desk.look(look -> look.counting(w)));
    way.setId("way");
  }

  @Override
  void layOut(SessionView view) {
    lines.clear();
    verdicts.clear();
    getChildren().setAll(Controls.label("What do you count?", "card-title"), way);
    for (Chain chain : view.snapshot().drive().chains()) {
      String links = "%s, %d links".formatted(chain.name(), chain.links());
      getChildren().add(Controls.label(links, "chain-name"));
      for (Strand strand : view.rightStrands(chain.name())) {
        CountLine line = new CountLine(chain, strand, this::typed);
        lines.add(line);
        getChildren().add(line);
      }
      VBox verdict = Controls.stack("sentences");
      verdicts.put(chain.name(), verdict);
      getChildren().add(verdict);
    }
    getChildren()
        .add(
            Controls.button(
                "Clear the counts", "Clear the counts", () -> desk.act(Edits::clearCounts)));
  }

  private void typed(StrandId strand, String text) {
    if (!showing()) {
      desk.act(now -> Edits.count(now, strand, text));
    }
  }

  @Override
  void fill(SessionView view) {
    way.show(view.snapshot().look().counting());
    lines.forEach(line -> line.show(view.snapshot()));
    verdicts.forEach((chain, box) -> show(box, view, chain));
  }

  private static void show(VBox box, SessionView view, String chain) {
    List<Sentence> sentences = view.countSentences(chain);
    if (sentences.equals(box.getUserData())) {
      return;
    }
    box.setUserData(sentences);
    box.getChildren().clear();
    for (Sentence sentence : sentences) {
      boolean verdict = sentence.topic() == Topic.COUNTS;
      box.getChildren()
          .add(
              verdict && !view.countsFit(chain)
                  ? Controls.caution(sentence.text())
                  : Controls.label(sentence.text(), verdict ? "verdict" : "note"));
    }
  }
}
