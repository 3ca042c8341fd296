package tightside.window;

import tightside.drive.Heat;

/** A heat with one of its numbers changed. */
@FunctionalInterface
interface Heats {

  Heat with(Heat heat, double value);

  static Heat cold(Heat heat, double celsius) {
    return new Heat(celsius, heat.hotCelsius(), heat.blockPerKelvin(), heat.chainPerKelvin());
  }

  static Heat hot(Heat heat, double celsius) {
    return new Heat(heat.coldCelsius(), celsius, heat.blockPerKelvin(), heat.chainPerKelvin());
  }

  static Heat block(Heat heat, double perKelvin) {
    return new Heat(heat.coldCelsius(), heat.hotCelsius(), perKelvin, heat.chainPerKelvin());
  }

  static Heat chain(Heat heat, double perKelvin) {
    return new Heat(heat.coldCelsius(), heat.hotCelsius(), heat.blockPerKelvin(), perKelvin);
  }
}
