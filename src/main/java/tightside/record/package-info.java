/**
 * What was done in a job, entry by entry: when, with which verdict, and with which model. A record
 * only ever grows, so that what was taken back or changed after the end can still be read. It knows
 * no clock: every moment is handed to it.
 */
package tightside.record;
