package tightside.files;

import java.util.HashMap;
import java.util.Map;
import tightside.drive.Limits;

/**
 * A value to be decoded, with what its messages need.
 *
 * @param what the key that it belongs to; nothing for the whole file
 * @param heading where that key stands, or the value itself where it has none
 * @param complaints where to say what is wrong
 */
record Value(Node node, String what, Place heading, Complaints complaints) {

  /** An item of a list, or a part of this value, under the same name. */
  Value part(Node other) {
    return new Value(other, what, other.at(), complaints);
  }

  /** Says that something is wrong with this value; {@code what} and {@code found} are added. */
  void complain(Fault fault, Map<String, Object> facts) {
    Map<String, Object> all = new HashMap<>(facts);
    all.put("what", label());
    all.put("found", found());
    complaints.add(node.at(), fault, all);
  }

  /** Says that something is wrong with the key under which this value stands. */
  void complainOfKey(Fault fault, Map<String, Object> facts) {
    complaints.add(heading, fault, facts);
  }

  void complain(Fault fault) {
    complain(fault, Map.of());
  }

  /** Says that there are more entries than can be meant. */
  void complainOfCount(int count, Limits many) {
    Map<String, Object> facts =
        Map.of("what", label(), "count", count, "most", many.most(), "unit", many.unit());
    complaints.add(heading, Fault.TOO_MANY, facts);
  }

  /** What it belongs to, as a reader would call it. */
  Object label() {
    return what.isEmpty() ? "this file" : new Quoted(what);
  }

  /** What stands here, as a reader would call it. */
  private Object found() {
    if (node instanceof Node.Section) {
      return "a section with keys";
    }
    return node instanceof Node.Scalar scalar ? new Quoted(scalar.text()) : "a list";
  }

  /** A fact that is the file's own words. */
  record Quoted(String text) {}
}
