package tightside.survey;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import tightside.drive.Arm;
import tightside.drive.Chain;
import tightside.drive.Drive;
import tightside.drive.Face;

/**
 * A point of a drive by its name: {@code crank} is a shaft's centre, {@code fixed.start} the start
 * of a face, {@code left/fixed.start} the same where two chains have a face of that name. Points of
 * a tensioner are meant with its plunger fully pushed back.
 *
 * @param chain only where the name alone would not do
 * @param part shaft, guide, arm or shoe
 */
public record SurveyPoint(Optional<String> chain, String part, Spot spot) {

  private static final Pattern FORM =
      Pattern.compile("(?:([^/.]+)/)?([^/.]+)(?:\\.(start|middle|end|pivot|pad))?");

  /** The point that a text names; nothing if it has not that form. */
  public static Optional<SurveyPoint> parse(String text) {
    Matcher form = FORM.matcher(text);
    if (!form.matches() || form.group(1) != null && form.group(3) == null) {
      return Optional.empty();
    }
    Spot spot =
        form.group(3) == null ? Spot.CENTRE : Spot.valueOf(form.group(3).toUpperCase(Locale.ROOT));
    return Optional.of(new SurveyPoint(Optional.ofNullable(form.group(1)), form.group(2), spot));
  }

  public static SurveyPoint shaft(String name) {
    return new SurveyPoint(Optional.empty(), name, Spot.CENTRE);
  }

  public static SurveyPoint of(String part, Spot spot) {
    return new SurveyPoint(Optional.empty(), part, spot);
  }

  /** Whether a drive has this point, and no other by the same name. */
  public boolean in(Drive drive) {
    if (spot == Spot.CENTRE) {
      return chain.isEmpty() && drive.shaft(part).isPresent();
    }
    return faces(drive).size() == 1 && (!ofArm() || faces(drive).get(0).face() instanceof Arm);
  }

  private boolean ofArm() {
    return spot == Spot.PIVOT || spot == Spot.PAD;
  }

  /** A face with the chain that runs over it. */
  record Found(String chain, Face face) {}

  List<Found> faces(Drive drive) {
    return drive.chains().stream()
        .filter(c -> chain.isEmpty() || chain.get().equals(c.name()))
        .flatMap(this::faces)
        .toList();
  }

  private java.util.stream.Stream<Found> faces(Chain of) {
    return of.route().stream()
        .filter(Face.class::isInstance)
        .map(Face.class::cast)
        .filter(f -> f.name().equals(part))
        .map(f -> new Found(of.name(), f));
  }

  @Override
  public String toString() {
    String name = chain.map(c -> c + "/").orElse("") + part;
    return spot == Spot.CENTRE ? name : name + "." + spot.name().toLowerCase(Locale.ROOT);
  }
}
