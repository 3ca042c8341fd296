package tightside.drive;

/**
 * A guide, arm or shoe of a drive that is counted only: it is known to stand there on the route,
 * and nothing else.
 */
public record Listed(Kind kind, String name, Contact contact, Seen seen) implements RouteEntry {

  /** What it is. */
  public enum Kind {
    GUIDE,
    ARM,
    SHOE
  }

  public Listed {
    Names.refuseNonsense("face", name);
  }

  @Override
  public boolean tensions() {
    return kind != Kind.GUIDE;
  }
}
