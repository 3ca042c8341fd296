package tightside.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import tightside.drive.Chain;
import tightside.drive.ChainSize;
import tightside.drive.Contact;
import tightside.drive.Drive;
import tightside.drive.Listed;
import tightside.drive.Role;
import tightside.drive.RouteEntry;
import tightside.drive.Seen;
import tightside.drive.Sprocket;
import tightside.geometry.Rotation;

/**
 * A drive of one's own, counted only and of one chain, as a person types it: nothing typed is ever
 * changed or thrown away, whether it makes a drive or not.
 *
 * @param chain name of the chain
 * @param size what is known of the chain but not asked for here
 * @param links in the whole loop, as typed
 * @param pitch mm, as typed; asked for by wear alone
 * @param rows in the direction of travel; the first is the crankshaft
 */
public record OwnForm(
    String name,
    String about,
    Rotation rotation,
    String chain,
    ChainSize size,
    String links,
    String pitch,
    List<OwnRow> rows) {

  private static final Listed TENSIONER =
      new Listed(Listed.Kind.ARM, "tensioner", Contact.OUTSIDE, Seen.COVER_OFF);

  public OwnForm {
    rows = List.copyOf(rows);
  }

  /** The commonest drive, with nothing counted: two camshafts, the tensioner behind the crank. */
  public static OwnForm begun() {
    return new OwnForm(
        "My drive",
        "",
        Rotation.CLOCKWISE,
        "main",
        ChainSize.UNKNOWN,
        "",
        "",
        List.of(
            OwnRow.blank("crank", Role.CRANKSHAFT, List.of(TENSIONER)),
            OwnRow.blank("intake", Role.CAMSHAFT, List.of()),
            OwnRow.blank("exhaust", Role.CAMSHAFT, List.of())));
  }

  /** The form that says what a drive is; nothing where the drive is more than the form asks for. */
  public static Optional<OwnForm> of(Drive drive) {
    if (!drive.countedOnly() || drive.chains().size() != 1) {
      return Optional.empty();
    }
    Chain chain = drive.chains().get(0);
    boolean alone = drive.shafts().stream().allMatch(s -> chain.sprocketOn(s.name()).isPresent());
    boolean faces = chain.route().stream().allMatch(e -> e instanceof Sprocket || known(e));
    if (!alone || !faces) {
      return Optional.empty();
    }
    List<OwnRow> rows = new ArrayList<>();
    int counted = 0;
    for (RouteEntry entry : chain.route()) {
      if (entry instanceof Sprocket sprocket) {
        int links = sprocket.marked() ? chain.counts().orElseThrow().get(counted++) : 0;
        rows.add(row(drive, sprocket, links));
      } else {
        OwnRow last = rows.remove(rows.size() - 1);
        rows.add(last.followedBy(Stream.concat(last.after().stream(), Stream.of(entry)).toList()));
      }
    }
    return Optional.of(
        new OwnForm(
            drive.name(),
            drive.about(),
            drive.rotation(),
            chain.name(),
            chain.size(),
            Integer.toString(chain.links()),
            chain.size().pitchMm().isPresent() ? OwnReading.plain(chain.pitchMm()) : "",
            rows));
  }

  private static boolean known(RouteEntry entry) {
    return entry instanceof Listed;
  }

  private static OwnRow row(Drive drive, Sprocket sprocket, int links) {
    return new OwnRow(
        sprocket.shaft(),
        drive.shaft(sprocket.shaft()).orElseThrow().role(),
        Integer.toString(sprocket.teeth()),
        sprocket.marked(),
        new Count(links == 0 ? "" : Integer.toString(links), CountingWay.MARK_TO_MARK),
        sprocket.straightMm().isPresent()
            ? OwnReading.plain(sprocket.straightMm().getAsDouble())
            : "",
        sprocket,
        List.of());
  }

  /** The place of the next marked sprocket after one, going round. */
  public int nextMarked(int row) {
    for (int i = 1; i < rows.size(); i++) {
      if (rows.get((row + i) % rows.size()).marked()) {
        return (row + i) % rows.size();
      }
    }
    return row;
  }

  /** The row whose run is the slack side: before the tensioner, or the crankshaft's. */
  public int slackRow() {
    for (int i = 0; i < rows.size(); i++) {
      if (rows.get(i).tensionerFollows()) {
        return i;
      }
    }
    return 0;
  }

  OwnForm called(String other) {
    return new OwnForm(other, about, rotation, chain, size, links, pitch, rows);
  }

  OwnForm turning(Rotation other) {
    return new OwnForm(name, about, other, chain, size, links, pitch, rows);
  }

  OwnForm withLinks(String other) {
    return new OwnForm(name, about, rotation, chain, size, other, pitch, rows);
  }

  OwnForm withPitch(String other) {
    return new OwnForm(name, about, rotation, chain, size, links, other, rows);
  }

  OwnForm withRows(List<OwnRow> other) {
    return new OwnForm(name, about, rotation, chain, size, links, pitch, other);
  }

  OwnForm changing(int row, UnaryOperator<OwnRow> change) {
    List<OwnRow> changed = new ArrayList<>(rows);
    changed.set(row, change.apply(changed.get(row)));
    return withRows(changed);
  }

  /** With one more sprocket at the end of the route. */
  OwnForm adding(Role role) {
    String word = role == Role.CAMSHAFT ? "cam" : Words.role(role);
    String shaft = word;
    for (int number = 2; taken(shaft); number++) {
      shaft = word + "-" + number;
    }
    return withRows(
        Stream.concat(rows.stream(), Stream.of(OwnRow.blank(shaft, role, List.of()))).toList());
  }

  private boolean taken(String shaft) {
    return rows.stream().anyMatch(r -> r.shaft().strip().equals(shaft));
  }

  OwnForm without(int row) {
    List<OwnRow> left = new ArrayList<>(rows);
    left.remove(row);
    return withRows(left);
  }

  /** With the tensioner on the run that leaves a row; on none where it stands there already. */
  OwnForm tensionerAfter(int row) {
    boolean takenOff = rows.get(row).tensionerFollows();
    RouteEntry tensioner =
        rows.stream()
            .flatMap(r -> r.after().stream())
            .filter(RouteEntry::tensions)
            .findFirst()
            .orElse(TENSIONER);
    List<OwnRow> changed = new ArrayList<>();
    for (int i = 0; i < rows.size(); i++) {
      List<RouteEntry> after =
          new ArrayList<>(rows.get(i).after().stream().filter(e -> !e.tensions()).toList());
      if (i == row && !takenOff) {
        after.add(0, tensioner);
      }
      changed.add(rows.get(i).followedBy(after));
    }
    return withRows(changed);
  }
}
