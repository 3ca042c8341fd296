package tightside.session;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import tightside.drive.Chain;
import tightside.drive.Limits;
import tightside.drive.Role;
import tightside.drive.Seen;
import tightside.drive.Shaft;
import tightside.reasoning.Cause;
import tightside.reasoning.Cheap;
import tightside.reasoning.CheckKind;
import tightside.reasoning.CheckPlan;
import tightside.reasoning.Condition;
import tightside.reasoning.Evidence;
import tightside.reasoning.Priors;
import tightside.reasoning.Reading;
import tightside.reasoning.Spreads;
import tightside.reasoning.Subject;
import tightside.timing.ChainSolution;
import tightside.timing.Solver;
import tightside.timing.State;
import tightside.timing.Strand;
import tightside.words.Numbers;

/**
 * The form of the card Why: its fields, and what was typed in them as readings, priors and minutes.
 *
 * @param fields in order
 * @param refusals by field: what is wrong with what was typed, and what would be right
 */
public record WhyForm(
    Subject subject,
    List<Field> fields,
    Evidence evidence,
    Priors priors,
    CheckPlan plan,
    Map<String, String> refusals) {

  private static final Limits DEGREES = new Limits(-360, 360, "crank degrees");
  private static final Limits SPREAD = new Limits(0.05, 45, "crank degrees");
  private static final Limits WEIGHT = new Limits(0, 999, "beside the others");
  private static final Limits MINUTES = new Limits(0, 999, "minutes");
  private static final Limits OPENING = new Limits(0, 9_999, "minutes");
  private static final String HINT = "+ ahead, - late";
  private static final Pattern OWN_SPREAD = Pattern.compile("(.*?)(?:\\bsd\\b|\u00b1|\\+/?-)(.*)");
  private static final double PLUNGER_MM = 0.5;
  private static final double MARK_DEGREES = 6;
  private static final double CALLIPER_MM = 0.05;
  private static final double COMPRESSION_PERCENT = 10;

  /** Under what heading a field stands. */
  public enum Heading {
    READ("What was read; leave empty what was not"),
    PRIORS("How often each cause is met, beside the others"),
    MINUTES("Minutes that each check takes you; empty: as shown"),
    ACCESS("Where the engine stands");

    private final String words;

    Heading(String words) {
      this.words = words;
    }

    public String words() {
      return words;
    }
  }

  /**
   * A field.
   *
   * @param hint what stands for it while it is empty; nothing for a tick
   */
  public record Field(String id, Heading heading, String words, String hint) {

    /** Whether it is no field to type in, but ticked: {@link #TICKED}, or empty. */
    public boolean tick() {
      return hint.isEmpty();
    }
  }

  /** What a field holds that is ticked. */
  public static final String TICKED = "yes";

  public WhyForm {
    fields = List.copyOf(fields);
    refusals = Map.copyOf(refusals);
  }

  public static WhyForm of(Snapshot now) {
    return new Maker(now).form();
  }

  /** All of a snapshot that the answer depends on. */
  public static Object inputs(Snapshot now) {
    return List.of(
        System.identityHashCode(now.drive()), now.why(), now.cover(), now.slack().playDegrees());
  }

  private static final class Maker {

    private final Snapshot now;
    private final List<Field> fields = new ArrayList<>();
    private final List<Reading> readings = new ArrayList<>();
    private final Map<String, String> refusals = new LinkedHashMap<>();

    Maker(Snapshot now) {
      this.now = now;
    }

    WhyForm form() {
      double spread = number(read("spread", "Spread of an angle", "1"), SPREAD).orElse(1);
      for (Shaft shaft : now.drive().shafts()) {
        if (shaft.role() == Role.CAMSHAFT && timed(shaft.name())) {
          camshaft(shaft.name(), spread);
        }
      }
      for (ChainSolution chain : Solver.solve(now.drive(), State.reference()).chains()) {
        chain(chain);
      }
      looked();
      Priors priors = priors();
      CheckPlan plan = plan();
      return new WhyForm(
          new Subject(now.drive(), now.phasers(), now.engine()),
          fields,
          new Evidence(readings, Spreads.usual()),
          priors,
          plan,
          refusals);
    }

    private boolean timed(String shaft) {
      return now.drive().chainsOn(shaft).stream()
          .anyMatch(c -> c.sprocketOn(shaft).orElseThrow().marked());
    }

    private Field read(String id, String words, String hint) {
      return field(id, Heading.READ, words, hint);
    }

    private Field field(String id, Heading heading, String words, String hint) {
      Field field = new Field("why-" + id, heading, words, hint);
      fields.add(field);
      return field;
    }

    private OptionalDouble number(Field field, Limits limits) {
      return number(field, now.why().of(field.id()), limits);
    }

    private OptionalDouble number(Field field, String text, Limits limits) {
      if (text.isBlank()) {
        return OptionalDouble.empty();
      }
      Typed typed = Decimals.within(text, field.words(), limits);
      typed.refusal().ifPresent(r -> refusals.put(field.id(), r));
      return typed instanceof Typed.Number n
          ? OptionalDouble.of(n.value())
          : OptionalDouble.empty();
    }

    private void take(Field field, Limits limits, DoubleFunction<Reading> reading) {
      number(field, limits).ifPresent(value -> readings.add(reading.apply(value)));
    }

    private void camshaft(String shaft, double usual) {
      double spread =
          number(read("spread-" + shaft, "Spread of " + shaft, Numbers.plain(usual)), SPREAD)
              .orElse(usual);
      sensed(shaft, shaft + " reads, crank degrees off", spread, Condition.HOT_IDLE, "");
      sensed(
          shaft,
          shaft + ", its phaser unplugged",
          spread,
          Condition.PHASER_UNPLUGGED,
          "unplugged-");
      sensed(shaft, shaft + " at raised speed", spread, Condition.RAISED_SPEED, "raised-");
      sensed(shaft, shaft + ", phaser at its stop", spread, Condition.AT_STOP, "stop-");
      angle(
          read("learned-" + shaft, shaft + ", off its learned value", HINT),
          spread,
          (d, sd) -> new Reading.CamAngle(shaft, d, sd, Condition.HOT_IDLE, true));
      edges(shaft, spread);
      angle(
          read("mark-" + shaft, "Mark of " + shaft + ", two turns by hand", HINT),
          MARK_DEGREES,
          (d, sd) -> new Reading.MarkStands(shaft, d, sd));
      angle(
          read("valves-" + shaft, "Valves on " + shaft + ", by pressure", HINT),
          2 * spread,
          (d, sd) -> new Reading.ValveAngle(shaft, d, sd));
      chosen(read("tool-" + shaft, "Locking tool of " + shaft + " goes in", "yes or no"))
          .ifPresent(
              in -> readings.add(new Reading.LockingTool(shaft, in, now.slack().playDegrees())));
    }

    private void sensed(String shaft, String words, double spread, Condition how, String id) {
      angle(
          read(id + shaft, words, HINT),
          spread,
          (d, sd) -> new Reading.CamAngle(shaft, d, sd, how, false));
    }

    /** A reading of an angle and its spread. */
    private interface Angle {
      Reading of(double degrees, double spread);
    }

    /** Takes what was typed as an angle, with a spread of its own behind "sd" or a plus-minus. */
    private void angle(Field field, double usual, Angle reading) {
      String text = now.why().of(field.id());
      Matcher own = OWN_SPREAD.matcher(text);
      boolean told = own.matches();
      OptionalDouble degrees = number(field, told ? own.group(1).strip() : text, DEGREES);
      OptionalDouble spread =
          told ? number(field, own.group(2).strip(), SPREAD) : OptionalDouble.of(usual);
      if (degrees.isPresent() && spread.isPresent()) {
        readings.add(reading.of(degrees.getAsDouble(), spread.getAsDouble()));
      }
    }

    private void edges(String shaft, double spread) {
      Field field = read("edges-" + shaft, "Every edge of " + shaft + "'s wheel", "-7; -6.8; -7.1");
      List<Double> degrees = new ArrayList<>();
      for (String part : now.why().of(field.id()).strip().split("[;\\s]+")) {
        if (!part.isEmpty()) {
          Typed typed = Decimals.within(part, field.words(), DEGREES);
          typed.refusal().ifPresent(r -> refusals.put(field.id(), r));
          if (typed instanceof Typed.Number n) {
            degrees.add(n.value());
          }
        }
      }
      if (degrees.isEmpty() || refusals.containsKey(field.id())) {
        return;
      }
      if (degrees.size() < 2 || degrees.size() > 24) {
        refusals.put(
            field.id(), "%s: 2 to 24 edges, a space between them.".formatted(field.words()));
      } else {
        readings.add(new Reading.CamEdges(shaft, degrees, spread, Condition.HOT_IDLE));
      }
    }

    /** The first of a field's two words, or the second. */
    private Optional<Boolean> chosen(Field field) {
      String[] words = field.hint().split(" or ");
      String text = now.why().of(field.id()).strip().toLowerCase(Locale.ROOT);
      if (text.isEmpty()) {
        return Optional.empty();
      }
      if (!text.equals(words[0]) && !text.equals(words[1])) {
        refusals.put(field.id(), "%s: type %s.".formatted(field.words(), field.hint()));
        return Optional.empty();
      }
      return Optional.of(text.equals(words[0]));
    }

    private void calliper(Chain chain) {
      String name = chain.name();
      Field field = read("pitches-" + name, "Pitches of " + name + " in the calliper", "10");
      Limits most = new Limits(2, chain.links(), "pitches, an even number of them");
      int pitches = (int) Math.round(number(field, most).orElse(10));
      if (pitches % 2 != 0) {
        refusals.put(
            field.id(),
            "%s: wear grows alternate pitches; measure over an even number."
                .formatted(field.words()));
        return;
      }
      double right = pitches * chain.pitchMm();
      Limits mm = new Limits(0.99 * right, 1.1 * right, "mm");
      take(
          read("calliper-" + name, "Length of these, centre to centre", "mm"),
          mm,
          length -> new Reading.Calliper(name, pitches, length, CALLIPER_MM));
    }

    private void looked() {
      for (Cheap cheap : Cheap.values()) {
        String word = cheap.name().toLowerCase(Locale.ROOT);
        String words = cheap == Cheap.OIL ? "Oil looked at" : "Plugs and wires looked at";
        chosen(read("looked-" + word, words, "good or bad"))
            .ifPresent(good -> readings.add(new Reading.Looked(cheap, !good)));
      }
      if (now.engine().isPresent()) {
        take(
            read("compression", "Compression, all alike", "% of expected"),
            new Limits(0, 300, "percent"),
            percent -> new Reading.Compression(percent, COMPRESSION_PERCENT));
      }
    }

    private void chain(ChainSolution solution) {
      Chain chain = solution.chain();
      String name = chain.name();
      Optional<Double> travel = chain.tensioner().map(t -> t.plunger().travelMm());
      if (travel.isPresent()) {
        take(
            read(
                "plunger-" + name,
                "Plunger of " + name + " stands out",
                "mm; travel ends at " + Numbers.plain(travel.get())),
            new Limits(0, travel.get(), "mm"),
            mm -> new Reading.PlungerStands(name, mm - PLUNGER_MM, mm + PLUNGER_MM));
      }
      for (Strand strand : solution.strands()) {
        count(name, strand);
      }
      calliper(chain);
    }

    private void count(String chain, Strand strand) {
      String run = strand.from() + " to " + strand.to();
      Field field =
          read(
              "count-" + chain + "-" + strand.from() + "-" + strand.to(),
              "Links from " + run + " on " + chain,
              strand.links() + " belong there");
      String text = now.why().of(field.id());
      if (text.isBlank()) {
        return;
      }
      Typed typed = Decimals.whole(text, field.words(), new Limits(1, 2000, "links"));
      typed.refusal().ifPresent(r -> refusals.put(field.id(), r));
      if (typed instanceof Typed.Number n) {
        readings.add(new Reading.Counted(chain, strand.from(), strand.to(), Math.round(n.value())));
      }
    }

    private Priors priors() {
      Priors priors = Priors.usual();
      for (Cause cause : Cause.values()) {
        String usual = String.valueOf(Math.round(Priors.usual().of(cause)));
        Field field =
            field("prior-" + cause.word(), Heading.PRIORS, "Weight of " + cause.word(), usual);
        OptionalDouble weight = number(field, WEIGHT);
        if (weight.isPresent()) {
          try {
            priors = priors.with(cause, weight.getAsDouble());
          } catch (IllegalArgumentException nothingLeft) {
            refusals.put(field.id(), "Some cause must have a weight above 0.");
          }
        }
      }
      return priors;
    }

    private CheckPlan plan() {
      CheckPlan plan = CheckPlan.usual().seeing(SlackPage.access(now.cover()));
      for (CheckKind kind : CheckKind.values()) {
        String words = "Minutes for " + kind.word().replace('-', ' ');
        String usual = String.valueOf(Math.round(plan.minutes().get(kind)));
        OptionalDouble minutes =
            number(field("minutes-" + kind.word(), Heading.MINUTES, words, usual), MINUTES);
        plan = minutes.isPresent() ? plan.with(kind, minutes.getAsDouble()) : plan;
      }
      return access(plan);
    }

    private CheckPlan access(CheckPlan plan) {
      boolean turned =
          now.why()
              .of(
                  field("turned", Heading.ACCESS, "Turned two turns by hand and felt free", "")
                      .id())
              .equals(TICKED);
      Map<Seen, Double> opening = new EnumMap<>(plan.opening());
      for (Seen seen : List.of(Seen.COVER_OFF, Seen.BORESCOPE)) {
        String words =
            seen == Seen.COVER_OFF
                ? "Minutes to take the cover off"
                : "Minutes to get a borescope in";
        String usual = String.valueOf(Math.round(plan.opening().get(seen)));
        String id = "opening-" + seen.name().toLowerCase(Locale.ROOT).replace('_', '-');
        number(field(id, Heading.ACCESS, words, usual), OPENING)
            .ifPresent(minutes -> opening.put(seen, minutes));
      }
      return new CheckPlan(plan.minutes(), plan.access(), opening, turned);
    }
  }
}
