package tightside.drive;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * A chain and its route.
 *
 * @param pitchMm pitch when new
 * @param links in the whole loop
 * @param plateHeightMm the pitch line runs half of this away from a face
 * @param rollerDiameterMm roller or bush diameter
 * @param route in the direction of travel; the first entry is the driving sprocket
 */
public record Chain(
    String name,
    ChainKind kind,
    double pitchMm,
    int links,
    double plateHeightMm,
    double rollerDiameterMm,
    List<RouteEntry> route) {

  public Chain {
    Names.refuseNonsense("chain", name);
    Limits.PITCH_MM.refuseOutside("pitch", pitchMm);
    Limits.LINKS.refuseOutside("links", links);
    Limits.PLATE_HEIGHT_MM.refuseOutside("plate-height", plateHeightMm);
    Limits.ROLLER_DIAMETER_MM.refuseOutside("roller-diameter", rollerDiameterMm);
    route = List.copyOf(route);
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
        .filter(i -> route.get(i) instanceof Tensioner)
        .boxed()
        .findFirst();
  }

  public Optional<Tensioner> tensioner() {
    return tensionerPlace().map(place -> (Tensioner) route.get(place));
  }

  /** The mean pitch of the chain stretched by so many percent, mm. */
  public double pitchStretchedMm(double percent) {
    return pitchMm * (1 + percent / 100);
  }

  public Chain withRoute(List<RouteEntry> other) {
    return new Chain(name, kind, pitchMm, links, plateHeightMm, rollerDiameterMm, other);
  }

  public Chain withLinks(int other) {
    return new Chain(name, kind, pitchMm, other, plateHeightMm, rollerDiameterMm, route);
  }

  public Chain withKind(ChainKind other) {
    return new Chain(name, other, pitchMm, links, plateHeightMm, rollerDiameterMm, route);
  }

  public Chain withPitch(double otherMm) {
    return new Chain(name, kind, otherMm, links, plateHeightMm, rollerDiameterMm, route);
  }

  public Chain withPlateHeight(double otherMm) {
    return new Chain(name, kind, pitchMm, links, otherMm, rollerDiameterMm, route);
  }

  public Chain withRollerDiameter(double otherMm) {
    return new Chain(name, kind, pitchMm, links, plateHeightMm, otherMm, route);
  }
}
