package tightside.session;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import tightside.drive.Seen;
import tightside.session.Sentence.Topic;
import tightside.timing.CountVerdict;
import tightside.timing.Drives;
import tightside.timing.Seat;

/** Numbers from the answered example of the model format's description, rounded as shown. */
class SessionViewTest {

  private static final Seat EXHAUST = new Seat("main", "exhaust");
  private static final Snapshot OPENED = Snapshot.opened(Drives.answered(), "demo");
  private static final SessionView VIEW = SessionView.of(OPENED);

  private static List<String> said(Snapshot snapshot, Topic topic) {
    return VIEW.next(snapshot).sentences().stream()
        .filter(s -> s.topic() == topic)
        .map(Sentence::text)
        .toList();
  }

  private static Snapshot counted(Map<String, String> byFrom) {
    Snapshot snapshot = OPENED;
    for (StrandRow row : VIEW.strandRows("main")) {
      if (byFrom.containsKey(row.from())) {
        snapshot = Edits.count(snapshot, row.id(), byFrom.get(row.from())).after();
      }
    }
    return snapshot;
  }

  @Test
  void opened_right() {
    assertThat(said(OPENED, Topic.SHAFT))
        .containsExactly("Every timed shaft stands where it belongs.");
    assertThat(said(OPENED, Topic.CAUTION)).isEmpty();
    assertThat(said(OPENED, Topic.PAINT)).isEmpty();
  }

  @Test
  void opened_plunger() {
    assertThat(said(OPENED, Topic.TENSIONER).get(0))
        .startsWith("The plunger of main is 14.2 mm out, 9 steps, with 13.8 mm of travel left; ")
        .matches(".*it runs out at [0-9]\\.[0-9]{2} % stretch\\.");
  }

  @Test
  void strandsAsRows() {
    assertThat(VIEW.strandRows("main").stream().map(r -> r.links() + "/" + r.between()))
        .containsExactly("51/50", "17/16", "50/49");
    StrandRow slack = VIEW.strandRows("main").get(0);
    assertThat(slack.state()).isEqualTo("slack side, held tight by the tensioner");
    assertThat(slack.visibleWith()).isEqualTo("cover off");
    assertThat(slack.counted()).isEmpty();
    assertThat(VIEW.strandRows("main").get(1).state()).isEqualTo("taut");
    assertThat(VIEW.strandRows("main").get(1).misfit()).matches("[+-]?0\\.[0-9]{2}");
  }

  @Test
  void strandWithoutTensioner_slackIsLoose_andMisfitIsADash() {
    StrandRow row =
        SessionView.of(Snapshot.opened(TwoStages.drive(), "stages")).strandRows("lower").get(0);
    assertThat(row.misfit()).isEqualTo("\u2013");
    assertThat(row.state()).isEqualTo("slack side, loose");
  }

  @Test
  void exhaustOneToothBehind_tenCamDegreesRetarded() {
    Snapshot snapshot = Edits.reseat(OPENED, EXHAUST, -1).after();
    assertThat(said(snapshot, Topic.SHAFT))
        .containsExactly("The exhaust shaft stands 10.0 cam degrees (20.0 crank) retarded.");
    assertThat(VIEW.next(snapshot).shaftRows())
        .contains(new ShaftRow("exhaust", "camshaft", "-10.00", "-20.00", "retarded"))
        .contains(new ShaftRow("crank", "crankshaft", "0.00", "0.00", "right"));
  }

  @Test
  void stretched_bothCamsRetarded() {
    assertThat(said(Edits.stretch(OPENED, "main", 0.2).after(), Topic.SHAFT))
        .containsExactly(
            "The intake shaft stands 1.0 cam degrees (2.0 crank) retarded.",
            "The exhaust shaft stands 0.8 cam degrees (1.5 crank) retarded.");
  }

  @Test
  void stretchedTooFar_tensionerRunOut_isACaution() {
    assertThat(said(Edits.stretch(OPENED, "main", 3).after(), Topic.CAUTION).get(0))
        .startsWith("The tensioner of main has run out: at its full travel of 28.0 mm, ")
        .matches(
            ".* mm of chain is left over and nothing holds it; it ran out at [0-9]\\.[0-9]{2} % stretch, and .*")
        .endsWith("a chain as loose as this can jump teeth.");
  }

  @Test
  void held_slackAsAnswered() {
    assertThat(said(Edits.hold(OPENED, "main", 0).after(), Topic.TENSIONER))
        .containsExactly(
            "The plunger of main is held at 0.0 mm with 2.5 mm of chain left over, so no angle "
                + "holds until it is let go.");
  }

  @Test
  void afterTwoTurns_paintHasMovedOn() {
    assertThat(said(Turns.byTwoTurns(OPENED).after(), Topic.PAINT))
        .containsExactly(
            "After 2 turns the painted links of main stand 36 of its 118 links further on, and meet"
                + " the marks again 118 turns after the reference position.");
  }

  /** Several chains in one sentence, or it would leave the picture no room. */
  @Test
  void afterTwoTurns_everyChainsPaintInOneSentence() {
    Snapshot stages = Snapshot.opened(TwoStages.drive(), "stages");
    List<String> paint =
        SessionView.of(Turns.byTwoTurns(stages).after()).sentences().stream()
            .filter(s -> s.topic() == Topic.PAINT)
            .map(Sentence::text)
            .toList();
    assertThat(paint).hasSize(1);
    assertThat(paint.get(0))
        .matches(
            "After 2 turns the painted links stand [0-9]+ of [0-9]+ on lower and [0-9]+ of [0-9]+ on"
                + " upper further on, and meet the marks again after [0-9]+ and [0-9]+ turns[.]");
  }

