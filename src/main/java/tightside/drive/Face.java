package tightside.drive;

import tightside.geometry.FaceCurve;

/** Something that rubs the chain: a fixed guide, or the arm or shoe of a tensioner. */
public sealed interface Face extends RouteEntry permits Guide, Tensioner {

  String name();

  /** The face as drawn; on a tensioner, fully pushed back. */
  FaceCurve curve();
}
