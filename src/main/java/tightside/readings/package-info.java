/**
 * Readings: what a person can look at, count or feel on an engine, what it shows, and what it can
 * tell apart. A check costs minutes and needs access; some mistakes show before the engine is
 * turned, some only after, and some not at all.
 */
package tightside.readings;
