package tightside.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;
import tightside.drive.ChainFit;
import tightside.drive.Heat;
import tightside.drive.HotFit;
import tightside.readings.JointMistake;
import tightside.timing.Climb;
import tightside.timing.FreeTeeth;
import tightside.timing.Kick;
import tightside.timing.Lag;
import tightside.timing.PressBack;
import tightside.timing.SlideOff;

class TakingOffWordsTest {

  @Test
  void aSlideThatNeedsNothing() {
    assertThat(TakingOffWords.slideOff(new SlideOff(Set.of("b", "a"), 0, List.of(), true)))
        .isEqualTo("a and b, 0.0 mm off its nose: no run bows; this drive has it.");
  }

  private static String free(OptionalDouble move, Optional<FreeTeeth.Keeper> keeper) {
    return TakingOffWords.freeTeeth(
        "crank", Optional.of(new FreeTeeth("intake", 3, 1, move, keeper)));
  }

  private static String kept(FreeTeeth.Cause cause, String name) {
    return free(OptionalDouble.empty(), Optional.of(new FreeTeeth.Keeper(cause, name)));
  }

  @Test
  void whatFreesTheTeethOrKeepsThem() {
    assertThat(free(OptionalDouble.of(0), Optional.empty())).contains("without moving it");
    assertThat(free(OptionalDouble.of(4.26), Optional.empty())).contains("4.3 mm toward crank");
    assertThat(kept(FreeTeeth.Cause.NEIGHBOUR, "exhaust")).contains("sprocket of exhaust");
    assertThat(kept(FreeTeeth.Cause.FACE, "rail")).contains("while rail is in place");
    assertThat(kept(FreeTeeth.Cause.SLACK, "")).contains("too little chain is over");
    assertThat(TakingOffWords.freeTeeth("crank", Optional.empty())).contains("toothed chain");
  }

  @Test
  void aClimbIsPossibleOrNot() {
    assertThat(TakingOffWords.climb(new Climb("crank", 3, 11, 8, 9)))
        .startsWith("The chain CAN climb a tooth at crank: it takes 8.0 mm of slack, and 9.0 mm");
    assertThat(TakingOffWords.climb(new Climb("crank", 3, 11, 8, 7))).contains("can't climb");
  }

  @Test
  void pressingBackSaysTheWay() {
    PressBack press = new PressBack("intake", Lag.ADVANCED, 15, 0, 6.1, 0.62, Optional.empty());
    assertThat(TakingOffWords.pressBack(press))
        .startsWith("Turn intake ahead: 0.62 cam degrees for the first mm, 6.1 in all")
        .contains("15.0 mm to 0.0 mm")
        .endsWith("not known here.");
    PressBack touching =
        new PressBack(
            "exhaust", Lag.RETARDED, 15, 0, 6, 1, Optional.of(new PressBack.Nearest(-0.1, -3)));
    assertThat(TakingOffWords.pressBack(touching))
        .startsWith("Turn exhaust back")
        .endsWith("VALVES MEET PISTONS on the way.");
  }

  @Test
  void anUnknownKickIsHeldBothWays() {
    assertThat(TakingOffWords.kick("intake", new Kick.Unknown())).contains("hold it both ways");
    assertThat(TakingOffWords.kick("intake", new Kick.Known(2))).contains("springs ahead");
    assertThat(TakingOffWords.kick("intake", new Kick.Known(-2))).contains("springs back");
    assertThat(TakingOffWords.kick("intake", new Kick.Known(0))).contains("in balance");
  }

  @Test
  void jointsAreSaidWithTheirDegrees() {
    assertThat(SlackWords.joint(new JointMistake.TightenedSlack("cam", 1.25, 3.09)))
        .contains("1.25 of its degrees", "at most 3.1 here");
    assertThat(SlackWords.joint(new JointMistake.PhaserNotAtRest("cam", OptionalDouble.of(25))))
        .contains("up to 25.0 cam degrees");
    assertThat(SlackWords.joint(new JointMistake.PhaserNotAtRest("cam", OptionalDouble.empty())))
        .contains("as much as its phaser is off");
  }

  @Test
  void aDriveThatIsTooTightHotIsWarnedOf() {
    ChainFit any = new ChainFit.NoRoom(0, 1);
    Heat heat = Heat.aluminiumBlock();
    assertThat(SlackWords.hot(new HotFit(any, any, 0.2, -0.15, OptionalDouble.empty()), heat))
        .contains("From 20 to 90", "grows 0.35 mm", "TOO TIGHT HOT, 0.15 mm");
    assertThat(SlackWords.hot(new HotFit(any, any, 2, 1.5, OptionalDouble.of(9)), heat))
        .contains("1.5 mm of chain is still over", "9.0 mm of travel left");
  }
}
