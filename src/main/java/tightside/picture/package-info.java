/**
 * One picture of a drive, described once as shapes in millimetres; a window, an SVG file and a
 * printed sheet draw it alike.
 *
 * <p>A shape says what it shows ({@link tightside.picture.Ink}), never how it looks: that stands in
 * one table, {@link tightside.picture.Styles}. No toolkit is known here, and no file is written.
 * Frame: millimetres, x to the right, y up, seen from the front; renderers turn it over.
 */
package tightside.picture;
