package tightside.files;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tightside.drive.Limits;
import tightside.job.Adapter;
import tightside.job.Bolt;
import tightside.job.Job;
import tightside.job.Tightening;
import tightside.job.Torque;
import tightside.job.TorqueUnit;

/** Reads the job: what the user notes for the work, and how each bolt is tightened. */
final class JobDecoder {

  private static final List<String> STEPS = List.of("torque", "loosen", "angle");

  private JobDecoder() {}

  static Optional<Job> job(Optional<Value> value) {
    Optional<SectionReader> section = SectionReader.of(value);
    if (section.isEmpty()) {
      return Optional.empty();
    }
    SectionReader s = section.get();
    Optional<Double> play = Numbers.number(s.may("locking-tool-play"), Limits.LOCKING_PLAY_DEGREES);
    Optional<String> note = Words.prose(s.may("note"));
    Optional<String> figures = Words.title(s.may("figures"));
    Optional<Job.Order> order = Words.choice(s.may("order"), Job.Order.values());
    List<Bolt> bolts = bolts(s.may("bolts"));
    return s.sound()
        ? Optional.of(
            new Job(
                Numbers.primitive(play),
                note,
                figures,
                order.orElse(Job.Order.BOLT_BY_BOLT),
                bolts))
        : Optional.empty();
  }

  private static List<Bolt> bolts(Optional<Value> value) {
    List<Bolt> bolts = new ArrayList<>();
    for (SectionReader section : Lists.sections(value, Limits.BOLTS)) {
      SectionReader s = section.called("bolt");
      Optional<Bolt> bolt = bolt(s);
      if (bolt.isPresent()) {
        String name = bolt.get().name();
        if (bolts.stream().anyMatch(b -> b.name().equals(name))) {
          s.complain(Fault.BOLT_TWICE, Map.of("name", name));
        }
        bolts.add(bolt.get());
      }
    }
    return bolts;
  }

  private static Optional<Bolt> bolt(SectionReader s) {
    Optional<String> name = Words.title(s.need("bolt"));
    Optional<Bolt.Thread> thread = Words.choice(s.may("thread"), Bolt.Thread.values());
    Optional<Boolean> mustBeNew = Words.yesOrNo(s.may("new"));
    Optional<String> heldBy = Words.title(s.may("held-by"));
    Optional<Adapter> adapter = adapter(s.may("adapter"));
    List<Tightening> steps = new ArrayList<>();
    for (SectionReader step : Lists.sections(s.may("steps"), Limits.TIGHTENINGS)) {
      step(step.called("step"), steps);
    }
    return s.sound()
        ? Optional.of(
            new Bolt(
                name.get(),
                thread.orElse(Bolt.Thread.RIGHT),
                mustBeNew.orElse(false),
                heldBy,
                adapter,
                steps))
        : Optional.empty();
  }

  private static Optional<Adapter> adapter(Optional<Value> value) {
    Optional<SectionReader> section = SectionReader.of(value);
    if (section.isEmpty()) {
      return Optional.empty();
    }
    SectionReader s = section.get();
    Optional<Double> wrench = Numbers.number(s.need("wrench"), Limits.WRENCH_MM);
    Optional<Double> reach = Numbers.number(s.need("reach"), Limits.ADAPTER_MM);
    Optional<Double> angle = Numbers.number(s.may("angle"), Limits.ADAPTER_DEGREES);
    if (!s.sound()) {
      return Optional.empty();
    }
    if (!Adapter.shorterThanWrench(reach.get(), wrench.get())) {
      s.complain(Fault.ADAPTER_TOO_LONG, Map.of("reach", reach.get(), "wrench", wrench.get()));
      return Optional.empty();
    }
    return Optional.of(new Adapter(wrench.get(), reach.get(), angle.orElse(0.0)));
  }

  /** One step: a torque with its unit, or degrees back, or degrees further. */
  private static void step(SectionReader s, List<Tightening> steps) {
    List<String> named = new ArrayList<>(s.keys());
    named.retainAll(STEPS);
    Optional<Double> torque = Numbers.number(s.may("torque"), Limits.TORQUE);
    Optional<TorqueUnit> unit =
        Words.choice(
            named.contains("torque") ? s.need("unit") : s.may("unit"), TorqueUnit.values());
    Optional<Double> loosen = Numbers.number(s.may("loosen"), Limits.BOLT_DEGREES);
    Optional<Double> angle = Numbers.number(s.may("angle"), Limits.BOLT_DEGREES);
    if (!s.sound()) {
      return;
    }
    if (named.size() != 1) {
      s.complain(Fault.STEP_UNCLEAR, Map.of("count", named.size()));
    } else if (unit.isPresent() && torque.isEmpty()) {
      s.complain(Fault.UNIT_ASTRAY, Map.of("step", named.get(0)));
    } else if (torque.isPresent()) {
      steps.add(new Tightening.To(new Torque(torque.get(), unit.get())));
    } else if (loosen.isPresent()) {
      steps.add(new Tightening.Loosen(loosen.get()));
    } else {
      angle.ifPresent(degrees -> steps.add(new Tightening.Further(degrees)));
    }
  }
}
