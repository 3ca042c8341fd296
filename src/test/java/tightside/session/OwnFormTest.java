package tightside.session;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import tightside.drive.Drive;
import tightside.drive.Role;
import tightside.files.ModelReader;
import tightside.timing.Counted;
import tightside.timing.Drives;

/**
 * The form for a drive of one's own. Values are the format's answered example: 51 + 17 + 50 = 118.
 */
class OwnFormTest {

  private static final Snapshot DEMO = Snapshot.opened(Drives.answered(), "demo");

  private static Snapshot typed(String crank, String cam, String... counts) {
    Snapshot now = OwnEdits.links(DEMO, "118").after();
    now = OwnEdits.teeth(now, 0, crank).after();
    now = OwnEdits.teeth(now, 1, cam).after();
    now = OwnEdits.teeth(now, 2, "36").after();
    for (int i = 0; i < counts.length; i++) {
      now = OwnEdits.count(now, i, counts[i]).after();
    }
    return now;
  }

  private static OwnReading read(Snapshot now) {
    return OwnReading.of(now.own());
  }

  @Test
  void whatIsTypedMakesTheDriveAndLaysItOnTheBench() {
    Snapshot now = typed("18", "36", "51", "17", "50");
    assertThat(now.drive().countedOnly()).isTrue();
    assertThat(now.drive().chains().get(0).counts().orElseThrow()).containsExactly(51, 17, 50);
    assertThat(read(now).tally()).contains("The counts add up to 118 links: the whole chain.");
    assertThat(OwnAnswers.of(now.drive()))
        .contains("One tooth ahead: intake: 10.00 cam degrees advanced (20.00 crank degrees).")
        .anySatisfy(s -> assertThat(s).contains("only after 118 turns"));
  }

  @Test
  void untilThenTheLastDriveStaysAndWhatIsMissingIsNamedFirst() {
    Snapshot now = typed("18", "36", "51");
    assertThat(now.drive()).isSameAs(DEMO.drive());
    assertThat(read(now).missing().get(0)).isEqualTo("the count from intake to exhaust");
    assertThat(read(now).tally()).contains("67 links are left for the rest.");
  }

  @Test
  void plainLinksCountOneFewer() {
    Snapshot now = typed("18", "36");
    now = now.with(now.look().counting(CountingWay.BETWEEN));
    now = OwnEdits.count(now, 0, "50").after();
    now = OwnEdits.count(now, 1, "16").after();
    now = OwnEdits.count(now, 2, "49").after();
    assertThat(now.drive().chains().get(0).counts().orElseThrow()).containsExactly(51, 17, 50);
  }

  @Test
  void everyWrongEntryIsRefusedWhereItStands() {
    assertThat(refusal(typed("18", "35", "51", "17", "50"), OwnReading.What.TEETH, 1))
        .contains("needs 36, not 35");
    assertThat(refusal(typed("5", "36"), OwnReading.What.TEETH, 0)).contains("from 6");
    assertThat(refusal(typed("18", "36", "0"), OwnReading.What.COUNT, 0)).contains("from 1");
    assertThat(refusal(typed("18", "36", "many"), OwnReading.What.COUNT, 0)).contains("no number");
    assertThat(refusal(OwnEdits.links(DEMO, "1e3").after(), OwnReading.What.LINKS, -1))
        .contains("no number");
    assertThat(refusal(OwnEdits.callShaft(DEMO, 1, "crank").after(), OwnReading.What.SHAFT, 1))
        .contains("another name");
    assertThat(refusal(OwnEdits.pitch(DEMO, "0.8").after(), OwnReading.What.PITCH, -1))
        .contains("from 2");
  }

  private static String refusal(Snapshot now, OwnReading.What what, int row) {
    return read(now).refusals().get(new OwnReading.Field(what, row));
  }

  @Test
  void aWrongSumSaysByHowMuchAndMakesNoDrive() {
    Snapshot now = typed("18", "36", "51", "17", "49");
    assertThat(read(now).tally()).hasValueSatisfying(s -> assertThat(s).contains("1 link too few"));
    assertThat(read(now).drive()).isEmpty();
    assertThat(now.own().rows().get(2).count().text()).isEqualTo("49");
  }

  @Test
  void sprocketsAreAddedTakenOffAndMarkedAndTheTensionerMoves() {
    Snapshot now = OwnEdits.add(DEMO, Role.PUMP).after();
    assertThat(now.own().rows()).extracting(OwnRow::shaft).endsWith("exhaust", "pump");
    assertThat(now.own().rows().get(3).marked()).isFalse();
    assertThat(now.own().nextMarked(2)).isZero();
    now = OwnEdits.tensioner(now, 3).after();
    assertThat(now.own().slackRow()).isEqualTo(3);
    now = OwnEdits.tensioner(now, 3).after();
    assertThat(now.own().rows()).noneMatch(OwnRow::tensionerFollows);
    now = OwnEdits.takeOff(now, 3).after();
    assertThat(now.own().rows()).hasSize(3);
  }

  @Test
  void undoTakesAFieldBackAsOne() {
    History history = History.opened(DEMO);
    history = history.step(OwnEdits.links(history.now(), "1"));
    history = history.step(OwnEdits.links(history.now(), "11"));
    history = history.step(OwnEdits.links(history.now(), "118"));
    assertThat(history.now().own().links()).isEqualTo("118");
    assertThat(history.undo().now().own().links()).isEmpty();
  }

  @Test
  void aDriveWithRunsIsReadIntoTheFormAndBack() {
    Drive drive =
        ModelReader.read(Path.of("models/counted-by-hand.yaml")).model().orElseThrow().drive();
    OwnForm form = OwnForm.of(drive).orElseThrow();
    assertThat(OwnReading.of(form).drive().orElseThrow().chains()).isEqualTo(drive.chains());
    OwnForm measured = OwnForm.of(Counted.withRuns(Drives.answered())).orElseThrow();
    assertThat(OwnReading.of(measured).refusals()).isEmpty();
    assertThat(OwnReading.of(measured).drive()).isPresent();
    assertThat(OwnForm.of(Drives.answered())).isEmpty();
  }
}
