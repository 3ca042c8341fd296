package tightside.session;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.OptionalDouble;
import tightside.drive.Chain;
import tightside.drive.Drive;
import tightside.timing.CountJudge;
import tightside.timing.Solver;
import tightside.timing.StretchLimit;

/**
 * What is found out once for a drive, however it is turned and worn.
 *
 * @param judges of counts, by chain
 * @param stretchLimits in percent, by chain; none where the tensioner does not run out
 */
record DriveFacts(
    Drive drive,
    Solver solver,
    Map<String, CountJudge> judges,
    Map<String, OptionalDouble> stretchLimits) {

  static DriveFacts of(Drive drive) {
    Solver solver = Solver.of(drive);
    Map<String, CountJudge> judges = new LinkedHashMap<>();
    Map<String, OptionalDouble> limits = new LinkedHashMap<>();
    for (Chain chain : drive.chains()) {
      judges.put(chain.name(), CountJudge.of(solver, chain.name()));
      limits.put(chain.name(), StretchLimit.of(drive, chain));
    }
    return new DriveFacts(drive, solver, judges, limits);
  }
}
