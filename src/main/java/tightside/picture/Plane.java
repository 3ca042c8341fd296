package tightside.picture;

/** In which plane a shape lies; chains of several stages run one behind the other. */
public enum Plane {
  FRONT,
  /** Drawn first, and lighter. */
  BACK
}
