package tightside.session;

import java.util.Optional;
import tightside.timing.State;

/** Keeping one state, so that another can be compared with it. */
public final class Comparing {

  private Comparing() {}

  /** Keeps what is there now, wherever the crank stands, in place of what was kept before. */
  public static Edit keep(Snapshot now) {
    State still = now.state().turnedTo(0, State.Arrived.FORWARD);
    return Edit.single("Keep this as A", now.keeping(Optional.of(still)));
  }

  public static Edit forget(Snapshot now) {
    return Edit.single("Forget A", now.keeping(Optional.empty()));
  }

  /** What was kept, with the crank where it stands now. */
  static Optional<Snapshot> kept(Snapshot now) {
    return now.kept().map(now::with);
  }
}
