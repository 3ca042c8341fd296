package tightside.session;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import tightside.drive.Chain;
import tightside.drive.Finding;
import tightside.drive.Plan;
import tightside.drive.Role;
import tightside.drive.Sprocket;
import tightside.files.Demo;
import tightside.geometry.Bearing;
import tightside.geometry.Rotation;
import tightside.timing.Seat;

/** A drive drawn part by part: what each step leads to, and that each can be undone. */
class PlanEditsTest {

  private static Snapshot demo() {
    return Snapshot.opened(Demo.model().drive(), "the demo");
  }

  private static Map<String, Function<Snapshot, Edit>> everyEdit() {
    return Map.ofEntries(
        Map.entry("begin", PlanEdits::begin),
        Map.entry("call", now -> PlanEdits.call(now, "Other")),
        Map.entry("turning", now -> PlanEdits.turning(now, Rotation.COUNTERCLOCKWISE)),
        Map.entry("add shaft", now -> PlanEdits.addShaft(now, Role.IDLER)),
        Map.entry("move", now -> PlanEdits.moveShaft(now, "intake", Vector2D.of(-52, 302))),
        Map.entry("retype", now -> PlanEdits.retypeShaft(now, "intake", Role.BALANCER)),
        Map.entry("rename", now -> PlanEdits.renameShaft(now, "intake", "inlet")),
        Map.entry("delete shaft", now -> PlanEdits.deleteShaft(now, "intake")),
        Map.entry("add chain", now -> PlanEdits.addChain(now, "intake")),
        Map.entry("delete chain", now -> PlanEdits.deleteChain(now, "main")),
        Map.entry("links", now -> PlanEdits.chain(now, "main", "links", c -> c.withLinks(120))),
        Map.entry("guide", now -> PlanEdits.addFace(now, "main", 3, PartKind.GUIDE)),
        Map.entry("teeth", now -> teeth(now, 2, 38)),
        Map.entry("reorder", now -> PlanEdits.reorder(now, "main", 2, 1)),
        Map.entry("take off", now -> PlanEdits.deleteEntry(now, "main", 4)),
        Map.entry("shoe", now -> PlanEdits.retypeFace(now, "main", 1, PartKind.SHOE)),
        Map.entry(
            "handle", now -> PlanEdits.move(now, handle(now, "tensioner"), Vector2D.of(-61, 151))));
  }

  private static Edit teeth(Snapshot now, int place, int teeth) {
    return PlanEdits.entry(now, "main", place, "teeth", e -> ((Sprocket) e).withTeeth(teeth));
  }

  private static Handle handle(Snapshot now, String face) {
    return Handle.all(now.plan()).stream()
        .filter(h -> h.words().equals("the middle of the face of " + face))
        .findFirst()
        .orElseThrow();
  }

  @TestFactory
  Stream<DynamicTest> everyEditIsUndoneWhole() {
    return everyEdit().entrySet().stream()
        .map(
            edit ->
                DynamicTest.dynamicTest(
                    edit.getKey(),
                    () -> {
                      Snapshot before = demo();
                      History after = History.opened(before).step(edit.getValue().apply(before));
                      assertThat(after.now()).isNotEqualTo(before);
                      assertThat(after.undo().now()).isEqualTo(before);
                      assertThat(after.undo().redo().now()).isEqualTo(after.now());
                    }));
  }

  @Test
  void aDriveThatFitsIsTheOneThatAllElseShows() {
    Snapshot moved = PlanEdits.moveShaft(demo(), "intake", Vector2D.of(-52.5, 301)).after();
    assertThat(moved.unfinished()).isEmpty();
    assertThat(moved.drive().shaft("intake").orElseThrow().at()).isEqualTo(Vector2D.of(-52.5, 301));
  }

