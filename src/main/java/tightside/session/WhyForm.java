package tightside.session;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import tightside.drive.Chain;
import tightside.drive.Limits;
import tightside.drive.Role;
import tightside.drive.Shaft;
import tightside.reasoning.Cause;
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
  private static final double PLUNGER_MM = 0.5;
  private static final double MARK_DEGREES = 6;

  /** Under what heading a field stands. */
  public enum Heading {
    READ("What was read; leave empty what was not"),
    PRIORS("How often each cause is met, beside the others"),
    MINUTES("Minutes that each check takes you; empty: as shown");

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
   * @param hint what stands for it while it is empty
   */
  public record Field(String id, Heading heading, String words, String hint) {}

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
          .anyMatch(c -> c.sprocketOn(shaft).orElseThrow().mark().isPresent());
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
      String text = now.why().of(field.id());
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

    private void camshaft(String shaft, double spread) {
      take(
          read(shaft, shaft + " reads, crank degrees off", "+ ahead, - late"),
          DEGREES,
          d -> new Reading.CamAngle(shaft, d, spread, Condition.HOT_IDLE, false));
      take(
          read("unplugged-" + shaft, shaft + ", its phaser unplugged", "the same"),
          DEGREES,
          d -> new Reading.CamAngle(shaft, d, spread, Condition.PHASER_UNPLUGGED, false));
      take(
          read("learned-" + shaft, shaft + ", off its learned value", "the same"),
          DEGREES,
          d -> new Reading.CamAngle(shaft, d, spread, Condition.HOT_IDLE, true));
      take(
          read("mark-" + shaft, "Mark of " + shaft + ", two turns by hand", "crank degrees"),
          DEGREES,
          d -> new Reading.MarkStands(shaft, d, MARK_DEGREES));
      take(
          read("valves-" + shaft, "Valves on " + shaft + ", by pressure", "crank degrees"),
          DEGREES,
          d -> new Reading.ValveAngle(shaft, d, 2 * spread));
      tool(shaft);
    }

    private void tool(String shaft) {
      Field field = read("tool-" + shaft, "Locking tool of " + shaft + " goes in", "yes or no");
      String text = now.why().of(field.id()).strip().toLowerCase(Locale.ROOT);
      if (text.equals("yes") || text.equals("no")) {
        readings.add(new Reading.LockingTool(shaft, text.equals("yes"), now.slack().playDegrees()));
      } else if (!text.isEmpty()) {
        refusals.put(field.id(), "%s: type yes or no.".formatted(field.words()));
      }
    }

    private void chain(ChainSolution solution) {
      Chain chain = solution.chain();
      String name = chain.name();
      Optional<Double> travel = chain.tensioner().map(t -> t.plunger().travelMm());
      if (travel.isPresent()) {
        take(
            read("plunger-" + name, "Plunger of " + name + " stands out", "mm"),
            new Limits(0, travel.get(), "mm"),
            mm -> new Reading.PlungerStands(name, mm - PLUNGER_MM, mm + PLUNGER_MM));
      }
      for (Strand strand : solution.strands()) {
        count(name, strand);
      }
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
      return plan;
    }
  }
}
