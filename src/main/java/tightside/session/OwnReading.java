package tightside.session;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import tightside.drive.Chain;
import tightside.drive.ChainSize;
import tightside.drive.Drive;
import tightside.drive.Finding;
import tightside.drive.Limits;
import tightside.drive.Names;
import tightside.drive.Plan;
import tightside.drive.Role;
import tightside.drive.RouteEntry;
import tightside.drive.Shaft;
import tightside.drive.Texts;

/**
 * What a form says: the drive, if it makes one, and what is to be said of every entry.
 *
 * @param refusals by field, what is wrong with what stands in it and what would be right
 * @param tally of the counts, once any is there
 * @param missing what is not entered yet, in the order of the form
 * @param problems of the whole, where every entry is sound in itself; a wrong sum the tally says
 */
public record OwnReading(
    Map<Field, String> refusals,
    Optional<String> tally,
    List<String> missing,
    List<Finding> problems,
    Optional<Drive> drive) {

  /** What a field is for. */
  public enum What {
    NAME,
    LINKS,
    PITCH,
    SHAFT,
    TEETH,
    COUNT,
    STRAIGHT
  }

  /**
   * A field of the form.
   *
   * @param row -1 for what is said of the whole
   */
  public record Field(What what, int row) {}

  private static final int WHOLE = -1;

  /** More digits than these no ruler has. */
  private static final int TYPED_DIGITS = 9;

  public OwnReading {
    refusals = Map.copyOf(refusals);
    missing = List.copyOf(missing);
    problems = List.copyOf(problems);
  }

  public static OwnReading of(OwnForm form) {
    return new Reader(form).read();
  }

  static String plain(double value) {
    return BigDecimal.valueOf(value)
        .round(new MathContext(TYPED_DIGITS))
        .stripTrailingZeros()
        .toPlainString();
  }

  /** Links from mark to mark of a strand, as typed; nothing if they can't be read. */
  public static Optional<Long> links(Count count) {
    Typed typed = Decimals.whole(count.text(), "A count", limits(count));
    return typed instanceof Typed.Number n
        ? Optional.of((long) n.value() + count.way().toLinks())
        : Optional.empty();
  }

  private static Limits limits(Count count) {
    int less = count.way().toLinks();
    return new Limits(Limits.COUNT.least() - less, Limits.COUNT.most() - less, "links");
  }

  /** Reads one form. */
  private static final class Reader {

    private final OwnForm form;
    private final Map<Field, String> refusals = new LinkedHashMap<>();
    private final List<String> missing = new ArrayList<>();

    Reader(OwnForm form) {
      this.form = form;
    }

    OwnReading read() {
      if (!Texts.title(form.name().strip())) {
        refusals.put(new Field(What.NAME, WHOLE), "Give the drive a name on one line.");
      }
      for (int i = 0; i < form.rows().size(); i++) {
        shaft(i);
        teeth(i);
      }
      whole(form.links(), "The links of the chain", Limits.LINKS, new Field(What.LINKS, WHOLE))
          .ifPresentOrElse(n -> {}, () -> missing(form.links(), "the links of the chain"));
      for (int i = 0; i < form.rows().size(); i++) {
        count(i);
        length(form.rows().get(i).straight(), "A run", new Field(What.STRAIGHT, i));
      }
      length(form.pitch(), "The pitch", new Field(What.PITCH, WHOLE));
      List<Finding> problems = new ArrayList<>();
      Optional<Drive> drive = Optional.empty();
      if (refusals.isEmpty() && missing.isEmpty()) {
        Plan plan = plan();
        plan.findings().stream()
            .filter(f -> f.id() != Finding.Id.COUNTS_SUM)
            .forEach(problems::add);
        drive = plan.drive();
      }
      return new OwnReading(refusals, tally(), missing, problems, drive);
    }

    private void missing(String text, String what) {
      if (text.isBlank()) {
        missing.add(what);
      }
    }

    private void shaft(int i) {
      String shaft = form.rows().get(i).shaft().strip();
      Field field = new Field(What.SHAFT, i);
      if (!Names.FORM.matcher(shaft).matches()) {
        refusals.put(field, "Name the shaft with 1 to 40 letters, digits, spaces, _ or -.");
      } else if (form.rows().stream().filter(r -> r.shaft().strip().equals(shaft)).count() > 1) {
        refusals.put(field, "Two shafts are called %s: give one another name.".formatted(shaft));
      }
    }

    private void teeth(int i) {
      OwnRow row = form.rows().get(i);
      Field field = new Field(What.TEETH, i);
      Optional<Integer> teeth =
          whole(row.teeth(), "The teeth of " + row.shaft().strip(), Limits.TEETH, field);
      missing(row.teeth(), "the teeth of " + row.shaft().strip());
      Optional<Integer> crank = number(form.rows().get(0).teeth(), Limits.TEETH);
      if (row.role() == Role.CAMSHAFT
          && teeth.isPresent()
          && crank.isPresent()
          && teeth.get() != 2 * crank.get()) {
        refusals.put(
            field,
            "A camshaft turns once for two turns of the crankshaft: with %d teeth there it needs %d, not %d; count both again."
                .formatted(crank.get(), 2 * crank.get(), teeth.get()));
      }
    }

    private void count(int i) {
      OwnRow row = form.rows().get(i);
      if (!row.marked()) {
        return;
      }
      String what = "%s to %s".formatted(row.shaft().strip(), end(i));
      missing(row.count().text(), "the count from " + what);
      if (!row.count().text().isBlank() && links(row.count()).isEmpty()) {
        Decimals.whole(row.count().text(), "The count from " + what, limits(row.count()))
            .refusal()
            .ifPresent(r -> refusals.put(new Field(What.COUNT, i), r));
      }
    }

    private String end(int i) {
      return form.rows().get(form.nextMarked(i)).shaft().strip();
    }

    private void length(String text, String what, Field field) {
      Limits limits = field.what() == What.PITCH ? Limits.PITCH_MM : Limits.STRAIGHT_MM;
      if (!text.isBlank()) {
        Decimals.within(text, what, limits).refusal().ifPresent(r -> refusals.put(field, r));
      }
    }

    private Optional<Integer> whole(String text, String what, Limits limits, Field field) {
      if (text.isBlank()) {
        return Optional.empty();
      }
      Typed typed = Decimals.whole(text, what, limits);
      typed.refusal().ifPresent(r -> refusals.put(field, r));
      return number(text, limits);
    }

    private static Optional<Integer> number(String text, Limits limits) {
      return Decimals.whole(text, "", limits) instanceof Typed.Number n
          ? Optional.of((int) n.value())
          : Optional.empty();
    }

    /** What the counts add up to, and what that says. */
    private Optional<String> tally() {
      List<Integer> marked = new ArrayList<>();
      List<Integer> open = new ArrayList<>();
      long sum = 0;
      for (int i = 0; i < form.rows().size(); i++) {
        if (form.rows().get(i).marked()) {
          marked.add(i);
          Optional<Long> links = links(form.rows().get(i).count());
          sum += links.orElse(0L);
          if (links.isEmpty()) {
            open.add(i);
          }
        }
      }
      Optional<Integer> all = number(form.links(), Limits.LINKS);
      if (open.size() == marked.size() || all.isEmpty()) {
        return Optional.empty();
      }
      long left = all.get() - sum;
      if (open.isEmpty()) {
        return Optional.of(left == 0 ? whole(sum) : notWhole(sum, left));
      }
      return Optional.of(
          left < open.size()
              ? "The counts so far leave no links for the rest: count again."
              : open.size() == 1
                  ? "%s would be left from %s to %s; count them all the same, for that proves the others."
                      .formatted(
                          Words.number(left, "link", "links"),
                          form.rows().get(open.get(0)).shaft().strip(),
                          end(open.get(0)))
                  : "%s are left for the rest.".formatted(Words.number(left, "link", "links")));
    }

    private static String whole(long sum) {
      return "The counts add up to %d links: the whole chain.".formatted(sum);
    }

    private static String notWhole(long sum, long left) {
      return "The counts add up to %d links, %s too %s: count the strands again, from marked link to marked link."
          .formatted(sum, Words.number(Math.abs(left), "link", "links"), left > 0 ? "few" : "many");
    }

    private Plan plan() {
      List<Shaft> shafts = new ArrayList<>();
      List<RouteEntry> route = new ArrayList<>();
      List<Integer> counts = new ArrayList<>();
      for (OwnRow row : form.rows()) {
        shafts.add(Shaft.unplaced(row.shaft().strip(), row.role()));
        route.add(
            row.base()
                .withShaft(row.shaft().strip())
                .withTeeth(number(row.teeth(), Limits.TEETH).orElseThrow())
                .marked(row.marked())
                .withStraight(mm(row.straight(), Limits.STRAIGHT_MM)));
        route.addAll(row.after());
        if (row.marked()) {
          counts.add(Math.toIntExact(links(row.count()).orElseThrow()));
        }
      }
      ChainSize size =
          new ChainSize(
              form.size().kind(),
              mm(form.pitch(), Limits.PITCH_MM),
              form.size().plateHeightMm(),
              form.size().rollerDiameterMm());
      Chain chain =
          new Chain(
              form.chain(),
              size,
              number(form.links(), Limits.LINKS).orElseThrow(),
              route,
              Optional.of(counts));
      return new Plan(form.name().strip(), form.about(), form.rotation(), shafts, List.of(chain));
    }

    private static OptionalDouble mm(String text, Limits limits) {
      return Decimals.within(text, "", limits) instanceof Typed.Number n
          ? OptionalDouble.of(n.value())
          : OptionalDouble.empty();
    }
  }
}
