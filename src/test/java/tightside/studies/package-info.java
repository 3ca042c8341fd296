/**
 * Studies: programs that measure or show something about Tightside for those who work on it. They
 * are run by hand, as DEVELOPERS.md says.
 */
package tightside.studies;
