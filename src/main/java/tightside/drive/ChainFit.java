package tightside.drive;

import java.util.Optional;
import java.util.OptionalDouble;

/** How a chain fits its drive. */
public sealed interface ChainFit {

  /** Of a drive that is counted only: nobody knows its path, nor where its plunger stands. */
  record CountedOnly() implements ChainFit {
    @Override
    public Optional<TautPath> path() {
      return Optional.empty();
    }
  }

  /** The path, where there is one. */
  Optional<TautPath> path();

  /**
   * The chain lies round its route.
   *
   * @param taut its path
   * @param extensionMm how far the plunger is out; nothing without a tensioner
   * @param slackMm chain that is over: zero with a free tensioner
   */
  record Solved(TautPath taut, OptionalDouble extensionMm, double slackMm) implements ChainFit {
    @Override
    public Optional<TautPath> path() {
      return Optional.of(taut);
    }
  }

  /**
   * The path is longer than the chain, even with the plunger where it is held, or fully pushed
   * back.
   *
   * @param taut the path that the chain is too short for
   * @param byMm how much it lacks
   */
  record TooShort(TautPath taut, double byMm) implements ChainFit {
    @Override
    public Optional<TautPath> path() {
      return Optional.of(taut);
    }
  }

  /**
   * The chain is longer than the path with the plunger fully out.
   *
   * @param taut the path at full travel
   * @param travelMm the plunger's travel
   * @param slackLeftMm chain that is over
   */
  record OutOfTravel(TautPath taut, double travelMm, double slackLeftMm) implements ChainFit {
    @Override
    public Optional<TautPath> path() {
      return Optional.of(taut);
    }
  }

  /**
   * The taut chain runs clear of a sprocket.
   *
   * @param place of that sprocket on the route
   */
  record SprocketMissed(int place) implements ChainFit, Routing {
    @Override
    public Optional<TautPath> path() {
      return Optional.empty();
    }
  }

  /**
   * No string fits between two sprockets: what stands between them overlaps them, or each other.
   *
   * @param from place of the first sprocket on the route
   * @param to place of the next
   */
  record NoRoom(int from, int to) implements ChainFit, Routing {
    @Override
    public Optional<TautPath> path() {
      return Optional.empty();
    }
  }
}
