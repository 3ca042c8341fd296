package tightside.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tightside.drive.Chain;
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

  private static final String[] MODELS = {
    "v-six-two-stages", "one-cam-no-tensioner", "counterclockwise-balancers", "counted-by-hand"
  };

  private static final Snapshot OPENED = Models.opened("two-cams-arm");

  private static Snapshot counted(Snapshot now, String from, String to, String links) {
    return Edits.count(now, new StrandId("main", from, to), links).after();
  }

  static List<Snapshot> states() {
    Snapshot worn = Edits.stretch(OPENED, "main", 1.5).after();
    Snapshot oneCount = counted(OPENED, "intake", "exhaust", "17");
    Snapshot off = Edits.reseat(OPENED, new Seat("main", "exhaust"), 1).after();
    Stream<Snapshot> one =
        Stream.of(
            OPENED,
            worn,
            off,
            oneCount,
            Turns.by(worn, -20).after(),
            Turns.by(off, 720).after(),
            Edits.stretch(OPENED, "main", 0.4).after(),
            Edits.hold(OPENED, "main", 3).after(),
            Edits.cover(oneCount, Seen.COVER_ON).after(),
            counted(OPENED, "intake", "exhaust", "9999"),
            counted(oneCount, "exhaust", "crank", "many"),
            counted(oneCount, "exhaust", "crank", "52"),
            counted(counted(oneCount, "exhaust", "crank", "51"), "crank", "intake", "51"),
            counted(counted(OPENED, "intake", "exhaust", "30"), "exhaust", "crank", "37"));
    return Stream.concat(one, Stream.of(MODELS).flatMap(HeadlineTest::ofModel)).toList();
  }

  /** As opened, each chain worn, and turned back. */
  private static Stream<Snapshot> ofModel(String name) {
    Snapshot opened = Models.opened(name);
    Snapshot worn = opened;
    for (Chain chain : opened.drive().chains()) {
      worn = Edits.stretch(worn, chain.name(), 0.3).after();
    }
    return Stream.of(opened, worn, Turns.by(worn, -30).after(), Turns.by(opened, 720).after());
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

  @Test
  void aCountThatIsNotUsedIsNamed() {
    assertThat(Headline.of(SessionView.of(counted(OPENED, "intake", "exhaust", "9999"))).text())
        .contains("The count from intake to exhaust is not used.");
  }

  @Test
  void ofManyShaftsItSaysWhereToReadTheRest() {
    Snapshot worn = ofModel("v-six-two-stages").toList().get(1);
    assertThat(SessionView.of(worn).shaftRows()).hasSizeGreaterThan(5);
    assertThat(Headline.of(SessionView.of(worn)).text())
        .matches(
            "(The [a-z-]+ shaft stands [^.]+[.][^.]+[.][^.]+[.] ){2}[0-9] more are .*Table[.]");
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
