package tightside.drive;

import tightside.geometry.FaceCurve;

/** A face that slides straight with its plunger. */
public record Shoe(String name, Contact contact, FaceCurve curve, Plunger plunger, Seen seen)
    implements Tensioner {

  public Shoe {
    Names.refuseNonsense("shoe", name);
  }

  @Override
  public FaceCurve curveAt(double extensionMm) {
    return curve.moved(point -> point.add(plunger.push().multiply(extensionMm)));
  }
}
