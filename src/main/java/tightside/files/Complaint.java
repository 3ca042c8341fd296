package tightside.files;

import java.util.Map;
import tightside.drive.Finding;

/**
 * A problem before it is put into words.
 *
 * @param id a {@link Fault} or a {@link Finding.Id}
 * @param facts names, numbers and lists that the words need
 */
record Complaint(Place at, Finding.Severity severity, Enum<?> id, Map<String, Object> facts) {

  Complaint {
    facts = Map.copyOf(facts);
  }

  Problem inWords() {
    return new Problem(at.line(), at.column(), severity, Catalogue.sentence(id, facts));
  }
}
