package tightside.timing;

import tightside.geometry.Bearing;

/**
 * A mark that does not lie under the chain at the reference position.
 *
 * @param place of its sprocket on the route
 * @param from first bearing, going clockwise, at which a mark would lie under the chain
 * @param to last such bearing
 */
public record MarkOff(int place, String shaft, Bearing mark, Bearing from, Bearing to) {}
