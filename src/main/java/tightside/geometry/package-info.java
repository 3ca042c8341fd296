/**
 * Plane geometry of a chain and what it runs on: bearings, oriented circles, the tangent between
 * two of them, pitch circles, tooth forms, rubbing faces, and the taut string along them.
 *
 * <p>Frame everywhere: millimetres, x to the right, y up, seen from the front of the engine. This
 * package knows nothing of drives, shafts or timing.
 */
package tightside.geometry;
