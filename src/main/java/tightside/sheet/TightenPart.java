package tightside.sheet;

import java.util.ArrayList;
import java.util.List;
import tightside.job.Bolt;
import tightside.job.Job;
import tightside.job.Tightening;
import tightside.words.TighteningWords;

/** The bolts. */
final class TightenPart {

  /** Blank lines for a bolt of which nothing is noted. */
  private static final int BLANKS = 4;

  private TightenPart() {}

  static Section of(Facts facts) {
    Job job = facts.work().job();
    StepList steps = new StepList(Part.TIGHTEN);
    steps.lead("Every torque and angle is the maker's. " + TighteningWords.figures(job));
    steps.lead(TighteningWords.HELD);
    steps.lead(TighteningWords.ADAPTER);
    List<Bolt> bolts = bolts(facts);
    if (bolts.size() > 1) {
      steps.lead(TighteningWords.order(job.order(), bolts.stream().map(Bolt::name).toList()));
    }
    if (job.order() == Job.Order.STEP_BY_STEP) {
      stepByStep(steps, bolts);
    } else {
      boltByBolt(steps, bolts);
    }
    steps.note("interrupted", "Interrupted at bolt and step:", TighteningWords.INTERRUPTED);
    return steps.section();
  }

  /** Those of the job, or a blank one for every camshaft. */
  private static List<Bolt> bolts(Facts facts) {
    List<Bolt> noted = facts.work().job().bolts();
    return noted.isEmpty()
        ? facts.camshafts().stream().map(s -> Bolt.blank("sprocket bolt of " + s)).toList()
        : noted;
  }

  private static String id(int bolt, String what) {
    return "bolt-" + bolt + "/" + what;
  }

  private static void begin(StepList steps, int number, Bolt bolt) {
    steps.add(
        id(number, "ready"),
        "%s: in place, clean, seated by hand, its shaft held.".formatted(upper(bolt.name())),
        new Field.Tick(),
        TighteningWords.ready(bolt));
    if (bolt.steps().isEmpty()) {
      steps.maker(
          id(number, "hold"),
          "%s: held against the torque by".formatted(upper(bolt.name())),
          "who and with what",
          "");
    }
  }

  private static String upper(String name) {
    return name.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + name.substring(1);
  }

  private static void boltByBolt(StepList steps, List<Bolt> bolts) {
    for (int i = 0; i < bolts.size(); i++) {
      begin(steps, i + 1, bolts.get(i));
      for (int k = 0; k < lines(bolts.get(i)); k++) {
        step(steps, i + 1, bolts.get(i), k);
      }
    }
  }

  private static void stepByStep(StepList steps, List<Bolt> bolts) {
    for (int i = 0; i < bolts.size(); i++) {
      begin(steps, i + 1, bolts.get(i));
    }
    int most = bolts.stream().mapToInt(TightenPart::lines).max().orElse(0);
    for (int k = 0; k < most; k++) {
      for (int i = 0; i < bolts.size(); i++) {
        if (k < lines(bolts.get(i))) {
          step(steps, i + 1, bolts.get(i), k);
        }
      }
    }
  }

  private static int lines(Bolt bolt) {
    return bolt.steps().isEmpty() ? BLANKS : bolt.steps().size();
  }

  private static void step(StepList steps, int number, Bolt bolt, int k) {
    String name = "%s, step %d".formatted(upper(bolt.name()), k + 1);
    if (bolt.steps().isEmpty()) {
      if (k == 0) {
        steps.tick(
            id(number, "matchmark"),
            upper(bolt.name())
                + ": before a step in degrees, paint one line across bolt head and sprocket.");
      }
      steps.maker(
          id(number, "step-" + (k + 1)),
          name + ": torque, loosen or angle",
          "from the maker's procedure",
          "");
      return;
    }
    Tightening step = bolt.steps().get(k);
    List<String> notes = new ArrayList<>(TighteningWords.notes(bolt, step));
    if (step instanceof Tightening.Further && k == firstAngle(bolt)) {
      steps.tick(
          id(number, "matchmark"),
          "%s: paint one line across bolt head and sprocket.".formatted(upper(bolt.name())),
          "The line is what shows an angle, now and a year from now.");
    }
    steps.add(
        id(number, "step-" + (k + 1)),
        name + ": " + TighteningWords.step(bolt, step),
        new Field.Tick(),
        notes);
  }

  private static int firstAngle(Bolt bolt) {
    for (int k = 0; k < bolt.steps().size(); k++) {
      if (bolt.steps().get(k) instanceof Tightening.Further) {
        return k;
      }
    }
    return -1;
  }
}
