package tightside.session;

import java.util.List;
import java.util.Locale;
import tightside.drive.Drive;
import tightside.drive.Role;
import tightside.drive.Seen;
import tightside.timing.CalliperStretch;
import tightside.timing.Lag;
import tightside.timing.Lay;
import tightside.timing.Seat;
import tightside.timing.ShaftTiming;
import tightside.timing.Strand;
import tightside.words.Numbers;

/** The words of the window, for what all its sentences have in common. */
public final class Words {

  /** Under half of what is shown. */
  private static final double NOT_SHOWN = 0.05;

  private Words() {}

  static String number(long count, String one, String many) {
    return count + " " + (Math.abs(count) == 1 ? one : many);
  }

  /** "a", "a and b", "a, b and c". */
  static String list(List<String> items, String last) {
    int rest = items.size() - 1;
    return rest < 1
        ? String.join("", items)
        : String.join(", ", items.subList(0, rest)) + " " + last + " " + items.get(rest);
  }

  static String strand(Strand strand) {
    return strand.from() + " to " + strand.to();
  }

  /** Both ways to count a strand. */
  static String links(long links) {
    return "%s from mark to mark = %s between the two painted ones"
        .formatted(number(links, "link", "links"), number(links - 1, "plain link", "plain links"));
  }

  /** A sprocket, with its chain where its shaft has several. */
  static String sprocket(Drive drive, Seat seat) {
    return drive.chainsOn(seat.shaft()).size() > 1
        ? seat.chain() + "/" + seat.shaft()
        : seat.shaft();
  }

  /** "the exhaust sprocket sits 1 tooth ahead". */
  static String sits(Lay lay) {
    return lay.moved().isEmpty()
        ? "every sprocket sits right"
        : list(lay.moved().stream().map(Words::sits).toList(), "and");
  }

  private static String sits(Lay.Moved moved) {
    return "the %s sprocket sits %s %s"
        .formatted(
            moved.shaft(),
            number(Math.abs(moved.teeth()), "tooth", "teeth"),
            moved.teeth() > 0 ? "ahead" : "behind");
  }

  /** "exhaust 10.0 cam degrees (20.0 crank) retarded". */
  static String shaft(Drive drive, ShaftTiming shaft) {
    if (shaft.lag() == Lag.RIGHT) {
      return shaft.shaft() + " right";
    }
    String kind =
        drive.shaft(shaft.shaft()).orElseThrow().role() == Role.CAMSHAFT ? "cam" : "shaft";
    return "%s %s %s degrees (%s crank) %s"
        .formatted(
            shaft.shaft(),
            amount(shaft.shaftDegrees()),
            kind,
            amount(shaft.crankDegrees()),
            lag(shaft.lag()));
  }

  /** "The exhaust shaft stands 10.0 cam degrees (20.0 crank) retarded." */
  static String shaftSentence(Drive drive, ShaftTiming shaft) {
    String stands = shaft(drive, shaft).substring(shaft.shaft().length() + 1);
    return "The %s shaft stands %s.".formatted(shaft.shaft(), stands);
  }

  private static String amount(double degrees) {
    double size = Math.abs(degrees);
    return size < NOT_SHOWN ? "under 0.1" : Numbers.fixed(size, 1);
  }

  static String lag(Lag lag) {
    return lag.name().toLowerCase(Locale.ROOT);
  }

  static String role(Role role) {
    return role.name().toLowerCase(Locale.ROOT);
  }

  static String seen(Seen seen) {
    return switch (seen) {
      case COVER_ON -> "cover on";
      case COVER_OFF -> "cover off";
      case BORESCOPE -> "borescope";
      case NEVER -> "can't be seen";
    };
  }

  /** What a person can see by, as it is now. */
  static String with(Seen cover) {
    return switch (cover) {
      case COVER_ON -> "with the cover on";
      case COVER_OFF -> "with the cover off";
      default -> "with a borescope";
    };
  }

  /** What it means that the engine was turned back. */
  static String turnedBack(double toTakeUpDegrees) {
    return ("The engine was turned back, so nothing shown holds until it is turned forward by %s "
            + "crank degrees more; turn it back only where its maker says so.")
        .formatted(Numbers.fixed(toTakeUpDegrees, 1));
  }

  /**
   * What a calliper reads over so many pitches of a new chain, and of one whose tensioner runs out.
   *
   * @param pitches from roller to roller
   * @param pitchMm of the new chain
   */
  public static String calliperReads(int pitches, double pitchMm, double runsOutPercent) {
    double newMm = pitches * pitchMm;
    return "Over %s a new chain measures %s mm, and %s mm where the tensioner runs out."
        .formatted(
            number(pitches, "link", "links"),
            Numbers.fixed(newMm, 2),
            Numbers.fixed(newMm * (1 + runsOutPercent / 100), 2));
  }

  /** What a measured length means. */
  public static String calliper(CalliperStretch measured) {
    if (measured instanceof CalliperStretch.Measured m) {
      return "The chain is stretched by %s %%.".formatted(Numbers.fixed(m.stretchPercent(), 2));
    }
    return switch (((CalliperStretch.Refused) measured).why()) {
      case PITCH_NOT_KNOWN ->
          "What the pitch of this chain was when new is not known: add pitch, in mm, to its drive.";
      case TOO_FEW_PITCHES -> "Measure over two pitches at least, better over ten.";
      case ODD_PITCHES ->
          "Measure over an even number of pitches: wear grows every second one only.";
      case MORE_THAN_THE_CHAIN -> "The chain has not so many pitches.";
      case SHORTER_THAN_NEW ->
          "That is shorter than a new chain: count the pitches again and pull the chain tight.";
      case LONGER_THAN_ANY_WEAR ->
          "That is longer than any chain lasts: count the pitches again, and check the unit.";
    };
  }
}
