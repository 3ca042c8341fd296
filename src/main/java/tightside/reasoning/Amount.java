package tightside.reasoning;

/**
 * What is known of an amount once the readings are in.
 *
 * @param mean its mean
 * @param low below which 5 in 100 of the belief lie
 * @param high above which 5 in 100 of the belief lie
 */
public record Amount(double mean, double low, double high, Explanation.Unit unit) {}
