/**
 * Reasoning about readings: which explanation of a drive's readings deserves how much belief, how
 * far that answer can be trusted, and which further check would decide most for the least work.
 *
 * <p>An explanation says how far shafts, plungers and counts stand from their places, up to an
 * unknown amount; readings say what was seen, each with its spread. Explanations are compared by
 * Bayes' rule: prior weight times evidence, the evidence being the probability of the readings with
 * every unknown amount integrated over its prior (D. MacKay, Information Theory, Inference, and
 * Learning Algorithms, chapter 28). All angles are crank degrees, positive = advanced, unless a
 * name says otherwise.
 */
package tightside.reasoning;
