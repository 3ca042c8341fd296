package tightside.picture;

import tightside.drive.Part;

/**
 * What a shape shows, of which part of the drive, in which plane.
 *
 * @param part of the drive; the whole for the samples and words of the legend
 */
public record Tag(Ink ink, Part part, Plane plane) {}
