/**
 * The job sheet on paper: HTML and PDF, A4 and Letter, the drive drawn true to scale. What people
 * typed is escaped wherever it is printed.
 */
package tightside.print;
