/**
 * Tests against the project's own calculations, in the tables of {@code validation/calculated}:
 * more digits than any book prints, but a check of one calculation by another, not of either by a
 * source. A change to one of these values needs a sentence in the commit.
 */
package tightside.validation.calculated;
