package tightside.files;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import tightside.drive.Limits;
import tightside.drive.Role;
import tightside.drive.Shaft;
import tightside.engine.Engine;
import tightside.engine.LiftLaw;
import tightside.engine.Valve;
import tightside.job.Job;

/** Reads the engine behind the drive, and the job. */
final class EngineDecoder {

  private EngineDecoder() {}

  /**
   * @param shafts of the drive; nothing if they could not be read
   */
  static Decoder<Engine> engine(Optional<List<Shaft>> shafts) {
    return SectionReader.section(
        s -> {
          Optional<Double> bore = s.need("bore", Numbers.number(Limits.BORE_MM));
          Optional<Double> stroke = s.need("stroke", Numbers.number(Limits.STROKE_MM));
          Optional<Double> rod = s.need("rod", rod(stroke));
          Optional<Double> ratio =
              s.need("compression-ratio", Numbers.number(Limits.COMPRESSION_RATIO));
          Optional<List<Valve>> valves = s.need("valves", Lists.some(valve(shafts)));
          return s.built(
              () -> new Engine(bore.get(), stroke.get(), rod.get(), ratio.get(), valves.get()));
        });
  }

  private static Decoder<Double> rod(Optional<Double> stroke) {
    Decoder<Double> number = Numbers.number(Limits.ROD_MM);
    return value -> {
      Optional<Double> rod = number.decode(value);
      if (rod.isPresent()
          && stroke.isPresent()
          && !Engine.rodPassesCrank(rod.get(), stroke.get())) {
        value.complain(Fault.ROD_TOO_SHORT, Map.of("rod", rod.get(), "least", stroke.get() / 2));
        return Optional.empty();
      }
      return rod;
    };
  }

  private static Decoder<Valve> valve(Optional<List<Shaft>> shafts) {
    return SectionReader.section(
        s -> {
          Optional<String> shaft = s.need("shaft", camshaft(shafts));
          Optional<Double> lift = s.need("lift", Numbers.number(Limits.LIFT_MM));
          Optional<Double> duration = s.need("duration", Numbers.number(Limits.DURATION_DEGREES));
          Optional<Double> centreline =
              s.need("centreline", Numbers.number(Limits.CENTRELINE_DEGREES));
          Optional<LiftLaw> law = s.need("law", Words.choice(LiftLaw.values()));
          Optional<Double> tilt = s.need("tilt", Numbers.number(Limits.TILT_DEGREES));
          Optional<Double> gap = s.need("gap", Numbers.number(Limits.GAP_MM));
          return s.built(
              () ->
                  new Valve(
                      shaft.get(),
                      lift.get(),
                      duration.get(),
                      centreline.get(),
                      law.get(),
                      tilt.get(),
                      gap.get()));
        });
  }

  /** The name of a camshaft of the drive. */
  private static Decoder<String> camshaft(Optional<List<Shaft>> shafts) {
    return value -> {
      Optional<String> name = Words.name().decode(value);
      if (name.isEmpty() || shafts.isEmpty()) {
        return name;
      }
      Map<String, Role> roles =
          shafts.get().stream().collect(Collectors.toMap(Shaft::name, Shaft::role));
      Role role = roles.get(name.get());
      if (role == Role.CAMSHAFT) {
        return name;
      }
      List<String> cams =
          roles.keySet().stream().filter(n -> roles.get(n) == Role.CAMSHAFT).sorted().toList();
      value.complain(
          role == null ? Fault.VALVE_SHAFT_UNKNOWN : Fault.VALVE_SHAFT_NO_CAMSHAFT,
          Map.of("shaft", name.get(), "known", cams));
      return Optional.empty();
    };
  }

  static Decoder<Job> job() {
    return SectionReader.section(
        s -> {
          Optional<Double> play =
              s.may("locking-tool-play", Numbers.number(Limits.LOCKING_PLAY_DEGREES));
          Optional<String> note = s.may("note", Words.prose());
          return s.built(() -> new Job(optional(play), note));
        });
  }

  private static OptionalDouble optional(Optional<Double> number) {
    return number.map(OptionalDouble::of).orElseGet(OptionalDouble::empty);
  }
}
