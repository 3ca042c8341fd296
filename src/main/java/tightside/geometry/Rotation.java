package tightside.geometry;

/** Which way something turns, as drawn: seen from the front of the engine. */
public enum Rotation {
  CLOCKWISE(1),
  COUNTERCLOCKWISE(-1);

  private final int sign;

  Rotation(int sign) {
    this.sign = sign;
  }

  /** 1 for clockwise, the direction in which bearings grow; -1 for counterclockwise. */
  public int sign() {
    return sign;
  }

  public Rotation opposite() {
    return this == CLOCKWISE ? COUNTERCLOCKWISE : CLOCKWISE;
  }
}
