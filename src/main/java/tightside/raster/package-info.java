/**
 * A picture as pixels. It is drawn anew for every frame in which something moves, in plain
 * arithmetic, in bands on as many cores as there are: for the thousands of small shapes of a chain
 * that is several times as fast as a toolkit's canvas. Covers are exact to a 255th of a pixel;
 * small parts that a picture has by the hundred are stamped, to an eighth of one.
 */
package tightside.raster;
