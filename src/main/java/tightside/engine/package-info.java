/**
 * What stands behind the camshafts: cylinder, crank gear, valves and cam phasers, as a model gives
 * them, and what a camshaft's timing does to them: when valves open, how near they come to the
 * pistons, what is left of compression, and which way the valve springs turn a camshaft let go.
 *
 * <p>Crank angles count from top dead centre at gas exchange, positive after it.
 */
package tightside.engine;
