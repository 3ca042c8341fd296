/**
 * The command line: each verb reads a model, asks the core one question, and answers people in text
 * and programs in JSON. Standard output is the answer, standard error is talk; the exit code is 0
 * for an answer, 1 for an answer that something is wrong with the drive, 2 for input that can't be
 * used.
 */
package tightside.command;
