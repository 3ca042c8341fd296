package tightside.drive;

/** One thing that a chain runs over, in the direction in which the chain travels. */
public sealed interface RouteEntry permits Sprocket, Face, Listed {

  Contact contact();

  /** What it takes to see its mark or its plunger. */
  Seen seen();

  /** Whether it keeps the chain tight: the slack side is where it stands. */
  default boolean tensions() {
    return false;
  }
}
