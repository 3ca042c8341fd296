/**
 * What stands behind the camshafts: cylinder, crank gear, valves and cam phasers, as a model gives
 * them.
 *
 * <p>Crank angles count from top dead centre at gas exchange, positive after it.
 */
package tightside.engine;
