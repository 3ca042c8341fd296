package tightside.session;

import java.util.List;
import java.util.Optional;
import tightside.drive.Drive;
import tightside.drive.Finding;
import tightside.drive.Plan;
import tightside.timing.Inspection;
import tightside.timing.Solver;

/**
 * Whether a plan can be used as a drive, and what is to be said of its parts.
 *
 * @param drive the drive that it makes; none as long as an error is found
 * @param findings errors first asked for: how the parts hang together, then how the chains lie
 */
public record PlanCheck(Optional<Drive> drive, List<Finding> findings) {

  public PlanCheck {
    findings = List.copyOf(findings);
  }

  public static PlanCheck of(Plan plan) {
    List<Finding> apart = plan.findings();
    if (!apart.isEmpty()) {
      return new PlanCheck(Optional.empty(), apart);
    }
    Drive drive = plan.drive().orElseThrow();
    List<Finding> laid = Inspection.of(Solver.of(drive));
    return new PlanCheck(
        laid.stream().anyMatch(Finding::error) ? Optional.empty() : Optional.of(drive), laid);
  }
}
