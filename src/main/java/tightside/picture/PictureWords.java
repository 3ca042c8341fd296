package tightside.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import tightside.drive.ChainFit;
import tightside.drive.Role;
import tightside.drive.Seen;
import tightside.drive.Shaft;
import tightside.drive.Sprocket;
import tightside.timing.ChainSolution;
import tightside.timing.Lag;
import tightside.timing.Seat;
import tightside.timing.ShaftTiming;
import tightside.timing.Solution;
import tightside.timing.State;
import tightside.timing.Strand;
import tightside.timing.TensionerReading;

/** The few words that stand in a picture, and the longer ones that stand for it. */
final class PictureWords {

  private PictureWords() {}

  private static String counted(long number, String noun) {
    return number + " " + noun + (Math.abs(number) == 1 ? "" : "s");
  }

  static List<String> strand(
      Solution solution, ChainSolution chain, Strand strand, PictureOptions options) {
    List<String> lines = new ArrayList<>();
    lines.add(counted(strand.links(), "link"));
    lines.add(strand.between() + " between");
    int over = setOver(solution, chain, strand, options);
    if (over != 0 && chain.fit().path().isPresent()) {
      lines.add("painted: " + (strand.between() - over) + " between");
    }
    Optional<String> unseen = options.access().flatMap(access -> unseen(strand.seen(), access));
    lines.addAll(Pull.of(chain, solution.state(), strand).words(unseen));
    if (!strand.trusted()) {
      lines.add("count not trusted");
    }
    return lines;
  }

  /** Links that a strand has gained since the links under its marks were painted. */
  private static int setOver(
      Solution solution, ChainSolution chain, Strand strand, PictureOptions options) {
    return setOver(solution, chain, strand.to(), options)
        - setOver(solution, chain, strand.from(), options);
  }

  private static int setOver(
      Solution solution, ChainSolution chain, String shaft, PictureOptions options) {
    Seat seat = new Seat(chain.chain().name(), shaft);
    return solution.state().teethAt(seat) - options.painted().getOrDefault(seat, 0);
  }

  /** Why something can't be seen; nothing where it can. */
  static Optional<String> unseen(Seen needed, Seen access) {
    if (needed.compareTo(access) <= 0) {
      return Optional.empty();
    }
    return Optional.of(
        switch (needed) {
          case NEVER -> "can't be seen";
          case BORESCOPE -> "needs a borescope";
          default -> "under the cover";
        });
  }

  /** The name of a shaft, and its role where the name does not say it. */
  static List<String> named(Shaft shaft) {
    String role = shaft.role().name().toLowerCase(Locale.ROOT);
    return shaft.name().toLowerCase(Locale.ROOT).contains(role)
        ? List.of(shaft.name())
        : List.of(shaft.name(), role);
  }

  /** The sprockets of a shaft: 36 teeth, or 40 + 20 teeth. */
  static String teeth(List<Sprocket> sprockets) {
    return sprockets.stream()
            .map(sprocket -> Integer.toString(sprocket.teeth()))
            .collect(Collectors.joining(" + "))
        + " teeth";
  }

  /** How a shaft stands, in degrees of its own and in teeth of the sprocket that drives it. */
  static List<String> timing(Solution solution, ShaftTiming timing, int teeth) {
    if (unknownUntil(solution.state()).isPresent()) {
      return List.of("timing not known");
    }
    if (timing.lag() == Lag.RIGHT) {
      return List.of("timing right");
    }
    String inTeeth = Decimals.fixed(Math.abs(timing.shaftDegrees()) * teeth / 360, 2);
    return List.of(
        degrees(solution, timing),
        way(timing) + ", " + inTeeth + (inTeeth.equals("1.00") ? " tooth" : " teeth"));
  }

  /** How far off, and of what: a crankshaft turns twice as far as a camshaft. */
  private static String degrees(Solution solution, ShaftTiming timing) {
    boolean cam =
        solution.drive().shafts().stream()
            .anyMatch(s -> s.name().equals(timing.shaft()) && s.role() == Role.CAMSHAFT);
    return Decimals.fixed(Math.abs(timing.shaftDegrees()), 2) + (cam ? " cam degrees" : " degrees");
  }

  /** What has to be done before anything is known of timing. */
  static Optional<String> unknownUntil(State state) {
    if (state.arrived() == State.Arrived.BACKWARD) {
      return Optional.of("until turned forward");
    }
    return state.heldMm().isEmpty() ? Optional.empty() : Optional.of("until plunger let go");
  }

  private static String way(ShaftTiming timing) {
    return timing.lag() == Lag.ADVANCED ? "advanced" : "retarded";
  }

