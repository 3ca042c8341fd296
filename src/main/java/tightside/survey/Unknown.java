package tightside.survey;

/**
 * Something that the measurements are to say.
 *
 * @param name as a person would call it
 * @param start what the drawing says of it, mm or degrees
 * @param loose how far off the drawing may be where nothing is measured: a standard uncertainty
 * @param step over which equations are differentiated, the same unit
 */
public record Unknown(String name, double start, double loose, double step) {

  /** A drawn position is a sketch: it may be off by a hand's breadth. */
  static final double SKETCH_MM = 100;

  /** A drawn mark may point anywhere. */
  static final double ANYWHERE_DEGREES = 100;

  static Unknown length(String name, double start) {
    return new Unknown(name, start, SKETCH_MM, 1e-4);
  }

  static Unknown angle(String name, double start) {
    return new Unknown(name, start, ANYWHERE_DEGREES, 1e-4);
  }

  /** One that a fact bounds, so that the drawing need not. */
  static Unknown bounded(String name, double start) {
    return new Unknown(name, start, SKETCH_MM, 1e-4);
  }
}
