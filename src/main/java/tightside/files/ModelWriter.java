package tightside.files;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import tightside.drive.Chain;
import tightside.drive.ChainSize;
import tightside.drive.Plan;
import tightside.drive.RouteEntry;
import tightside.drive.Shaft;
import tightside.engine.Engine;
import tightside.engine.Phaser;
import tightside.engine.Spring;
import tightside.engine.Valve;
import tightside.job.Job;
import tightside.survey.Survey;

/**
 * Writes models in format 1: what is read back is equal to what was written. Numbers are exact,
 * what goes without saying is left out.
 */
public final class ModelWriter {

  private final StringBuilder text = new StringBuilder();

  private ModelWriter() {}

  /** The YAML text of a model. */
  public static String write(Model model) {
    ModelWriter writer = new ModelWriter();
    writer.drive(Plan.of(model.drive()), model.phasers());
    model.engine().ifPresent(writer::engine);
    model.job().ifPresent(job -> JobWriter.lines(job).forEach(writer::line));
    model.measured().ifPresent(m -> writer.survey(m.survey()));
    return writer.text.toString();
  }

  /**
   * The YAML text of a drive that is being drawn. It is read back as it was written; what keeps it
   * from being a drive is told then.
   *
   * @param phasers by the camshaft that carries one
   * @param survey what was measured on it
   */
  public static String write(
      Plan plan,
      Optional<Engine> engine,
      Map<String, Phaser> phasers,
      Optional<Job> job,
      Optional<Survey> survey) {
    ModelWriter writer = new ModelWriter();
    writer.drive(plan, phasers);
    engine.ifPresent(writer::engine);
    job.ifPresent(j -> JobWriter.lines(j).forEach(writer::line));
    survey.ifPresent(writer::survey);
    return writer.text.toString();
  }

  private void drive(Plan plan, Map<String, Phaser> phasers) {
    line("tightside: 1");
    line("name: " + YamlText.line(plan.name()));
    if (!plan.about().isEmpty()) {
      line("about: " + YamlText.line(plan.about()));
    }
    line("rotation: " + Terms.of(plan.rotation()));
    line("shafts:");
    for (Shaft shaft : plan.shafts()) {
      shaft(shaft, Optional.ofNullable(phasers.get(shaft.name())));
    }
    line("chains:");
    plan.chains().forEach(this::chain);
  }

  private void shaft(Shaft shaft, Optional<Phaser> phaser) {
    Braces braces = new Braces().with("role", Terms.of(shaft.role()));
    shaft.place().ifPresent(at -> braces.with("at", Braces.point(at)));
    phaser.ifPresent(
        p ->
            braces.with(
                "phaser",
                new Braces()
                    .with("travel", p.travelDegrees())
                    .with("rest", Terms.of(p.rest()))
                    .toString()));
    line("  " + YamlText.text(shaft.name()) + ": " + braces);
  }

  private void chain(Chain chain) {
    line("  " + YamlText.text(chain.name()) + ":");
    ChainSize size = chain.size();
    size.kind().ifPresent(kind -> line("    kind: " + Terms.of(kind)));
    size.pitchMm().ifPresent(mm -> line("    pitch: " + YamlText.number(mm)));
    line("    links: " + chain.links());
    size.plateHeightMm().ifPresent(mm -> line("    plate-height: " + YamlText.number(mm)));
    size.rollerDiameterMm().ifPresent(mm -> line("    roller-diameter: " + YamlText.number(mm)));
    chain.counts().ifPresent(counts -> line("    counts: " + counts));
    line("    route:");
    for (RouteEntry entry : chain.route()) {
      line("      - " + RouteWriter.entry(chain, entry));
    }
  }

  private void engine(Engine engine) {
    line("engine:");
    line("  bore: " + YamlText.number(engine.boreMm()));
    line("  stroke: " + YamlText.number(engine.strokeMm()));
    line("  rod: " + YamlText.number(engine.rodMm()));
    line("  compression-ratio: " + YamlText.number(engine.compressionRatio()));
    if (!engine.phasesDegrees().equals(Engine.ONE_CYLINDER)) {
      List<String> phases = engine.phasesDegrees().stream().map(YamlText::number).toList();
      line("  phases: [" + String.join(", ", phases) + "]");
    }
    engine.atReferenceDegrees().ifPresent(at -> line("  at-reference: " + YamlText.number(at)));
    line("  valves:");
    engine.valves().forEach(this::valve);
  }

  private void valve(Valve valve) {
    Braces braces =
        new Braces()
            .with("shaft", YamlText.text(valve.shaft()))
            .with("lift", valve.liftMm())
            .with("duration", valve.durationDegrees())
            .with("centreline", valve.centrelineDegrees())
            .with("law", Terms.of(valve.law()))
            .with("tilt", valve.tiltDegrees())
            .with("gap", valve.gapMm());
    valve.spring().ifPresent(spring -> braces.with("spring", spring(spring)));
    line("    - " + braces);
  }

  private static String spring(Spring spring) {
    return new Braces()
        .with("preload", spring.preloadN())
        .with("rate", spring.rateNPerMm())
        .toString();
  }

  private void survey(Survey survey) {
    line("measurements:");
    SurveyWriter.lines(survey).forEach(entry -> line("  - " + entry));
  }

  private void line(String line) {
    text.append(line).append('\n');
  }
}
