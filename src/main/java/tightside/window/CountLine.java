package tightside.window;

import java.util.function.BiConsumer;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import tightside.drive.Chain;
import tightside.drive.Seen;
import tightside.session.Count;
import tightside.session.CountingWay;
import tightside.session.Snapshot;
import tightside.session.StrandId;
import tightside.timing.CountJudge;
import tightside.timing.Strand;

/** One strand on the card: what belongs there, and a field for what was counted. */
final class CountLine extends HBox {

  private final StrandId id;
  private final Strand strand;
  private final TextField field;
  private final Label unseen;
  private final Label how = Controls.label("", "note");

  CountLine(Chain chain, Strand strand, BiConsumer<StrandId, String> typed) {
    this.strand = strand;
    id = StrandId.of(chain.name(), strand);
    getStyleClass().add("line");
    setAlignment(Pos.TOP_LEFT);
    String name = strand.from() + " to " + strand.to();
    field =
        Controls.field(
            "Counted on %s, %s".formatted(chain.name(), name), 4, text -> typed.accept(id, text));
    field.setId("count-" + chain.name() + "-" + strand.from());
    unseen = Controls.tag(unseen(strand.seen()), "note");
    VBox words =
        new VBox(Controls.label(name, "strong"), Controls.label(belongs(strand), "note"), how);
    HBox.setHgrow(words, Priority.ALWAYS);
    getChildren().addAll(words, field, unseen);
  }

  private static String belongs(Strand strand) {
    return "right: %d links = %d between".formatted(strand.links(), strand.between());
  }

  private static String unseen(Seen seen) {
    return switch (seen) {
      case NEVER -> "can't be seen";
      case BORESCOPE -> "needs a borescope";
      default -> "under the cover";
    };
  }

  void show(Snapshot now) {
    boolean countable = CountJudge.countable(strand, now.cover());
    Controls.visible(field, countable);
    Controls.visible(unseen, !countable);
    Count count = now.counts().get(id);
    String text = count == null ? "" : count.text();
    if (!field.getText().equals(text)) {
      field.setText(text);
    }
    Controls.visible(how, count != null);
    if (count != null) {
      boolean between = count.way() == CountingWay.BETWEEN;
      how.setText(
          "%s counted %s"
              .formatted(count.text().strip(), between ? "between" : "from mark to mark"));
    }
  }
}
