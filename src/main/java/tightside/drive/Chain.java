package tightside.drive;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/**
 * A chain and its route.
 *
 * @param size all of it in a drive with geometry
 * @param links in the whole loop
 * @param route in the direction of travel; the first entry is the driving sprocket
 * @param counts links from mark to mark in route order, from the first marked sprocket on: given in
 *     a drive that is counted only, and in no other
 */
public record Chain(
    String name,
    ChainSize size,
    int links,
    List<RouteEntry> route,
    Optional<List<Integer>> counts) {

  public Chain {
    Names.refuseNonsense("chain", name);
    Limits.LINKS.refuseOutside("links", links);
    route = List.copyOf(route);
    counts = counts.map(List::copyOf);
    counts.ifPresent(all -> all.forEach(count -> Limits.COUNT.refuseOutside("a count", count)));
  }

  /** A chain of a drive with geometry. */
  public Chain(
      String name,
      ChainKind kind,
      double pitchMm,
      int links,
      double plateHeightMm,
      double rollerDiameterMm,
      List<RouteEntry> route) {
    this(
        name,
        ChainSize.of(kind, pitchMm, plateHeightMm, rollerDiameterMm),
        links,
        route,
        Optional.empty());
  }

  /**
   * How it meets its sprockets; here, as for every size below, known in a drive with geometry.
   *
   * @throws java.util.NoSuchElementException where it is not known; ask {@link #size}
   */
  public ChainKind kind() {
    return size.kind().orElseThrow();
  }

  /** Pitch when new, mm. */
  public double pitchMm() {
    return size.pitchMm().orElseThrow();
  }

  /** The pitch line runs half of this away from a face, mm. */
  public double plateHeightMm() {
    return size.plateHeightMm().orElseThrow();
  }

  /** Roller or bush diameter, mm. */
  public double rollerDiameterMm() {
    return size.rollerDiameterMm().orElseThrow();
  }

  /** Whether the links between its marks were counted, and nothing else is known of its path. */
  public boolean countedOnly() {
    return counts.isPresent();
  }

  /** Places on the route that hold sprockets, in the direction of travel. */
  public List<Integer> sprocketPlaces() {
    return IntStream.range(0, route.size())
        .filter(i -> route.get(i) instanceof Sprocket)
        .boxed()
        .toList();
  }

  public Sprocket sprocketAt(int place) {
    return (Sprocket) route.get(place);
  }

  public List<Sprocket> sprockets() {
    return sprocketPlaces().stream().map(this::sprocketAt).toList();
  }

  /** The driving sprocket: the first entry of the route. */
  public Sprocket driver() {
    return sprocketAt(0);
  }

  public Optional<Sprocket> sprocketOn(String shaft) {
    return sprockets().stream().filter(s -> s.shaft().equals(shaft)).findFirst();
  }

  /** The place of the tensioner on the route, if the chain has one. */
  public Optional<Integer> tensionerPlace() {
    return IntStream.range(0, route.size())
        .filter(i -> route.get(i).tensions())
        .boxed()
        .findFirst();
  }

  /** What the tensioner is called, if the chain has one. */
  public Optional<String> tensionerName() {
    return tensionerPlace()
        .map(route::get)
        .map(e -> e instanceof Listed listed ? listed.name() : ((Face) e).name());
  }

  /** The tensioner with its face and its plunger, as far as they are known. */
  public Optional<Tensioner> tensioner() {
    return tensionerPlace()
        .map(route::get)
        .filter(Tensioner.class::isInstance)
        .map(Tensioner.class::cast);
  }

  /** The mean pitch of the chain stretched by so many percent, mm. */
  public double pitchStretchedMm(double percent) {
    return pitchMm() * (1 + percent / 100);
  }

  public Chain withRoute(List<RouteEntry> other) {
    return new Chain(name, size, links, other, counts);
  }

  public Chain withLinks(int other) {
    return new Chain(name, size, other, route, counts);
  }

  /** The same chain with other counts between its marks. */
  public Chain withCounts(List<Integer> other) {
    return new Chain(name, size, links, route, Optional.of(other));
  }

  public Chain withSize(ChainSize other) {
    return new Chain(name, other, links, route, counts);
  }

  public Chain withKind(ChainKind other) {
    return withSize(
        new ChainSize(
            Optional.of(other), size.pitchMm(), size.plateHeightMm(), size.rollerDiameterMm()));
  }

  public Chain withPitch(double otherMm) {
    return withSize(
        new ChainSize(
            size.kind(),
            OptionalDouble.of(otherMm),
            size.plateHeightMm(),
            size.rollerDiameterMm()));
  }

  public Chain withPlateHeight(double otherMm) {
    return withSize(
        new ChainSize(
            size.kind(), size.pitchMm(), OptionalDouble.of(otherMm), size.rollerDiameterMm()));
  }

  public Chain withRollerDiameter(double otherMm) {
    return withSize(
        new ChainSize(
            size.kind(), size.pitchMm(), size.plateHeightMm(), OptionalDouble.of(otherMm)));
  }
}
