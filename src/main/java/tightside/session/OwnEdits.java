package tightside.session;

import java.util.function.UnaryOperator;
import tightside.drive.Drive;
import tightside.drive.Role;
import tightside.geometry.Rotation;

/**
 * What a person does to the form for a drive of one's own. As soon as the form makes a drive, that
 * lies on the bench; until then the last one does.
 */
public final class OwnEdits {

  private OwnEdits() {}

  public static Edit afresh(Snapshot now) {
    return Edit.single("Begin a drive of one's own", after(now, OwnForm.begun()));
  }

  public static Edit call(Snapshot now, String name) {
    return typed(now, "name", "Call the drive " + name, f -> f.called(name));
  }

  public static Edit turning(Snapshot now, Rotation rotation) {
    return single(now, "Turn the crankshaft " + way(rotation), f -> f.turning(rotation));
  }

  private static String way(Rotation rotation) {
    return rotation == Rotation.CLOCKWISE ? "clockwise" : "counterclockwise";
  }

  public static Edit links(Snapshot now, String links) {
    return typed(now, "links", "Enter the links of the chain", f -> f.withLinks(links));
  }

  public static Edit pitch(Snapshot now, String pitch) {
    return typed(now, "pitch", "Enter the pitch", f -> f.withPitch(pitch));
  }

  public static Edit callShaft(Snapshot now, int row, String shaft) {
    return typed(
        now, "shaft " + row, "Call a shaft " + shaft, f -> f.changing(row, r -> r.called(shaft)));
  }

  public static Edit teeth(Snapshot now, int row, String teeth) {
    return typed(
        now,
        "teeth " + row,
        "Enter the teeth of " + shaft(now, row),
        f -> f.changing(row, r -> r.withTeeth(teeth)));
  }

  /** Enters what was counted, in the way that counting is set to. */
  public static Edit count(Snapshot now, int row, String text) {
    Count count = new Count(text, now.look().counting());
    return typed(
        now,
        "count " + row,
        "Enter the count from " + shaft(now, row),
        f -> f.changing(row, r -> r.counted(count)));
  }

  public static Edit straight(Snapshot now, int row, String mm) {
    return typed(
        now,
        "straight " + row,
        "Enter the run after " + shaft(now, row),
        f -> f.changing(row, r -> r.measured(mm)));
  }

  public static Edit role(Snapshot now, int row, Role role) {
    return single(
        now,
        "Make %s a %s".formatted(shaft(now, row), Words.role(role)),
        f -> f.changing(row, r -> r.as(role)));
  }

  public static Edit marked(Snapshot now, int row, boolean marked) {
    return single(
        now,
        marked ? "Mark " + shaft(now, row) : "Take the mark off " + shaft(now, row),
        f -> f.changing(row, r -> r.marked(marked)));
  }

  /**
   * Puts the tensioner on the run that leaves a sprocket, or takes it off where it stands there.
   */
  public static Edit tensioner(Snapshot now, int row) {
    return single(now, "Set the tensioner after " + shaft(now, row), f -> f.tensionerAfter(row));
  }

  public static Edit add(Snapshot now, Role role) {
    return single(now, "Add a " + Words.role(role), f -> f.adding(role));
  }

  public static Edit takeOff(Snapshot now, int row) {
    return single(now, "Take %s off".formatted(shaft(now, row)), f -> f.without(row));
  }

  private static String shaft(Snapshot now, int row) {
    return now.own().rows().get(row).shaft().strip();
  }

  private static Edit single(Snapshot now, String name, UnaryOperator<OwnForm> change) {
    return Edit.single(name, after(now, change.apply(now.own())));
  }

  private static Edit typed(
      Snapshot now, String field, String name, UnaryOperator<OwnForm> change) {
    return Edit.partOf("own " + field, name, after(now, change.apply(now.own())));
  }

  private static Snapshot after(Snapshot now, OwnForm form) {
    return OwnReading.of(form).drive().map(drive -> laid(now, drive)).orElse(now).withOwn(form);
  }

  /** What was done to the drive before stays where that was the form's own already. */
  private static Snapshot laid(Snapshot now, Drive drive) {
    if (drive.equals(now.drive())) {
      return now;
    }
    boolean own = now.drive().countedOnly() && now.drive().chains().size() == 1;
    return own
        ? now.redrawn(drive)
        : Snapshot.opened(drive, "a drive of one's own").with(now.look());
  }
}
