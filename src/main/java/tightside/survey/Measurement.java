package tightside.survey;

import java.util.List;

/** One thing measured on an engine, with its uncertainty. */
public sealed interface Measurement {

  Reading reading();

  Measurement with(Reading other);

  /** Degrees, or else mm. */
  default boolean angle() {
    return false;
  }

  /** How a distance between two shafts was taken. */
  enum Span {
    /** From centre to centre. */
    CENTRES,
    /** Over both, outer edge to outer edge: the centres are nearer by both radii. */
    OVER,
    /** Between them, inner edge to inner edge: the centres are farther by both radii. */
    BETWEEN
  }

  /**
   * The distance of two points.
   *
   * @param firstMm diameter at the first point, where the span is not from centre to centre
   * @param secondMm diameter at the second
   */
  record Distance(
      SurveyPoint first,
      SurveyPoint second,
      Span span,
      double firstMm,
      double secondMm,
      Reading reading)
      implements Measurement {

    public Distance {
      if (first.equals(second)) {
        throw new IllegalArgumentException("a distance lies between two points, not " + first);
      }
      if (!(firstMm >= 0 && secondMm >= 0)) {
        throw new IllegalArgumentException("diameters are positive");
      }
    }

    public static Distance centres(SurveyPoint first, SurveyPoint second, Reading reading) {
      return new Distance(first, second, Span.CENTRES, 0, 0, reading);
    }

    /** What is read where the centres stand so far apart, mm. */
    double readAt(double centresMm) {
      double radii = (firstMm + secondMm) / 2;
      return switch (span) {
        case CENTRES -> centresMm;
        case OVER -> centresMm + radii;
        case BETWEEN -> centresMm - radii;
      };
    }

    @Override
    public Distance with(Reading other) {
      return new Distance(first, second, span, firstMm, secondMm, other);
    }
  }

  /**
   * How far a point stands to the right of the line from one point to another, looking along it,
   * mm; negative to the left.
   */
  record Offset(SurveyPoint point, SurveyPoint from, SurveyPoint to, Reading reading)
      implements Measurement {

    public Offset {
      if (from.equals(to) || point.equals(from) || point.equals(to)) {
        throw new IllegalArgumentException("an offset needs a point and a line of two others");
      }
    }

    @Override
    public Offset with(Reading other) {
      return new Offset(point, from, to, other);
    }
  }

  /**
   * A length over an even number of pitches of a taut piece of chain, mm; inner and outer links
   * take turns and differ when worn, so that an odd number says nothing of the mean.
   */
  record Pitches(String chain, int pitches, Reading reading) implements Measurement {

    public Pitches {
      if (pitches < 2 || pitches % 2 != 0) {
        throw new IllegalArgumentException("an even number of pitches, not " + pitches);
      }
    }

    @Override
    public Pitches with(Reading other) {
      return new Pitches(chain, pitches, other);
    }
  }

  /** How far the plunger of a chain's tensioner stands out, the chain tight, mm. */
  record Extension(String chain, Reading reading) implements Measurement {
    @Override
    public Extension with(Reading other) {
      return new Extension(chain, other);
    }
  }

  /**
   * Where the marked tooth of a sprocket points at the reference position: the angle, clockwise and
   * seen from the front, from the line between its shaft and another point.
   */
  record Mark(String chain, String shaft, SurveyPoint from, Reading reading)
      implements Measurement {

    public Mark {
      if (from.equals(SurveyPoint.shaft(shaft))) {
        throw new IllegalArgumentException("a line needs another point than its own shaft");
      }
    }

    @Override
    public boolean angle() {
      return true;
    }

    @Override
    public Mark with(Reading other) {
      return new Mark(chain, shaft, from, other);
    }
  }

  /** The points that it is taken between. */
  default List<SurveyPoint> points() {
    if (this instanceof Distance d) {
      return List.of(d.first(), d.second());
    }
    if (this instanceof Offset o) {
      return List.of(o.point(), o.from(), o.to());
    }
    return this instanceof Mark m ? List.of(SurveyPoint.shaft(m.shaft()), m.from()) : List.of();
  }
}
