package tightside.words;

import java.util.List;
import java.util.stream.Collectors;
import tightside.readings.Check;
import tightside.readings.Compression;
import tightside.readings.CountStrand;
import tightside.readings.DowelMeets;
import tightside.readings.LayRow;
import tightside.readings.LayTable;
import tightside.readings.LockingToolGoesIn;
import tightside.readings.Moment;
import tightside.readings.PlungerStands;
import tightside.readings.SagByThumb;
import tightside.readings.StrandSag;
import tightside.readings.Telling;
import tightside.readings.TwoTurnsAgain;
import tightside.timing.HoldBack;
import tightside.timing.Lag;
import tightside.timing.Reseating;

/** A row of the table of wrong lays, in words. */
public final class LayWords {

  /** So many lays that nothing shows are named; the rest are counted. */
  private static final int NAMED = 6;

  /** Less chain to spare than this no thumb finds, mm. */
  private static final double LEAST_SPARE_MM = 0.5;

  private LayWords() {}

  /** The lay as it comes about with the driving sprocket staying on its chain. */
  public static String name(HoldBack hold, LayRow row) {
    Reseating simplest = row.lay().lay();
    Reseating staying = row.withDriverStaying().lay();
    String name = HoldBackWords.lay(hold, staying);
    return staying.equals(simplest)
        ? name
        : name + " (the same links as " + HoldBackWords.lay(hold, simplest) + ")";
  }

  /** Why the row stands where it does. */
  public static String reason(LayRow row) {
    return switch (row.reason()) {
      case NOTHING_SHOWS_IT -> "possible while locked, and no check at hand ever shows it";
      case SHOWS_ONLY_ONCE_TURNED -> "possible while locked, and hidden until the engine is turned";
      case SHOWS_WHILE_LOCKED -> "possible while locked, but it shows before anything turns";
      case TURN_LOOKS_LIKE_SLACK ->
          "takes a turn of a shaft, by no more than slack and play excuse";
      case TURN_IS_TOO_LARGE -> "takes a turn of a shaft larger than the right tooth ever asks for";
      case NO_TURN_IS_ENOUGH -> "no turn of these shafts makes it fit";
    };
  }

  /** What it does once the engine is turned. */
  public static String consequence(LayRow row) {
    return row.off().isEmpty()
        ? "no shaft stands off"
        : row.off().stream()
            .map(
                t ->
                    t.shaft()
                        + " "
                        + Numbers.fixed(Math.abs(t.crankDegrees()), 1)
                        + " crank degrees "
                        + (t.lag() == Lag.ADVANCED ? "advanced" : "retarded"))
            .collect(Collectors.joining(", "));
  }

  /** The check that would show it soonest. */
  public static String soonest(LayRow row) {
    return row.soonest()
        .map(LayWords::telling)
        .orElse("nothing that can be done with this access shows it");
  }

  private static String telling(Telling telling) {
    return "%s %s (about %s min)"
        .formatted(
            check(telling.check()),
            telling.moment() == Moment.BEFORE_TURNING
                ? "before the crankshaft is turned"
                : "after turning it",
            telling.minutes());
  }

  /** A whole row in one breath. */
  public static String row(HoldBack hold, LayRow row) {
    return "%s: %s. Before turning: %s. Then: %s. Shown soonest: %s."
        .formatted(name(hold, row), reason(row), spare(row), consequence(row), soonest(row));
  }

  /** Where the chain that is over would lie before anything turns, for a thumb. */
  public static String spare(LayRow row) {
    List<String> loose =
        row.tightStrands().stream()
            .filter(s -> s.spareMm() >= LEAST_SPARE_MM)
            .map(LayWords::spare)
            .toList();
    return loose.isEmpty()
        ? "no tight run has chain to spare, so none lies where a thumb finds it"
        : Sentences.list(loose, "and");
  }

  private static String spare(StrandSag strand) {
    String sag =
        strand.wrongMm().isPresent()
            ? "sags " + Numbers.mm(strand.wrongMm().getAsDouble())
            : "hangs in a loop";
    return "the run from %s to %s has %s to spare and %s"
        .formatted(strand.strand().from(), strand.strand().to(), Numbers.mm(strand.spareMm()), sag);
  }

  /** What no check shows. */
  public static String never(LayTable table) {
    List<LayRow> never = table.neverShown();
    if (never.isEmpty()) {
      return "Every wrong lay of one or two sprockets is shown by some check with this access.";
    }
    List<String> named = never.stream().limit(NAMED).map(row -> name(table.hold(), row)).toList();
    String more = never.size() > NAMED ? ", and " + (never.size() - NAMED) + " more" : "";
    return "No check with this access shows: " + String.join("; ", named) + more + ".";
  }

  /** A check as it is asked for. */
  public static String check(Check check) {
    if (check instanceof CountStrand count) {
      return "count the links from " + count.from() + " to " + count.to();
    } else if (check instanceof PlungerStands) {
      return "look how far the plunger stands out";
    } else if (check instanceof LockingToolGoesIn tool) {
      return "put the locking tool into " + tool.shaft();
    } else if (check instanceof SagByThumb sag) {
      return "press the run from " + sag.from() + " to " + sag.to() + " with a thumb";
    } else if (check instanceof DowelMeets dowel) {
      return "see how far " + dowel.shaft() + " must turn to meet its dowel";
    } else if (check instanceof TwoTurnsAgain) {
      return "turn the engine twice by hand and look at the marks again";
    } else if (check instanceof Compression) {
      return "measure compression";
    }
    throw new IllegalArgumentException("no words for " + check);
  }
}
