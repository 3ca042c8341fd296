/**
 * A second solver for drives, written from the description of the model format alone, so that the
 * first one can be checked by something that does not share its mistakes.
 *
 * <p>It shares no class with the first: it has its own inputs, its own points, and other methods. A
 * shape is known only by the point at which a line of a given direction rests on it; a tangent is
 * found by bisection on the direction; which faces are touched is found by trying every choice; the
 * plunger and the arm's turn are found by bisection.
 */
package tightside.second;
