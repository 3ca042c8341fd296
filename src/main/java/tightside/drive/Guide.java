package tightside.drive;

import tightside.geometry.FaceCurve;

/** A guide that stands still. */
public record Guide(String name, Contact contact, FaceCurve curve, Seen seen) implements Face {

  public Guide {
    Names.refuseNonsense("guide", name);
  }
}