  @Test
  void afterTheAnsweredTurns_paintMeetsTheMarks() {
    assertThat(said(Turns.to(OPENED, 118 * 360).after(), Topic.PAINT))
        .containsExactly("After 118 turns the painted links of main meet the marks again.");
    assertThat(said(Turns.to(OPENED, 59 * 720 + 90).after(), Topic.PAINT)).isEmpty();
  }

  @Test
  void nothingHolds_nothingIsCalledRight() {
    assertThat(said(Turns.by(OPENED, -10).after(), Topic.SHAFT)).isEmpty();
    assertThat(said(Edits.hold(OPENED, "main", 0).after(), Topic.SHAFT)).isEmpty();
  }

  @Test
  void nothingHolds_noShaftHasAFigureInTheTable() {
    assertThat(VIEW.next(Turns.by(OPENED, -10).after()).shaftRows())
        .hasSize(3)
        .allSatisfy(row -> assertThat(row.known()).isFalse())
        .allSatisfy(row -> assertThat(row.state()).isEqualTo("not known until turned forward"));
    assertThat(VIEW.next(Edits.hold(OPENED, "main", 0).after()).shaftRows())
        .allSatisfy(
            row -> assertThat(row.state()).isEqualTo("not known until the plunger is let go"));
  }

  @Test
  void toTheReferencePosition_isCalledAJump() {
    assertThat(Turns.toReference(OPENED).name()).isEqualTo("Jump to the reference position");
  }

  @Test
  void twoTurnsBack_paintCountedForward() {
    assertThat(said(Turns.by(OPENED, -720).after(), Topic.PAINT).get(0))
        .startsWith("After 2 turns back the painted links of main stand 82 of its 118 links");
  }

  @Test
  void turnedBack_isACaution() {
    assertThat(said(Turns.by(OPENED, -10).after(), Topic.CAUTION))
        .containsExactly(
            "The engine was turned back, so nothing shown holds until it is turned forward by 45.0 "
                + "crank degrees more; turn it back only where its maker says so.");
  }

  @Test
  void counts_judgedAgainstWhatBelongs_notAgainstWhatWasReseated() {
    Snapshot reseated = Edits.reseat(counted(Map.of("crank", "51")), EXHAUST, 1).after();
    assertThat(VIEW.next(reseated).verdict("main")).isInstanceOf(CountVerdict.Fits.class);
  }

  @Test
  void countsTheOtherWay_sameVerdict() {
    Snapshot between = OPENED.with(Look.usual().counting(CountingWay.BETWEEN));
    for (StrandRow row : VIEW.strandRows("main")) {
      between = Edits.count(between, row.id(), row.between()).after();
    }
    CountVerdict verdict = VIEW.next(between).verdict("main");
    assertThat(verdict).isInstanceOf(CountVerdict.Fits.class);
    assertThat(verdict.unproved().nothing()).isTrue();
    assertThat(VIEW.next(between).strandRows("main").get(1).counted()).isEqualTo("16 between");
  }

  @Test
  void countThatIsNoNumber_saidSo_andTheOthersJudged() {
    Snapshot snapshot = counted(Map.of("crank", "fifty", "intake", "18"));
    assertThat(said(snapshot, Topic.COUNTS)).hasSize(2);
    assertThat(said(snapshot, Topic.COUNTS).get(0))
        .startsWith("The count from crank to intake is not used: \"fifty\" is no number");
    assertThat(VIEW.next(snapshot).verdict("main")).isInstanceOf(CountVerdict.Misplaced.class);
  }

  @Test
  void coverPutOn_hidesCounts() {
    Snapshot snapshot = Edits.cover(counted(Map.of("crank", "51")), Seen.COVER_ON).after();
    assertThat(said(snapshot, Topic.COUNTS))
        .containsExactly("No strand of main can be counted with the cover on.");
  }

  @Test
  void sameSnapshot_sameView() {
    assertThat(VIEW.next(OPENED)).isSameAs(VIEW);
    assertThat(VIEW.next(OPENED.with(Look.usual()))).isNotSameAs(VIEW);
  }

  @Test
  void otherDrive_itsOwnFacts() {
    SessionView other = VIEW.next(Snapshot.opened(TwoStages.drive(), "stages"));
    assertThat(other.strandRows("upper")).hasSize(2);
    assertThat(other.solution().drive().name()).isEqualTo("Two stages");
  }

  @Test
  void everySentence_startsLarge_unlessAShaftsOwnNameBeginsIt() {
    Snapshot snapshot = counted(Map.of("crank", "fifty", "intake", "18"));
    for (Snapshot now : List.of(snapshot, counted(Map.of("intake", "17", "exhaust", "50")))) {
      assertThat(VIEW.next(now).sentences())
          .allSatisfy(s -> assertThat(s.text()).matches("([A-Z]|crank |intake |exhaust ).*"));
    }
  }

  @Test
  void everySentence_endsAndStartsProperly() {
    Snapshot snapshot = Edits.stretch(counted(Map.of("crank", "15")), "main", 3).after();
    assertThat(VIEW.next(Turns.by(snapshot, -720).after()).sentences())
        .isSortedAccordingTo((a, b) -> a.topic().compareTo(b.topic()))
        .allSatisfy(s -> assertThat(s.text()).matches("\\S[^\\n]*[^\\s.]\\.").doesNotContain("  "));
  }
}
