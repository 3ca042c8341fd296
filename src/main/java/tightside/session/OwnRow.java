package tightside.session;

import java.util.List;
import tightside.drive.Role;
import tightside.drive.RouteEntry;
import tightside.drive.Sprocket;

/**
 * A sprocket on the form for a drive of one's own, as typed, and what follows it on the route.
 *
 * @param base what is not asked for: how it touches, what joins it, what can be seen
 * @param count links of the strand that leaves it, if it bears a mark
 * @param straight length of the free run that leaves it, mm
 * @param after guides, and the tensioner, up to the next sprocket
 */
public record OwnRow(
    String shaft,
    Role role,
    String teeth,
    boolean marked,
    Count count,
    String straight,
    Sprocket base,
    List<RouteEntry> after) {

  /** Stands in for what is not asked for, until teeth are typed. */
  private static final Sprocket PLAIN = Sprocket.counted("plain", 18);

  public OwnRow {
    after = List.copyOf(after);
  }

  static OwnRow blank(String shaft, Role role, List<RouteEntry> after) {
    boolean marked = role == Role.CRANKSHAFT || role == Role.CAMSHAFT;
    Count none = new Count("", CountingWay.MARK_TO_MARK);
    return new OwnRow(shaft, role, "", marked, none, "", PLAIN, after);
  }

  /** Whether the tensioner presses on the run that leaves it. */
  public boolean tensionerFollows() {
    return after.stream().anyMatch(RouteEntry::tensions);
  }

  OwnRow called(String other) {
    return new OwnRow(other, role, teeth, marked, count, straight, base, after);
  }

  OwnRow as(Role other) {
    return new OwnRow(shaft, other, teeth, marked, count, straight, base, after);
  }

  OwnRow withTeeth(String other) {
    return new OwnRow(shaft, role, other, marked, count, straight, base, after);
  }

  OwnRow marked(boolean other) {
    return new OwnRow(shaft, role, teeth, other, count, straight, base, after);
  }

  OwnRow counted(Count other) {
    return new OwnRow(shaft, role, teeth, marked, other, straight, base, after);
  }

  OwnRow measured(String other) {
    return new OwnRow(shaft, role, teeth, marked, count, other, base, after);
  }

  OwnRow followedBy(List<RouteEntry> other) {
    return new OwnRow(shaft, role, teeth, marked, count, straight, base, other);
  }
}
