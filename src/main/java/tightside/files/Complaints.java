package tightside.files;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import tightside.drive.Finding;

/** Gathers what is wrong with a text, so that a reader can be told all of it at once. */
final class Complaints {

  /** Nobody mends more than this in one go. */
  private static final int MOST = 100;

  private final List<Complaint> gathered = new ArrayList<>();
  private int errors;

  void add(Place at, Fault fault, Map<String, Object> facts) {
    add(new Complaint(at, Finding.Severity.ERROR, fault, facts));
  }

  void add(Place at, Finding finding) {
    add(new Complaint(at, finding.id().severity(), finding.id(), finding.facts()));
  }

  private void add(Complaint complaint) {
    gathered.add(complaint);
    if (complaint.severity() == Finding.Severity.ERROR) {
      errors++;
    }
  }

  /** How many errors there are so far. */
  int errors() {
    return errors;
  }

  /** In the order of the text; past a hundred the rest is only counted. */
  List<Complaint> sorted() {
    List<Complaint> sorted = new ArrayList<>(gathered);
    sorted.sort(
        Comparator.comparing(Complaint::at, Comparator.comparingInt(Place::line))
            .thenComparingInt(c -> c.at().column()));
    if (sorted.size() <= MOST) {
      return sorted;
    }
    List<Complaint> first = new ArrayList<>(sorted.subList(0, MOST));
    first.add(
        new Complaint(
            sorted.get(MOST).at(),
            errors > 0 ? Finding.Severity.ERROR : Finding.Severity.WARNING,
            Fault.MORE_PROBLEMS,
            Map.of("count", sorted.size() - MOST)));
    return first;
  }
}
