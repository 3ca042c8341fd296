package tightside.drive;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Which part of a drive something is said of: the steps that lead to it, such as chains, main,
 * route, 2, mark.
 */
public record Part(List<String> steps) {

  public Part {
    steps = List.copyOf(steps);
  }

  public static Part whole() {
    return new Part(List.of());
  }

  public static Part shaft(String name) {
    return new Part(List.of("shafts", name));
  }

  public static Part chain(String name) {
    return new Part(List.of("chains", name));
  }

  /**
   * @param place on the chain's route, counted from 0
   */
  public static Part route(String chain, int place) {
    return new Part(List.of("chains", chain, "route", Integer.toString(place)));
  }

  /** A part of this part. */
  public Part at(String step) {
    return new Part(Stream.concat(steps.stream(), Stream.of(step)).toList());
  }

  @Override
  public String toString() {
    return steps.stream().map(step -> "/" + step).collect(Collectors.joining());
  }
}
