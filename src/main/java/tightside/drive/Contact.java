package tightside.drive;

/** From which side of the loop a sprocket or a face touches the chain. */
public enum Contact {
  INSIDE,
  OUTSIDE
}
