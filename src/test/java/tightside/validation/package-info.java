/**
 * The program held against numbers that others printed: the tables in the folder {@code
 * validation}, whose README says what each checks, how near, and why no nearer.
 *
 * <p>Two kinds stand apart. {@code published} compares with what a book, a standard or another
 * program prints; {@code calculated} with the project's own calculation, which catches a change but
 * proves nothing by itself. This package holds what both need.
 */
package tightside.validation;
