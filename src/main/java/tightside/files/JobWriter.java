package tightside.files;

import java.util.ArrayList;
import java.util.List;
import tightside.job.Adapter;
import tightside.job.Bolt;
import tightside.job.Job;
import tightside.job.Tightening;

/** Writes the job's section of a model. */
final class JobWriter {

  private JobWriter() {}

  /** The lines of the section, its heading first. */
  static List<String> lines(Job job) {
    List<String> lines = new ArrayList<>();
    job.lockingToolPlayDegrees()
        .ifPresent(play -> lines.add("  locking-tool-play: " + YamlText.number(play)));
    job.note().ifPresent(note -> lines.add("  note: " + YamlText.line(note)));
    job.figures().ifPresent(figures -> lines.add("  figures: " + YamlText.line(figures)));
    if (job.order() != Job.Order.BOLT_BY_BOLT) {
      lines.add("  order: " + Terms.of(job.order()));
    }
    if (!job.bolts().isEmpty()) {
      lines.add("  bolts:");
      job.bolts().forEach(bolt -> lines.addAll(bolt(bolt)));
    }
    lines.add(0, lines.isEmpty() ? "job: {}" : "job:");
    return lines;
  }

  private static List<String> bolt(Bolt bolt) {
    List<String> lines = new ArrayList<>();
    lines.add("    - bolt: " + YamlText.line(bolt.name()));
    if (bolt.thread() != Bolt.Thread.RIGHT) {
      lines.add("      thread: " + Terms.of(bolt.thread()));
    }
    if (bolt.mustBeNew()) {
      lines.add("      new: true");
    }
    bolt.heldBy().ifPresent(by -> lines.add("      held-by: " + YamlText.line(by)));
    bolt.adapter().ifPresent(adapter -> lines.add("      adapter: " + adapter(adapter)));
    if (!bolt.steps().isEmpty()) {
      lines.add("      steps:");
      bolt.steps().forEach(step -> lines.add("        - " + step(step)));
    }
    return lines;
  }

  private static Braces adapter(Adapter adapter) {
    Braces braces =
        new Braces().with("wrench", adapter.wrenchMm()).with("reach", adapter.reachMm());
    return adapter.angleDegrees() == 0 ? braces : braces.with("angle", adapter.angleDegrees());
  }

  private static Braces step(Tightening step) {
    if (step instanceof Tightening.To to) {
      return new Braces()
          .with("torque", to.torque().value())
          .with("unit", Terms.of(to.torque().unit()));
    }
    return step instanceof Tightening.Loosen loosen
        ? new Braces().with("loosen", loosen.degrees())
        : new Braces().with("angle", ((Tightening.Further) step).degrees());
  }
}
