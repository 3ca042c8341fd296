/**
 * Where the program starts: with words it is the command line, with none it opens the window. It
 * stands above both, for neither knows the other.
 */
package tightside.start;
