/** Studies that take longer than a test may, each a command of its own. */
package tightside.studies;
