package tightside.timing;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import tightside.drive.Chain;
import tightside.drive.ChainFit;

/** One new chain at the reference position: what every error is measured from. */
sealed interface Datum permits Reference, CountedReference {

  Chain chain();

  /** How the new chain fits. */
  ChainFit fit();

  /** Marks that are not under the new chain. */
  List<MarkOff> marksOff();

  /** Whether the new chain fits, as far as is known, and every mark lies under it. */
  boolean sound();

  /** The strands as they are when new. */
  List<Strand> strands();

  /**
   * How the chain fits as it is.
   *
   * @param heldMm the extension at which its plunger is held; nothing if it is free
   */
  ChainFit fit(double stretchPercent, OptionalDouble heldMm);

  /**
   * What stretch does.
   *
   * @param now how the chain fits as it is
   * @return nothing where it finds no way round
   */
  Optional<Settling> settling(ChainFit now, double stretchPercent);
}
