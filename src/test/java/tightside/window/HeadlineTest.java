package tightside.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tightside.drive.Seen;
import tightside.session.Edits;
import tightside.session.Sentence;
import tightside.session.SessionView;
import tightside.session.Snapshot;
import tightside.session.StrandId;
import tightside.session.Turns;
import tightside.timing.Seat;

/** Whatever state a drive is in, what is said of it reads as whole sentences. */
class HeadlineTest {

  private static final Snapshot OPENED = Models.opened("two-cams-arm");

  private static Snapshot counted(Snapshot now, String from, String to, String links) {
    return Edits.count(now, new StrandId("main", from, to), links).after();
  }

  static List<Snapshot> states() {
    Snapshot worn = Edits.stretch(OPENED, "main", 1.5).after();
    Snapshot oneCount = counted(OPENED, "intake", "exhaust", "17");
    Snapshot off = Edits.reseat(OPENED, new Seat("main", "exhaust"), 1).after();
    return Stream.of(
            OPENED,
            worn,
            off,
            oneCount,
            Turns.by(worn, -20).after(),
            Turns.by(off, 720).after(),
            Edits.stretch(OPENED, "main", 0.4).after(),
            Edits.hold(OPENED, "main", 3).after(),
            Edits.cover(oneCount, Seen.COVER_ON).after(),
            counted(oneCount, "exhaust", "crank", "52"),
            counted(counted(oneCount, "exhaust", "crank", "51"), "crank", "intake", "51"),
            counted(counted(OPENED, "intake", "exhaust", "30"), "exhaust", "crank", "37"))
        .toList();
  }

  @ParameterizedTest
  @MethodSource("states")
  void everySentenceBeginsAndEndsAsOne(Snapshot state) {
    SessionView view = SessionView.of(state);
    Stream.concat(
            view.sentences().stream().map(Sentence::text), Stream.of(Headline.of(view).text()))
        .forEach(
            text -> {
              assertThat(text).matches("(?s)[A-Z0-9].*[.]");
              assertThat(text)
                  .doesNotContainPattern("[.] [a-z]")
                  .doesNotContain("...", "more below");
            });
  }

  @ParameterizedTest
  @MethodSource("states")
  void everyCautionIsNamedInTheHeadline(Snapshot state) {
    SessionView view = SessionView.of(state);
    String headline = Headline.of(view).text();
    view.sentences().stream()
        .filter(s -> s.topic() == Sentence.Topic.CAUTION)
        .forEach(s -> assertThat(headline).contains(s.text().split(",|:")[0]));
  }
}
