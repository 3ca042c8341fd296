package tightside.command;

import java.util.List;
import java.util.stream.Collectors;
import tightside.drive.Chain;
import tightside.drive.Drive;
import tightside.drive.Limits;
import tightside.drive.Shaft;
import tightside.timing.Seat;
import tightside.timing.State;
import tightside.words.Sentences;

/** What the words SHAFT=K and [CHAIN=]PERCENT mean for a drive. */
final class Words {

  private Words() {}

  /**
   * The state with SHAFT=K, or CHAIN/SHAFT=K where a shaft has several sprockets, put back so.
   *
   * @throws Refusal if a word names nothing of this drive, or no whole number of teeth
   */
  static State reseated(Drive drive, State state, List<String> words) {
    State changed = state;
    for (String word : words) {
      int equals = word.lastIndexOf('=');
      if (equals < 1) {
        throw new Refusal(
            "\"" + word + "\" names no reseat; write SHAFT=K, such as " + anExample(drive) + "=-1");
      }
      Seat seat = seat(drive, word.substring(0, equals));
      if (changed.reseats().containsKey(seat)) {
        throw new Refusal(
            seat.shaft() + " is reseated twice; name it once, with the whole number of teeth");
      }
      changed = changed.reseated(seat, teeth(drive, seat, word, word.substring(equals + 1)));
    }
    return changed;
  }

  private static String anExample(Drive drive) {
    return drive.chains().get(0).sprockets().get(1).shaft();
  }

  private static int teeth(Drive drive, Seat seat, String word, String number) {
    int most =
        drive.chain(seat.chain()).flatMap(c -> c.sprocketOn(seat.shaft())).orElseThrow().teeth()
            - 1;
    if (!number.matches("[+-]?\\d{1,4}") || Math.abs(Integer.parseInt(number)) > most) {
      throw new Refusal(
          "\"%s\" does not say by how many teeth; K is a whole number from -%s to %s, + for ahead"
              .formatted(word, most, most));
    }
    return Integer.parseInt(number);
  }

  private static Seat seat(Drive drive, String name) {
    int slash = name.indexOf('/');
    String shaft = name.substring(slash + 1);
    List<Chain> carried =
        drive.chainsOn(shaft).stream()
            .filter(c -> slash < 0 || c.name().equals(name.substring(0, slash)))
            .toList();
    if (carried.size() == 1) {
      return new Seat(carried.get(0).name(), shaft);
    }
    if (carried.size() > 1) {
      String choices =
          Sentences.list(carried.stream().map(c -> c.name() + "/" + shaft + "=K").toList(), "or");
      throw new Refusal(
          shaft + " has a sprocket on several chains; say which is reseated: " + choices);
    }
    if (slash >= 0 && drive.shaft(shaft).isPresent()) {
      throw new Refusal(
          "chain \"%s\" has no sprocket on %s; the chains are %s"
              .formatted(name.substring(0, slash), shaft, chains(drive)));
    }
    throw new Refusal(
        "the drive has no shaft \"%s\"; its shafts are %s".formatted(shaft, shafts(drive)));
  }

  private static String shafts(Drive drive) {
    return Sentences.list(drive.shafts().stream().map(Shaft::name).toList(), "and");
  }

  private static String chains(Drive drive) {
    return drive.chains().stream().map(Chain::name).collect(Collectors.joining(", "));
  }

  /**
   * The state with one PERCENT for every chain, or CHAIN=PERCENT for those named.
   *
   * @throws Refusal if a word is neither
   */
  static State stretched(Drive drive, State state, List<String> words) {
    State changed = state;
    for (String word : words) {
      int equals = word.lastIndexOf('=');
      double percent = percent(word, word.substring(equals + 1));
      if (equals < 0) {
        if (words.size() > 1) {
          throw new Refusal(
              "one PERCENT speaks for every chain; for several write CHAIN=PERCENT for each");
        }
        for (Chain chain : drive.chains()) {
          changed = changed.stretched(chain.name(), percent);
        }
      } else {
        String chain = word.substring(0, equals);
        if (drive.chain(chain).isEmpty()) {
          throw new Refusal(
              "the drive has no chain \"%s\"; its chains are %s".formatted(chain, chains(drive)));
        }
        if (changed.stretchPercent().containsKey(chain)) {
          throw new Refusal(chain + " is stretched twice; name it once, with the whole stretch");
        }
        changed = changed.stretched(chain, percent);
      }
    }
    return changed;
  }

  private static double percent(String word, String number) {
    if (number.matches("[+-]?\\d{1,6}(\\.\\d{1,15})?")) {
      double percent = Double.parseDouble(number);
      if (Limits.STRETCH_PERCENT.allow(percent)) {
        return percent;
      }
    }
    throw new Refusal(
        "\"%s\" is no stretch; write percent of the new length with a decimal point, from 0 to 10, such as 0.2"
            .formatted(word));
  }
}
