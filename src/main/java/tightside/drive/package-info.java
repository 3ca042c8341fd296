/**
 * A drive as a person would describe it (shafts, chains, and the route of each chain over
 * sprockets, guides and a tensioner), how it is geared, what is wrong with it, and the path that a
 * chain takes through it.
 *
 * <p>Lengths in mm, x to the right, y up, seen from the front. Timing is not known here.
 */
package tightside.drive;
