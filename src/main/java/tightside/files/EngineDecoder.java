package tightside.files;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tightside.drive.Limits;
import tightside.drive.Role;
import tightside.drive.Shaft;
import tightside.engine.Engine;
import tightside.engine.LiftLaw;
import tightside.engine.Spring;
import tightside.engine.Valve;

/** Reads the engine behind the drive. */
final class EngineDecoder {

  private EngineDecoder() {}

  /**
   * @param shafts of the drive; nothing if not all of them could be read
   */
  static Optional<Engine> engine(Optional<Value> value, Optional<List<Shaft>> shafts) {
    Optional<SectionReader> section = SectionReader.of(value);
    if (section.isEmpty()) {
      return Optional.empty();
    }
    SectionReader s = section.get();
    Optional<Double> bore = Numbers.number(s.need("bore"), Limits.BORE_MM);
    Optional<Double> stroke = Numbers.number(s.need("stroke"), Limits.STROKE_MM);
    Optional<Double> rod = rod(s.need("rod"), stroke);
    Optional<Double> ratio = Numbers.number(s.need("compression-ratio"), Limits.COMPRESSION_RATIO);
    List<Valve> valves = new ArrayList<>();
    for (SectionReader valve : Lists.sections(s.need("valves"), Limits.VALVES)) {
      valve(valve.called("valve"), shafts, valves);
    }
    List<Double> phases = phases(s.may("phases"));
    Optional<Double> at = Numbers.number(s.may("at-reference"), Limits.CRANK_DEGREES);
    if (!s.sound()) {
      return Optional.empty();
    }
    return Optional.of(
        new Engine(
            bore.get(),
            stroke.get(),
            rod.get(),
            ratio.get(),
            valves,
            phases,
            Numbers.primitive(at)));
  }

  private static List<Double> phases(Optional<Value> value) {
    if (value.isEmpty()) {
      return Engine.ONE_CYLINDER;
    }
    List<Double> phases = Lists.numbers(value, Limits.CRANK_DEGREES, Limits.CYLINDERS);
    if (!phases.isEmpty() && phases.get(0) != 0) {
      value.get().complain(Fault.PHASE_OF_THE_FIRST, Map.of("phase", phases.get(0)));
    }
    return phases;
  }

  private static Optional<Double> rod(Optional<Value> value, Optional<Double> stroke) {
    Optional<Double> rod = Numbers.number(value, Limits.ROD_MM);
    if (rod.isPresent() && stroke.isPresent() && !Engine.rodPassesCrank(rod.get(), stroke.get())) {
      Map<String, Object> facts = Map.of("rod", rod.get(), "least", stroke.get() / 2);
      value.get().complain(Fault.ROD_TOO_SHORT, facts);
    }
    return rod;
  }

  private static void valve(SectionReader s, Optional<List<Shaft>> shafts, List<Valve> valves) {
    Optional<String> shaft = camshaft(s.need("shaft"), shafts);
    Optional<Double> lift = Numbers.number(s.need("lift"), Limits.LIFT_MM);
    Optional<Double> duration = Numbers.number(s.need("duration"), Limits.DURATION_DEGREES);
    Optional<Double> centreline = Numbers.number(s.need("centreline"), Limits.CENTRELINE_DEGREES);
    Optional<LiftLaw> law = Words.choice(s.need("law"), LiftLaw.values());
    Optional<Double> tilt = Numbers.number(s.need("tilt"), Limits.TILT_DEGREES);
    Optional<Double> gap = Numbers.number(s.need("gap"), Limits.GAP_MM);
    Optional<Spring> spring = spring(s.may("spring"));
    if (s.sound()) {
      valves.add(
          new Valve(
              shaft.get(),
              lift.get(),
              duration.get(),
              centreline.get(),
              law.get(),
              tilt.get(),
              gap.get(),
              spring));
    }
  }

  private static Optional<Spring> spring(Optional<Value> value) {
    Optional<SectionReader> section = SectionReader.of(value);
    if (section.isEmpty()) {
      return Optional.empty();
    }
    SectionReader s = section.get();
    Optional<Double> preload = Numbers.number(s.need("preload"), Limits.SPRING_PRELOAD_N);
    Optional<Double> rate = Numbers.number(s.need("rate"), Limits.SPRING_RATE_N_PER_MM);
    return s.sound() ? Optional.of(new Spring(preload.get(), rate.get())) : Optional.empty();
  }

  /** The name of a camshaft of the drive. */
  private static Optional<String> camshaft(Optional<Value> value, Optional<List<Shaft>> shafts) {
    Optional<String> name = Words.name(value);
    if (name.isEmpty() || shafts.isEmpty()) {
      return name;
    }
    List<String> cams = new ArrayList<>();
    boolean known = false;
    for (Shaft shaft : shafts.get()) {
      known |= shaft.name().equals(name.get());
      if (shaft.role() == Role.CAMSHAFT) {
        cams.add(shaft.name());
      }
    }
    if (!cams.contains(name.get())) {
      value
          .get()
          .complain(
              known ? Fault.VALVE_SHAFT_NO_CAMSHAFT : Fault.VALVE_SHAFT_UNKNOWN,
              Map.of("shaft", name.get(), "known", cams));
    }
    return name;
  }
}
