/**
 * The work on a drive, as a model's owner notes it down: what the locking tools allow, and what to
 * bear in mind. All of it is the user's own; nothing here is a maker's figure.
 */
package tightside.job;