  @Test
  void whatMakesNoDriveWaitsUntilItDoes() {
    Snapshot before = demo();
    Snapshot astray = PlanEdits.moveShaft(before, "exhaust", Vector2D.of(0, 300)).after();
    assertThat(astray.unfinished()).isPresent();
    assertThat(astray.drive()).isEqualTo(before.drive());
    assertThat(PlanCheck.of(astray.plan()).findings())
        .extracting(Finding::id)
        .contains(Finding.Id.SPROCKETS_OVERLAP);
    Snapshot back = PlanEdits.moveShaft(astray, "exhaust", Vector2D.of(52, 301.4)).after();
    assertThat(back).isEqualTo(before);
  }

  @Test
  void whatWasDoneToAPartGoesWithIt() {
    Snapshot reseated = Edits.reseat(demo(), new Seat("main", "exhaust"), 1).after();
    Snapshot counted =
        Edits.count(reseated, new StrandId("main", "exhaust", "crank"), "50").after();
    Snapshot renamed = PlanEdits.renameShaft(counted, "exhaust", "outlet").after();
    assertThat(renamed.unfinished()).isEmpty();
    assertThat(renamed.reseats()).isEmpty();
    assertThat(renamed.counts()).isEmpty();
    Snapshot other = PlanEdits.moveShaft(counted, "intake", Vector2D.of(-52, 301.5)).after();
    assertThat(other.reseats()).isEqualTo(counted.reseats());
    assertThat(other.counts()).isEqualTo(counted.counts());
  }

  /**
   * Two equal sprockets of 20 teeth 160 mm apart on a 10 mm pitch: 2 x 16 + 20 = 52 pitches (the
   * loop's length of an open drive with a ratio of one, common practice, no source).
   */
  @Test
  void aDriveIsDrawnFromNothing() {
    Snapshot now = PlanEdits.begin(demo()).after();
    assertThat(now.plan().shafts()).hasSize(1);
    assertThat(now.slack().engine()).as("valves of another drive").isEmpty();
    now = PlanEdits.addShaft(now, Role.IDLER).after();
    now = PlanEdits.moveShaft(now, "idler", Vector2D.of(0, 160)).after();
    now = PlanEdits.addSprocket(now, "main", 1, "idler").after();
    now = PlanEdits.chain(now, "main", "pitch", c -> c.withPitch(10)).after();
    now = PlanEdits.chain(now, "main", "links", c -> c.withLinks(52)).after();
    for (int place : new int[] {0, 1}) {
      int at = place;
      now = teeth(now, place, 20).after();
      now =
          PlanEdits.entry(
                  now,
                  "main",
                  place,
                  "mark",
                  e -> ((Sprocket) e).withMark(Optional.of(new Bearing(at == 0 ? 180 : 0))))
              .after();
    }
    assertThat(now.unfinished()).as("%s", PlanCheck.of(now.plan()).findings()).isEmpty();
    SessionView view = SessionView.of(now);
    assertThat(view.rightStrands("main")).extracting(s -> s.links()).isEqualTo(List.of(26L, 26L));
  }

  @Test
  void aNewFaceTouchesTheRunWhereItIsPut() {
    for (PartKind kind : List.of(PartKind.GUIDE, PartKind.SHOE, PartKind.ARM)) {
      Plan bare =
          PlanEdits.deleteEntry(PlanEdits.deleteEntry(demo(), "main", 4).after(), "main", 1)
              .after()
              .plan();
      Chain chain = bare.chain("main").orElseThrow();
      Snapshot drawn =
          PlanEdits.addFace(demo().withUnfinished(Optional.of(bare)), "main", 3, kind).after();
      assertThat(drawn.plan().findings()).as("%s", kind).isEmpty();
      assertThat(drawn.plan().chain("main").orElseThrow().route())
          .hasSize(chain.route().size() + 1);
    }
  }

  @Test
  void everyFindingHasAPartToStandAt() {
    Snapshot astray = PlanEdits.addShaft(demo(), Role.PUMP).after();
    for (Finding finding : PlanCheck.of(astray.plan()).findings()) {
      assertThat(PlanPart.of(finding.part())).isPresent();
      assertThat(PlanPart.of(finding.part()).orElseThrow().in(astray.plan())).isTrue();
    }
  }
}
