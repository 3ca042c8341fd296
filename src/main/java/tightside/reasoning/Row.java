package tightside.reasoning;

/**
 * A number that was read, and the quantities that it is the sum of.
 *
 * @param places of the quantities
 * @param read the number
 * @param spread its own standard deviation
 * @param wheel the place of the sensor that it was read by; -1 for none
 * @param learned whether it was read against a learned value of that sensor
 * @param edge whether it is one edge of a wheel
 * @param openTo the place of the shaft whose angle it tells, -1 for none
 */
record Row(
    int[] places,
    double read,
    double spread,
    int wheel,
    boolean learned,
    boolean edge,
    int openTo) {

  double expected(double[] quantities) {
    double sum = 0;
    for (int place : places) {
      sum += quantities[place];
    }
    return sum;
  }
}
