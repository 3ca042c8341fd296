package tightside.window;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import tightside.session.Proof;
import tightside.session.Sentence;
import tightside.session.Sentence.Topic;
import tightside.session.SessionView;
import tightside.session.Snapshot;
import tightside.timing.Lag;
import tightside.timing.State;

/**
 * What is said large, of all that can be said: a warning before anything else, then where the paint
 * is after whole cycles, then what the counts say, then how the shafts stand.
 */
record Headline(String text, Tone tone) {

  /** More sentences than these leave the picture too little room. */
  private static final int MOST = 3;

  /** How it is to be taken. */
  enum Tone {
    PLAIN,
    /** Something does not fit. */
    NOTICE,
    /** It can hurt people or engines, or nothing shown holds. */
    CAUTION
  }

  static Headline of(SessionView view) {
    Headline said = said(view);
    return Proof.isOpen(view.snapshot())
        ? new Headline(said.text() + " Measured, not proved.", said.tone())
        : said;
  }

  /**
   * What is said while a drive is drawn: of what, for the picture then is not the one that all else
   * is said of.
   */
  static Headline whileDrawing(SessionView view) {
    Headline said = of(view);
    Snapshot now = view.snapshot();
    if (now.sealed() || now.unfinished().isPresent()) {
      return said;
    }
    String drawn =
        "Drawn here: the drive new, every sprocket right, at the reference position, cover off.";
    boolean same = now.state().equals(State.reference()) && now.counts().isEmpty();
    return same
        ? new Headline(drawn, Tone.PLAIN)
        : new Headline(drawn + " The other cards go on where they were.", Tone.PLAIN);
  }

  private static Headline said(SessionView view) {
    if (view.snapshot().unfinished().isPresent()) {
      return new Headline(
          "What is drawn on the card Build makes no drive yet. All else shows the last one that"
              + " did.",
          Tone.NOTICE);
    }
    List<Sentence> sentences = view.sentences();
    if (view.snapshot().sealed()) {
      return new Headline(joined(sentences), Tone.NOTICE);
    }
    List<Sentence> cautions = about(sentences, Topic.CAUTION);
    if (!cautions.isEmpty()) {
      String others =
          cautions.stream().skip(1).map(c -> " " + opening(c.text())).collect(Collectors.joining());
      return new Headline(cautions.get(0).text() + others, Tone.CAUTION);
    }
    List<Sentence> paint = about(sentences, Topic.PAINT);
    if (!paint.isEmpty()) {
      return new Headline(joined(paint), Tone.PLAIN);
    }
    List<String> counted = counted(view);
    if (!counted.isEmpty()) {
      return counted(view, counted);
    }
    List<Sentence> shafts = about(sentences, Topic.SHAFT);
    List<Sentence> said = shafts.isEmpty() ? about(sentences, Topic.TENSIONER) : shafts;
    return new Headline(brief(said), Tone.PLAIN);
  }

  /** Said in full as long as they are few; all of them stand on the card Table. */
  private static String brief(List<Sentence> said) {
    return said.size() <= MOST
        ? joined(said)
        : joined(said.subList(0, MOST - 1))
            + " %d more are to be read on the card Table.".formatted(said.size() - MOST + 1);
  }

  /**
   * The counts are of the engine, the angles of the drive as it is drawn: neither hides the other.
   */
  private static Headline counted(SessionView view, List<String> counted) {
    String said = String.join(" ", counted);
    boolean fits =
        view.snapshot().drive().chains().stream().allMatch(chain -> view.countsFit(chain.name()));
    String shafts = brief(about(view.sentences(), Topic.SHAFT));
    String drawn = anyOff(view) ? " As drawn, " + uncapitalised(shafts) : "";
    return fits
        ? new Headline(said + drawn, Tone.PLAIN)
        : new Headline("Caution: " + said + drawn, Tone.NOTICE);
  }

  private static String uncapitalised(String sentence) {
    return sentence.substring(0, 1).toLowerCase(Locale.ROOT) + sentence.substring(1);
  }

  private static boolean anyOff(SessionView view) {
    return view.solution().shafts().stream().anyMatch(s -> s.lag() != Lag.RIGHT);
  }

  /** What the counts say, chain by chain, where something is counted; in full it is on the card. */
  private static List<String> counted(SessionView view) {
    return view.snapshot().drive().chains().stream()
        .filter(chain -> counted(view, chain.name()))
        .flatMap(chain -> about(view.countSentences(chain.name()), Topic.COUNTS).stream())
        .map(sentence -> brief(sentence.text()))
        .toList();
  }

  private static boolean counted(SessionView view, String chain) {
    return view.snapshot().counts().keySet().stream().anyMatch(id -> id.chain().equals(chain));
  }

  /** What a sentence on counts says first, and what is to be counted again. */
  private static String brief(String sentence) {
    int advice = sentence.indexOf(": count ");
    return advice < 0 ? opening(sentence) : until(sentence, ", where ");
  }

  /** The first thing that a sentence says. */
  private static String opening(String sentence) {
    return until(until(sentence, ": "), ", so ");
  }

  private static String until(String sentence, String sign) {
    int more = sentence.indexOf(sign);
    return more < 0 ? sentence : sentence.substring(0, more) + ".";
  }

  private static List<Sentence> about(List<Sentence> sentences, Topic topic) {
    return sentences.stream().filter(s -> s.topic() == topic).toList();
  }

  private static String joined(List<Sentence> sentences) {
    return sentences.stream().map(Sentence::text).collect(Collectors.joining(" "));
  }
}
