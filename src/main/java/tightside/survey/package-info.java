/**
 * A drive measured with ruler and callipers: one weighted least-squares adjustment, as surveyors do
 * it, from which the drive, the uncertainty of every count, the measurement that is probably wrong
 * and the one to take next are read.
 *
 * <p>{@link tightside.survey.Adjustment#of} is the call. What is measured are {@link
 * tightside.survey.Measurement}s; what must hold all the same are {@link tightside.survey.Facts};
 * what is looked for are {@link tightside.survey.Unknowns}.
 *
 * <p>Sources: P. Teunissen, Testing Theory (redundancy numbers, w-test, minimal detectable bias);
 * W. Baarda, A testing procedure for use in geodetic networks, 1968; both from memory.
 */
package tightside.survey;
