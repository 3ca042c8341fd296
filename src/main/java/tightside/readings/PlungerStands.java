package tightside.readings;

import java.util.Optional;
import java.util.OptionalDouble;
import tightside.drive.Seen;
import tightside.drive.Tensioner;
import tightside.timing.TensionerReading;

/** Reading how far the plunger stands out. */
public record PlungerStands(String chain) implements Check {

  /** Where there is no ratchet step to be seen, mm; from memory. */
  public static final double READ_MM = 1;

  @Override
  public Kind kind() {
    return Kind.PLUNGER;
  }

  @Override
  public Seen access(Situation situation) {
    return situation
        .drive()
        .chain(chain)
        .flatMap(c -> c.tensioner())
        .map(Tensioner::seen)
        .orElse(Seen.NEVER);
  }

  @Override
  public Optional<Shown> shows(Situation situation, Moment moment) {
    Optional<TensionerReading> reading =
        situation.turned().chain(chain).flatMap(c -> c.tensioner());
    if (reading.isEmpty()) {
      return Optional.empty();
    }
    if (moment == Moment.AFTER_TURNING) {
      return Optional.of(new Shown(reading.get().extensionMm(), Shown.Unit.MM));
    }
    OptionalDouble letGo =
        situation.lockedWhileLaid(chain) ? situation.extensionLetGo(chain) : OptionalDouble.empty();
    return letGo.stream().mapToObj(mm -> new Shown(mm, Shown.Unit.MM)).findFirst();
  }

  /** A ratchet's backlash makes a reading a band about a step wide. */
  @Override
  public double noticeable(Situation right, Shown reading) {
    return right.drive().chain(chain).flatMap(c -> c.tensioner()).stream()
        .mapToDouble(t -> t.plunger().stepMm().orElse(READ_MM))
        .findFirst()
        .orElse(READ_MM);
  }
}
