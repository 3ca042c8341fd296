package tightside.raster;

/** A part of the pixels, from its upper left corner. */
public record Area(int x, int y, int width, int height) {}
