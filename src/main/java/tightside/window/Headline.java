package tightside.window;

import java.util.List;
import java.util.stream.Collectors;
import tightside.session.Sentence;
import tightside.session.Sentence.Topic;
import tightside.session.SessionView;
import tightside.session.Snapshot;

/**
 * What is said large, of all that can be said: a warning before anything else, then where the paint
 * is after whole cycles, then what the counts say, then how the shafts stand.
 *
 * @param caution whether it warns
 */
record Headline(String text, boolean caution) {

  static Headline of(SessionView view) {
    List<Sentence> sentences = view.sentences();
    List<Sentence> cautions = about(sentences, Topic.CAUTION);
    if (!cautions.isEmpty()) {
      String more = cautions.size() > 1 ? " (" + (cautions.size() - 1) + " more below.)" : "";
      return new Headline(cautions.get(0).text() + more, true);
    }
    List<Sentence> paint = about(sentences, Topic.PAINT);
    if (!paint.isEmpty()) {
      return new Headline(joined(paint), false);
    }
    Snapshot snapshot = view.snapshot();
    List<Sentence> said =
        about(sentences, snapshot.counts().isEmpty() ? Topic.SHAFT : Topic.COUNTS);
    return new Headline(joined(said.isEmpty() ? about(sentences, Topic.TENSIONER) : said), false);
  }

  private static List<Sentence> about(List<Sentence> sentences, Topic topic) {
    return sentences.stream().filter(s -> s.topic() == topic).toList();
  }

  private static String joined(List<Sentence> sentences) {
    return sentences.stream().map(Sentence::text).collect(Collectors.joining(" "));
  }
}
