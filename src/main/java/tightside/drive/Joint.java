package tightside.drive;

/** What holds a sprocket in its place on its shaft. */
public enum Joint {
  DOWEL,
  KEY,
  /** The bolt's clamp alone: then the lay of the links fixes nothing. */
  FRICTION
}
