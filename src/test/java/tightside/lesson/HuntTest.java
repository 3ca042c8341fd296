package tightside.lesson;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tightside.drive.Seen;
import tightside.timing.CountJudge;
import tightside.timing.CountVerdict;
import tightside.timing.Seat;
import tightside.timing.Solver;
import tightside.timing.State;

/** Faults from a seed: five that differ, each as hard as the others and to be told for certain. */
class HuntTest {

  @ParameterizedTest
  @CsvSource({
    "two-cams-arm, COVER_OFF",
    "two-cams-arm, BORESCOPE",
    "one-tooth-touches, BORESCOPE",
    "v-six-two-stages, BORESCOPE",
    "counterclockwise-balancers, BORESCOPE",
    "one-cam-no-tensioner, COVER_OFF"
  })
  void fiveVariantsDifferAndAreAsHardAsEachOther(String model, Seen access) {
    Setting setting = Lessons.setting(model);
    Solver solver = Solver.of(setting.drive());
    for (long seed = 0; seed < 2; seed++) {
      Hunt hunt = Hunt.drawn(setting, access, seed).orElseThrow();
      assertThat(hunt.variants()).hasSize(Hunt.VARIANTS).doesNotHaveDuplicates();
      for (State state : hunt.variants()) {
        assertThat(Difficulty.of(solver, state, access)).isEqualTo(hunt.difficulty());
      }
      assertThat(hunt.difficulty().ambiguity()).isEqualTo(1);
      assertThat(hunt.difficulty().visibleStrands()).isPositive();
    }
  }

  /** Counted by someone who knows the sheet, a wrong tooth leads to its sprocket and no other. */
  @Test
  void everyWrongToothIsFoundByCounting() {
    Setting setting = Lessons.setting("two-cams-arm");
    Solver solver = Solver.of(setting.drive());
    Hunt hunt = Hunt.drawn(setting, Seen.COVER_OFF, 7).orElseThrow();
    for (State state : hunt.variants()) {
      Seat seat = state.reseats().keySet().iterator().next();
      CountVerdict verdict = Truth.judged(solver, state, seat.chain(), Seen.COVER_OFF);
      assertThat(verdict).isInstanceOf(CountVerdict.Misplaced.class);
      assertThat(((CountVerdict.Misplaced) verdict).simplest().get(0).teethOf(seat.shaft()))
          .isEqualTo(state.teethAt(seat));
    }
    assertThat(CountJudge.of(solver, "main").strands()).hasSize(3);
  }

  @Test
  void theSameSeedGivesTheSameAndOthersGiveOthers() {
    Setting setting = Lessons.setting("two-cams-arm");
    Set<Object> drawn = new HashSet<>();
    Set<Cause> kinds = new HashSet<>();
    for (long seed = 0; seed < 8; seed++) {
      Hunt hunt = Hunt.drawn(setting, Seen.BORESCOPE, seed).orElseThrow();
      assertThat(Hunt.drawn(setting, Seen.BORESCOPE, seed)).contains(hunt);
      drawn.add(hunt.variants());
      kinds.add(hunt.difficulty().kind());
    }
    assertThat(drawn).hasSizeGreaterThan(5);
    assertThat(kinds).containsExactlyInAnyOrder(Cause.WRONG_TOOTH, Cause.WORN_CHAIN);
  }

  /** With the cover on, one strand of three is seen: a tooth at either end of it looks the same. */
  @Test
  void whereTooLittleIsSeenThereIsNoHuntAndItIsSaid() {
    assertThat(Hunt.drawn(Lessons.setting("two-cams-arm"), Seen.COVER_ON, 1)).isEmpty();
    assertThat(Hunt.tooLittle(Seen.COVER_ON))
        .isEqualTo(
            "Too little can be seen of this drive with the cover on to tell five faults apart; look"
                + " further in, or take a drive with more marks.");
  }
}
