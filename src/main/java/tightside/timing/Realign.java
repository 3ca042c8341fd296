package tightside.timing;

import java.math.BigInteger;
import org.apache.commons.numbers.fraction.BigFraction;
import tightside.drive.Chain;
import tightside.drive.Gearing;
import tightside.drive.Sprocket;

/** When the same links meet the same marks again. */
public final class Realign {

  private Realign() {}

  /**
   * The fewest whole crank turns t for which t x (driver turns per crank turn) x z(driver), the
   * links that have passed, is a multiple of the links of the chain and of every tooth number on
   * it.
   */
  public static BigInteger crankTurns(Chain chain, Gearing gearing) {
    BigInteger cycle = BigInteger.valueOf(chain.links());
    for (Sprocket sprocket : chain.sprockets()) {
      cycle = lcm(cycle, BigInteger.valueOf(sprocket.teeth()));
    }
    BigFraction linksPerTurn =
        gearing.perCrankTurn(chain.driver().shaft()).multiply(chain.driver().teeth());
    BigInteger wanted = cycle.multiply(linksPerTurn.getDenominator());
    return wanted.divide(wanted.gcd(linksPerTurn.getNumerator()));
  }

  private static BigInteger lcm(BigInteger a, BigInteger b) {
    return a.divide(a.gcd(b)).multiply(b);
  }
}
