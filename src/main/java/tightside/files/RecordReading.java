package tightside.files;

import java.util.List;
import java.util.Optional;
import tightside.record.JobRecord;

/**
 * What came of reading a job record.
 *
 * @param record all that could be read, in order; none where the file holds no record
 * @param damage one sentence for each thing that was cut off, changed, moved or taken out since it
 *     was written; where there is no record, the one reason
 */
public record RecordReading(Optional<JobRecord> record, List<String> damage) {

  public RecordReading {
    damage = List.copyOf(damage);
    if (record.isEmpty() && damage.size() != 1) {
      throw new IllegalArgumentException("no record has one reason, not " + damage);
    }
  }

  /** Whether every line stands as it was written. */
  public boolean whole() {
    return damage.isEmpty();
  }
}
