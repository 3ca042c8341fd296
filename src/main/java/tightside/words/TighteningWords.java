package tightside.words;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import tightside.job.Adapter;
import tightside.job.Bolt;
import tightside.job.Job;
import tightside.job.Tightening;
import tightside.job.Torque;
import tightside.job.TorqueUnit;

/** Bolts and their steps, in sentences. */
public final class TighteningWords {

  /** What takes the torque up. */
  public static final String HELD =
      "A second pair of hands holds the camshaft by its flats, or the maker's tool does. None of the torque may go through the chain, its guides, the tensioner or a locking tool.";

  /** What to do once a bolt was left half way. */
  public static final String INTERRUPTED =
      "Interrupted or unsure where you were: do not guess and do not add. Back that bolt out and begin it again at step 1, with a new bolt where the maker says that it stretches once only.";

  /** How an adapter changes a setting. */
  public static final String ADAPTER =
      "An adapter on the torque wrench changes what it is set to: setting = T × L / (L + E × cos a), with T the maker's torque, L from hand to square, E from square to bolt, a between adapter and wrench (in line 0°, to the side 90°: no change). For torque steps only, never for an angle.";

  /** Degrees from one flat of a hexagon to the next. */
  private static final double FLAT = 60;

  private TighteningWords() {}

  /** Where the figures come from. */
  public static String figures(Job job) {
    if (job.bolts().isEmpty()) {
      return "None is printed here: fill the blanks from the maker's procedure.";
    }
    return job.figures()
        .map(
            source ->
                "The figures below are the user's own: %s. Check each against the maker's procedure."
                    .formatted(strip(source)))
        .orElse(
            "The figures below are the user's own, with no source noted: check each against the maker's procedure.");
  }

  private static String strip(String source) {
    return source.endsWith(".") ? source.substring(0, source.length() - 1) : source;
  }

  /** In which order several bolts go. */
  public static String order(Job.Order order, List<String> bolts) {
    String names = String.join(", then ", bolts);
    return order == Job.Order.STEP_BY_STEP
        ? "Order, both sides: one step on every bolt, then the next step on every bolt: "
            + names
            + "."
        : "Order, both sides: one bolt through all its steps, then the next: " + names + ".";
  }

  /** What to know of a bolt before it is tightened. */
  public static List<String> ready(Bolt bolt) {
    List<String> notes = new ArrayList<>();
    if (bolt.thread() == Bolt.Thread.LEFT) {
      notes.add("LEFT-HAND THREAD: it tightens counterclockwise.");
    }
    if (bolt.mustBeNew()) {
      notes.add("MUST BE NEW: the old one goes into the scrap, not on the bench.");
    }
    bolt.heldBy().ifPresent(by -> notes.add("Held against the torque by: " + strip(by) + "."));
    return notes;
  }

  /** What a step does. */
  public static String step(Bolt bolt, Tightening step) {
    if (step instanceof Tightening.To to) {
      return "tighten to %s.".formatted(both(to.torque()));
    }
    if (step instanceof Tightening.Loosen loosen) {
      return "loosen by %s, %s.".formatted(turn(loosen.degrees()), way(bolt, false));
    }
    return "%s further, %s."
        .formatted(turn(((Tightening.Further) step).degrees()), way(bolt, true));
  }

  private static String way(Bolt bolt, boolean tighter) {
    return tighter == (bolt.thread() == Bolt.Thread.RIGHT) ? "clockwise" : "counterclockwise";
  }

  /** A torque in its own unit and in the other system's. */
  public static String both(Torque torque) {
    TorqueUnit other = torque.unit() == TorqueUnit.NM ? TorqueUnit.LB_FT : TorqueUnit.NM;
    return "%s %s (%s %s)"
        .formatted(
            Numbers.plain(torque.value()),
            torque.unit().sign(),
            Numbers.fixed(torque.in(other), 1),
            other.sign());
  }

  /** An angle of a bolt, with what an eye can follow. */
  private static String turn(double degrees) {
    String shown = Numbers.plain(degrees) + "°";
    double flats = degrees / FLAT;
    if (degrees % 360 == 0) {
      return shown + " (" + Numbers.count(Math.round(degrees / 360), "full turn") + ")";
    }
    return degrees % (FLAT / 2) == 0
        ? shown + " (" + Numbers.plain(flats) + " flats of a hexagon)"
        : shown;
  }

  /** What to know for one step. */
  public static List<String> notes(Bolt bolt, Tightening step) {
    return Stream.concat(
            bolt.adapter().stream().map(adapter -> adapter(adapter, step)),
            bolt.thread() == Bolt.Thread.LEFT
                ? Stream.of("Left-hand thread.")
                : Stream.<String>empty())
        .toList();
  }

  private static String adapter(Adapter adapter, Tightening step) {
    if (!(step instanceof Tightening.To to)) {
      return "The adapter changes nothing here: an angle is an angle.";
    }
    Torque setting = new Torque(adapter.setting(to.torque()), to.torque().unit());
    String where =
        adapter.angleDegrees() == 0
            ? "in line"
            : "at " + Numbers.plain(adapter.angleDegrees()) + "°";
    return "With the adapter, %s mm %s on a wrench of %s mm, SET THE WRENCH TO %s."
        .formatted(
            Numbers.plain(adapter.reachMm()),
            where,
            Numbers.plain(adapter.wrenchMm()),
            settingWords(setting));
  }

  private static String settingWords(Torque setting) {
    TorqueUnit other = setting.unit() == TorqueUnit.NM ? TorqueUnit.LB_FT : TorqueUnit.NM;
    return "%s %s (%s %s)"
        .formatted(
            Numbers.fixed(setting.value(), 1),
            setting.unit().sign(),
            Numbers.fixed(setting.in(other), 1),
            other.sign());
  }
}
