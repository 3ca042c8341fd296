/**
 * The job sheet as content: what to do from the first count to the proof, what to enter at each
 * step, and what an entry says. Plain values, the same on screen and on paper; nothing here knows
 * the day, a file or a page.
 */
package tightside.sheet;
