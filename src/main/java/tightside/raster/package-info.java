/**
 * A picture as pixels. It is drawn anew for every frame in which something moves, in plain
 * arithmetic on the calling thread: for the thousands of small shapes of a chain that is several
 * times as fast as a toolkit's canvas, and exact to a 255th of a pixel.
 */
package tightside.raster;
