package tightside.files;

import java.util.Map;

/** A text that can't be read on from a place. */
final class Unreadable extends Exception {

  private final Place at;
  private final Fault fault;
  private final Map<String, Object> facts;

  Unreadable(Place at, Fault fault, Map<String, Object> facts) {
    super(fault.name(), null, false, false);
    this.at = at;
    this.fault = fault;
    this.facts = facts;
  }

  void complain(Complaints complaints) {
    complaints.add(at, fault, facts);
  }
}
