package tightside.words;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import tightside.drive.Drive;
import tightside.reasoning.Evidence;
import tightside.reasoning.Reading;

/** Readings in words. */
public final class ReadingSentences {

  private ReadingSentences() {}

  /** All readings, each with its number and where it stands beside the limits of the drive. */
  public static List<String> numbered(Drive drive, Evidence evidence) {
    List<String> lines = new ArrayList<>();
    for (String sentence : standing(drive, evidence)) {
      lines.add((lines.size() + 1) + "  " + sentence);
    }
    return lines;
  }

  /** The same without numbers. */
  public static List<String> standing(Drive drive, Evidence evidence) {
    Standing standing = new Standing(drive);
    return evidence.readings().stream()
        .map(r -> of(r) + standing.of(r).map(s -> "; " + s).orElse("") + ".")
        .toList();
  }

  /** One reading, with how well it is known. */
  public static String of(Reading reading) {
    if (reading instanceof Reading.CamAngle a) {
      return "%s reads %s crank degrees off its place%s, %s, spread %s"
          .formatted(
              a.shaft(),
              ExplainWords.signed(a.crankDegrees()),
              a.learned() ? ", against a learned value" : "",
              a.condition().word().replace('-', ' '),
              WhyWords.degrees(a.spreadDegrees()));
    }
    if (reading instanceof Reading.CamEdges e) {
      return "The edges of the wheel of %s stand %s crank degrees off, spread %s"
          .formatted(
              e.shaft(),
              e.crankDegrees().stream().map(ExplainWords::signed).collect(Collectors.joining(", ")),
              WhyWords.degrees(e.spreadDegrees()));
    }
    if (reading instanceof Reading.ValveAngle v) {
      return "The valves on %s open %s crank degrees early, by the pressure in a cylinder, spread %s"
          .formatted(
              v.shaft(),
              ExplainWords.signed(v.crankDegrees()),
              WhyWords.degrees(v.spreadDegrees()));
    }
    if (reading instanceof Reading.MarkStands m) {
      return "After two turns by hand the mark of %s stands %s crank degrees off, spread %s"
          .formatted(
              m.shaft(),
              ExplainWords.signed(m.crankDegrees()),
              WhyWords.degrees(m.spreadDegrees()));
    }
    if (reading instanceof Reading.PlungerStands p) {
      return "The plunger of chain %s stands %s to %s mm out"
          .formatted(p.chain(), Numbers.fixed(p.lowMm(), 1), Numbers.fixed(p.highMm(), 1));
    }
    if (reading instanceof Reading.Counted c) {
      return "%d links from the %s mark to the %s mark on chain %s"
          .formatted(c.links(), c.from(), c.to(), c.chain());
    }
    if (reading instanceof Reading.Calliper c) {
      return "%d pitches of chain %s measure %s mm, spread %s mm"
          .formatted(
              c.pitches(), c.chain(), Numbers.fixed(c.lengthMm(), 2), Numbers.plain(c.spreadMm()));
    }
    if (reading instanceof Reading.LockingTool t) {
      return "The locking tool of %s %s"
          .formatted(t.shaft(), t.goesIn() ? "goes in" : "does not go in");
    }
    if (reading instanceof Reading.Looked l) {
      return "Looked at the %s: %s"
          .formatted(l.at().word(), l.faultFound() ? "something is wrong" : "nothing found");
    }
    Reading.Compression c = (Reading.Compression) reading;
    return "Compression of all cylinders is %s %% of what it should be, spread %s %%"
        .formatted(Numbers.fixed(c.percentOfExpected(), 0), Numbers.plain(c.spreadPercent()));
  }
}
