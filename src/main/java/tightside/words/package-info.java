/**
 * The words in which results reach a person, on screen, on paper and on the command line: one place
 * for each sentence, so that the same thing is never said in two ways.
 */
package tightside.words;
