package tightside.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** A job takes what its owner notes, and refuses what can't be meant. */
class JobTest {

  @Test
  void nothingNeedsToBeNoted() {
    Job job = new Job(OptionalDouble.empty(), Optional.empty());
    assertThat(job.lockingToolPlayDegrees()).isEmpty();
  }

  @Test
  void playBelowZeroIsRefused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Job(OptionalDouble.of(-0.1), Optional.empty()));
  }

  @Test
  void aNoteThatCannotBePrintedIsRefused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Job(OptionalDouble.empty(), Optional.of("bell\u0007")));
  }
}
