/**
 * Timing: how many links lie between the marks, and how far each shaft stands from its place once
 * sprockets are reseated or chains are worn.
 *
 * <p>At the heart is one pure call, {@link tightside.timing.Solver#solve}: a drive and a state give
 * a solution, which also says what it does not know.
 */
package tightside.timing;
