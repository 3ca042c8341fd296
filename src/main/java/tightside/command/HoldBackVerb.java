package tightside.command;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import tightside.drive.Chain;
import tightside.drive.Drive;
import tightside.drive.Seen;
import tightside.files.Model;
import tightside.readings.Bench;
import tightside.timing.HeldBack;
import tightside.timing.HoldBack;
import tightside.timing.LockingPlay;
import tightside.words.Numbers;
import tightside.words.Sentences;

@Command(
    name = "hold-back",
    description = {
      "Says what can go wrong while the chain is slack: shafts locked at the reference position,",
      "the tensioner held pushed back."
    })
final class HoldBackVerb extends ModelVerb {

  /** How much of the engine is open. */
  enum Cover {
    on,
    off,
    borescope
  }

  private static final Map<Cover, Set<Seen>> ACCESS =
      new EnumMap<>(
          Map.of(
              Cover.on, Set.of(Seen.COVER_ON),
              Cover.off, Set.of(Seen.COVER_ON, Seen.COVER_OFF),
              Cover.borescope, Set.of(Seen.COVER_ON, Seen.COVER_OFF, Seen.BORESCOPE)));

  @Option(
      names = "--extension",
      paramLabel = "MM",
      description = "Where every plunger is held, mm out; fully pushed back unless given.")
  private Double extension;

  @Option(
      names = "--cover",
      paramLabel = "on|off|borescope",
      description = "What can be seen; off unless given.")
  private Cover cover = Cover.off;

  @Override
  Answer answer(Model model) {
    if (model.drive().countedOnly()) {
      throw new Refusal(Sentences.holdBackNeeds());
    }
    List<HoldBack> holds = new ArrayList<>();
    for (Chain chain : model.drive().chains()) {
      holds.add(hold(model.drive(), chain, play(model)));
    }
    Bench bench = Bench.coverOff().with(play(model)).seeing(ACCESS.get(cover));
    return new Answer(
        Answer.ANSWERED,
        () ->
            Json.object(
                "model",
                model.drive().name(),
                "chains",
                holds.stream().map(HoldBackJson::chain).toList()),
        () -> HoldBackText.of(model.drive(), holds, bench, held(model.drive())));
  }

  private static LockingPlay play(Model model) {
    OptionalDouble degrees =
        model.job().isEmpty() ? OptionalDouble.empty() : model.job().get().lockingToolPlayDegrees();
    return new LockingPlay(degrees);
  }

  /** Where each chain's plunger is held. */
  private Map<String, Double> held(Drive drive) {
    return drive.chains().stream()
        .filter(c -> c.tensioner().isPresent())
        .collect(Collectors.toMap(Chain::name, c -> extension == null ? 0.0 : extension));
  }

  private HoldBack hold(Drive drive, Chain chain, LockingPlay play) {
    boolean given = extension != null && chain.tensioner().isPresent();
    OptionalDouble at = given ? OptionalDouble.of(extension) : OptionalDouble.empty();
    HeldBack held = HeldBack.of(drive, chain, at, 0, play);
    if (held instanceof HoldBack hold) {
      return hold;
    }
    double travel = chain.tensioner().map(t -> t.plunger().travelMm()).orElse(0.0);
    throw new Refusal(
        "the plunger of chain %s can't be held at %s mm; it stands from 0 to %s mm out"
            .formatted(chain.name(), extension, Numbers.plain(travel)));
  }
}
