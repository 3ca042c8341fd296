package tightside.drive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.api.Test;
import tightside.geometry.Bearing;
import tightside.geometry.Rotation;
import tightside.timing.Drives;

class HotFitTest {

  private static ChainInPlace equalSprockets(double apart, int links) {
    Drive drive =
        new Drive(
            "equal sprockets",
            "Invented for a test.",
            Rotation.CLOCKWISE,
            List.of(
                new Shaft("crank", Role.CRANKSHAFT, Vector2D.of(0, 0)),
                new Shaft("pump", Role.PUMP, Vector2D.of(apart, 0))),
            List.of(
                new Chain(
                    "main",
                    ChainKind.ROLLER,
                    8,
                    links,
                    7.2,
                    5,
                    List.of(
                        Sprocket.inside("crank", 20, new Bearing(270)),
                        Sprocket.inside("pump", 20, new Bearing(90))))));
    return drive.inPlace(drive.chains().get(0));
  }

  /**
   * Between equal sprockets the path is twice the centre distance and one turn of teeth, so the
   * distance grows with the block and the links beyond the turn grow with the chain.
   */
  @Test
  void betweenEqualSprocketsTheRunsGrowAlone() {
    HotFit fit = HotFit.of(equalSprockets(300, 96), 8, new Heat(20, 100, 23e-6, 12e-6));
    assertThat(fit.coldSlackMm()).isCloseTo(8, within(1e-9));
    assertThat(fit.growthMm()).isCloseTo(80 * (600 * 23e-6 - 76 * 8 * 12e-6), within(1e-9));
    assertThat(fit.tooTightHot()).isFalse();
    assertThat(fit.travelLeftHotMm()).isEmpty();
  }

  @Test
  void aChainWithoutColdSlackIsTooTightHot() {
    HotFit fit = HotFit.of(equalSprockets(303.9, 96), 8, Heat.aluminiumBlock());
    assertThat(fit.coldSlackMm()).isCloseTo(0.2, within(1e-9));
    assertThat(fit.hot()).isInstanceOf(ChainFit.TooShort.class);
    assertThat(fit.tooTightHot()).isTrue();
  }

  @Test
  void anIronBlockLeavesTheChainSlacker() {
    HotFit fit = HotFit.of(equalSprockets(303.9, 96), 8, Heat.castIronBlock());
    assertThat(fit.growthMm()).isNegative();
    assertThat(fit.tooTightHot()).isFalse();
  }

  /** The whole drive twice as large in the same proportions would need the same plunger turn. */
  @Test
  void blockAndChainThatGrowAlikeChangeNothingButTheScale() {
    Drive drive = Drives.answered();
    ChainInPlace chain = drive.inPlace(Drives.chain(drive));
    Heat alike = new Heat(20, 120, 12e-6, 12e-6);
    HotFit fit = HotFit.of(chain, 8, alike);
    double plate = 7.2 / 2 * (alike.blockFactor() - 1);
    assertThat(fit.hotSlackMm())
        .isCloseTo(fit.coldSlackMm() * alike.blockFactor(), within(2 * plate));
  }

  /** A drive of this size: half a millimetre or more (model format 1, what it leaves out). */
  @Test
  void aWarmAluminiumBlockOutgrowsTheChainByHalfAMillimetre() {
    Drive drive = Drives.answered();
    HotFit fit = HotFit.of(drive.inPlace(Drives.chain(drive)), 8, Heat.aluminiumBlock());
    assertThat(fit.growthMm()).isBetween(0.5, 0.7);
    double coldExtension = ((ChainFit.Solved) fit.cold()).extensionMm().orElseThrow();
    assertThat(fit.travelLeftHotMm().orElseThrow()).isGreaterThan(28 - coldExtension);
  }

  @Test
  void nonsenseIsRefused() {
    assertThatThrownBy(() -> new Heat(20, 90, 23, 12e-6))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new Heat(Double.NaN, 90, 23e-6, 12e-6))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
