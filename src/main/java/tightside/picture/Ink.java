package tightside.picture;

import java.util.Locale;

/** What a shape shows. */
public enum Ink {
  /** The body of a guide that stands still. */
  GUIDE_BODY,
  /** Hatching behind a guide: it is fixed to the engine. */
  GROUND,
  /** Edge of a tensioner's arm or shoe, drawn before its body. */
  ARM_EDGE,
  /** Body of a tensioner's arm or shoe. */
  ARM_BODY,
  /** The surface that the chain rubs. */
  FACE,
  /** Where an arm turns. */
  PIVOT,
  /** The body in which a plunger slides. */
  PLUNGER_BODY,
  /** A plunger. */
  PLUNGER,
  /** A ratchet step that a plunger has passed. */
  RATCHET_STEP,
  /** A sprocket inside its roots. */
  SPROCKET,
  /** One tooth. */
  TOOTH,
  /** Hub, shaft end, key, dowel. */
  SHAFT,
  /** A roller or bush. */
  ROLLER,
  INNER_PLATE,
  OUTER_PLATE,
  /** The one link of an odd chain that is inner at one end, outer at the other. */
  CRANKED_PLATE,
  /** The two bends across it. */
  CRANK_BEND,
  /** The link plate of a toothed chain. */
  TOOTHED_PLATE,
  /** A link that is painted at the reference position. */
  PAINTED_LINK,
  /** Stripes across a painted link, which tell it without colour. */
  PAINT_STRIPE,
  /** The pitch line of a strand that is pulled. */
  TIGHT,
  /** The pitch line of the strand that is not. */
  SLACK,
  PIN,
  /** A path on which no chain could be laid. */
  NO_CHAIN,
  /** The mark on a sprocket. */
  MARK,
  /** The fixed mark beside a sprocket, at the reference position. */
  POINTER,
  /** Where a mark should stand. */
  GHOST,
  /** Between where a mark is and where it should be. */
  ERROR,
  /** The way a shaft turns. */
  TURNING,
  /** Measuring line of an error, one tick a tooth. */
  DIMENSION,
  /** Over what can't be seen. */
  VEIL,
  /** A stroke across that. */
  VEIL_STROKE,
  /** From a label to what it names. */
  LEADER,
  /** Axes and scale of a chart. */
  SCALE,
  /** Where a chart says that there is nothing left. */
  NOUGHT,
  /** What lies beyond that. */
  BEYOND,
  /** The line that a chart is drawn for. */
  CURVE,
  /** The line it is compared with. */
  CURVE_BEFORE,
  /** Other lines. */
  CURVE_BESIDE,
  /** Where the crank stands, in a chart. */
  HERE,
  /** The place that a chart names in words. */
  NAMED,
  /** Block and head, cut open. */
  CASTING,
  PISTON,
  /** Connecting rod. */
  ROD,
  /** Web and throw of the crankshaft. */
  CRANK,
  VALVE,
  /** A ring where two parts meet that must not. */
  TOUCH,
  /** Outline of a part as it stood in another state. */
  BEFORE,
  /** A count or a name. */
  COUNT,
  /** Other words. */
  LABEL,
  /** What is wrong. */
  WARNING;

  /** The name under which a file carries it: inner-plate. */
  public String slug() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
