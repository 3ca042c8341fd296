package tightside.timing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tightside.drive.Chain;
import tightside.drive.Drive;

/** Slack against points strewn over everything that the chain may touch. */
class HoldBackByBruteForceTest {

  /** Points half a degree apart on circles of 46 mm miss the true touch by under 0.2 mm. */
  private static final double STREWN_MM = 0.01;

  private static void agrees(Drive drive) {
    agrees(drive, 0, (HoldBack) HeldBack.of(drive, Drives.chain(drive)));
  }

  private static void agrees(Drive drive, double extension) {
    Chain chain = Drives.chain(drive);
    HeldBack held =
        HeldBack.of(drive, chain, OptionalDouble.of(extension), 0, LockingPlay.unknown());
    agrees(drive, extension, (HoldBack) held);
  }

  private static void agrees(Drive drive, double extension, HoldBack hold) {
    Chain chain = Drives.chain(drive);
    double loop = 0;
    for (LooseStrand loose : hold.strands()) {
      Strand s = loose.strand();
      double pitches =
          new BruteStrand(drive, chain, s.fromPlace(), s.toPlace(), extension, true).pitches();
      double slack = (s.links() - pitches) * chain.pitchMm();
      assertThat(loose.slackMm())
          .as(s.from() + " to " + s.to())
          .isCloseTo(slack, within(STREWN_MM));
      loop += slack;
    }
    assertThat(hold.slackMm()).isCloseTo(loop, within(3 * STREWN_MM));
  }

  @Test
  void theAnsweredExamplePushedFullyBack() {
    agrees(Drives.answered(), 0);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, 3, 6, 15})
  void aShoePushedOut(double extension) {
    agrees(LooseDrives.withShoe(), extension);
  }

  @ParameterizedTest
  @ValueSource(ints = {101, 102, 103})
  void looseDrives(int seed) {
    agrees(LooseDrives.random(new Random(seed), 2));
  }
}