  static List<String> tensioner(TensionerReading reading) {
    List<String> lines = new ArrayList<>();
    lines.add(reading.name());
    lines.add(
        Decimals.fixed(reading.extensionMm(), 1)
            + " of "
            + Decimals.fixed(reading.travelMm(), 1)
            + " mm out");
    reading.steps().ifPresent(steps -> lines.add(counted(steps, "ratchet step")));
    return lines;
  }

  private static Optional<String> hiddenMarks(ChainSolution chain, Seen access) {
    List<String> hidden =
        chain.chain().sprockets().stream()
            .filter(s -> s.marked() && s.seen().compareTo(access) > 0)
            .map(Sprocket::shaft)
            .toList();
    return hidden.isEmpty()
        ? Optional.empty()
        : Optional.of(
            "Marks of "
                + chain.chain().name()
                + " that can't be seen: "
                + String.join(", ", hidden)
                + ".");
  }

  /** What keeps a chain from being drawn, or from lying taut. */
  static Optional<String> trouble(ChainSolution chain) {
    String name = "Chain " + chain.chain().name();
    if (!(chain.whenNew() instanceof ChainFit.Solved)) {
      return misfit(chain, chain.whenNew()).map(why -> name + " is not drawn: " + why + ".");
    }
    if (!chain.marksOff().isEmpty()) {
      String shafts =
          chain.marksOff().stream().map(off -> off.shaft()).collect(Collectors.joining(", "));
      return Optional.of(name + " is not drawn: it does not lie over the mark of " + shafts + ".");
    }
    return misfit(chain, chain.fit()).map(why -> name + ": " + why + ".");
  }

  private static Optional<String> misfit(ChainSolution chain, ChainFit fit) {
    if (fit instanceof ChainFit.Solved solved) {
      return solved.slackMm() > 0
          ? Optional.of(Decimals.fixed(solved.slackMm(), 1) + " mm of it is slack")
          : Optional.empty();
    }
    if (fit instanceof ChainFit.TooShort shortBy) {
      return Optional.of("too short by " + Decimals.fixed(shortBy.byMm(), 1) + " mm");
    }
    if (fit instanceof ChainFit.OutOfTravel out) {
      String left = Decimals.fixed(out.slackLeftMm(), 1);
      return Optional.of("tensioner out of travel, " + left + " mm of chain left slack");
    }
    if (fit instanceof ChainFit.SprocketMissed missed) {
      String shaft = chain.chain().sprocketAt(missed.place()).shaft();
      return Optional.of("it runs clear of the sprocket of " + shaft);
    }
    ChainFit.NoRoom room = (ChainFit.NoRoom) fit;
    return Optional.of(
        "no room for it between "
            + chain.chain().sprocketAt(room.from()).shaft()
            + " and "
            + chain.chain().sprocketAt(room.to()).shaft());
  }

  /** Where the crankshaft is, once it has left the reference position. */
  static Optional<String> turned(State state) {
    return state.crankDegrees() == 0
        ? Optional.empty()
        : Optional.of(
            "Crankshaft turned "
                + Decimals.fixed(state.crankDegrees(), 1)
                + "° from the reference position.");
  }

  /** What the picture shows, for those who can't see it. */
  static String description(Solution solution, PictureOptions options) {
    List<String> sentences = new ArrayList<>();
    sentences.add(
        "Seen from the front; the crankshaft turns "
            + solution.drive().rotation().name().toLowerCase(Locale.ROOT)
            + ".");
    turned(solution.state()).ifPresent(sentences::add);
    for (ChainSolution chain : solution.chains()) {
      trouble(chain).ifPresent(sentences::add);
      for (Strand strand : chain.strands()) {
        sentences.add(
            "Chain "
                + chain.chain().name()
                + ", "
                + strand.from()
                + " to "
                + strand.to()
                + ": "
                + String.join(", ", strand(solution, chain, strand, options))
                + ".");
      }
      options.access().flatMap(access -> hiddenMarks(chain, access)).ifPresent(sentences::add);
      long cycles = PaintLabels.wholeCycles(solution.state());
      if (cycles != 0 && chain.fit().path().isPresent()) {
        sentences.add(
            "Chain %s: %s."
                .formatted(
                    chain.chain().name(), String.join(", ", PaintLabels.words(chain, cycles))));
      }
      chain.tensioner().ifPresent(t -> sentences.add(String.join(", ", tensioner(t)) + "."));
    }
    Optional<String> until = unknownUntil(solution.state());
    if (until.isPresent()) {
      sentences.add("Nothing is known of timing " + until.get() + ".");
      return String.join(" ", sentences);
    }
    for (ShaftTiming timing : solution.shafts()) {
      sentences.add(
          timing.lag() == Lag.RIGHT
              ? timing.shaft() + ": right."
              : timing.shaft() + ": " + degrees(solution, timing) + " " + way(timing) + ".");
    }
    return String.join(" ", sentences);
  }
}
