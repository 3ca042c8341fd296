/**
 * Tests against published values, in the tables of {@code validation/published}. No expected value
 * here follows the code.
 */
package tightside.validation.published;
