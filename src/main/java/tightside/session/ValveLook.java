package tightside.session;

/**
 * Which valve is looked at, and how.
 *
 * @param cylinder counted from 0 in the order of the model's phases
 * @param valve counted from 0 in the order of the model
 * @param twoTurns whether the whole two turns are drawn, or what lies round top dead centre
 * @param past whether the drawing is turned on past a valve that touches, which no engine can be
 * @param drive whether the drive is shown where there is room for it or the valves alone
 */
public record ValveLook(int cylinder, int valve, boolean twoTurns, boolean past, boolean drive) {

  public ValveLook {
    if (cylinder < 0 || valve < 0) {
      throw new IllegalArgumentException("cylinders and valves are counted from 0");
    }
  }

  public static ValveLook first() {
    return new ValveLook(0, 0, false, false, false);
  }

  public ValveLook cylinder(int other) {
    return new ValveLook(other, valve, twoTurns, past, drive);
  }

  public ValveLook valve(int other) {
    return new ValveLook(cylinder, other, twoTurns, past, drive);
  }

  public ValveLook twoTurns(boolean other) {
    return new ValveLook(cylinder, valve, other, past, drive);
  }

  public ValveLook past(boolean other) {
    return new ValveLook(cylinder, valve, twoTurns, other, drive);
  }

  public ValveLook drive(boolean other) {
    return new ValveLook(cylinder, valve, twoTurns, past, other);
  }
}
