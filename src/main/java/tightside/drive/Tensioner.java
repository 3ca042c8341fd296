package tightside.drive;

import tightside.geometry.FaceCurve;

/** A face that a plunger pushes against the slack side. */
public sealed interface Tensioner extends Face permits Arm, Shoe {

  Plunger plunger();

  @Override
  default boolean tensions() {
    return true;
  }

  /**
   * The face with the plunger out.
   *
   * @param extensionMm from 0 (fully pushed back) to the plunger's travel
   */
  FaceCurve curveAt(double extensionMm);
}
