/**
 * Why an answer is given: one picture of what explanations force and what was read, for window and
 * paper, and a page for the reader who was not there.
 */
package tightside.why;
