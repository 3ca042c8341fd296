package tightside.lesson;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import tightside.drive.Seen;
import tightside.picture.Picture;
import tightside.picture.SeenPicture;
import tightside.timing.Seat;
import tightside.timing.ShaftTiming;

/**
 * A lesson on a drive: what is told, what is asked, and, sealed, what is wrong.
 *
 * <p>Everything public but {@link #open} and {@link #key} is the same whatever is wrong, as long as
 * it looks the same with the access at hand.
 */
public final class LessonSheet {

  private final Outline outline;
  private final Setting setting;
  private final Truth truth;
  private final Observations observed;
  private final Map<String, String> facts;

  /**
   * What a lesson is about.
   *
   * @param id under which its words are found
   * @param title as a person chooses it
   * @param access how far the class can look, with all before it
   * @param plainOnly whether the class is told only the plain links between the marks
   * @param toolPlay camshaft degrees of play of locking tools that are tried; nothing where none
   *     are
   * @param closing the number of the right belief among the closing options, from 0; nothing where
   *     no belief is asked for
   */
  record Outline(
      String id,
      String title,
      Seen access,
      boolean plainOnly,
      Optional<Double> toolPlay,
      Optional<Integer> closing) {}

  LessonSheet(Outline outline, Setting setting, Truth truth) {
    this.outline = outline;
    this.setting = setting;
    this.truth = truth;
    observed = new Observations(truth, outline.access(), outline.plainOnly());
    facts = new Facts(setting, truth).all();
    outline.toolPlay().ifPresent(play -> facts.put("play", tightside.words.Numbers.plain(play)));
  }

  public String id() {
    return outline.id();
  }

  public String title() {
    return outline.title();
  }

  /**
   * As what it is remembered once it was taken: lesson, access and drive, and nothing that hangs on
   * what is wrong.
   */
  public String memoryName() {
    String chains =
        setting.drive().chains().stream()
            .map(
                c ->
                    c.links()
                        + ":"
                        + c.sprockets().stream()
                            .map(s -> Integer.toString(s.teeth()))
                            .collect(Collectors.joining(",")))
            .collect(Collectors.joining(";"));
    return String.join(" | ", id(), title(), accessWords(), setting.drive().name(), chains)
        .replaceAll("\\s+", " ");
  }

  public Setting setting() {
    return setting;
  }

  public Seen access() {
    return outline.access();
  }

  /** The wrong belief, as people say it; nothing where a fault is to be found. */
  public Optional<String> belief() {
    return LessonTexts.find(id() + ".belief");
  }

  public String story() {
    return LessonTexts.fill(id() + ".story", told());
  }

  public String ask() {
    return LessonTexts.fill(id() + ".ask", told());
  }

  /** Facts of the drive as it belongs: all that a story may speak of. */
  private Map<String, String> told() {
    Map<String, String> right = new java.util.HashMap<>();
    for (String name : List.of("play", "compression-right", "nominal")) {
      Optional.ofNullable(facts.get(name)).ifPresent(fact -> right.put(name, fact));
    }
    return right;
  }

  /** What belongs there. */
  public List<String> belongs() {
    return observed.belongs();
  }

  /** What a person with the access at hand counts and reads. */
  public List<String> seen() {
    List<String> lines = new ArrayList<>(observed.seen());
    outline.toolPlay().ifPresent(play -> lines.addAll(new Facts(setting, truth).tools(play)));
    LessonTexts.find(id() + ".seen").ifPresent(lines::add);
    return lines;
  }

  /** How far a person can look, in words. */
  public String accessWords() {
    return Observations.with(access());
  }

  /** The shafts that can be named, in the order of the model. */
  public List<String> shafts() {
    return truth.ifRight().shafts().stream().map(ShaftTiming::shaft).toList();
  }

  public Quantity quantity() {
    return truth.quantity();
  }

  public Margin margin() {
    return truth.margin();
  }

  public Optional<Closing> closing() {
    return outline
        .closing()
        .map(
            right ->
                new Closing(
                    LessonTexts.fill(id() + ".closing", Map.of()),
                    List.of(option(1), option(2), option(3))));
  }

  private String option(int number) {
    return LessonTexts.fill(id() + ".closing." + number, Map.of());
  }

  /** Whether an option of the closing question, from 0, is the right belief. */
  public boolean states(int option) {
    return outline.closing().filter(right -> right == option).isPresent();
  }

  /**
   * The drive as the class may see it.
   *
   * @param textScale of the names in it
   */
  public Picture picture(double textScale) {
    return SeenPicture.of(
        truth.solution(), truth.ifRight(), access(), textScale, observed.spoken());
  }

  /** What the picture shows, in words. */
  public String spoken() {
    return observed.spoken();
  }

  Map<Seat, Integer> painted() {
    return truth.state().reseats();
  }

  /** Opens the seal against a prediction that can't be changed any more. */
  public Opened open(Diagnosis committed) {
    Explanation explanation = new Explanation(id(), truth, facts);
    return new Opened(
        truth.state(),
        truth.right(),
        Marking.of(truth, committed),
        explanation.parts(),
        explanation.after());
  }

  /** The trainer's key, for paper: no window asks for it. */
  public Opened key() {
    return open(truth.right());
  }

  @Override
  public String toString() {
    return "lesson " + id();
  }
}
