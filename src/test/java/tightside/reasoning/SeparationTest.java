package tightside.reasoning;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** How far readings lie apart: a state that an explanation can make lies at no distance from it. */
class SeparationTest {

  private static final DriveFaults FAULTS = FaultStudyTest.FAULTS;

  private static double[] made(Hypothesis pair, double firstShare, double secondShare) {
    double[] at = pair.fixedPart(FAULTS.base());
    Curve first = pair.amounts().get(0).curve();
    Curve second = pair.amounts().get(1).curve();
    first.addTo(at, first.least() + firstShare * (first.most() - first.least()));
    second.addTo(at, second.least() + secondShare * (second.most() - second.least()));
    return at;
  }

  @Test
  void aPairFindsBothItsAmountsAgain() {
    Separation separation =
        new Separation(Likelihood.of(FAULTS, FaultStudyTest.CAMS_AND_PLUNGER), FAULTS.base());
    List<Hypothesis> pairs =
        FaultStudyTest.ALL.stream().filter(h -> h.amounts().size() == 2).toList();
    assertThat(pairs.size()).isGreaterThan(5);
    for (Hypothesis pair : pairs) {
      for (double share : new double[] {0.2, 0.5, 0.9}) {
        double[] at = made(pair, share, 1.1 - share);
        assertThat(separation.nearest(at, pair, pair))
            .as("%s at %s", pair.what(), share)
            .isLessThan(0.25);
      }
    }
  }
}
