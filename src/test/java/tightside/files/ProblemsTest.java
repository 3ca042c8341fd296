package tightside.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tightside.drive.Finding;

/** Everything that can be wrong with a model's text is told at its place, in words that help. */
class ProblemsTest {

  private static List<ProblemCase> cases() {
    return ProblemCase.all();
  }

  @ParameterizedTest
  @MethodSource("cases")
  void isToldAtItsPlaceInWordsThatHelp(ProblemCase c) {
    Complaints complaints = new Complaints();
    ModelReader.parse(c.text(), complaints);
    List<Complaint> told = complaints.sorted();
    assertThat(told)
        .anySatisfy(
            complaint -> {
              assertThat(complaint.id().name()).isEqualTo(c.id());
              assertThat(complaint.at()).isEqualTo(c.at());
              assertThat(complaint.inWords().message()).contains(c.words());
            });
    if (c.alone()) {
      assertThat(told).hasSize(1);
    }
  }

  @Test
  void everyKindOfProblemHasACase() {
    Set<String> covered = new TreeSet<>(cases().stream().map(ProblemCase::id).toList());
    Set<String> wanted = new TreeSet<>();
    EnumSet.allOf(Finding.Id.class).forEach(id -> wanted.add(id.name()));
    EnumSet.range(Fault.SIGN_UNPRINTABLE, Fault.ADAPTER_TOO_LONG)
        .forEach(fault -> wanted.add(fault.name()));
    wanted.removeAll(covered);
    wanted.remove(Fault.MORE_PROBLEMS.name());
    assertThat(wanted).isEmpty();
  }
}
